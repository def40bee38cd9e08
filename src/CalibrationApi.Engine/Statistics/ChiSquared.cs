using MathNet.Numerics;

namespace CalibrationApi.Engine.Statistics;

/// <summary>The chi-squared distribution.</summary>
public static class ChiSquared
{
    /// <summary>P(X &gt;= <paramref name="x"/>): how often chance alone gives at least this much.</summary>
    /// <param name="x">&gt;= 0.</param>
    /// <param name="degreesOfFreedom">&gt; 0.</param>
    /// <remarks>The regularised upper incomplete gamma function Q(nu/2, x/2).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double UpperTail(double x, double degreesOfFreedom)
    {
        if (!(x >= 0))
            throw new ArgumentOutOfRangeException(nameof(x), x, "A value of at least 0 is needed.");
        if (!(degreesOfFreedom > 0))
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom above 0 are needed.");
        if (double.IsPositiveInfinity(x))
            return 0;
        return x == 0 ? 1 : SpecialFunctions.GammaUpperRegularized(degreesOfFreedom / 2, x / 2);
    }
}
