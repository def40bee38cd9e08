namespace CalibrationApi.Engine.Catches;

/// <summary>A partial catch: only some of the points that a meter feeds were caught, the same ones each time.</summary>
/// <param name="Caught">Points caught, 1 to <paramref name="Total"/>.</param>
/// <param name="Total">Points the meter feeds.</param>
/// <param name="RelativeSpread">Standard deviation between points, relative to their mean, &gt;= 0.</param>
/// <remarks>
/// <para>Formula: the masses are scaled by Total / Caught. The share of the points caught is common to all catches, so its uncertainty does
/// not shrink with their number: spread sqrt((1 - Caught/Total) / Caught), the finite-population form.</para>
/// <para>Range: 1 to all points caught, spread at least 0; all of them caught is no uncertainty.</para>
/// <para>Source: Cochran, Sampling Techniques, 3rd ed., theorem 2.2 (SOURCES.md, key COCHRAN-1977; from memory).</para>
/// <para>Accuracy: 1e-12 relative (CaughtPointsTests).</para>
/// </remarks>
public sealed record CaughtPoints(int Caught, int Total, double RelativeSpread)
{
    /// <summary>
    /// Default spread between points: every outlet within 5 % of their mean, taken as a rectangular limit, 5 % / sqrt(3).
    /// Source of the limit: University of Georgia Extension and Field &amp; Solie (SOURCES.md, keys UGA-FA and FIELD-2007).
    /// </summary>
    public static double DefaultRelativeSpread { get; } = 0.05 / Math.Sqrt(3);

    /// <inheritdoc cref="CaughtPoints(int, int, double)"/>
    public int Caught { get; } =
        Caught >= 1 && Caught <= Total
            ? Caught
            : throw new ArgumentOutOfRangeException(nameof(Caught), Caught, "At least one point and no more than the meter feeds.");

    /// <summary>Factor from the mass caught to the mass metered.</summary>
    public double Scale => (double)Total / Caught;

    /// <summary>Relative standard uncertainty of that factor.</summary>
    public double RelativeUncertainty => RelativeSpread * Math.Sqrt((1 - (double)Caught / Total) / Caught);
}
