using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The mass per revolution pooled over catches, with the variance between them.</summary>
/// <param name="MassPerRevolution">Weighted mean of the catches, kg per revolution.</param>
/// <param name="BetweenVariance">Variance between catches beyond the known random parts, relative (tau^2).</param>
/// <param name="SumOfWeights">Sum of 1 / (tau^2 + v_i).</param>
/// <param name="BetweenShare">The part of the variance of the mean that comes from tau^2: tau^2 sum(w^2) / (sum w)^2.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of tau^2: nu0 + c - 1.</param>
public readonly record struct PooledCatches(
    double MassPerRevolution,
    double BetweenVariance,
    double SumOfWeights,
    double BetweenShare,
    double DegreesOfFreedom)
{
    private const int MostSteps = 100;

    /// <summary>Random variance of the pooled value, relative.</summary>
    public double RelativeVariance => 1 / SumOfWeights;

    /// <summary>
    /// Pools catches with known random variances and a prior on the scatter between them.
    /// </summary>
    /// <param name="values">Mass per revolution of each catch, kg per revolution, above 0.</param>
    /// <param name="variances">Known random variance of each catch, relative, &gt;= 0.</param>
    /// <param name="prior">What is believed about the scatter.</param>
    /// <param name="leftOut">Index of a catch to leave out; negative for none.</param>
    /// <remarks>
    /// tau^2 is the positive root of
    /// sum((k_i/k - 1)^2 / (tau^2 + v_i)) + nu0 s0^2 / tau^2 = nu0 + c - 1, with w_i = 1 / (tau^2 + v_i) and
    /// k = sum(w k_i) / sum(w). One catch gives tau = s0; v = 0 gives the usual pooling of variances. Without the prior
    /// this is the Paule-Mandel estimator (SOURCES.md, key DERSIMONIAN-KACKER-2007). There is no pre-test that would
    /// switch the prior off: that makes intervals jump without making them honest.
    /// Accuracy: the root is found to the last bits of a double; checked in PooledCatchesTests.
    /// </remarks>
    /// <exception cref="ArgumentException">Nothing to pool.</exception>
    public static PooledCatches Pool(ReadOnlySpan<double> values, ReadOnlySpan<double> variances, RepeatabilityPrior prior, int leftOut = -1)
    {
        var count = values.Length - (leftOut >= 0 ? 1 : 0);
        if (count < 1 || values.Length != variances.Length)
            throw new ArgumentException("At least one catch with its variance is needed.", nameof(values));
        var priorSum = prior.DegreesOfFreedom * prior.Relative * prior.Relative;
        var degreesOfFreedom = prior.DegreesOfFreedom + count - 1;

        // The root with all v_i = 0 lies near or above the true one; Newton on ln tau^2 comes down to it. Catches known
        // unequally well that disagree can bend the sum so much that a step overshoots; so the root is kept between two
        // bounds, and the interval is halved where a step would leave them.
        var plainMean = WeightedMean(values, variances, double.PositiveInfinity, leftOut);
        var deviations = 0.0;
        for (var i = 0; i < values.Length; i++)
            deviations += i == leftOut ? 0 : Square(values[i] / plainMean - 1);
        var variance = (priorSum + deviations) / degreesOfFreedom;
        var (lower, upper) = (0.0, double.PositiveInfinity);
        for (var step = 0; step < MostSteps && count > 1; step++)
        {
            var mean = WeightedMean(values, variances, variance, leftOut);
            double weights = 0, squares = 0, sum = priorSum / variance;
            double slope = -sum, skew = 0;
            for (var i = 0; i < values.Length; i++)
            {
                if (i == leftOut)
                    continue;
                var weight = 1 / (variance + variances[i]);
                var deviation = values[i] / mean - 1;
                var term = deviation * deviation * weight;
                weights += weight;
                squares += term;
                skew += deviation * weight * weight;
                slope -= term * weight * variance;
            }

            // The last part of the slope is there because the mean moves with the weights.
            sum += squares;
            slope += 2 * variance * squares * skew / weights;
            var change = slope < 0 ? (degreesOfFreedom - sum) / slope : double.NaN;
            if (Math.Abs(change) < 1e-14)
                break;
            if (sum > degreesOfFreedom)
                lower = variance;
            else
                upper = variance;
            var next = variance * Math.Exp(Math.Clamp(change, -3, 3));
            variance = next > lower && next < upper ? next
                : lower > 0 && double.IsFinite(upper) ? Math.Sqrt(lower * upper)
                : sum > degreesOfFreedom ? variance * 20 : variance / 20;
        }

        double sumOfWeights = 0, sumOfSquares = 0, weighted = 0;
        for (var i = 0; i < values.Length; i++)
        {
            if (i == leftOut)
                continue;
            var weight = 1 / (variance + variances[i]);
            sumOfWeights += weight;
            sumOfSquares += weight * weight;
            weighted += weight * values[i];
        }

        return new PooledCatches(
            weighted / sumOfWeights,
            variance,
            sumOfWeights,
            variance * sumOfSquares / (sumOfWeights * sumOfWeights),
            degreesOfFreedom);
    }

    private static double WeightedMean(ReadOnlySpan<double> values, ReadOnlySpan<double> variances, double between, int leftOut)
    {
        double sum = 0, weights = 0;
        for (var i = 0; i < values.Length; i++)
        {
            if (i == leftOut)
                continue;
            var weight = double.IsPositiveInfinity(between) ? 1 : 1 / (between + variances[i]);
            sum += weight * values[i];
            weights += weight;
        }

        return sum / weights;
    }

    private static double Square(double x) => x * x;
}
