namespace CalibrationApi.Engine.Uncertainty;

/// <summary>The probability that a measured quantity lies between limits.</summary>
public static class Conformance
{
    /// <summary>
    /// P(<paramref name="lower"/> &lt;= true value &lt;= <paramref name="upper"/>) for an uncertain quantity about its estimate.
    /// </summary>
    /// <param name="estimate">The measured value.</param>
    /// <param name="uncertainty">Its uncertainty, above 0, in the same unit; the t distribution where it was estimated as a whole.</param>
    /// <param name="lower">Lower limit; minus infinity for none.</param>
    /// <param name="upper">Upper limit; infinity for none.</param>
    /// <remarks>
    /// <para>Formula: p = 1 - F(lower - x) - F(x - upper), F the distribution of the error about the estimate x.</para>
    /// <para>Range: uncertainty above 0; limits in order, each possibly infinite; never below 0 or above 1.</para>
    /// <para>Source: JCGM 106:2012, 7.2 to 7.4 (SOURCES.md, key JCGM-106), with the t distribution in place of the normal where the degrees
    /// of freedom are few.</para>
    /// <para>Accuracy: 1e-12 where the answer has a closed form (ConformanceTests); published examples to every printed digit
    /// (ConformanceReferenceTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is not positive or the limits are reversed.</exception>
    public static double Probability(double estimate, TwoPartUncertainty uncertainty, double lower, double upper)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(uncertainty.StandardUncertainty, nameof(uncertainty));
        ArgumentOutOfRangeException.ThrowIfLessThan(upper, lower);
        var below = uncertainty.Cdf(lower - estimate);
        var above = uncertainty.Cdf(estimate - upper);
        return Math.Max(0, 1 - below - above);
    }
}
