using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>What lies with the seed, and every limit that was looked at.</summary>
public sealed record SeedRowResult
{
    /// <summary>One or two sentences that a tired person understands; they name crop, place and source.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>
    /// The outcome over all limits: within when nothing lies with the seed or no limit is exceeded, above when any is, without a limit when
    /// none has a number for anything placed.
    /// </summary>
    public required LimitVerdict Verdict { get; init; }

    /// <summary>Spread / row spacing, a fraction.</summary>
    public required double SeedbedUtilisation { get; init; }

    /// <summary>The heaviest load of each nutrient.</summary>
    public required IReadOnlyList<NutrientLoad> Loads { get; init; }

    /// <summary>The limits: those exceeded first, the worst at the head; those without a number last.</summary>
    public required IReadOnlyList<LimitJudgement> Limits { get; init; }

    /// <summary>The loss of stand that a published model lets expect; null for a crop that it has no slope for.</summary>
    public StandLoss? StandLoss { get; init; }

    /// <summary>Reductions that sources state for such a case.</summary>
    public required IReadOnlyList<StatedReduction> Reductions { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What can hurt the stand.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}

/// <summary>A nutrient with the seed.</summary>
/// <param name="Nutrient">What is counted.</param>
/// <param name="Rate">The heaviest load over all zones.</param>
/// <param name="Zone">The zone with that load, counted from 1.</param>
public sealed record NutrientLoad(LimitedNutrient Nutrient, MassPerArea Rate, int Zone);
