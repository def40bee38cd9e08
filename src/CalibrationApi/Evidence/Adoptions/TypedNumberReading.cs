using CalibrationApi.Engine.ControllerEntries;
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

    private readonly ControllerForm form = Words.Read(meter.ControllerEntry?.Form, ControllerForm.MassPerRevolution);

    /// <summary>The mass per revolution; null with an error where it cannot be told.</summary>
    public MassPerRevolution? Read(List<ProblemError> errors) =>
        Entry(UnitTable.Get(request.TypedIn!.Unit!), errors)?.Behind(request.TypedIn.Value!.Value);

    /// <summary>One step of the last digit of the controller; null when its digits are not known.</summary>
    public MassPerRevolution? Step() => meter.ControllerEntry is { } entry ? Entry(UnitTable.Get(entry.Unit!), [])?.Step : null;

    // A mass per revolution can be given whatever the form.
    private ControllerEntry? Entry(Unit unit, List<ProblemError> errors)
    {
        var decimals = meter.ControllerEntry?.Decimals ?? 0;
        return form switch
        {
            _ when unit.Dimension == Dimension.MassPerRevolution => ControllerEntry.PerRevolutionOf(unit, decimals),
            _ when unit.Dimension != ControllerEntry.DimensionOf(form) => Wrong(
                "#/typedIn",
                ErrorCodes.UnitWrongDimension,
                $"The controller of this meter takes its value as {Words.Of(form)}. Give the number in a unit of that form, or as a mass per revolution."
            ),
            ControllerForm.VolumePerRevolution when density is null => Wrong(
                "#/product",
                ErrorCodes.DensityMissing,
                "A volume per revolution takes the bulk density of the product or the lot. Add it to the record of one of them."
            ),
            ControllerForm.MassPerTime when request.MeterSpeed is null => Wrong(
                "#/meterSpeed",
                ErrorCodes.MemberMissing,
                "A mass per time takes the meter speed at which it applies. Add it."
            ),
            _ => ControllerEntry.Of(
                form,
                unit,
                decimals,
                meter.ControllerEntry?.Revolutions,
                PulsesPerRevolutionQuantity.Read(meter.PulsesPerRevolution),
                BulkDensityQuantity.Read(density),
                RotationQuantity.Read(request.MeterSpeed)
            ),
        };

        ControllerEntry? Wrong(string pointer, ErrorCode code, string detail)
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
