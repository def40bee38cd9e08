using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>The stand, how sure it is, and the share of the seeds that it makes.</summary>
public sealed class StandCountAnswer
{
    /// <summary>The outcome in a few sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>Plants per area: all plants over all ground, with the interval.</summary>
    public required StandEstimate Stand { get; init; }

    /// <summary>All plants counted.</summary>
    public required long PlantsCounted { get; init; }

    /// <summary>All ground counted.</summary>
    public required AreaQuantity AreaCounted { get; init; }

    /// <summary>Every count in the order given.</summary>
    public required IReadOnlyList<CountAnswer> Counts { get; init; }

    /// <summary>How the counts scatter; absent for one count and when no plant was found.</summary>
    public ScatterAnswer? Scatter { get; init; }

    /// <summary>
    /// Number of counts like these that the wanted precision takes; absent for one count, which does not show how counts scatter, and when
    /// no practical number does.
    /// </summary>
    public int? CountsNeeded { get; init; }

    /// <summary>Pure seeds sown; absent when nothing is known of them.</summary>
    public CountPerAreaQuantity? SeedsSown { get; init; }

    /// <summary>Plants per pure seed: germination times emergence.</summary>
    public ShareEstimate? Survival { get; init; }

    /// <summary>Plants per viable seed, germination taken out.</summary>
    public ShareEstimate? Emergence { get; init; }

    /// <summary>The share between the prior and the counts; absent without a prior.</summary>
    public LearnedAnswer? Learned { get; init; }

    /// <summary>Stand over target less 1; absent without a target.</summary>
    public RatioQuantity? Deviation { get; init; }

    /// <summary>Probability that the true stand is below the minimum; absent without one.</summary>
    public double? ProbabilityBelowMinimum { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(StandCountCodes), nameof(StandCountCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>Plants per area with their interval.</summary>
public sealed class StandEstimate
{
    /// <summary>The estimate.</summary>
    public required CountPerAreaQuantity Estimate { get; init; }

    /// <summary>Lower end of the interval.</summary>
    public required CountPerAreaQuantity Lower { get; init; }

    /// <summary>Upper end of the interval.</summary>
    public required CountPerAreaQuantity Upper { get; init; }

    /// <summary>Probability that the interval covers the true value.</summary>
    public required double CoverageProbability { get; init; }
}

/// <summary>A share of the seeds with its interval; above 100 % when more plants were counted than seeds sown.</summary>
public sealed class ShareEstimate
{
    /// <summary>The estimate.</summary>
    public required RatioQuantity Estimate { get; init; }

    /// <summary>Lower end of the interval.</summary>
    public required RatioQuantity Lower { get; init; }

    /// <summary>Upper end of the interval.</summary>
    public required RatioQuantity Upper { get; init; }

    /// <summary>Probability that the interval covers the true value.</summary>
    public required double CoverageProbability { get; init; }
}

/// <summary>A share learned from the counts and from what was expected before them.</summary>
public sealed class LearnedAnswer
{
    /// <summary>Which share: <c>survival</c> or <c>emergence</c>.</summary>
    [KnownWords(typeof(SeedReading))]
    public required string Reading { get; init; }

    /// <summary>Its mean; the next prior, with the standard deviation below and what seasons add to it.</summary>
    public required RatioQuantity Mean { get; init; }

    /// <summary>Its standard deviation.</summary>
    public required RatioQuantity StandardDeviation { get; init; }

    /// <summary>Lower end of its interval.</summary>
    public required RatioQuantity Lower { get; init; }

    /// <summary>Upper end of its interval.</summary>
    public required RatioQuantity Upper { get; init; }

    /// <summary>How much of it the counts carried, as seeds looked at; the prior carried the rest.</summary>
    public required RatioQuantity WeightOfCounts { get; init; }
}

/// <summary>How counts scatter from spot to spot.</summary>
public sealed class ScatterAnswer
{
    /// <summary>Standard deviation of the densities of the spots over the density of all.</summary>
    public required RatioQuantity CoefficientOfVariation { get; init; }

    /// <summary>The part of it that chance does not explain; zero when chance explains all.</summary>
    public required RatioQuantity BeyondChance { get; init; }

    /// <summary>Variance of the counts over what chance gives: about 1 for plants placed by chance, more when they stand clumped.</summary>
    public required double IndexOfDispersion { get; init; }

    /// <summary>How often chance alone scatters counts at least so much.</summary>
    public required double ProbabilityByChance { get; init; }
}

/// <summary>One count.</summary>
public sealed class CountAnswer
{
    /// <summary>Plants counted.</summary>
    public required int Plants { get; init; }

    /// <summary>Ground counted.</summary>
    public required AreaQuantity Area { get; init; }

    /// <summary>Plants per area of this spot.</summary>
    public required CountPerAreaQuantity Stand { get; init; }
}
