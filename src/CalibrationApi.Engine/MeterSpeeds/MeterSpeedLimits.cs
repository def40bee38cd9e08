using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>The meter speeds between which a metering element turns evenly and its drive keeps up.</summary>
/// <param name="Minimum">Slowest; null for no lower limit.</param>
/// <param name="Maximum">Fastest; null for no upper limit. Above the minimum.</param>
public sealed record MeterSpeedLimits(RotationalSpeed? Minimum, RotationalSpeed? Maximum)
{
    /// <summary>No limits known.</summary>
    public static MeterSpeedLimits None { get; } = new(null, null);

    /// <summary>True when a speed, rev/s, is inside the limits; a speed on a limit is.</summary>
    public bool Allow(double speed) =>
        !(Minimum is { } minimum && Threshold.IsBelow(speed, minimum.RevolutionsPerSecond))
        && !(Maximum is { } maximum && Threshold.IsAbove(speed, maximum.RevolutionsPerSecond));

    /// <summary>Room between a range of needed speeds and the limits.</summary>
    /// <param name="lowest">Lowest speed needed, rev/s, above 0.</param>
    /// <param name="highest">Highest speed needed, rev/s.</param>
    /// <returns>
    /// At least 0 when the range fits; infinity without limits. On a logarithmic scale 10 % of room counts the same at both ends.
    /// </returns>
    /// <remarks>
    /// <para>Formula: min(ln(n_low / n_min), ln(n_max / n_high)).</para>
    /// <para>Range: speeds above 0; infinity without limits; below 0 where the range does not fit.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative (ElementChoiceTests).</para>
    /// </remarks>
    public double Margin(double lowest, double highest)
    {
        var below = Minimum is { RevolutionsPerSecond: > 0 } minimum
            ? Math.Log(lowest / minimum.RevolutionsPerSecond)
            : double.PositiveInfinity;
        var above = Maximum is { } maximum ? Math.Log(maximum.RevolutionsPerSecond / highest) : double.PositiveInfinity;
        return Math.Min(below, above);
    }
}
