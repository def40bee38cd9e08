using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Statistics;
using MathNet.Numerics;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>Shares between what was counted and what was believed.</summary>
public sealed class LearnedShareTests
{
    private static readonly double Z = StudentT.CoverageFactor(0.95, double.PositiveInfinity);

    // Where both spreads are small the logarithm and the logit are straight lines, and two normal distributions combine in closed form.
    [Fact]
    public void Of_NarrowPriorAndCounts_IsTheMeanWeightedByPrecision()
    {
        const double Prior = 0.60,
            Spread = 0.004,
            Counted = 0.606,
            Uncertainty = 0.006;
        var learned = LearnedShare.Of(Share(Counted, Uncertainty), Prior, Spread, 0.95);

        var weight = Spread * Spread / (Spread * Spread + Uncertainty * Uncertainty);
        Assert.Equal(Prior + weight * (Counted - Prior), learned.Value, 5e-5);
        Assert.Equal(Spread * Math.Sqrt(1 - weight), learned.StandardDeviation, 5e-5);
        Assert.Equal(weight, learned.Weight, 0.01);
        Assert.Equal(2 * Z * learned.StandardDeviation, learned.Upper - learned.Lower, 5e-5);
    }

    [Fact]
    public void Of_SureCounts_CarryNearlyAll()
    {
        var learned = LearnedShare.Of(Share(0.8, 0.01), 0.5, 0.15, 0.95);

        Assert.Equal(0.8, learned.Value, 0.005);
        Assert.InRange(learned.Weight, 0.98, 1);
    }

    [Fact]
    public void Of_VagueCounts_CarryNearlyNothing()
    {
        var learned = LearnedShare.Of(Share(0.8, 0.8), 0.5, 0.02, 0.95);

        Assert.Equal(0.5, learned.Value, 0.005);
        Assert.InRange(learned.Weight, 0, 0.02);
    }

    [Fact]
    public void Of_CountAboveAllSeeds_StaysBelowOne()
    {
        var learned = LearnedShare.Of(Share(1.1, 0.05), 0.7, 0.1, 0.95);

        Assert.InRange(learned.Value, 0.85, 1);
        Assert.InRange(learned.Upper, learned.Value, 1);
    }

    // P(no plant from n seeds) = (1 - share)^n, close to exp(-n share): 100 seeds and a prior that is flat below 0.1.
    [Fact]
    public void Of_NoPlants_PullsDown()
    {
        var learned = LearnedShare.Of(new ShareOfSeeds(0, 0, 3.688879 / 100), 0.5, 0.2, 0.95);

        Assert.InRange(learned.Value, 0, 0.15);
        Assert.InRange(learned.Weight, 0, 1);
    }

    // Counts that say nothing leave the prior as it was stated.
    [Theory]
    [InlineData(0.5, 0.2)]
    [InlineData(0.8, 0.08)]
    [InlineData(0.9, 0.1)]
    [InlineData(0.95, 0.15)]
    [InlineData(0.5, 0.49)]
    [InlineData(0.5, 0.4999)]
    [InlineData(0.99, 0.0994)]
    [InlineData(0.02, 0.139)]
    public void Of_CountsThatSayNothing_LeaveThePrior(double mean, double spread)
    {
        var learned = LearnedShare.Of(Share(mean, 1e9), mean, spread, 0.95);

        Assert.Equal(mean, learned.Value, 1e-6);
        Assert.Equal(spread, learned.StandardDeviation, 1e-6);
        Assert.Equal(0, learned.Weight, 0.01);
    }

    // No plant: the beta distribution of alpha and beta becomes about that of alpha and beta + n for shares far below 1.
    [Theory]
    [InlineData(0.5, 0.2, 100)]
    [InlineData(0.8, 0.08, 2700)]
    public void Of_NoPlants_IsTheBetaDistributionOfThatManyMoreSeeds(double mean, double spread, double seeds)
    {
        var (alpha, beta) = BetaShape.Of(mean, spread);

        var learned = LearnedShare.Of(new ShareOfSeeds(0, 0, 3.688879 / seeds), mean, spread, 0.95);

        Assert.Equal(alpha / (alpha + beta + seeds), learned.Value, 0.06 * learned.Value);
        Assert.Equal(seeds / (alpha + beta + seeds), learned.Weight, 0.1);
    }

