using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>A share of seeds learned from counts and from what was believed before them.</summary>
/// <param name="Value">Mean of the share, between 0 and 1.</param>
/// <param name="StandardDeviation">Standard deviation of the share.</param>
/// <param name="Lower">Lower end of the interval.</param>
/// <param name="Upper">Upper end of the interval.</param>
/// <param name="Weight">How much of the answer the counts carried: 1 less the size of the prior over the size of the answer
/// (<see cref="BetaShape.Size"/>).</param>
/// <remarks>
/// <para>Formula: posterior of the share e proportional to prior(e) likelihood(e). Prior: beta distribution of the stated mean and spread,
/// as in the risk of a stand. Counts: log-normal about the share counted, its width that of the interval, so a count above 100 % only pulls
/// towards 1; without a plant, Poisson. The product is integrated over the logit of the share, on a grid that is fine where the counts are
/// and reaches out as far as the prior does, and that closes in on where the product lies. For n seeds looked at one by one the answer is
/// the beta distribution again, and the weight n / (n + size of the prior).</para>
/// <para>Range: prior mean strictly between 0 and 1, prior spread above 0 with s^2 below m (1 - m); counts from none to more plants than
/// seeds; coverage strictly between 0 and 1.</para>
/// <para>Source: common practice in Bayesian statistics, no published source.</para>
/// <para>Accuracy: 1e-6 of value and standard deviation against closed forms, 1e-5 of the ends against adaptive quadrature of the library,
/// priors with nearly all of their weight at 0 and 1 included, down to a shape of 2e-4 (LearnedShareTests).</para>
/// </remarks>
public sealed record LearnedShare(double Value, double StandardDeviation, double Lower, double Upper, double Weight)
{
    private const int Nodes = 4001;
    private const int Rounds = 4;

    // The density of a prior with shape a falls as exp(-a |logit|): a small shape keeps much of its weight next to 0 or 1.
    private const double TailsInShapes = 45;

    // Logarithm of a weight over the largest one, below which it counts for nothing.
    private const double Negligible = -40;

    /// <summary>Shrinks a counted share towards a prior.</summary>
    /// <param name="counted">The share that was counted.</param>
    /// <param name="priorMean">Mean of the prior m, strictly between 0 and 1.</param>
    /// <param name="priorSpread">Its standard deviation s, above 0, with s^2 below m (1 - m).</param>
    /// <param name="coverage">Coverage probability of <paramref name="counted"/> and of the answer.</param>
    /// <exception cref="ArgumentOutOfRangeException">No share has this mean and spread.</exception>
    public static LearnedShare Of(ShareOfSeeds counted, double priorMean, double priorSpread, double coverage)
    {
        var prior = BetaShape.Of(priorMean, priorSpread);
        var (logits, weights) = Posterior(prior, CentreOf(counted), LikelihoodOf(counted, coverage));
        double[] shares = [.. logits.Select(logit => 1 / (1 + Math.Exp(-logit)))];
        var sum = weights.Sum();
        var mean = shares.Zip(weights, (share, weight) => share * weight).Sum() / sum;
        var deviation = Math.Sqrt(shares.Zip(weights, (share, weight) => (share - mean) * (share - mean) * weight).Sum() / sum);
        return new LearnedShare(
            mean,
            deviation,
            Quantile(shares, weights, (1 - coverage) / 2),
            Quantile(shares, weights, (1 + coverage) / 2),
            Math.Clamp(1 - prior.Size / BetaShape.SizeOf(mean, deviation), 0, 1)
        );
    }

    // Nodes at logit = centre + sinh(t) for equal steps of t: close to each other at the centre, ever farther apart towards the tails.
    private static (double[] Logits, double[] Weights) Posterior(BetaShape prior, double centre, Func<double, double> logLikelihood)
    {
        var highest = Math.Asinh(Math.Abs(centre) + TailsInShapes / Math.Min(1, Math.Min(prior.Alpha, prior.Beta)));
        var lowest = -highest;
        var (logits, weights) = (new double[Nodes], new double[Nodes]);
        for (var round = 0; round < Rounds; round++)
        {
            var step = (highest - lowest) / (Nodes - 1);
            for (var i = 0; i < Nodes; i++)
            {
                var t = lowest + i * step;
                logits[i] = centre + Math.Sinh(t);
                weights[i] = prior.LogDensityOfLogit(logits[i]) + logLikelihood(BetaShape.LogShare(logits[i])) + Math.Log(Math.Cosh(t));
            }

            var most = weights.Max();
            var (first, last) = (
                Array.FindIndex(weights, weight => weight - most > Negligible),
                Array.FindLastIndex(weights, weight => weight - most > Negligible)
            );
            (lowest, highest) = (lowest + (first - 1) * step, lowest + (last + 1) * step);
            if (round == Rounds - 1)
                weights = [.. weights.Select(weight => Math.Exp(weight - most))];
        }

        return (logits, weights);
    }

    // Where the counts are; a count at or above all seeds, or none, is next to the end.
    private static double CentreOf(ShareOfSeeds counted)
    {
        var share = Math.Clamp(counted.Value > 0 ? counted.Value : counted.Upper, 1e-6, 1 - 1e-6);
        return Math.Log(share / (1 - share));
    }

    // Of the logarithm of a share.
    private static Func<double, double> LikelihoodOf(ShareOfSeeds counted, double coverage)
    {
        // Without a plant the upper limit tells the seeds looked at: P(no plant) = exp(-seeds x share) is (1 - coverage) / 2 there.
        if (counted.Value == 0)
            return logShare => Math.Exp(logShare) / counted.Upper * Math.Log((1 - coverage) / 2);
        var centre = Math.Log(counted.Value);
        var uncertainty = Math.Log(counted.Upper / counted.Lower) / (2 * StudentT.CoverageFactor(coverage, double.PositiveInfinity));
        return logShare => -Math.Pow((logShare - centre) / uncertainty, 2) / 2;
    }

    // Half of each node's weight lies on either side of it.
    private static double Quantile(double[] values, double[] weights, double probability)
    {
        var between = (int i) => (weights[i - 1] + weights[i]) / 2;
        var wanted = probability * Enumerable.Range(1, values.Length - 1).Sum(between);
        var before = 0.0;
        for (var i = 1; i < values.Length; i++)
        {
            if (before + between(i) >= wanted)
                return values[i - 1] + (values[i] - values[i - 1]) * (wanted - before) / between(i);
            before += between(i);
        }

        return values[^1];
    }
}
