using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>A share of seeds learned from counts and from what was believed before them.</summary>
/// <param name="Value">Mean of the share, between 0 and 1.</param>
/// <param name="StandardDeviation">Standard deviation of the share.</param>
/// <param name="Lower">Lower end of the interval.</param>
/// <param name="Upper">Upper end of the interval.</param>
/// <param name="Weight">How much of the answer the counts carried: 1 less the variance left over the variance before, on the logit scale.</param>
/// <remarks>
/// Prior: normal on the logit scale about ln(m / (1 - m)), with standard deviation s / (m (1 - m)) for a stated mean m and spread s.
/// Counts: log-normal about the share counted, its width that of the interval, so a count above 100 % only pulls towards 1; without a
/// plant, Poisson. The product is integrated on a fixed grid. Source: usual Bayesian practice, no published figures; checked
/// against the closed form of two normal distributions in LearnedShareTests. Accuracy 1e-4.
/// </remarks>
public sealed record LearnedShare(double Value, double StandardDeviation, double Lower, double Upper, double Weight)
{
    private const int Nodes = 2001;
    private const double Reach = 8;

    /// <summary>Shrinks a counted share towards a prior.</summary>
    /// <param name="counted">The share that was counted.</param>
    /// <param name="priorMean">Mean of the prior m, strictly between 0 and 1.</param>
    /// <param name="priorSpread">Its standard deviation s, above 0.</param>
    /// <param name="coverage">Coverage probability of <paramref name="counted"/> and of the answer.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mean or a spread outside its range.</exception>
    public static LearnedShare Of(ShareOfSeeds counted, double priorMean, double priorSpread, double coverage)
    {
        if (!(priorMean > 0 && priorMean < 1))
            throw new ArgumentOutOfRangeException(nameof(priorMean), priorMean, "A mean strictly between 0 and 1 is needed.");
        if (!(priorSpread > 0))
            throw new ArgumentOutOfRangeException(nameof(priorSpread), priorSpread, "A spread above 0 is needed.");
        var centre = Math.Log(priorMean / (1 - priorMean));
        var spread = priorSpread / (priorMean * (1 - priorMean));
        var (shares, logits, weights) = (new double[Nodes], new double[Nodes], new double[Nodes]);
        for (var i = 0; i < Nodes; i++)
        {
            var z = Reach * (2.0 * i / (Nodes - 1) - 1);
            logits[i] = centre + spread * z;
            shares[i] = 1 / (1 + Math.Exp(-logits[i]));
            weights[i] = LogLikelihood(counted, shares[i], coverage) - z * z / 2;
        }

        var most = weights.Max();
        for (var i = 0; i < Nodes; i++)
            weights[i] = Math.Exp(weights[i] - most);
        var mean = Mean(shares, weights);
        var left = Variance(logits, weights);
        return new LearnedShare(
            mean,
            Math.Sqrt(Variance(shares, weights)),
            Quantile(shares, weights, (1 - coverage) / 2),
            Quantile(shares, weights, (1 + coverage) / 2),
            Math.Clamp(1 - left / (spread * spread), 0, 1));
    }

    private static double LogLikelihood(ShareOfSeeds counted, double share, double coverage)
    {
        // Without a plant the upper limit tells the seeds looked at: P(no plant) = exp(-seeds x share) is (1 - coverage) / 2 there.
        if (counted.Value == 0)
            return share / counted.Upper * Math.Log((1 - coverage) / 2);
        var uncertainty = Math.Log(counted.Upper / counted.Lower) / (2 * StudentT.CoverageFactor(coverage, double.PositiveInfinity));
        var off = Math.Log(share / counted.Value) / uncertainty;
        return -off * off / 2;
    }

    private static double Mean(double[] values, double[] weights) => values.Zip(weights, (value, weight) => value * weight).Sum() / weights.Sum();

    private static double Variance(double[] values, double[] weights)
    {
        var mean = Mean(values, weights);
        return values.Zip(weights, (value, weight) => (value - mean) * (value - mean) * weight).Sum() / weights.Sum();
    }

    // Half of each node's weight lies on either side of it.
    private static double Quantile(double[] values, double[] weights, double probability)
    {
        var wanted = probability * weights.Sum();
        var before = 0.0;
        for (var i = 1; i < values.Length; i++)
        {
            var between = (weights[i - 1] + weights[i]) / 2;
            if (before + between >= wanted)
                return values[i - 1] + (values[i] - values[i - 1]) * (wanted - before) / between;
            before += between;
        }

        return values[^1];
    }
}
