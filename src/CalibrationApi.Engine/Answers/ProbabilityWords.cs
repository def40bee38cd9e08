using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>
/// Probabilities as sentences want them. Nothing that rests on a handful of readings is certain, whatever the rounding of a percentage
/// says.
/// </summary>
internal static class ProbabilityWords
{
    /// <summary>From here on a probability is told as almost certain; its complement as almost impossible.</summary>
    public const double AlmostCertain = 0.995;

    /// <summary>A probability that speaks for something.</summary>
    public static Sentence Likely(double probability) =>
        probability >= AlmostCertain ? (Sentence)$"more than {new Ratio(0.99):F0}" : $"{new Ratio(probability):F0}";

    /// <summary>A probability that speaks against something.</summary>
    public static Sentence OnlyLikely(double probability) =>
        probability <= 1 - AlmostCertain ? (Sentence)$"less than {new Ratio(0.01):F0}" : $"only {new Ratio(probability):F0}";
}
