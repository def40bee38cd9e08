using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Statistics;

/// <summary>Student's t distribution for any real degrees of freedom &gt;= 1, infinity included.</summary>
/// <remarks>
/// <para>The library's inverse is slow, loses digits for huge degrees of freedom and does not converge in extreme tails; this type keeps
/// its incomplete beta function for the distribution function and inverts that by Halley steps from a normal expansion. Beyond
/// <see cref="NormalRegime"/> degrees of freedom, where the library's beta function loses digits, the Fisher expansion in 1/nu is used: its
/// first neglected term is below 1e-15 there. Few whole degrees of freedom, which is what tests have, need no beta function outside the
/// tails: there the probability is a short sum.</para>
/// <para>Formula: P(T &lt;= t) = I(nu / (nu + t^2); nu / 2, 1/2) / 2 for t &lt; 0, the regularised incomplete beta function; the quantile
/// is its inverse, the coverage factor of p the quantile of (1 + p) / 2. For whole nu up to 200, P(|T| &lt;= t) is a sum of nu / 2 powers
/// of nu / (nu + t^2).</para>
/// <para>Range: nu from 1 to infinity, which is the normal distribution; probabilities strictly between 0 and 1; any t, infinite ones
/// too.</para>
/// <para>Source: Abramowitz &amp; Stegun 26.7.3 to 26.7.5 and 26.7.8 (SOURCES.md, key AS-1964); the incomplete beta function is the
/// library's.</para>
/// <para>Accuracy: quantiles agree with published tables to every printed digit (but for 235.80 in the GUM, table G.2, where 235.784 is
/// exact) and with an arbitrary-precision library within 2e-11 (StudentTReferenceTests), and satisfy Cdf(Quantile(p)) = p within 5e-13, in
/// tails down to 1e-300 within 1e-10 of p (StudentTTests).</para>
/// </remarks>
public static class StudentT
{
    private const double NormalRegime = 1e4;
    private const int MostSteps = 60;
    private const double MostWhole = 200;

    // The sum is taken from 1, so that a small tail would lose its digits.
    private const double LeastTailOfSum = 1e-3;

    /// <summary>P(T &lt;= <paramref name="t"/>).</summary>
    /// <param name="t">Any real number.</param>
    /// <param name="degreesOfFreedom">&gt;= 1; infinity gives the normal distribution.</param>
    /// <exception cref="ArgumentOutOfRangeException">Degrees of freedom below 1, or an argument that is not a number.</exception>
    public static double Cdf(double t, double degreesOfFreedom)
    {
        Check(degreesOfFreedom);
        if (double.IsNaN(t))
            throw new ArgumentOutOfRangeException(nameof(t), t, "A number is needed.");
        if (t == 0)
            return 0.5;
        return t > 0 ? 1 - LowerTail(-t, degreesOfFreedom) : LowerTail(t, degreesOfFreedom);
    }

