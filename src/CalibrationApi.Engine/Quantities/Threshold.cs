namespace CalibrationApi.Engine.Quantities;

/// <summary>Comparison with a limit that a decimal reading can hit exactly.</summary>
/// <remarks>
/// 16.10 kg - 6.10 kg is 10.000000000000002 kg in binary, and another number again when the readings come in pounds.
/// A reading that stands on a limit must fall on the same side of it in every unit, so rounding is allowed for;
/// the slack is far below any division of a scale or counter.
/// </remarks>
internal static class Threshold
{
    private const double Slack = 1e-9;

    /// <summary>True when <paramref name="value"/> is above <paramref name="limit"/> by more than rounding.</summary>
    public static bool IsAbove(double value, double limit) => value > limit * (1 + Slack);

    /// <summary>True when <paramref name="value"/> is below <paramref name="limit"/> by more than rounding.</summary>
    public static bool IsBelow(double value, double limit) => value < limit * (1 - Slack);
}