    // Exactly, for P(no plant) = exp(-n share): moments of beta(a, b) times exp(-n e) are ratios of Kummer's function, here by its
    // series after Kummer's transformation (DLMF 13.2.2 and 13.2.39, from memory).
    [Theory]
    [InlineData(0.5, 0.2, 40)]
    [InlineData(0.8, 0.399, 5)]
    [InlineData(0.5, 0.4999, 3)]
    [InlineData(0.9, 0.29, 25)]
    public void Of_NoPlants_HasTheMomentsOfKummersFunction(double mean, double spread, double seeds)
    {
        var (alpha, beta) = BetaShape.Of(mean, spread);
        double Kummer(double a) => Series(beta, a + beta, seeds);
        var first = alpha / (alpha + beta) * Kummer(alpha + 1) / Kummer(alpha);
        var second = alpha * (alpha + 1) / ((alpha + beta) * (alpha + beta + 1)) * Kummer(alpha + 2) / Kummer(alpha);

        var learned = LearnedShare.Of(new ShareOfSeeds(0, 0, -Math.Log(0.025) / seeds), mean, spread, 0.95);

        Assert.Equal(first, learned.Value, 1e-6);
        Assert.Equal(Math.Sqrt(second - first * first), learned.StandardDeviation, 1e-6);
    }

    // A hundred seeds looked at, 70 up: log-normal in place of binomial, but close to the beta distribution of alpha + 70 and beta + 30.
    [Fact]
    public void Of_SeedsLookedAt_IsNearlyTheBetaDistributionOfBoth()
    {
        var (alpha, beta) = BetaShape.Of(0.8, 0.1);
        var learned = LearnedShare.Of(Share(0.7, Math.Sqrt(0.7 * 0.3 / 100)), 0.8, 0.1, 0.95);

        Assert.Equal((alpha + 70) / (alpha + beta + 100), learned.Value, 0.01);
        Assert.Equal(100 / (alpha + beta + 100), learned.Weight, 0.05);
    }

    [Fact]
    public void Of_CountsOfAbsurdPrecision_StayBetweenNoneAndAll()
    {
        var learned = LearnedShare.Of(Share(0.3, 1e-5), 0.5, 0.4999, 0.95);

        Assert.Equal(0.3, learned.Value, 1e-4);
        Assert.InRange(learned.Upper - learned.Lower, 1e-5, 1e-4);
        Assert.InRange(LearnedShare.Of(Share(1600, 0.1), 0.5, 0.2, 0.9999).Value, 0.99, 1);
    }

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(1, 0.1)]
    [InlineData(0.5, 0)]
    [InlineData(0.5, 0.5)]
    [InlineData(0.99, 0.11)]
    public void Of_ImpossiblePrior_Throws(double mean, double spread) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LearnedShare.Of(Share(0.5, 0.1), mean, spread, 0.95));

    // 1F1(a; b; z) for z > 0, every term positive.
    private static double Series(double a, double b, double z)
    {
        var (sum, term) = (1.0, 1.0);
        for (var k = 0; term > 1e-18 * sum; k++)
            sum += term *= (a + k) / (b + k) * z / (k + 1);
        return sum;
    }

    private static ShareOfSeeds Share(double value, double uncertainty) =>
        new(value, value * Math.Exp(-Z * uncertainty / value), value * Math.Exp(Z * uncertainty / value));

    // The distribution of e^(a-1) (1-e)^(b-1) exp(-n e) up to a share, by adaptive quadrature of the library: from either end, and where a
    // shape below 1 makes a spike there, over the power of the share that flattens it.
    [Theory]
    [InlineData(0.5, 0.2, 40)]
    [InlineData(0.8, 0.08, 300)]
    [InlineData(0.8, 0.399, 5)]
    [InlineData(0.9, 0.29, 25)]
    [InlineData(0.5, 0.4999, 3)]
    public void Of_NoPlants_EndsWhereTheDistributionHasWhatIsLeft(double mean, double spread, double seeds)
    {
        var (alpha, beta) = BetaShape.Of(mean, spread);
        double Below(double share) => FromEnd(alpha, share, e => (beta - 1) * Math.Log(1 - e) - seeds * e);
        double Above(double share) => FromEnd(beta, 1 - share, e => (alpha - 1) * Math.Log(1 - e) - seeds * (1 - e));
        var all = Below(0.5) + Above(0.5);
        double Cdf(double share) =>
            share <= 0 ? 0
            : share >= 1 ? 1
            : share < 0.5 ? Below(share) / all
            : 1 - Above(share) / all;

        var learned = LearnedShare.Of(new ShareOfSeeds(0, 0, -Math.Log(0.025) / seeds), mean, spread, 0.95);

        AssertEnd(0.025, learned.Lower);
        AssertEnd(0.975, learned.Upper);

        void AssertEnd(double probability, double end) =>
            Assert.True(
                Cdf(end - 1e-5) <= probability && probability <= Cdf(end + 1e-5),
                $"{end:R} is not the share below which {probability} lies: {Cdf(end):R}."
            );

        static double FromEnd(double shape, double to, Func<double, double> logOfTheRest)
        {
            var power = Math.Max(1, 1 / shape);
            return Integrate.GaussKronrod(
                u => power * Math.Exp((shape * power - 1) * Math.Log(u) + logOfTheRest(Math.Pow(u, power))),
                0,
                Math.Pow(to, 1 / power),
                1e-11,
                20
            );
        }
    }
}
