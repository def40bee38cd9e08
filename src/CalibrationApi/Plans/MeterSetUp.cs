using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.NewLots;
using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Quantities;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plans;

/// <summary>Works out what one meter of a plan needs; adds what cannot be told yet to the open points.</summary>
internal sealed class MeterSetUp(PlannedField field, SqliteConnection connection, Workspace workspace, string? units, List<ProblemError> open)
{
    private static readonly RequestValidator<MeterSpeedRequest> SpeedRules = new(TimeProvider.System);
    private static readonly RequestValidator<NewLotRequest> LotRules = new(TimeProvider.System);

    public MeterSetUpAnswer Of(PlannedMeter meter)
    {
        var values = meter.Meter.Elements!
            .Select(element => (Element: element!, Known: meter.ValueOf(element!, connection, workspace, field.Plan.Machine!)))
            .Where(value => value.Known is not null)
            .Select(value => (value.Element, Known: value.Known!))
            .ToArray();
        if (!meter.IsOff && !Array.Exists(values, value => value.Element == meter.Element))
            open.Add(meter.WithoutValue());
        return new MeterSetUpAnswer
        {
            Meter = meter.Planned.Meter!,
            Element = meter.Planned.Element!,
            Product = meter.Product.Name!,
            Lot = meter.Lot?.Name,
            Rate = meter.Rate is { } rate ? AnswerUnits.For(units, Quantity.UnitOf(rate)).Rate(rate.Read()) : null,
            RateFrom = Words.Of(meter.RateFrom),
            SeedingRate = meter.SeedingRate,
            Values = [.. values.Select(value => Write(value.Element, value.Known))],
            MeterSpeed = Speed(meter, values),
            NewLot = meter.IsOff ? null : NewLot(meter),
        };
    }

    private ValueOfElement Write(ElementOfMachine element, KnownValue known)
    {
        var value = AnswerUnits.For(units, Quantity.UnitOf(known.Value)).MassPerRevolution(known.Value.Read());
        return new() { Value = value.Value, Unit = value.Unit, Element = element.Name!, From = Words.Of(known.From) };
    }

    private MeterSpeedAnswer? Speed(PlannedMeter meter, (ElementOfMachine Element, KnownValue Known)[] values)
    {
        if (meter.Rate is null || meter.IsOff || values.Length == 0)
            return null;
        var (answer, errors) = Calculation.Ask(
            new MeterSpeedRequest
            {
                CoveredWidth = meter.Meter.CoveredWidth,
                WorkingWidth = field.Machine!.WorkingWidth,
                Rates = [meter.Rate],
                BulkDensity = meter.BulkDensity,
                GroundSpeeds = field.GroundSpeeds,
                Elements = [.. values.Select(value => Element(value.Element, value.Known))],
                SpeedLimits = meter.Meter.SpeedLimits,
                FieldEfficiency = field.Plan.FieldEfficiency,
                Area = field.Plan.Area,
            },
            SpeedRules,
            MeterSpeedCalculation.Declaration.Ask,
            units);
        foreach (var error in errors)
            Add(meter.Path(meter.RateFrom == RateOrigin.Stand ? nameof(meter.Planned.Stand) : nameof(meter.Planned.TargetRate)), error.Detail, error.Code);
        return answer;
    }

    private static ElementOfMeter Element(ElementOfMachine element, KnownValue known) => new()
    {
        Name = element.Name,
        MassPerRevolution = new MassPerRevolutionQuantity { Value = known.Value.Value, Unit = known.Value.Unit },
        Kind = element.Kind,
        DisplacementPerRevolution = element.DisplacementPerRevolution,
        SpeedLimits = element.SpeedLimits,
        PocketsPerRevolution = element.PocketsPerRevolution,
    };

    // Only where both lots are known: without the one before nothing says what changed.
    private NewLotAnswer? NewLot(PlannedMeter meter)
    {
        if (meter.Lot is null || meter.InForce(connection, workspace, field.Plan.Machine!, meter.Planned.Element!) is not { Lot: { } before } adopted
            || before == meter.Planned.Lot || LotOf(before) is not { } earlier)
            return null;
        var inForce = PlannedMeter.Reference(adopted);
        var (answer, errors) = Calculation.Ask(
            new NewLotRequest
            {
                ValueInForce = new ValueOfLotBefore { Value = inForce.Value, Unit = inForce.Unit, RelativeUncertainty = inForce.RelativeUncertainty },
                LotBefore = Described(earlier),
                NewLot = Described(meter.Lot),
                SeedsPerArea = meter.SeedingRate?.SeedsPerArea,
                Area = field.Plan.Area,
                // Without an area no price says what a wrong rate costs.
                Price = field.Plan.Area is null ? null : meter.Product.Price,
            },
            LotRules,
            NewLotCalculation.Declaration.Ask,
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

    private void Add(string member, string detail, string code) =>
        open.Add(new ProblemError { Pointer = RequestFilter.Pointer(member), Code = code, Detail = detail });
}
