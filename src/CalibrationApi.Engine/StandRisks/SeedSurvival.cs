using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>
/// How many plants come of a seed that was meant to be sown: a share that differs from season to season, times errors of the rate.
/// </summary>
/// <remarks>
/// <para>Formula: X = E F. E is the share of seeds that become plants, beta distributed with a stated mean m and standard deviation s,
/// because it can be neither below 0 nor above 1 and a poor season takes more than a good one gives. F gathers what is relative
/// (germination test, kernel mass, metering): log-normal with median 1 and standard deviation u of its logarithm, independent of E.</para>
/// <para>P(X &lt;= x) is integrated where E is the wider of the two over the normal variable of F, from the edge on beyond which no share
/// lies (E is at most 1, and at a shape below 2 the density ends there in a corner or a spike), by double-exponential quadrature, which
/// such an end does not disturb; where F is the wider, over the logit of E, by the trapezoidal rule. Where E is narrower than a tenth of F,
/// or than a ten-thousandth of its mean, it is taken as log-normal too.</para>
/// <para>Range: 0 &lt; m &lt;= 1, s^2 below m (1 - m) or s = 0, u at least 0; x from 0; probabilities strictly between 0 and 1.</para>
/// <para>Accuracy: 1e-6 against closed forms for beta shapes 1, 2 and 3, whichever of the two is the wider, against adaptive quadrature of
/// the library for others; 1e-9 against the library's distributions at the limits u = 0 and s = 0; 1e-3 where E is taken as log-normal;
/// within the noise of a seeded simulation of 400 000 seasons throughout (SeedSurvivalTests).</para>
/// <para>Source: our own derivation; JCGM 101 for the propagation (from memory); published spread in SOURCES.md, key AB-HARTMAN.</para>
/// </remarks>
public sealed class SeedSurvival
{
    private const double Reach = 8;
    private const double NarrowShare = 0.1;
    private const double NarrowSpread = 1e-4;
    private const double NoSpread = 1e-6;

    // In standard deviations of the logit. At a shape of 1 the density falls no faster than exp(-|logit|), and what lies beyond is lost.
    private const double ReachOfLogits = 12;
    private const int HalfOfNodes = 96;
    private const int MostSteps = 200;

    private readonly double mean;
    private readonly double spread;
    private readonly double relative;
    private readonly double alpha;
    private readonly double beta;
    private readonly double[] shares = [];
    private readonly double[] weights = [];

    /// <summary>The distribution.</summary>
    /// <param name="mean">Mean share m, above 0, at most 1.</param>
    /// <param name="spread">Standard deviation s of the share, at least 0; see <see cref="IsPossible"/>.</param>
    /// <param name="relative">Standard deviation u of ln F, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public SeedSurvival(double mean, double spread, double relative)
    {
        if (!IsPossible(mean, spread))
            throw new ArgumentOutOfRangeException(nameof(spread), spread, "No share of seeds has this mean and spread.");
        if (!(relative >= 0) || !double.IsFinite(relative))
            throw new ArgumentOutOfRangeException(nameof(relative), relative, "An uncertainty of at least 0 is needed.");
        // A spread that no count of seeds could ever show is none; its shapes would overflow.
        (this.mean, this.spread, this.relative) = (mean, spread < NoSpread * mean ? 0 : spread, relative);
        if (this.spread == 0)
            return;
        (alpha, beta) = BetaShape.Of(mean, spread);
        if (!IsNarrow && relative > spread / mean && Math.Min(alpha, beta) >= 1)
            (shares, weights) = Grid();
    }

    /// <summary>Whether a share between 0 and 1 can have such a mean and standard deviation: s^2 &lt; m (1 - m), or s = 0.</summary>
    public static bool IsPossible(double mean, double spread) =>
        mean > 0 && mean <= 1 && (spread == 0 || BetaShape.IsPossible(mean, spread));

    /// <summary>P(X &lt; <paramref name="x"/>). Where X is certain, the mean itself is not below the mean.</summary>
    /// <param name="x">Plants per seed meant to be sown, at least 0.</param>
    public double Cdf(double x)
    {
        if (x <= 0)
            return 0;
        if (spread == 0 && relative == 0)
            return Threshold.IsAbove(x, mean) ? 1 : 0;
        if (spread == 0)
            return Normal.CDF(0, 1, Math.Log(x / mean) / relative);
        if (IsNarrow)
        {
            // The log-normal distribution of the same mean and standard deviation.
            var variance = Math.Log(1 + spread * spread / (mean * mean));
            return Normal.CDF(0, 1, (Math.Log(x / mean) + variance / 2) / Math.Sqrt(variance + relative * relative));
        }

        if (relative == 0)
            return BetaCdf(x);
        return shares.Length > 0 ? OverShares(x) : OverErrors(x);
    }

    /// <summary>The x with P(X &lt;= x) = <paramref name="probability"/>.</summary>
    /// <param name="probability">Strictly between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    public double Quantile(double probability)
    {
        if (!(probability > 0 && probability < 1))
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability strictly between 0 and 1 is needed.");
        if (spread == 0)
            return mean * Math.Exp(relative * Normal.InvCDF(0, 1, probability));
        var (lower, upper) = (Math.Log(1e-12), Math.Log(2) + Reach * relative);
        for (var step = 0; step < MostSteps && upper - lower > 1e-14; step++)
        {
            var middle = (lower + upper) / 2;
            if (Cdf(Math.Exp(middle)) < probability)
                lower = middle;
            else
                upper = middle;
        }

        return Math.Exp((lower + upper) / 2);
    }

    private bool IsNarrow => spread > 0 && spread / mean < Math.Max(NarrowShare * relative, NarrowSpread);

    private double BetaCdf(double x) => x >= 1 ? 1 : SpecialFunctions.BetaRegularized(alpha, beta, x);

    private double OverShares(double x)
    {
        var sum = 0.0;
        for (var i = 0; i < shares.Length; i++)
            sum += weights[i] * Normal.CDF(0, 1, Math.Log(x / shares[i]) / relative);
        return sum;
    }

    // No share is above 1, so that every z below ln(x) / u gives X < x for certain. From there on, x exp(-u z) is below 1.
    private double OverErrors(double x)
    {
        var edge = Math.Log(x) / relative;
        if (edge >= Reach)
            return 1;
        var start = Math.Max(edge, -Reach);
        var rest = DoubleExponential.Integrate(start, Reach, z => Normal.PDF(0, 1, z) * BetaCdf(Math.Exp(relative * (edge - z))));
        return Math.Min(1, Normal.CDF(0, 1, edge) + rest);
    }

    // The shares E at equal steps of their logit y, whose density goes as e^alpha (1 - e)^beta; from 1 on, both shapes keep its tails
    // short.
    private (double[] Shares, double[] Weights) Grid()
    {
        var scale = Math.Sqrt(1 / alpha + 1 / (alpha * alpha) + 1 / beta + 1 / (beta * beta));
        var centre = Math.Log(mean / (1 - mean));
        double[] logits =
        [
            .. Enumerable.Range(-HalfOfNodes, 2 * HalfOfNodes + 1).Select(i => centre + ReachOfLogits * i / HalfOfNodes * scale),
        ];
        double[] logs = [.. logits.Select(new BetaShape(alpha, beta).LogDensityOfLogit)];
        var most = logs.Max();
        double[] densities = [.. logs.Select(log => Math.Exp(log - most))];
        var sum = densities.Sum();
        return ([.. logits.Select(y => 1 / (1 + Math.Exp(-y)))], [.. densities.Select(density => density / sum)]);
    }
}
