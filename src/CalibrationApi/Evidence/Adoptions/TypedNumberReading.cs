using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Machines;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>The mass per revolution behind a typed number: directly, or through the form in which the controller takes it.</summary>
internal sealed class TypedNumberReading(AdoptionRequest request, MeterOfMachine meter, BulkDensityQuantity? density)
{
    /// <summary>The number with its unit, as it was typed.</summary>
    public string InWords =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{request.TypedIn!.Value} {request.TypedIn.Unit}");

    /// <summary>kg per revolution; null with an error where it cannot be told.</summary>
    public double? Read(List<ProblemError> errors) =>
        PerRevolution(request.TypedIn!.Value!.Value, UnitTable.Get(request.TypedIn.Unit!), errors);

    /// <summary>One step of the last digit of the controller, kg per revolution; 0 when its digits are not known.</summary>
    public double Step() =>
        meter.ControllerEntry is { } entry ? PerRevolution(Math.Pow(10, -entry.Decimals!.Value), UnitTable.Get(entry.Unit!), []) ?? 0 : 0;

    private double? PerRevolution(double number, Unit unit, List<ProblemError> errors)
    {
        var typed = unit.Canonical(number);
        if (unit.Dimension == Dimension.MassPerRevolution)
            return typed;
        var form = Words.Read(meter.ControllerEntry?.Form, ControllerForm.MassPerRevolution);
        return form switch
        {
            _ when unit.Dimension != ControllerEntry.DimensionOf(form) => Wrong(
                "#/typedIn",
                ErrorCode.UnitWrongDimension,
                $"The controller of this meter takes its value as {Words.Of(form)}. Give the number in a unit of that form, or as a mass per revolution."
            ),
            ControllerForm.MassPerTenRevolutions => typed / 10,
            ControllerForm.MassPerPulse => typed * meter.PulsesPerRevolution!.Read().Count,
            ControllerForm.VolumePerRevolution when BulkDensityQuantity.Read(density) is { } known => typed * known.KilogramsPerCubicMetre,
            ControllerForm.VolumePerRevolution => Wrong(
                "#/product",
                ErrorCode.DensityMissing,
                "A volume per revolution takes the bulk density of the product or the lot. Add it to the record of one of them."
            ),
            ControllerForm.MassPerTime when request.MeterSpeed is { } speed => typed / speed.Read().RevolutionsPerSecond,
            ControllerForm.MassPerTime => Wrong(
                "#/meterSpeed",
                ErrorCode.MemberMissing,
                "A mass per time takes the meter speed at which it applies. Add it."
            ),
            _ => typed,
        };

        double? Wrong(string pointer, string code, string detail)
        {
            errors.Add(
                new ProblemError
                {
                    Pointer = pointer,
                    Code = code,
                    Detail = detail,
                }
            );
            return null;
        }
    }
}
