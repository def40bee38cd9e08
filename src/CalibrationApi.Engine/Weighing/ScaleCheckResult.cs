using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>Whether a scale may be weighed with.</summary>
public enum ScaleVerdict
{
    /// <summary>Every reading is inside the limit at its load.</summary>
    Passed,

    /// <summary>At least one is outside: do not weigh with it before it is repaired.</summary>
    Failed,
}

/// <summary>The outcome of a check of a scale.</summary>
/// <param name="Error">Span error: indicated minus true over true.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, relative.</param>
/// <param name="WorstAt">The known mass whose reading comes nearest to its limit or exceeds it most, kg.</param>
/// <param name="LargestDeviation">How far that reading is off, kg, with its sign.</param>
/// <param name="Limit">Limit of the scale at that load.</param>
/// <param name="LimitOrigin">Where the limit comes from.</param>
/// <param name="Verdict">Whether every reading is inside the limit at its load.</param>
public sealed record ScaleCheckResult(
    double Error,
    double StandardUncertainty,
    Mass WorstAt,
    Mass LargestDeviation,
    Mass Limit,
    string LimitOrigin,
    ScaleVerdict Verdict
)
{
    /// <summary>Most standard uncertainty, relative, that a check can be gone by; more is no knowledge of the scale. Judgement.</summary>
    public const double MostUncertainty = 0.2;

    // Half of what a percentage with two decimals shows.
    private const double RoundsToNothing = 0.00005;

    /// <summary>What is said of readings that leave more.</summary>
    public static Sentence NoKnowledge { get; } =
        $"These readings leave the error of the scale uncertain by more than {new Ratio(MostUncertainty):0.##}. Weigh heavier masses, or masses that are known better.";

    /// <summary>The readings say enough of the scale to be gone by.</summary>
    public bool IsKnowledge => StandardUncertainty <= MostUncertainty;

    /// <summary>The outcome in one sentence.</summary>
    public Sentence Headline =>
        Verdict == ScaleVerdict.Failed
            ? $"The scale failed: at {WorstAt} it is {new Mass(Math.Abs(LargestDeviation.Kilograms))} off, where {Limit} is allowed. Do not weigh with it before it is repaired."
        : Math.Abs(Error) < RoundsToNothing ? $"The scale is inside its limits and shows what it should."
        : (Sentence)
            $"The scale is inside its limits; it shows {new Ratio(Math.Abs(Error)):F2} too {(Error < 0 ? "little" : "much")}, which is corrected from now on.";
}
