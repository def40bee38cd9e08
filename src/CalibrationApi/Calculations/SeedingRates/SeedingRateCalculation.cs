using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using EngineRate = CalibrationApi.Engine.SeedingRates.SeedingRate;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>Finds the seeding rate for a stand, or the stand of a rate.</summary>
/// <remarks>
/// From plants per area, seeds per area, seeds in a length of row, or a mass per area: all the others, with seeds per length of
/// row, packages and cost. Units are exact; a rate made by dividing by 10 can be compared. What is unusual for the crop is said
/// with the published range. Nothing is stored.
/// </remarks>
/// <request>What is fixed, and what is known of the seed.</request>
/// <response code="200">Rate, seeds, plants, packages and cost.</response>
internal static class SeedingRateCalculation
{
    public static Calculation<SeedingRateRequest, SeedingRateQuestion, SeedingRateResult, SeedingRateAnswer> Declaration { get; } =
        new(typeof(SeedingRateCalculation))
        {
            Name = "seeding-rate",
            Tag = "Seeding rates",
            Says = "How much seed a stand takes, and what stand a rate gives.",
            Json = SeedingRateJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => SeedingRateEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (request, result, units) => ToAnswer(result, units, request.Price?.Currency ?? request.Package?.Price?.Currency),
            Verdict = answer => answer.Verdict,
        };

    public static AnswerUnits UnitsFor(SeedingRateRequest request, string? choice) =>
        AnswerUnits.For(
            choice,
            UsualUnits.With(
                Quantity.UnitOf(request.TargetStand ?? request.SeedsPerArea ?? request.GerminableSeedsPerArea),
                Quantity.UnitOf(request.Rate ?? request.StatedRate),
                Quantity.UnitOf(request.Area),
                Quantity.UnitOf(request.SeedsPerRow),
                Quantity.UnitOf(request.SeedsPerMass),
                Quantity.UnitOf(request.Package?.Mass)
            )
        );

    public static SeedingRateQuestion ToEngine(SeedingRateRequest request) =>
        new()
        {
            Stand = CountPerAreaQuantity.Read(request.TargetStand),
            Seeds = request.SeedsPerRow is { } perRow
                ? EngineRate.PerArea(perRow.Read(), request.RowSpacing!.Read())
                : CountPerAreaQuantity.Read(request.SeedsPerArea),
            GerminableSeeds = CountPerAreaQuantity.Read(request.GerminableSeedsPerArea),
            Rate = MassPerAreaQuantity.Read(request.Rate),
            Kernel =
                request.ThousandKernelMass is { } kernel ? kernel.Read()
                : request.SeedsPerMass is { } count ? EngineRate.Kernel(count.Read())
                : EngineRate.Kernel(request.Sample!.Seeds!.Value, request.Sample.Mass!.Read()),
            KernelUncertainty = request.KernelMassUncertainty?.Canonical(),
            SeedsCounted = request.Sample?.Seeds,
            Purity = request.Purity?.Canonical(),
            Establishment = ReadEstablishment(request),
            Crop = Words.Read<Crop>(request.Crop),
            RowSpacing = LengthQuantity.Read(request.RowSpacing),
            Area = AreaQuantity.Read(request.Area),
            Package =
                request.Package is not { } package ? null
                : package.Mass is { } mass ? SeedPackage.Of(mass.Read())
                : SeedPackage.Of(package.Seeds!.Value),
            Price =
                request.Price is null && request.Package?.Price is null
                    ? null
                    : new SeedPrice(request.Price?.PerKilogram(), request.Package?.Price?.Value),
            StatedRate = MassPerAreaQuantity.Read(request.StatedRate),
            StatedRateIsShortcut = IsShortcut(request.StatedRate),
        };

