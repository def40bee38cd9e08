using CalibrationApi.Engine.Crops;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>A reduction that a source states for its own limits.</summary>
/// <param name="Source">The publication.</param>
/// <param name="Crops">Crops of the limits that it reduces.</param>
/// <param name="Cause">What it is stated for.</param>
/// <param name="Left">Share of the limit that is left, a fraction; null when it depends on the case.</param>
/// <param name="Statement">What the source says, in our words.</param>
public sealed record StatedReduction(LimitSource Source, IReadOnlyList<Crop> Crops, ReductionCause Cause, double? Left, string Statement);

/// <summary>What a reduction is stated for.</summary>
public enum ReductionCause
{
    /// <summary>A dry seedbed.</summary>
    DrySeedbed,

    /// <summary>Coarse soil in a dry seedbed.</summary>
    CoarseAndDrySoil,

    /// <summary>Coarse soil in a moist seedbed.</summary>
    CoarseAndMoistSoil,

    /// <summary>A smaller loss of stand than the limit was made for.</summary>
    SmallerStandLoss,

    /// <summary>Several products together.</summary>
    Blend,
}
