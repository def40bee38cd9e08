using MathNet.Numerics;

namespace CalibrationApi.Engine.Statistics;

/// <summary>
/// A scatter that is only known with some degrees of freedom: its variance over the one believed is phi = nu / chi^2(nu).
/// </summary>
/// <remarks>
/// <para>Formula: P(Q &gt;= q) is the mean over phi of P(sum of lambda_j chi^2(1) &gt;= q), lambda_j = 1 + (phi - 1) mu_j. The integral
/// over ln phi is taken by the trapezoidal rule, which converges exponentially for it. Given phi, a sum of squares is a sum of chi-squared
/// variables with unequal factors; its tail is that of equal factors, with the terms of second to fourth order in their differences (an
/// expansion of the characteristic function, each term a chi-squared tail with two more degrees of freedom).</para>
/// <para>Range: nu at least 1 and finite; q at least 0, 1 without any term. At a known phi alone, q and phi above 0.</para>
/// <para>Source: sums of chi-squared variables, Imhof 1961 (SOURCES.md, key IMHOF-1961); the expansion is our own derivation.</para>
/// <para>Accuracy: without known variances the tail is that of the F distribution, within 1e-6 of the library's (5e-4 up to 50 terms); with
/// them, at 4 degrees of freedom, within 1.5e-3 of the sum itself (ScatterPriorTests).</para>
/// </remarks>
public sealed class ScatterPrior
{
    private const double Negligible = 1e-10;
    private const double CoarsestStep = 0.4;

    private static readonly ScatterPrior Usual = new(Repeatability.RepeatabilityPrior.DefaultDegreesOfFreedom);

    private readonly double[] factors;
    private readonly double[] weights;
    private readonly double degreesOfFreedom;

    private ScatterPrior(double degreesOfFreedom)
    {
        this.degreesOfFreedom = degreesOfFreedom;
        var step = Math.Min(CoarsestStep, 0.8 * Math.Sqrt(2 / degreesOfFreedom));
        var (found, heights) = (new List<double>(), new List<double>());
        var first = 0;
        while (Height(first * step) > Negligible)
            first--;
        var sum = 0.0;
        for (var node = first; node <= 0 || Height(node * step) > Negligible; node++)
        {
            found.Add(Math.Exp(-node * step));
            heights.Add(Height(node * step));
            sum += heights[^1];
        }

        factors = [.. found];
        weights = [.. heights.Select(height => height / sum)];
    }

    /// <summary>A scatter with these degrees of freedom.</summary>
    /// <param name="degreesOfFreedom">nu, at least 1 and finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Degrees of freedom below 1 or infinite.</exception>
    public static ScatterPrior Of(double degreesOfFreedom)
    {
        if (!(degreesOfFreedom >= 1) || double.IsInfinity(degreesOfFreedom))
            throw new ArgumentOutOfRangeException(
                nameof(degreesOfFreedom),
                degreesOfFreedom,
                "Finite degrees of freedom of at least 1 are needed."
            );
        return degreesOfFreedom == Usual.degreesOfFreedom ? Usual : new(degreesOfFreedom);
    }

    /// <summary>P(Q &gt;= <paramref name="q"/>) of a sum of squared deviations over the variances believed of them.</summary>
    /// <param name="q">At least 0.</param>
    /// <param name="shares">How much of those variances is scatter.</param>
    /// <returns>1 without any term.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative sum, or not a number.</exception>
    public double UpperTail(double q, ScatterShares shares)
    {
        if (!(q >= 0))
            throw new ArgumentOutOfRangeException(nameof(q), q, "A sum of at least 0 is needed.");
        if (shares.Terms == 0 || q == 0)
            return 1;
        var probability = 0.0;
        for (var i = 0; i < factors.Length; i++)
            probability += weights[i] * UpperTail(q, shares, factors[i]);
        return Math.Clamp(probability, 0, 1);
    }

    /// <summary>The same for a scatter whose factor phi is known.</summary>
    /// <param name="q">Above 0.</param>
    /// <param name="shares">How much of the variances is scatter.</param>
    /// <param name="factor">phi, above 0.</param>
    public static double UpperTail(double q, ScatterShares shares, double factor)
    {
        var mean = 1 + (factor - 1) * shares.Mean;
        var (tail, next) = ChiSquaredTail(q / mean, shares.Terms);
        if (shares.Second == 0)
            return tail;
        var half = q / mean / 2;
        var relative = (factor - 1) / mean;
        var second = relative * relative * shares.Second;
        var third = relative * relative * relative * shares.Third;
        var order = shares.Terms / 2.0 + 1;
        var t2 = next * half / order;
        var t3 = t2 * half / (order + 1);
        var t4 = t3 * half / (order + 2);
        return tail + second / 4 * (t2 - next) + third / 6 * (next - 2 * t2 + t3) + second * second / 32 * (3 * t2 - 3 * t3 + t4 - next);
    }

    // P(chi^2(k) >= x) for a whole k in closed form, and what two more degrees of freedom add to it.
    private static (double Tail, double Next) ChiSquaredTail(double x, int k)
    {
        var half = x / 2;
        var exponential = Math.Exp(-half);
        var isOdd = (k & 1) == 1;
        var tail = isOdd ? SpecialFunctions.Erfc(Math.Sqrt(half)) : 0;
        var term = isOdd ? exponential * Math.Sqrt(half) * 2 / Math.Sqrt(Math.PI) : exponential;
        for (var order = isOdd ? 1.5 : 1; order <= k / 2.0; order++)
        {
            tail += term;
            term *= half / order;
        }

        return (tail, term);
    }

    // Density of x = ln(chi^2 / nu) over its largest value; phi is exp(-x).
    private double Height(double x) => Math.Exp(degreesOfFreedom / 2 * (x - Math.Exp(x) + 1));
}
