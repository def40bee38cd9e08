using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.StandRisks;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.StandRisks;

/// <summary>Finds the rate that reaches a minimum stand with a wanted probability.</summary>
/// <remarks>
/// Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has the
/// rate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable the
/// minimum stand is at a rate of your own. Nothing is stored.
/// </remarks>
/// <request>The minimum stand, the share of seeds that come up, and how much it differs.</request>
/// <response code="200">Rates, probabilities and the cost of the margin.</response>
internal static class StandRiskCalculation
{
    public static Calculation<StandRiskRequest, StandRiskQuestion, StandRiskResult, StandRiskAnswer> Declaration { get; } =
        new(typeof(StandRiskCalculation))
        {
            Name = "stand-risk",
            Tag = "Stand risks",
            Says = "What rate reaches a minimum stand with a wanted probability, and what its margin costs.",
            Json = StandRiskJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => StandRiskEvaluation.Evaluate(question),
            Refusals = [],
            Answer = ToAnswer,
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Counts follow the minimum stand; masses the rate of the question, or else go with the counts.</summary>
    public static AnswerUnits UnitsFor(StandRiskRequest request, string? choice)
    {
        var stand = Quantity.UnitOf(request.MinimumStand)!;
        var rate = Quantity.UnitOf(request.MaximumRate ?? request.Rate)
            ?? UnitTable.Get(stand.Symbol is "/ft2" or "/ac" ? "lb/ac" : "kg/ha");
        return AnswerUnits.For(choice, stand, rate, Quantity.UnitOf(request.Area) ?? UnitTable.Get(rate.Symbol == "lb/ac" ? "ac" : "ha"));
    }

    public static StandRiskQuestion ToEngine(StandRiskRequest request) =>
        new()
        {
            MinimumStand = request.MinimumStand!.Read(),
            Probability = request.Probability,
            Share = Read(request.Emergence ?? request.Survival!),
            Germination = request.Germination?.Canonical(),
            SeedsTested = request.GerminationSeedsTested,
            KernelMass = MassPerThousandQuantity.Read(request.ThousandKernelMass),
            KernelMassUncertainty = request.KernelMassUncertainty?.Canonical(),
            Purity = request.Purity?.Canonical(),
            MeteringUncertainty = request.MeteringUncertainty?.Canonical(),
            SeedsSown = CountPerAreaQuantity.Read(request.SeedsPerArea) ?? SeedsIn(request.Rate, request),
            MaximumSeeds = CountPerAreaQuantity.Read(request.MaximumSeedsPerArea) ?? SeedsIn(request.MaximumRate, request),
            PricePerKilogram = request.Price?.PerKilogram(),
            Area = AreaQuantity.Read(request.Area),
        };

    /// <summary>The share that a question states; only for one whose members are there and in range.</summary>
    public static ExpectedShare Read(ShareToCome share) =>
        share.Counted is { } counted
            ? ExpectedShare.FromCounts(
                counted.Estimate!.Canonical(),
                counted.Lower!.Canonical(),
                counted.Upper!.Canonical(),
                counted.CoverageProbability!.Value,
                share.SeasonSpread is { } season ? Rules.Canonical(season) : null
            )
            : new ExpectedShare(share.Mean!.Canonical(), share.Spread!.Canonical());

    public static StandRiskAnswer ToAnswer(StandRiskRequest request, StandRiskResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Probability = result.Probability,
            Needed = Rate(result.Needed, units),
            AtMean = Rate(result.AtMean, units)!,
            Margin = Margin(request, result, units),
            Given = Rate(result.Given, units),
            UncertaintyParts =
            [
                .. result.Parts.Select(part => new RiskPart { Source = Words.Of(part.Source), Relative = units.Ratio(part.Relative) }),
            ],
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };

    private static CountPerArea? SeedsIn(MassPerAreaQuantity? rate, StandRiskRequest request) =>
        rate is null
            ? null
            : SeedingRate.SeedsIn(
                rate.Read(),
                request.ThousandKernelMass!.Read(),
                request.Purity?.Canonical() ?? SownSeedDefaults.Purity.Value.Canonical
            );

    private static RateAnswer? Rate(SownRate? rate, AnswerUnits units) =>
        rate is null
            ? null
            : new RateAnswer
            {
                SeedsPerArea = units.CountPerArea(rate.Seeds),
                Rate = rate.Mass is { } mass ? units.Rate(mass) : null,
                ExpectedStand = units.CountPerArea(rate.ExpectedStand),
                StandReached = units.CountPerArea(rate.StandReached),
                ProbabilityReached = rate.ProbabilityReached,
            };

    private static MarginAnswer? Margin(StandRiskRequest request, StandRiskResult result, AnswerUnits units)
    {
        if (result.Margin is not { } margin)
            return null;
        var area = units.Display[Dimension.Area];
        return new MarginAnswer
        {
            Relative = units.Ratio(margin.Relative),
            SeedsPerArea = units.CountPerArea(margin.Seeds),
            Rate = margin.Mass is { } mass ? units.Rate(mass) : null,
            CostPerArea = margin.CostPerSquareMetre is { } cost
                ? new CostPerUnit
                {
                    Value = cost * area.Canonical(1),
                    Currency = request.Price!.Currency!,
                    Per = area.Symbol,
                }
                : null,
            TotalCost = margin.Cost is { } total ? new Money { Value = total, Currency = request.Price!.Currency! } : null,
        };
    }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(StandRiskRequest))]
[JsonSerializable(typeof(StandRiskAnswer))]
internal sealed partial class StandRiskJson : JsonSerializerContext;
