using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>How many plants come of a seed that was meant to be sown: a share that differs from season to season, times errors of the rate.</summary>
/// <remarks>
/// <para>
/// X = E F. E is the share of seeds that become plants, beta distributed with a stated mean m and standard deviation s, because it
/// can be neither below 0 nor above 1 and a poor season takes more than a good one gives. F gathers what is relative (germination
/// test, kernel mass, metering): log-normal with median 1 and standard deviation u of its logarithm, independent of E.
/// </para>
/// <para>
/// P(X &lt;= x) is integrated by the trapezoidal rule on a fixed grid, which converges exponentially for such integrands: over the
/// normal variable of F where E is the wider of the two, over the logit of E where F is. Where E is narrower than a tenth of F, it
/// is taken as log-normal too. Accuracy: 1e-3 for a share that can be whole (second shape below 1), else 1e-6, against the library's beta and log-normal distributions at the limits u = 0 and
/// s = 0, within the noise of a seeded simulation of 400 000 seasons between (SeedSurvivalTests).
/// </para>
/// <para>Source: our own choice; JCGM 101 for the propagation (from memory); published spread in SOURCES.md, key AB-HARTMAN.</para>
/// </remarks>
public sealed class SeedSurvival
{
    private const double Reach = 8;
    private const double NarrowShare = 0.1;
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
        (this.mean, this.spread, this.relative) = (mean, spread, relative);
        if (spread == 0)
            return;
        var size = mean * (1 - mean) / (spread * spread) - 1;
        (alpha, beta) = (mean * size, (1 - mean) * size);
        if (IsNarrow)
            return;
        (shares, weights) = relative > spread / mean ? OverShares() : OverErrors();
    }

    /// <summary>Whether a share between 0 and 1 can have such a mean and standard deviation: s^2 &lt; m (1 - m), or s = 0.</summary>
    public static bool IsPossible(double mean, double spread) => mean > 0 && mean <= 1 && (spread == 0 || (spread > 0 && spread * spread < mean * (1 - mean)));

    /// <summary>P(X &lt;= <paramref name="x"/>).</summary>
    /// <param name="x">Plants per seed meant to be sown, at least 0.</param>
    public double Cdf(double x)
    {
        if (x <= 0)
            return 0;
        if (spread == 0 && relative == 0)
            return x < mean ? 0 : 1;
        if (spread == 0)
            return Normal.CDF(0, 1, Math.Log(x / mean) / relative);
        if (relative == 0)
            return BetaCdf(x);
        if (IsNarrow)
        {
            // The log-normal distribution of the same mean and standard deviation.
            var variance = Math.Log(1 + spread * spread / (mean * mean));
            return Normal.CDF(0, 1, (Math.Log(x / mean) + variance / 2) / Math.Sqrt(variance + relative * relative));
        }

        var sum = 0.0;
        var overShares = relative > spread / mean;
        for (var i = 0; i < weights.Length; i++)
            sum += weights[i] * (overShares ? Normal.CDF(0, 1, Math.Log(x / shares[i]) / relative) : BetaCdf(x / shares[i]));
        return sum;
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

    private bool IsNarrow => spread > 0 && relative > 0 && spread / mean < NarrowShare * relative;

    private double BetaCdf(double x) => x >= 1 ? 1 : SpecialFunctions.BetaRegularized(alpha, beta, x);

    // The factors F at equal steps of their normal variable. Below 1 the second shape gives the share a spike at 1, on whose edge
    // the rule converges slowly.
    private (double[] Values, double[] Weights) OverErrors() =>
        Grid(0, 1, beta < 1 ? 0.01 : 0.25, z => Math.Exp(relative * z), z => -z * z / 2);

    // The shares E at equal steps of their logit y, whose density goes as e^alpha (1 - e)^beta.
    private (double[] Values, double[] Weights) OverShares()
    {
        var scale = Math.Sqrt(1 / alpha + 1 / (alpha * alpha) + 1 / beta + 1 / (beta * beta));
        return Grid(
            Math.Log(mean / (1 - mean)), scale, Math.Min(0.2, relative / (2 * scale)),
            y => 1 / (1 + Math.Exp(-y)),
            y => -alpha * LogOnePlusExp(-y) - beta * LogOnePlusExp(y));
    }

    private static (double[] Values, double[] Weights) Grid(double centre, double scale, double step, Func<double, double> value, Func<double, double> logWeight)
    {
        var half = (int)Math.Ceiling(Reach / step);
        double[] points = [.. Enumerable.Range(-half, 2 * half + 1).Select(i => centre + i * step * scale)];
        double[] logs = [.. points.Select(logWeight)];
        var most = logs.Max();
        double[] weights = [.. logs.Select(log => Math.Exp(log - most))];
        var sum = weights.Sum();
        return ([.. points.Select(value)], [.. weights.Select(weight => weight / sum)]);
    }

    private static double LogOnePlusExp(double y) => y > 0 ? y + Math.Log(1 + Math.Exp(-y)) : Math.Log(1 + Math.Exp(y));
}
