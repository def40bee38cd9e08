namespace CalibrationApi.Engine.Statistics;

/// <summary>
/// A ratio observed several times, such as a mass per revolution or counts per metre, pooled, with the variance between the observations.
/// </summary>
/// <param name="Value">Weighted mean of the observed ratios, in their unit.</param>
/// <param name="Scatter">The scatter found over the scatter believed: variance between observations beyond the known random parts tau_i^2 =
/// phi s0_i^2 (phi).</param>
/// <param name="BetweenVariance">Mean of tau_i^2 over the observations, relative.</param>
/// <param name="SumOfWeights">Sum of 1 / (tau_i^2 + v_i).</param>
/// <param name="BetweenShare">The part of the variance of the mean that comes from tau_i^2: sum(w_i^2 tau_i^2) / (sum w)^2.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of phi: nu0 + c - 1.</param>
/// <remarks>
/// <para>Formula: RelativeVariance is 1 / sum(w), with w as in Pool.</para>
/// <para>Range: at least one observation, so that the sum is above 0.</para>
/// <para>Source: our own derivation from SOURCES.md, key DERSIMONIAN-KACKER-2007, as in Pool.</para>
/// <para>Accuracy: 1e-14 relative against the sums written out (PooledRatioTests).</para>
/// </remarks>
public readonly record struct PooledRatio(
    double Value,
    double Scatter,
    double BetweenVariance,
    double SumOfWeights,
    double BetweenShare,
    double DegreesOfFreedom
)
{
    private const int MostSteps = 100;
    private const int MostOnStack = 64;

    /// <summary>Random variance of the pooled value, relative.</summary>
    public double RelativeVariance => 1 / SumOfWeights;

    /// <summary>Pools observed ratios with known random variances and a prior on the scatter between them.</summary>
    /// <param name="values">The ratios k_i, in any one unit, above 0.</param>
    /// <param name="variances">Known random variance of each v_i, relative, &gt;= 0.</param>
    /// <param name="believed">Variance believed of the scatter of each s0_i^2, relative, above 0.</param>
    /// <param name="priorDegreesOfFreedom">Degrees of freedom of that belief nu0, one for all: they share one factor.</param>
    /// <param name="leftOut">Index of an observation to leave out; negative for none.</param>
    /// <param name="near">A scatter near the one that is sought, such as that of all observations; null where none is known.</param>
    /// <remarks>
    /// <para>Formula: tau_i^2 = phi s0_i^2 with phi the positive root of sum((k_i/k - 1)^2 / (phi s0_i^2 + v_i)) + nu0 / phi = nu0 + c - 1,
    /// with w_i = 1 / (tau_i^2 + v_i) and k = sum(w k_i) / sum(w). One observation gives phi = 1; v = 0 and equal s0 give the usual pooling
    /// of variances.</para>
    /// <para>Range: values above 0; variances 0 to any size; prior variances above 0. Values are compared relatively, so their unit does
    /// not matter.</para>
    /// <para>Source: our own derivation. Without the prior this is the Paule-Mandel estimator (SOURCES.md, key DERSIMONIAN-KACKER-2007,
    /// tables 3 and 4). There is no pre-test that would switch the prior off: that makes intervals jump without making them honest.</para>
    /// <para>Accuracy: the estimating equation holds to 1e-12 relative (PooledRatioTests), to 1e-9 for variances of any size
    /// (PoolingPropertyTests); published tables to every printed digit (PoolingReferenceTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">Nothing to pool.</exception>
    public static PooledRatio Pool(
        ReadOnlySpan<double> values,
        ReadOnlySpan<double> variances,
        ReadOnlySpan<double> believed,
        double priorDegreesOfFreedom,
        int leftOut = -1,
        double? near = null
    )
    {
        var count = values.Length - (leftOut >= 0 ? 1 : 0);
        if (count < 1 || values.Length != variances.Length || values.Length != believed.Length)
            throw new ArgumentException("At least one observed ratio with its variances is needed.", nameof(values));
        var degreesOfFreedom = priorDegreesOfFreedom + count - 1;
        var scatter = count == 1 ? 1 : Root(values, variances, believed, priorDegreesOfFreedom, degreesOfFreedom, leftOut, near);

        double sumOfWeights = 0,
            share = 0,
            weighted = 0,
            between = 0;
        for (var i = 0; i < values.Length; i++)
        {
            if (i == leftOut)
                continue;
            var ofThis = scatter * believed[i];
            var weight = 1 / (ofThis + variances[i]);
            sumOfWeights += weight;
            share += weight * weight * ofThis;
            weighted += weight * values[i];
            between += ofThis;
        }

        return new PooledRatio(
            weighted / sumOfWeights,
            scatter,
            between / count,
            sumOfWeights,
            share / (sumOfWeights * sumOfWeights),
            degreesOfFreedom
        );
    }

    // The root with all v_i = 0 lies near or above the true one. Where known parts are small the sum is nearly a constant over phi, so that
    // Newton steps on the logarithms of both hardly miss. Observations known
    // unequally well that disagree can bend the sum so much that a step overshoots; so the root is kept between two
    // bounds, and the interval is halved where a step would leave them.
    private static double Root(
        ReadOnlySpan<double> values,
        ReadOnlySpan<double> variances,
        ReadOnlySpan<double> believed,
        double priorDegreesOfFreedom,
        double degreesOfFreedom,
        int leftOut,
        double? near
    )
    {
        var scatter = near ?? (priorDegreesOfFreedom + SumOfSquares(values, believed, leftOut)) / degreesOfFreedom;
        var (lower, upper) = (0.0, double.PositiveInfinity);
        // Divisions are what this costs, so each weight is kept.
        Span<double> each = values.Length <= MostOnStack ? stackalloc double[values.Length] : new double[values.Length];
        for (var step = 0; step < MostSteps; step++)
        {
            double weights = 0,
                weighted = 0;
            for (var i = 0; i < values.Length; i++)
            {
                if (i == leftOut)
                    continue;
                var weight = each[i] = 1 / (scatter * believed[i] + variances[i]);
                weights += weight;
                weighted += weight * values[i];
            }

            var overMean = weights / weighted;
            double squares = 0,
                skew = 0,
                sum = priorDegreesOfFreedom / scatter;
            var slope = -sum;
            for (var i = 0; i < values.Length; i++)
            {
                if (i == leftOut)
                    continue;
                var weight = each[i];
                var deviation = values[i] * overMean - 1;
                var term = deviation * deviation * weight;
                var share = weight * scatter * believed[i];
                squares += term;
                skew += deviation * weight * share;
                slope -= term * share;
            }

            // The last part of the slope is there because the mean moves with the weights.
            sum += squares;
            slope += 2 * squares * skew / weights;
            var change = slope < 0 ? sum * Math.Log(degreesOfFreedom / sum) / slope : double.NaN;
            // Each step squares the error, so that the one after this would change nothing.
            if (Math.Abs(change) < 1e-8)
                return scatter * Math.Exp(change);
            if (sum > degreesOfFreedom)
                lower = scatter;
            else
                upper = scatter;
            var next = scatter * Math.Exp(Math.Clamp(change, -3, 3));
            scatter =
                next > lower && next < upper ? next
                : lower > 0 && double.IsFinite(upper) ? Math.Sqrt(lower * upper)
                : sum > degreesOfFreedom ? scatter * 20
                : scatter / 20;
        }

        return scatter;
    }

    // Squared deviations over what is believed of them, about the mean that belief alone would weigh.
    private static double SumOfSquares(ReadOnlySpan<double> values, ReadOnlySpan<double> believed, int leftOut)
    {
        double sum = 0,
            weights = 0,
            squares = 0;
        for (var i = 0; i < values.Length; i++)
        {
            if (i == leftOut)
                continue;
            sum += values[i] / believed[i];
            weights += 1 / believed[i];
        }

        var mean = sum / weights;
        for (var i = 0; i < values.Length; i++)
            squares += i == leftOut ? 0 : (values[i] / mean - 1) * (values[i] / mean - 1) / believed[i];
        return squares;
    }
}
