using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Uncertainty;

/// <summary>The probability that a measured quantity lies between limits.</summary>
public static class Conformance
{
    /// <summary>P(<paramref name="lower"/> &lt;= true value &lt;= <paramref name="upper"/>) for a scaled and shifted t distribution about the estimate.</summary>
    /// <param name="estimate">The measured value.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, &gt; 0, in the same unit.</param>
    /// <param name="degreesOfFreedom">&gt;= 1; infinity gives the normal distribution.</param>
    /// <param name="lower">Lower limit; minus infinity for none.</param>
    /// <param name="upper">Upper limit; infinity for none.</param>
    /// <remarks>Source: JCGM 106:2012, 7.2 to 7.4 (SOURCES.md, key JCGM-106), with the t distribution in place of the normal where the degrees of freedom are few.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is not positive or the limits are reversed.</exception>
    public static double Probability(double estimate, double standardUncertainty, double degreesOfFreedom, double lower, double upper)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardUncertainty);
        ArgumentOutOfRangeException.ThrowIfLessThan(upper, lower);
        var below = StudentT.Cdf((lower - estimate) / standardUncertainty, degreesOfFreedom);
        var above = StudentT.Cdf((estimate - upper) / standardUncertainty, degreesOfFreedom);
        return Math.Max(0, 1 - below - above);
    }
}
