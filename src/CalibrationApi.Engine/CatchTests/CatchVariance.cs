namespace CalibrationApi.Engine.CatchTests;

/// <summary>The random parts of one catch that are known beforehand: weighing and counting.</summary>
public static class CatchVariance
{
    /// <summary>Known random variance of one catch of a test, relative: v = (u_m / m)^2 + (u_N / N)^2.</summary>
    public static double Of(CatchTest test, Catch one) => Of(
        test.Scale.RandomUncertainty(test.TareRounding) / test.Scale.Corrected(one.IndicatedNet.Kilograms),
        OfCount(one.Revolutions.Resolution, test.CountStart, test.PocketsPerRevolution) / one.Revolutions.Count);

    /// <summary>Relative variance of one catch from its relative weighing and counting uncertainties.</summary>
    public static double Of(double relativeMass, double relativeCount) =>
        relativeMass * relativeMass + relativeCount * relativeCount;

    /// <summary>Standard uncertainty of a count of revolutions, in revolutions.</summary>
    /// <param name="resolution">Smallest step r of the count, in revolutions, &gt;= 0.</param>
    /// <param name="start">Where the count begins within a step.</param>
    /// <param name="pockets">Pockets that discharge in one revolution, where known: the mass comes in lumps.</param>
    /// <returns>r / sqrt(6) for free start and stop, r / sqrt(12) on an edge; (1/pockets) / sqrt(6) is added in quadrature.</returns>
    /// <remarks>Source: JCGM 100:2008, F.2.2.1, one rounding for each end that is free (SOURCES.md, key GUM).</remarks>
    public static double OfCount(double resolution, CountStart start, int? pockets)
    {
        var variance = resolution * resolution / (start == CountStart.OnEdge ? 12 : 6);
        if (pockets is { } p)
            variance += 1.0 / ((double)p * p * 6);
        return Math.Sqrt(variance);
    }
}
