using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>A probability as sentences write it.</summary>
internal static class Chance
{
    // Rounded down, so that a probability that falls short of what is asked never reads as if it met it; and none is ever certain.
    public static Sentence Of(double probability) =>
        probability switch
        {
            < 0.01 => $"under {new Ratio(0.01)}",
            > 0.99 => $"over {new Ratio(0.99)}",
            _ => $"{new Ratio(Math.Floor(100 * probability) / 100)}",
        };
}