    /// <param name="result">The rate.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="currency">Currency of the price; null without one.</param>
    public static SeedingRateAnswer ToAnswer(SeedingRateResult result, AnswerUnits units, string? currency) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Rate = units.Rate(result.Rate),
            SeedsPerArea = units.CountPerArea(result.Seeds),
            GerminableSeedsPerArea = result.GerminableSeeds is { } viable ? units.CountPerArea(viable) : null,
            Plants = result.Plants is { } plants ? ToAnswer(plants, result, units) : null,
            SeedsPerRow = result.SeedsPerRow is { } seeds ? units.CountPerLength(seeds) : null,
            PlantsPerRow = result.PlantsPerRow is { } inRow ? units.CountPerLength(inRow) : null,
            ThousandKernelMass = units.MassPerThousand(result.Kernel),
            SeedsPerMass = units.CountPerMass(result.SeedsPerMass),
            Survival = result.Survival is { } survival ? units.Ratio(survival) : null,
            PureLiveSeed = result.PureLiveSeed is { } share ? units.Ratio(share) : null,
            MassForOnePureLive = result.MassForOnePureLive is { } bulk
                ? new RatioQuantity { Value = AnswerUnits.Shown(bulk), Unit = "1" }
                : null,
            MassOverArea = result.MassOverArea is { } mass ? units.Mass(mass) : null,
            Packages = result.Packages is { } packages ? ToAnswer(packages, units) : null,
            Cost = result.Cost is { } cost ? ToAnswer(cost, currency!, units) : null,
            StatedRate = result.StatedRate is { } stated ? ToAnswer(stated, units) : null,
            UncertaintyParts =
            [
                .. result.UncertaintyParts.Select(part => new StandUncertainty
                {
                    Source = Words.Of(part.Source),
                    Relative = units.Ratio(part.Relative),
                }),
            ],
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(result.Cautions),
            EngineVersion = EngineVersion.Current,
        };

    // The shortcut makes pounds per acre; a rate in another unit that is as much higher is so for another reason.
    private static bool? IsShortcut(RateFromElsewhere? rate) =>
        Words.Read<RateOrigin>(rate?.MadeBy) switch
        {
            { } origin => origin == RateOrigin.DivideByTen,
            null => rate?.Unit == "lb/ac" ? null : false,
        };

    private static Establishment ReadEstablishment(SeedingRateRequest request)
    {
        if (request.Survival is { } survival)
            return Establishment.Folded(survival.Canonical(), Read(request.SurvivalRange));
        return request.Germination is { } germination
            ? Establishment.Tested(
                germination.Canonical(),
                request.GerminationSeedsTested,
                request.Emergence?.Canonical(),
                Read(request.EmergenceRange)
            )
            : Establishment.Unknown;
    }

    private static (double Low, double High)? Read(ShareRange? range) =>
        range is null ? null : (range.Minimum!.Canonical(), range.Maximum!.Canonical());

    private static ExpectedStand ToAnswer(CountPerArea plants, SeedingRateResult result, AnswerUnits units)
    {
        var plain = units.CountPerArea(plants);
        var interval = result.PlantsWithUncertainty;
        return new()
        {
            Value = plain.Value,
            Unit = plain.Unit,
            ExpandedUncertainty = interval is null ? null : units.CountPerArea(new(interval.ExpandedUncertainty)).Value,
            CoverageFactor = interval?.CoverageFactor,
            CoverageProbability = interval?.CoverageProbability,
        };
    }

    private static PackagesAnswer ToAnswer(SeedPackages packages, AnswerUnits units) =>
        new()
        {
            Mass = units.Mass(packages.Mass),
            AreaPerPackage = units.Area(packages.AreaPerPackage),
            Needed = packages.Needed,
            Whole = packages.Whole,
            LeftOver = packages.LeftOver is { } rest ? units.Mass(rest) : null,
        };

    private static SeedCostAnswer ToAnswer(SeedCost cost, string currency, AnswerUnits units)
    {
        var per = units.Display[Dimension.Area];
        return new()
        {
            CostPerArea = new()
            {
                Value = AnswerUnits.Shown(cost.PerSquareMetre * per.Canonical(1)),
                Currency = currency,
                Per = per.Symbol,
            },
            TotalCost = Money(cost.OverArea, currency),
            InWholePackages = Money(cost.InWholePackages, currency),
        };
    }

    private static Money? Money(double? amount, string currency) =>
        amount is { } known ? new Money { Value = AnswerUnits.Shown(known), Currency = currency } : null;

    private static StatedRateAnswer ToAnswer(StatedRateComparison stated, AnswerUnits units) =>
        new()
        {
            Rate = units.Rate(stated.Stated),
            Difference = units.Ratio(stated.Difference),
            SeedsPerArea = units.CountPerArea(stated.Seeds),
            Plants = stated.Plants is { } plants ? units.CountPerArea(plants) : null,
            FromDivideByTen = stated.IsShortcut,
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(SeedingRateRequest))]
[JsonSerializable(typeof(SeedingRateAnswer))]
internal sealed partial class SeedingRateJson : JsonSerializerContext;
