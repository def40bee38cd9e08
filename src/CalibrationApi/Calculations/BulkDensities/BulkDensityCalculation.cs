using System.Text.Json.Serialization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>Finds the bulk density of a product and how sure it is.</summary>
/// <remarks>
/// From weighings of a known volume, a filled tank, a test weight or a stated number: the density with its interval, in every
/// unit, beside the published densities of its material. A density far from them is challenged, a measured one never
/// replaced. With nothing but a reference it gives a published value to start from. On wish what a tank holds and how far
/// that goes. Nothing is stored.
/// </remarks>
/// <request>What the density is known from.</request>
/// <response code="200">The density, its interval and its reference.</response>
internal static class BulkDensityCalculation
{
    public static Calculation<BulkDensityRequest, BulkDensityQuestion, BulkDensityResult, BulkDensityAnswer> Declaration { get; } =
        new(typeof(BulkDensityCalculation))
        {
            Name = "bulk-density",
            Tag = "Bulk densities",
            Says = "How much a litre of a product weighs, how sure that is, and what is published.",
            Json = BulkDensityJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => BulkDensityEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (_, result, units) => ToAnswer(result, units),
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Densities follow the test weight or the stated density; otherwise they come in kg/hL, beside pounds in lb/ft3.</summary>
    public static AnswerUnits UnitsFor(BulkDensityRequest request, string? choice)
    {
        var first = request.Weighed?.Weighings![0];
        var mass = Quantity.UnitOf(first?.Net ?? first?.Gross ?? request.FilledTank?.Mass);
        var rate = Quantity.UnitOf(request.Tank?.TargetRate);
        var read = Quantity.UnitOf(request.TestWeight ?? (Quantity?)request.StatedDensity);
        // A tank is told in pounds where the rate is, or the density.
        mass ??=
            rate?.Symbol == "lb/ac" || (rate is null && read?.Symbol is "lb/ft3" or "lb/bu-us" or "lb/bu-imp") ? UnitTable.Get("lb") : null;
        var units = AnswerUnits.For(
            choice,
            Quantity.UnitOf(first?.Net ?? first?.Gross ?? request.FilledTank?.Mass)?.Symbol is "lb" or "oz" or "ton-us"
                ? UnitTable.Get("lb/ft3")
                : null,
            mass,
            read,
            Quantity.UnitOf(request.Tank?.Volume),
            Quantity.UnitOf(request.Weighed?.Volume ?? request.FilledTank?.Volume),
            rate,
            rate?.Symbol == "lb/ac" ? UnitTable.Get("ac") : null
        );
        // Nobody buys fertilizer by the bushel.
        return choice == UnitsWord.UnitedStates && IsPrintedByTheCubicFoot(request.Reference) ? units.With(UnitTable.Get("lb/ft3")) : units;
    }

    public static BulkDensityQuestion ToEngine(BulkDensityRequest request) =>
        new()
        {
            Product = request.Product,
            Evidence = Evidence(request),
            Material = Words.Read<ReferenceMaterial>(request.Reference),
            Tank = request.Tank is { } tank
                ? new TankToFill(tank.Volume!.Read(), tank.Fill?.Canonical(), MassPerAreaQuantity.Read(tank.TargetRate))
                : null,
            CoverageProbability = request.CoverageProbability,
        };

    public static BulkDensityAnswer ToAnswer(BulkDensityResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            BulkDensity = Measured(result.Density, units.Display[Dimension.BulkDensity]),
            Basis = Words.Of(result.Basis),
            InOtherUnits = [.. UnitTable.Of(Dimension.BulkDensity).Select(unit => In(unit, result.Density.Value))],
            UncertaintyParts =
            [
                .. result.Parts.Select(part => new DensityUncertaintyPart { Source = part.Source, Relative = units.Ratio(part.Relative) }),
            ],
            Weighings =
                result.Readings.Count == 0
                    ? null
                    :
                    [
                        .. result.Readings.Select(one => new WeighingAnswer
                        {
                            Net = units.Mass(one.Net),
                            BulkDensity = units.BulkDensity(one.Density),
                        }),
                    ],
            Reference = result.Comparison is { } comparison ? ToAnswer(comparison, units) : null,
            LooseDensity = result.LooseDensity is { } loose ? units.BulkDensity(loose) : null,
            Tank = result.Tank is { } tank
                ? new TankAnswer
                {
                    Mass = units.Mass(tank.Mass),
                    LowerMass = units.Mass(tank.Least),
                    UpperMass = units.Mass(tank.Most),
                    Area = tank.Area is { } area ? units.Area(area) : null,
                }
                : null,
            Cautions = units.Cautions(result.Cautions),
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };

    private static bool IsPrintedByTheCubicFoot(string? reference) =>
        Words.Read<ReferenceMaterial>(reference) is { } material && ReferenceDensities.Of(material)[0].Unit.Symbol == "lb/ft3";

    private static DensityEvidence Evidence(BulkDensityRequest request)
    {
        if (request.Weighed is { } weighed)
            return Read(weighed);
        if (request.FilledTank is { } tank)
            return new FilledTank(
                tank.Mass!.Read(),
                tank.Volume!.Read(),
                tank.MassTolerance?.Canonical(),
                tank.VolumeTolerance?.Canonical()
            );
        if (request.TestWeight is { } test)
            return new ReadDensity(test.Read(), Quantity.UnitOf(test)!, IsTestWeight: true, test.RelativeUncertainty?.Canonical());
        return request.StatedDensity is { } stated
            ? new ReadDensity(stated.Read(), Quantity.UnitOf(stated)!, IsTestWeight: false, stated.RelativeUncertainty?.Canonical())
            : new PublishedDensity(Words.Read<ReferenceMaterial>(request.Reference)!.Value, request.LotToLot?.Canonical());
    }

    private static WeighedVolume Read(WeighedVolumeOfProduct weighed) =>
        new()
        {
            Volume = weighed.Volume!.Read(),
            IndicatedNet = [.. weighed.Weighings!.Select(one => Net(one!, weighed.SharedTare))],
            VolumeTolerance = weighed.VolumeTolerance?.Canonical(),
            Scale = weighed.Scale is { } scale ? ScaleMapping.Read(scale) : null,
            TareReading =
                weighed.Weighings![0]!.Net is not null ? TareReading.Zeroed
                : weighed.SharedTare is not null ? TareReading.Shared
                : TareReading.Each,
            Tares = weighed.Weighings!.All(one => one!.Tare is not null) ? [.. weighed.Weighings!.Select(one => one!.Tare!.Read())] : null,
            Repeatability = weighed.Repeatability?.Canonical(),
        };

    private static Mass Net(WeighingOfProduct one, MassQuantity? sharedTare) =>
        one.Net?.Read() ?? NetMass.Of(one.Gross!.Read(), (one.Tare ?? sharedTare)!.Read());

    private static ReferenceAnswer ToAnswer(ReferenceComparison comparison, AnswerUnits units) =>
        new()
        {
            Material = Words.Of(comparison.Material),
            Minimum = units.BulkDensity(comparison.Lightest),
            Maximum = units.BulkDensity(comparison.Densest),
            Beyond = units.Ratio(comparison.Beyond),
            Published =
            [
                .. comparison.Published.Select(one => new PublishedDensityAnswer
                {
                    Low = new BulkDensityQuantity { Value = one.Low, Unit = one.Unit.Symbol },
                    High = new BulkDensityQuantity { Value = one.High, Unit = one.Unit.Symbol },
                    Kind = Words.Of(one.Kind),
                    Source = one.Source,
                }),
            ],
            Moisture =
            [
                .. comparison.Moisture.Select(one => new MoistureAnswer
                {
                    From = units.Ratio(one.DryMoisture.Fraction),
                    To = units.Ratio(one.MoistMoisture.Fraction),
                    Basis = one.DryBasis ? "dry" : "wet",
                    DensityFrom = units.BulkDensity(one.Dry),
                    DensityTo = units.BulkDensity(one.Moist),
                    ChangePerPoint = units.Ratio(one.ChangePerPoint),
                    Source = one.Source,
                }),
            ],
        };

    private static BulkDensityQuantity In(Unit unit, double density) =>
        new() { Value = AnswerUnits.Shown(unit.FromCanonical(density)), Unit = unit.Symbol };

    private static MeasuredBulkDensity Measured(MeasuredValue value, Unit unit) =>
        new()
        {
            Value = AnswerUnits.Shown(unit.FromCanonical(value.Value)),
            Unit = unit.Symbol,
            ExpandedUncertainty = AnswerUnits.Shown(unit.FromCanonical(value.ExpandedUncertainty)),
            CoverageFactor = value.CoverageFactor,
            CoverageProbability = value.CoverageProbability,
            DegreesOfFreedom = double.IsFinite(value.DegreesOfFreedom) ? value.DegreesOfFreedom : null,
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(BulkDensityRequest))]
[JsonSerializable(typeof(BulkDensityAnswer))]
internal sealed partial class BulkDensityJson : JsonSerializerContext;