    /// <summary>The t for which P(T &lt;= t) = <paramref name="probability"/>.</summary>
    /// <param name="probability">Strictly between 0 and 1.</param>
    /// <param name="degreesOfFreedom">&gt;= 1; infinity gives the normal distribution.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double Quantile(double probability, double degreesOfFreedom)
    {
        Check(degreesOfFreedom);
        if (!(probability > 0 && probability < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability strictly between 0 and 1 is needed.");
        if (probability == 0.5)
            return 0;
        if (probability > 0.5)
            return -LowerQuantile(1 - probability, degreesOfFreedom);
        return LowerQuantile(probability, degreesOfFreedom);
    }

    /// <summary>The k for which P(|T| &lt;= k) = <paramref name="coverage"/>: a coverage factor.</summary>
    /// <param name="coverage">Strictly between 0 and 1, for example 0.95.</param>
    /// <param name="degreesOfFreedom">&gt;= 1; infinity gives the normal distribution.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double CoverageFactor(double coverage, double degreesOfFreedom) => -Quantile((1 - coverage) / 2, degreesOfFreedom);

    /// <summary>P(|T| &gt;= |<paramref name="t"/>|).</summary>
    /// <param name="t">Any real number.</param>
    /// <param name="degreesOfFreedom">&gt;= 1; infinity gives the normal distribution.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double TwoSided(double t, double degreesOfFreedom) => Math.Min(1, 2 * Cdf(-Math.Abs(t), degreesOfFreedom));

    // Requires t < 0, where the incomplete beta function keeps its relative accuracy.
    private static double LowerTail(double t, double nu)
    {
        if (double.IsNegativeInfinity(t))
            return 0;
        if (double.IsPositiveInfinity(nu))
            return Normal.CDF(0, 1, t);
        if (nu > NormalRegime)
            return Normal.CDF(0, 1, t) + Normal.PDF(0, 1, t) * -FisherTerms(t, nu);
        if (nu <= MostWhole && nu == Math.Floor(nu) && (1 - Inside(-t, (int)nu)) / 2 is >= LeastTailOfSum and var tail)
            return tail;
        var t2 = t * t;
        // Near the centre nu / (nu + t^2) rounds to 1; the complement keeps the digits.
        return t2 < 0.5
            ? 0.5 * (1 - SpecialFunctions.BetaRegularized(0.5, nu / 2, t2 / (nu + t2)))
            : 0.5 * SpecialFunctions.BetaRegularized(nu / 2, 0.5, nu / (nu + t2));
    }

    // P(|T| <= t) by A&S 26.7.3 for odd and 26.7.4 for even degrees of freedom.
    private static double Inside(double t, int nu)
    {
        var rest = nu / (nu + t * t);
        var sum = 1.0;
        for (var power = nu - 2; power >= 2; power -= 2)
            sum = 1 + sum * rest * (power - 1) / power;
        var sine = t / Math.Sqrt(nu + t * t);
        if (nu % 2 == 0)
            return sine * sum;
        return 2 / Math.PI * (Math.Atan(t / Math.Sqrt(nu)) + (nu == 1 ? 0 : sine * Math.Sqrt(rest) * sum));
    }

    // The bracket of A&S 26.7.8, so that P(t) = Phi(t) - phi(t) * FisherTerms(t).
    private static double FisherTerms(double t, double nu)
    {
        var t2 = t * t;
        var first = t * (t2 + 1) / (4 * nu);
        var second = t * (((3 * t2 - 7) * t2 - 5) * t2 - 3) / (96 * nu * nu);
        var third = t * (((((t2 - 11) * t2 + 14) * t2 + 6) * t2 - 3) * t2 - 15) / (384 * nu * nu * nu);
        return first + second + third;
    }

    private static double LowerQuantile(double p, double nu)
    {
        var z = Normal.InvCDF(0, 1, p);
        if (double.IsPositiveInfinity(nu))
            return z;
        if (nu == 1)
            return -1 / Math.Tan(Math.PI * p);
        if (nu == 2)
            return (2 * p - 1) / Math.Sqrt(2 * p * (1 - p));
        var start = Start(p, z, nu);
        return nu > NormalRegime ? start : Refine(start, p, nu);
    }

    // A&S 26.7.5 where the expansion holds; the leading term of the tail where it does not.
    private static double Start(double p, double z, double nu)
    {
        var z2 = z * z;
        var expansion =
            z
            * (
                1
                + (z2 + 1) / (4 * nu)
                + ((5 * z2 + 16) * z2 + 3) / (96 * nu * nu)
                + (((3 * z2 + 19) * z2 + 17) * z2 - 15) / (384 * nu * nu * nu)
                + ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945) / (92160 * nu * nu * nu * nu)
            );
        if (z2 < 4 * nu)
            return expansion;
        // P(T < t) ~ C |t|^-nu nu^((nu-1)/2) / B for t far out; solve for t.
        var logTail = Math.Log(p) + Math.Log(nu) + SpecialFunctions.BetaLn(nu / 2, 0.5) - nu / 2 * Math.Log(nu);
        return -Math.Exp(-logTail / nu);
    }

    private static double Refine(double t, double p, double nu)
    {
        var lower = double.NegativeInfinity;
        var upper = 0.0;
        var logScale = -0.5 * Math.Log(nu) - SpecialFunctions.BetaLn(nu / 2, 0.5);
        for (var step = 0; step < MostSteps; step++)
        {
            var tail = LowerTail(t, nu);
            if (tail > p)
                upper = t;
            else
                lower = t;
            var density = Math.Exp(logScale - (nu + 1) / 2 * Math.Log(1 + t * t / nu));
            // Newton on ln P, whose curvature is mild far out, with Halley's correction.
            var error = (tail - p) / density;
            var curvature = -(nu + 1) * t / (nu + t * t);
            var next = t - error / (1 - error * curvature / 2);
            // Asked before the bracket: at the root, rounding alone decides on which side of it the next point lies.
            // The step after this one would change nothing, because each one cubes the error.
            if (Math.Abs(error) < 1e-9 * Math.Abs(t))
                return next;
            if (!(next > lower && next < upper))
                next = double.IsNegativeInfinity(lower) ? 2 * t : (lower + upper) / 2;
            t = next;
        }
        return t;
    }

    private static void Check(double degreesOfFreedom)
    {
        if (!(degreesOfFreedom >= 1))
            throw new ArgumentOutOfRangeException(
                nameof(degreesOfFreedom),
                degreesOfFreedom,
                "Degrees of freedom of at least 1 are needed."
            );
    }
}
