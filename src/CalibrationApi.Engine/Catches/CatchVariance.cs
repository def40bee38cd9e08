namespace CalibrationApi.Engine.Catches;

/// <summary>The random parts of one catch that are known beforehand: weighing and counting.</summary>
/// <remarks>
/// <para>Range: masses and counts above 0; resolutions and uncertainties at least 0.</para>
/// <para>Source: JCGM 100:2008, 5.1.6 for a quotient, F.2.2.1 for a rounding (SOURCES.md, key GUM).</para>
/// <para>Accuracy: 1e-12 relative (CatchVarianceTests).</para>
/// </remarks>
public static class CatchVariance
{
    /// <summary>Known random variance of one catch of a test, relative.</summary>
    /// <param name="test">The test, for its scale, its taring and its counter.</param>
    /// <param name="one">The catch.</param>
    /// <remarks>Formula: v = (u_m / m)^2 + (u_N / N)^2, m in kg and N in revolutions.</remarks>
    public static double Of(CatchTestQuestion test, Catch one) =>
        Of(
            test.Scale.RandomUncertainty(test.TareRounding) / test.Scale.Corrected(one.IndicatedNet.Kilograms),
            OfCount(one.Revolutions.Resolution, test.CountStart, test.PocketsPerRevolution) / one.Revolutions.Count
        );

    /// <summary>Relative variance of one catch from its relative weighing and counting uncertainties.</summary>
    /// <param name="relativeMass">Standard uncertainty of the mass, relative.</param>
    /// <param name="relativeCount">Standard uncertainty of the count, relative.</param>
    /// <remarks>Formula: v = u_m^2 + u_N^2.</remarks>
    public static double Of(double relativeMass, double relativeCount) => relativeMass * relativeMass + relativeCount * relativeCount;

    /// <summary>Standard uncertainty of a count of revolutions, in revolutions.</summary>
    /// <param name="resolution">Smallest step r of the count, in revolutions, &gt;= 0.</param>
    /// <param name="start">Where the count begins within a step.</param>
    /// <param name="pockets">Pockets that discharge in one revolution, where known: the mass comes in lumps.</param>
    /// <returns>r / sqrt(6) for free start and stop, r / sqrt(12) on an edge; (1/pockets) / sqrt(6) is added in quadrature.</returns>
    /// <remarks>
    /// <para>Formula: u^2 = r^2 / 6 + 1 / (6 p^2), revolutions; r^2 / 12 on an edge, no second part where p is unknown.</para>
    /// <para>Source: JCGM 100:2008, F.2.2.1, one rounding for each end that is free (SOURCES.md, key GUM).</para>
    /// </remarks>
    public static double OfCount(double resolution, CountStart start, int? pockets)
    {
        var variance = resolution * resolution / (start == CountStart.OnEdge ? 12 : 6);
        if (pockets is { } p)
            variance += 1.0 / ((double)p * p * 6);
        return Math.Sqrt(variance);
    }
}
