using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>Which share of the seeds is meant.</summary>
public enum SeedReading
{
    /// <summary>Plants per pure seed: germination times field emergence.</summary>
    Survival,

    /// <summary>Plants per viable seed, germination taken out.</summary>
    Emergence,
}

/// <summary>How many plants stand here, and which share of the seeds they are.</summary>
public sealed record StandCountQuestion
{
    /// <summary>The counts, at least one.</summary>
    public required IReadOnlyList<PlantSample> Samples { get; init; }

    /// <summary>Pure seeds sown per area, above 0; null when unknown.</summary>
    public CountPerArea? SeedsSown { get; init; }

    /// <summary>Purity by which a mass became <see cref="SeedsSown"/> was not stated and taken as whole.</summary>
    public bool PurityAssumed { get; init; }

    /// <summary>Germination, above 0, at most 1; null when unknown, then only survival is told.</summary>
    public double? Germination { get; init; }

    /// <summary>Relative standard uncertainty of the seeds sown; null takes the default.</summary>
    public double? SowingUncertainty { get; init; }

    /// <summary>What was believed of the share before counting; needs <see cref="SeedsSown"/>, and germination for emergence.</summary>
    public PriorShare? Prior { get; init; }

    /// <summary>The stand that was aimed at.</summary>
    public CountPerArea? TargetStand { get; init; }

    /// <summary>The stand below which something would be done.</summary>
    public CountPerArea? MinimumStand { get; init; }

    /// <summary>The stand that somebody else made of these counts.</summary>
    public CountPerArea? StatedStand { get; init; }

    /// <summary>It was stated in plants per square foot, so it may come from plants per m2 divided by 10.</summary>
    public bool StatedPerSquareFoot { get; init; }

    /// <summary>Half width of the interval over the estimate that is wanted; null takes the default.</summary>
    public double? WantedPrecision { get; init; }

    /// <summary>Coverage probability of the intervals; null takes 0.95.</summary>
    public double? CoverageProbability { get; init; }
}

/// <summary>What was believed of a share of seeds before it was counted.</summary>
/// <param name="Reading">Which share.</param>
/// <param name="Mean">Its mean, strictly between 0 and 1.</param>
/// <param name="Spread">Its standard deviation s, above 0, with s^2 below m (1 - m).</param>
public sealed record PriorShare(SeedReading Reading, double Mean, double Spread);
