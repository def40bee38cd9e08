namespace CalibrationApi.Engine.Statistics;

/// <summary>
/// Amounts observed over counts - masses over turns or volumes, counts over distances - as ratios, with what is known and believed of each.
/// </summary>
internal sealed class ObservedRatios
{
    /// <summary>Observations that may scatter unequally.</summary>
    /// <param name="amounts">Amounts a_i, above 0.</param>
    /// <param name="counts">What each was observed over n_i, above 0.</param>
    /// <param name="variances">Known random variance of each ratio v_i, relative, &gt;= 0.</param>
    /// <param name="believed">Variance believed of the scatter of each s0_i^2, relative, above 0.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of that belief nu0.</param>
    public ObservedRatios(double[] amounts, double[] counts, double[] variances, double[] believed, double degreesOfFreedom)
    {
        (Amounts, Counts, Variances, Believed, DegreesOfFreedom) = (amounts, counts, variances, believed, degreesOfFreedom);
        Values = new double[amounts.Length];
        for (var i = 0; i < Values.Length; i++)
            Values[i] = amounts[i] / counts[i];
    }

    /// <summary>Observations of which the same is believed.</summary>
    /// <inheritdoc cref="ObservedRatios(double[], double[], double[], double[], double)"/>
    public ObservedRatios(double[] amounts, double[] counts, double[] variances, double believed, double degreesOfFreedom)
        : this(amounts, counts, variances, [.. amounts.Select(_ => believed)], degreesOfFreedom) { }

    public double[] Amounts { get; }

    public double[] Counts { get; }

    /// <summary>The ratios k_i = a_i / n_i.</summary>
    public double[] Values { get; }

    public double[] Variances { get; }

    public double[] Believed { get; }

    public double DegreesOfFreedom { get; }

    /// <inheritdoc cref="PooledRatio.Pool"/>
    public PooledRatio Pool(int leftOut = -1, double? near = null) =>
        PooledRatio.Pool(Values, Variances, Believed, DegreesOfFreedom, leftOut, near);

    /// <summary>How far the ratios lie apart, before anything was learned of their scatter.</summary>
    /// <returns>
    /// Q = sum((k_i/k - 1)^2 / (s0_i^2 + v_i)) about the mean k weighted with the same variances, and the plain standard deviation of
    /// the ratios, relative to their plain mean; both 0 for one.
    /// </returns>
    public (double Q, double Spread) Scatter()
    {
        double weights = 0,
            weighted = 0,
            sum = 0;
        for (var i = 0; i < Values.Length; i++)
        {
            var weight = 1 / (Believed[i] + Variances[i]);
            weights += weight;
            weighted += weight * Values[i];
            sum += Values[i];
        }

        var mean = weighted / weights;
        var plain = sum / Values.Length;
        double q = 0,
            squares = 0;
        for (var i = 0; i < Values.Length; i++)
        {
            var deviation = Values[i] / mean - 1;
            q += deviation * deviation / (Believed[i] + Variances[i]);
            squares += (Values[i] / plain - 1) * (Values[i] / plain - 1);
        }

        return Values.Length == 1 ? (0, 0) : (q, Math.Sqrt(squares / (Values.Length - 1)));
    }
}
