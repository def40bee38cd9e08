using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>The stand, how sure it is, and the share of the seeds that it makes.</summary>
public sealed record StandCountResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>The estimate behind all figures.</summary>
    public required PlantDensity Density { get; init; }

    /// <summary>Coverage probability of the intervals.</summary>
    public required double CoverageProbability { get; init; }

    /// <summary>Plants per area.</summary>
    public CountPerArea Stand => new(Density.PerSquareMetre);

    /// <summary>Lower end of its interval.</summary>
    public CountPerArea Lower => new(Density.Interval(CoverageProbability).Lower);

    /// <summary>Upper end of its interval; finite when no plant was found.</summary>
    public CountPerArea Upper => new(Density.Interval(CoverageProbability).Upper);

    /// <summary>Counts like these that the wanted precision takes; null for one count and when no practical number does.</summary>
    public required int? CountsNeeded { get; init; }

    /// <summary>Pure seeds sown; null when unknown.</summary>
    public CountPerArea? SeedsSown { get; init; }

    /// <summary>Plants per pure seed; null without seeds sown.</summary>
    public ShareOfSeeds? Survival { get; init; }

    /// <summary>Plants per viable seed; null without seeds sown and germination.</summary>
    public ShareOfSeeds? Emergence { get; init; }

    /// <summary>The share shrunk towards the prior; null without one.</summary>
    public LearnedShare? Learned { get; init; }

    /// <summary>Stand over target less 1; null without a target.</summary>
    public double? Deviation { get; init; }

    /// <summary>Probability that the true stand is below the minimum; null without one.</summary>
    public double? ProbabilityBelowMinimum { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
