using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>Why a value in force is kept or not, in the words that every comparison with one has.</summary>
internal static class ChangeReasons
{
    /// <summary>There is nothing to compare with.</summary>
    public static Finding NothingInForce => Finding.Note(SharedCodes.NoValueInForce, $"No value is in force to compare with.");

    /// <summary>The value in force is shown to be good enough.</summary>
    /// <param name="what">What the value is of, such as the meter.</param>
    /// <param name="isDetected">A change is detected all the same.</param>
    /// <param name="tolerance">The tolerance.</param>
    /// <param name="probability">Probability that the value in force is within it.</param>
    public static Finding WithinTolerance(string what, bool isDetected, Ratio tolerance, double probability) =>
        isDetected
            ? Finding.Note(
                SharedCodes.WithinTolerance,
                $"The {what} has changed a little, but the value in force is still within {tolerance:0.##} of the truth with a probability of {ProbabilityWords.Likely(probability)}."
            )
            : Finding.Note(
                SharedCodes.NoPracticalChange,
                $"The change is smaller than its own uncertainty, and the value in force is within {tolerance:0.##} of the truth with a probability of {ProbabilityWords.Likely(probability)}."
            );

    /// <summary>No change is detected, and still it is not shown that the value in force is good enough.</summary>
    public static Finding NotShown(Ratio tolerance, double probability) =>
        Finding.Warning(
            SharedCodes.WithinToleranceNotShown,
            $"The change is smaller than its own uncertainty, but the value in force is within {tolerance:0.##} of the truth with a probability of {ProbabilityWords.OnlyLikely(probability)}."
        );
}
