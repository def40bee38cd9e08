using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Records.Plans;

/// <summary>The units in which each part of a set-up is told: those that its own operation would take from plan and records.</summary>
/// <param name="field">The plan with its records.</param>
/// <param name="choice">The word of the query, already checked; null is as asked.</param>
internal sealed class FieldSetUpUnits(PlannedField field, string? choice)
{
    private readonly Dictionary<SetUpPart, AnswerUnits> known = [];

    /// <summary>What was found, once it was: which parts speak of which meters.</summary>
    public FieldSetUpResult? Found { get; init; }

    public AnswerUnits Nutrients => Of(new SetUpPart(SetUpPartKind.Nutrients));

    public AnswerUnits SeedRow => Of(new SetUpPart(SetUpPartKind.SeedRow));

    public AnswerUnits Fan => Of(new SetUpPart(SetUpPartKind.Fan));

    public AnswerUnits SeedingRate(int meter) => Of(new SetUpPart(SetUpPartKind.SeedingRate, meter));

    public AnswerUnits MeterSpeed(int meter) => Of(new SetUpPart(SetUpPartKind.MeterSpeed, meter));

    public AnswerUnits NewLot(int meter) => Of(new SetUpPart(SetUpPartKind.NewLot, meter));

    /// <summary>Those of the rate of a meter.</summary>
    public AnswerUnits Rate(int meter) => AnswerUnits.For(choice, RateUnit(meter));

    /// <summary>The rate of a meter as a question states it; null while it cannot be told.</summary>
    public MassPerAreaQuantity? Stated(MeterRate rate, int meter) =>
        field.Meters[meter].Planned.TargetRate ?? (rate.Rate is { } derived ? Rate(meter).Rate(derived) : null);

    /// <summary>Those of a mass per revolution.</summary>
    public AnswerUnits Value(int meter, KnownValue value) =>
        AnswerUnits.For(
            choice,
            value.From switch
            {
                ValueOrigin.ValueInForce => UsualUnits.PerRevolution(field.Meters[meter].InForce[value.Element.Name].EnteredUnit),
                ValueOrigin.StartValue => Quantity.UnitOf(field.Meters[meter].Planned.StartValue),
                _ => VolumeCheckCalculation.UnitBeside(Quantity.UnitOf(field.Meters[meter].BulkDensity)!),
            }
        );

    /// <summary>Those of a part; the usual ones where there is none.</summary>
    public AnswerUnits Of(SetUpPart? part)
    {
        if (part is not { } asked)
            return AnswerUnits.For(choice);
        if (!known.TryGetValue(asked, out var units))
            known[asked] = units = Chosen(asked);
        return units;
    }

    private AnswerUnits Chosen(SetUpPart part) =>
        part switch
        {
            (SetUpPartKind.Nutrients, _) => ProductRateCalculation.UnitsFor(
                choice,
                Quantity.UnitOf(field.Plan.Nutrients![0]!.Amount)!,
                Quantity.UnitOf(field.Plan.Area),
                package: null
            ),
            (SetUpPartKind.SeedRow, _) => AnswerUnits.For(
                choice,
                RateUnit(PlaceOf(Found!.InSeedRow[0])),
                Quantity.UnitOf(field.Machine!.SeedRowWidth)
            ),
            (SetUpPartKind.Fan, _) => MeterSpeedUnits(Carried(), limits: null),
            (SetUpPartKind.SeedingRate, { } meter) => AnswerUnits.For(
                choice,
                UsualUnits.With(Quantity.UnitOf(field.Meters[meter].Planned.Stand!.Plants), Quantity.UnitOf(field.Plan.Area))
            ),
            (SetUpPartKind.MeterSpeed, { } meter) => MeterSpeedUnits(meter, LimitsOf(meter)),
            (SetUpPartKind.NewLot, { } meter) => NewLotUnits(field.Meters[meter], meter),
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "A part of a meter needs the meter."),
        };

    private AnswerUnits MeterSpeedUnits(int meter, Unit? limits) =>
        MeterSpeedCalculation.UnitsFor(
            choice,
            RateUnit(meter),
            airFlow: null,
            Quantity.UnitOf(field.Plan.GroundSpeed),
            Quantity.UnitOf(field.Meters[meter].Meter.CoveredWidth),
            limits
        );

    private AnswerUnits NewLotUnits(PlannedMeter planned, int meter) =>
        AnswerUnits.For(
            choice,
            UsualUnits.With(
                Found!.Meters[meter].Rate.Seeding is null ? null : SeedingRate(meter).Display[Dimension.CountPerArea],
                Quantity.UnitOf(field.Plan.Area),
                UsualUnits.PerRevolution(planned.InForce[planned.Planned.Element!].EnteredUnit),
                Quantity.UnitOf(planned.LotBefore!.BulkDensity),
                Quantity.UnitOf(planned.Lot!.BulkDensity)
            )
        );

    private Unit RateUnit(int meter) =>
        field.Meters[meter].Planned switch
        {
            { TargetRate: { } stated } => Quantity.UnitOf(stated)!,
            { Stand: not null } => SeedingRate(meter).Display[Dimension.MassPerArea],
            _ => Nutrients.Display[Dimension.MassPerArea],
        };

    // Of the first element of which something is known, else of its meter.
    private Unit? LimitsOf(int meter)
    {
        var first = Found!.Meters[meter].Values[0].Element.Name;
        var described = field.Meters[meter].Meter;
        var limits = described.Elements!.First(element => element!.Name == first)!.SpeedLimits ?? described.SpeedLimits;
        return Quantity.UnitOf(limits?.Maximum ?? limits?.Minimum);
    }

    // The first meter that is set up speaks for the air.
    private int Carried() => Found!.Meters.Index().First(meter => meter.Item.MeterSpeed is not null).Index;

    private int PlaceOf(MeterRate meter) => Found!.Meters.Index().First(one => one.Item.Rate == meter).Index;
}
