using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>Evaluates a stand count.</summary>
/// <remarks>
/// From plants counted along rows, in frames or in hoops: plants per area with an interval that also holds for few and for
/// clumped counts, how the counts scatter, how many of them a wanted precision takes, and which share of the seeds came up,
/// with germination and without. Nothing is stored.
/// </remarks>
/// <request>The counts, their ground, and what is known about what was sown.</request>
/// <response code="200">Stand, survival and emergence.</response>
internal static class StandCountCalculation
{
    public static Calculation<StandCountRequest, StandCountQuestion, StandCountResult, StandCountAnswer> Declaration { get; } =
        new(typeof(StandCountCalculation))
        {
            Name = "stand-count",
            Tag = "Stand counts",
            Says = "How many plants stand, how sure that is, and which share of the seeds came up.",
            Json = StandCountJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => StandCountEvaluation.Evaluate(question),
            Refusals = [],
            Answer = ToAnswer,
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Plants per area follow the stand asked about, then the seeds sown, then the ground.</summary>
    public static AnswerUnits UnitsFor(StandCountRequest request, string? choice)
    {
        var ground = request.Counts![0]!.Ground ?? request.Ground!;
        var length = Quantity.UnitOf(ground.RowLength ?? ground.Length ?? ground.HoopDiameter);
        var american = (length ?? Quantity.UnitOf(ground.Area))!.Symbol is "ft" or "in" or "ft2" or "ac";
        return AnswerUnits.For(
            choice,
            length,
            UnitTable.Get(american ? "/ft2" : "/m2"),
            Quantity.UnitOf(request.Sown?.SeedsPerArea),
            Quantity.UnitOf(request.MinimumStand),
            Quantity.UnitOf(request.TargetStand)
        );
    }

    public static StandCountQuestion ToEngine(StandCountRequest request) =>
        new()
        {
            Samples = [.. SamplesOf(request)],
            SeedsSown = request.Sown is { } sown ? SeedsOf(sown) : null,
            PurityAssumed = request.Sown is { Rate: not null, Purity: null },
            Germination = request.Sown?.Germination?.Canonical(),
            SowingUncertainty = request.Sown?.Uncertainty?.Canonical(),
            Prior = request.Prior is { } prior
                ? new PriorShare(Words.Read(prior.Reading, default(SeedReading)), prior.Mean!.Canonical(), prior.Spread!.Canonical())
                : null,
            TargetStand = CountPerAreaQuantity.Read(request.TargetStand),
            MinimumStand = CountPerAreaQuantity.Read(request.MinimumStand),
            StatedStand = CountPerAreaQuantity.Read(request.StatedStand),
            StatedPerSquareFoot = request.StatedStand?.Unit == "/ft2",
            WantedPrecision = request.WantedPrecision?.Canonical(),
            CoverageProbability = request.CoverageProbability,
        };

    public static StandCountAnswer ToAnswer(StandCountRequest request, StandCountResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Stand = new StandEstimate
            {
                Estimate = units.CountPerArea(result.Stand),
                Lower = units.CountPerArea(result.Lower),
                Upper = units.CountPerArea(result.Upper),
                CoverageProbability = result.CoverageProbability,
            },
            PlantsCounted = result.Density.Plants,
            AreaCounted = Ground(new Area(result.Density.Area), units),
            Counts =
            [
                .. SamplesOf(request)
                    .Select(sample => new CountAnswer
                    {
                        Plants = sample.Plants,
                        Area = Ground(sample.Area, units),
                        Stand = units.CountPerArea(new CountPerArea(new PlantDensity([sample]).PerSquareMetre)),
                    }),
            ],
            Scatter = Scatter(result.Density, units),
            CountsNeeded = result.CountsNeeded,
            SeedsSown = result.SeedsSown is { } seeds ? units.CountPerArea(seeds) : null,
            Survival = Share(result.Survival, result, units),
            Emergence = Share(result.Emergence, result, units),
            Learned = result.Learned is { } learned
                ? new LearnedAnswer
                {
                    Reading = request.Prior!.Reading!,
                    Mean = units.Ratio(learned.Value),
                    StandardDeviation = units.Ratio(learned.StandardDeviation),
                    Lower = units.Ratio(learned.Lower),
                    Upper = units.Ratio(learned.Upper),
                    WeightOfCounts = units.Ratio(learned.Weight),
                }
                : null,
            Deviation = result.Deviation is { } deviation ? units.Ratio(deviation) : null,
            ProbabilityBelowMinimum = result.ProbabilityBelowMinimum,
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };

    // Hectares and acres, the usual units of area, are too large for what a person counts.
    private static IEnumerable<PlantSample> SamplesOf(StandCountRequest request) =>
        request.Counts!.Select(count => Read(count!, count!.Ground ?? request.Ground!));

    private static AreaQuantity Ground(Area area, AnswerUnits units)
    {
        var unit = UnitTable.Get(units.Display[Dimension.CountPerArea].Symbol is "/ft2" or "/ac" ? "ft2" : "m2");
        return new AreaQuantity { Value = AnswerUnits.Shown(unit.FromCanonical(area.SquareMetres)), Unit = unit.Symbol };
    }

    private static PlantSample Read(CountOfPlants count, GroundOfCount ground) =>
        Sample(count.Plants!.Value, ground) with
        {
            CalledArea = AreaQuantity.Read(ground.CalledArea),
            Row = count.Row,
        };

    private static PlantSample Sample(int plants, GroundOfCount ground) =>
        ground.RowLength is { } length ? PlantSample.AlongRows(plants, length.Read(), ground.RowSpacing!.Read(), ground.Rows ?? 1)
        : ground.HoopDiameter is { } diameter ? PlantSample.InHoop(plants, diameter.Read())
        : ground.Area is { } area ? new PlantSample(plants, area.Read())
        : PlantSample.InRectangle(plants, ground.Length!.Read(), ground.Width!.Read());

    private static CountPerArea SeedsOf(SownSeed sown) =>
        sown.SeedsPerArea?.Read()
        ?? SeedingRate.SeedsIn(
            sown.Rate!.Read(),
            sown.ThousandKernelMass!.Read(),
            sown.Purity?.Canonical() ?? SownSeedDefaults.Purity.Value.Canonical
        );

    private static ScatterAnswer? Scatter(PlantDensity density, AnswerUnits units) =>
        density.IndexOfDispersion is { } index
            ? new ScatterAnswer
            {
                CoefficientOfVariation = units.Ratio(density.CoefficientOfVariation!.Value),
                BeyondChance = units.Ratio(density.SpotToSpot),
                IndexOfDispersion = index,
                ProbabilityByChance = density.ProbabilityByChance!.Value,
            }
            : null;

    private static ShareEstimate? Share(ShareOfSeeds? share, StandCountResult result, AnswerUnits units) =>
        share is null
            ? null
            : new ShareEstimate
            {
                Estimate = units.Ratio(share.Value),
                Lower = units.Ratio(share.Lower),
                Upper = units.Ratio(share.Upper),
                CoverageProbability = result.CoverageProbability,
            };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(StandCountRequest))]
[JsonSerializable(typeof(StandCountAnswer))]
internal sealed partial class StandCountJson : JsonSerializerContext;
