using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Statistics;

/// <summary>What a count says about the mean of the Poisson distribution that it came from.</summary>
/// <remarks>
/// <para>Formula: the limits are half the chi-squared quantiles with 2 n and 2 n + 2 degrees of freedom, that is gamma quantiles with
/// shapes n and n + 1. They cover at least as often as they say, because counts are whole numbers.</para>
/// <para>Range: counts from 0 to any size, coverage strictly between 0 and 1; no plant or event gives a lower limit of 0 and a finite upper
/// one.</para>
/// <para>Source: Garwood 1936 (SOURCES.md, key GARWOOD-1936).</para>
/// <para>Accuracy: limits within 1e-10 relative of figures of a general-purpose library, printed examples as far as their programmes go;
/// probabilities within 1e-9 against the library's Poisson distribution (PoissonMeanReferenceTests).</para>
/// </remarks>
public static class PoissonMean
{
    /// <summary>The two-sided limits of the mean.</summary>
    /// <param name="count">What was counted, at least 0. None gives a lower limit of 0 and a finite upper one.</param>
    /// <param name="coverage">Coverage probability, strictly between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static (double Lower, double Upper) Limits(long count, double coverage)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        if (!(coverage > 0 && coverage < 1))
            throw new ArgumentOutOfRangeException(nameof(coverage), coverage, "A probability strictly between 0 and 1 is needed.");
        var tail = (1 - coverage) / 2;
        return (count == 0 ? 0 : GammaQuantile(count, tail), GammaQuantile(count + 1.0, 1 - tail));
    }

    /// <summary>
    /// How sure the count makes it that the mean is at most <paramref name="mean"/>, read off the lower limit: P(X &gt;= count).
    /// </summary>
    /// <param name="count">What was counted, at least 0.</param>
    /// <param name="mean">At least 0.</param>
    public static double SureAtMost(long count, double mean) =>
        count == 0 ? 1
        : mean <= 0 ? 0
        : SpecialFunctions.GammaLowerRegularized(count, mean);

    /// <summary>
    /// How sure the count makes it that the mean is at least <paramref name="mean"/>, read off the upper limit: P(X &lt;= count).
    /// </summary>
    /// <param name="count">What was counted, at least 0.</param>
    /// <param name="mean">At least 0.</param>
    public static double SureAtLeast(long count, double mean) => mean <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(count + 1.0, mean);

    // The library's inverse stops at eight digits; Newton steps on its distribution function give the rest.
    private static double GammaQuantile(double shape, double probability)
    {
        var x = Gamma.InvCDF(shape, 1, probability);
        for (var step = 0; step < 3; step++)
        {
            var density = Gamma.PDF(shape, 1, x);
            if (density > 0)
                x -= (SpecialFunctions.GammaLowerRegularized(shape, x) - probability) / density;
        }

        return x;
    }
}
