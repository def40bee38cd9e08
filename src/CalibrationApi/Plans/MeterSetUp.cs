using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.MeterSpeeds;
using CalibrationApi.NewLots;
using CalibrationApi.Quantities;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using CalibrationApi.VolumeChecks;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plans;

/// <summary>Works out what one meter of a plan needs; adds what cannot be told yet to the open points.</summary>
internal sealed class MeterSetUp(PlannedField field, SqliteConnection connection, Workspace workspace, string? units, List<ProblemError> open)
{
    private static readonly MeterSpeedRequestValidator SpeedRules = new();
    private static readonly NewLotRequestValidator LotRules = new();
    private static readonly VolumeCheckRequestValidator VolumeRules = new();

    public MeterSetUpAnswer Of(PlannedMeter meter)
    {
        var values = meter.Meter.Elements!.Select(element => Value(meter, element!)).OfType<ValueOfElement>().ToArray();
        if (!Array.Exists(values, value => value.Element == meter.Planned.Element))
            Add(meter.Path(nameof(meter.Planned.StartValue)), "No value is in force for this meter, element, setting and product, and none can be predicted. Adopt a value, add a startValue to the plan, or give the element its displacement and the lot or product its bulk density.");
        return new MeterSetUpAnswer
        {
            Meter = meter.Planned.Meter!,
            Element = meter.Planned.Element!,
            Product = meter.Product.Name!,
            Lot = meter.Lot?.Name,
            Rate = meter.Rate,
            RateFrom = Words.Of(meter.RateFrom),
            SeedingRate = meter.SeedingRate,
            Values = values,
            MeterSpeed = Speed(meter, values),
            NewLot = NewLot(meter),
        };
    }

    private ValueOfElement? Value(PlannedMeter meter, ElementOfMachine element)
    {
        if (meter.InForce(connection, workspace, field.Plan.Machine!, element.Name!) is { } adoption)
            return Write(element, PlannedMeter.Reference(connection, workspace, adoption), ValueOrigin.ValueInForce);
        if (element.Name == meter.Planned.Element && meter.Planned.StartValue is { } start)
            return Write(element, start, ValueOrigin.StartValue);
        if (element.DisplacementPerRevolution is not { } volume || meter.BulkDensity is not { } density)
            return null;
        var (expected, _) = Calculation.Ask(
            new VolumeCheckRequest
            {
                Element = element.Name,
                Displacement = new DisplacementOfElement { Value = volume.Value, Unit = volume.Unit },
                BulkDensity = new DensityOfProduct { Value = density.Value, Unit = density.Unit },
            },
            VolumeRules,
            EvaluateVolumeCheck.Evaluate,
            units);
        return expected is null ? null : Write(element, expected.Expected, ValueOrigin.Displacement);
    }

    private static ValueOfElement Write(ElementOfMachine element, MassPerRevolutionQuantity value, ValueOrigin from) =>
        new() { Value = value.Value, Unit = value.Unit, Element = element.Name!, From = Words.Of(from) };

    private MeterSpeedAnswer? Speed(PlannedMeter meter, ValueOfElement[] values)
    {
        if (meter.Rate is not { Value: > 0 } rate || values.Length == 0)
            return null;
        var slowest = field.Plan.WorkingSpeeds;
        var (answer, errors) = Calculation.Ask(
            new MeterSpeedRequest
            {
                CoveredWidth = meter.Meter.CoveredWidth,
                WorkingWidth = field.Machine!.WorkingWidth,
                Rates = [rate],
                GroundSpeeds = slowest is null ? [field.Plan.GroundSpeed] : [field.Plan.GroundSpeed, slowest.Minimum, slowest.Maximum],
                Elements = [.. values.Select(value => Element(meter.Meter.Elements!.First(one => one!.Name == value.Element)!, value))],
                SpeedLimits = meter.Meter.SpeedLimits,
                FieldEfficiency = field.Plan.FieldEfficiency,
                Area = field.Plan.Area,
            },
            SpeedRules,
            EvaluateMeterSpeed.Evaluate,
            units);
        foreach (var error in errors)
            Add(meter.Path(nameof(meter.Planned.Meter)), error.Detail, error.Code);
        return answer;
    }

    private static ElementOfMeter Element(ElementOfMachine element, ValueOfElement value) => new()
    {
        Name = element.Name,
        MassPerRevolution = new MassPerRevolutionQuantity { Value = value.Value, Unit = value.Unit },
        SpeedLimits = element.SpeedLimits,
        PocketsPerRevolution = element.PocketsPerRevolution,
    };

    // Only where both lots are known: without the one before nothing says what changed.
    private NewLotAnswer? NewLot(PlannedMeter meter)
    {
        if (meter.Lot is null || meter.InForce(connection, workspace, field.Plan.Machine!, meter.Planned.Element!) is not { Lot: { } before } adoption
            || before == meter.Planned.Lot || LotOf(before) is not { } earlier)
            return null;
        var inForce = PlannedMeter.Reference(connection, workspace, adoption);
        var (answer, errors) = Calculation.Ask(
            new NewLotRequest
            {
                ValueInForce = new ValueOfLotBefore { Value = inForce.Value, Unit = inForce.Unit, RelativeUncertainty = inForce.RelativeUncertainty },
                LotBefore = Described(earlier),
                NewLot = Described(meter.Lot),
                SeedsPerArea = meter.SeedingRate?.SeedsPerArea,
                Area = field.Plan.Area,
                Price = meter.Product.Price,
            },
            LotRules,
            EvaluateNewLot.Evaluate,
            units);
        foreach (var error in errors)
            Add(meter.Path(nameof(meter.Planned.Lot)), error.Detail, error.Code);
        return answer;
    }

    private LotRequest? LotOf(string id) => new DescribedRecordStore(RecordKind.Lots).Find(connection, workspace, id) is { } record
        ? (LotRequest)System.Text.Json.JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(LotRequest)))!
        : null;

    private static LotOfChange Described(LotRequest lot) => new()
    {
        Name = lot.Name,
        ThousandKernelMass = lot.ThousandKernelMass,
        // A density of the product, not of the lot, says nothing of how two lots differ.
        BulkDensity = lot.BulkDensity is { } density ? new DensityOfLot { Value = density.Value, Unit = density.Unit } : null,
        Germination = lot.Germination,
        Purity = lot.Purity,
        Treatment = lot.Treatment,
    };

    private void Add(string member, string detail, string code = ErrorCode.ValueMissing) =>
        open.Add(new ProblemError { Pointer = RequestFilter.Pointer(member), Code = code, Detail = detail });
}
