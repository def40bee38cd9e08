using CalibrationApi.Engine.StandRisks;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Tests.StandRisks;

/// <summary>Plants per seed meant to be sown, against the library's distributions and a seeded simulation.</summary>
public sealed class SeedSurvivalTests
{
    private static readonly double[] Probabilities = [0.001, 0.01, 0.05, 0.1, 0.25, 0.5, 0.9];

    // No relative error: the beta distribution of the library, by mean and standard deviation.
    [Theory]
    [InlineData(0.6, 0.1)]
    [InlineData(0.85, 0.05)]
    [InlineData(0.3, 0.2)]
    public void Quantile_NoRelativeError_IsThatOfTheBetaDistribution(double mean, double spread)
    {
        var size = mean * (1 - mean) / (spread * spread) - 1;
        var library = new Beta(mean * size, (1 - mean) * size);
        var survival = new SeedSurvival(mean, spread, 0);

        NearlyEqual.Assert(mean, library.Mean);
        NearlyEqual.Assert(spread, library.StdDev);
        Assert.All(Probabilities, probability =>
        {
            Assert.Equal(probability, library.CumulativeDistribution(survival.Quantile(probability)), 1e-9);
            Assert.Equal(library.CumulativeDistribution(0.4), survival.Cdf(0.4), 1e-12);
        });
    }

    // No spread of the share: the log-normal distribution of the library.
    [Fact]
    public void Quantile_NoSpread_IsThatOfTheLogNormalDistribution()
    {
        var library = new LogNormal(Math.Log(0.7), 0.05);
        var survival = new SeedSurvival(0.7, 0, 0.05);

        Assert.All(Probabilities, probability =>
            NearlyEqual.Assert(library.InverseCumulativeDistribution(probability), survival.Quantile(probability), 1e-9)
        );
        Assert.Equal(library.CumulativeDistribution(0.65), survival.Cdf(0.65), 1e-12);
    }

    // A vanishing part of either sort changes nothing; both grids and the narrow case come to the same limits.
    [Theory]
    [InlineData(0.6, 0.1, 0.0005, 0.1, 0)]
    [InlineData(0.6, 0.0001, 0.04, 0, 0.04)]
    [InlineData(0.9, 0.05, 0.001, 0.05, 0)]
    public void Cdf_OnePartNearlyNothing_IsThatWithoutIt(
        double mean,
        double spread,
        double relative,
        double spreadLeft,
        double relativeLeft
    )
    {
        var both = new SeedSurvival(mean, spread, relative);
        var one = new SeedSurvival(mean, spreadLeft, relativeLeft);

        for (var x = 0.3; x < 1; x += 0.05)
            Assert.Equal(one.Cdf(x), both.Cdf(x), 2e-4);
    }

    // Where the two grids and the narrow case take over from one another, the answer goes on smoothly.
    [Theory]
    [InlineData(0.7, 0.07, 0.0999, 0.1001)]
    [InlineData(0.7, 0.00699, 0.0998, 0.1001)]
    public void Cdf_WhereTheIntegrationChanges_DoesNotJump(double mean, double spread, double relative, double relativeAfter) =>
        Assert.All((double[])[0.55, 0.6, 0.65, 0.7], x =>
            Assert.Equal(new SeedSurvival(mean, spread, relative).Cdf(x), new SeedSurvival(mean, spread, relativeAfter).Cdf(x), 1e-3)
        );

    // With beta = 1, 2 or 3 the distribution of the share is a polynomial in powers of it, and each power has its expectation over the
    // part of the normal distribution above the edge: E[(x exp(-u z))^p; z > ln(x) / u] = x^p exp(p^2 u^2 / 2) P(Z > ln(x) / u + p u).
    [Theory]
    [InlineData(1, 1, 0.05)]
    [InlineData(1.5, 1, 0.2)]
    [InlineData(0.4, 1, 0.1)]
    [InlineData(1, 2, 0.02)]
    [InlineData(1.2, 2, 0.3)]
    [InlineData(4, 2, 0.1)]
    [InlineData(2, 3, 0.15)]
    [InlineData(10, 1, 0.092)]
    [InlineData(30, 1, 0.033)]
    [InlineData(100, 1, 0.01)]
    [InlineData(1, 3, 0.8)]
    [InlineData(1.2, 3, 0.7)]
    [InlineData(4, 2, 0.4)]
    [InlineData(100, 2, 0.02)]
    public void Cdf_ShapesWithAClosedForm_IsThat(double alpha, int beta, double relative)
    {
        var (mean, spread) = MomentsOf(alpha, beta);
        var survival = new SeedSurvival(mean, spread, relative);

        for (var x = 0.02; x < 1.6; x += 0.034)
        {
            var edge = Math.Log(x) / relative;
            double Above(double power) =>
                Math.Pow(x, power) * Math.Exp(power * power * relative * relative / 2) * Normal.CDF(0, 1, -(edge + power * relative));
            var expected =
                Normal.CDF(0, 1, edge)
                + beta switch
                {
                    1 => Above(alpha),
                    2 => (1 + alpha) * Above(alpha) - alpha * Above(alpha + 1),
                    _ => (alpha + 1) * (alpha + 2) / 2 * Above(alpha)
                        - alpha * (alpha + 2) * Above(alpha + 1)
                        + alpha * (alpha + 1) / 2 * Above(alpha + 2),
                };
            Assert.Equal(expected, survival.Cdf(x), 1e-6);
        }
    }

    // Other shapes: adaptive quadrature of the library, in pieces, so that it sees the edge.
    [Theory]
    [InlineData(1.3, 1.1, 0.05)]
    [InlineData(1.05, 1.8, 0.25)]
    [InlineData(3, 0.5, 0.1)]
    [InlineData(0.3, 0.3, 0.2)]
    [InlineData(8, 1.4, 0.08)]
    public void Cdf_OtherShapes_IsThatOfAdaptiveQuadrature(double alpha, double beta, double relative)
    {
        var (mean, spread) = MomentsOf(alpha, beta);
        var survival = new SeedSurvival(mean, spread, relative);

        for (var x = 0.05; x < 1.5; x += 0.09)
        {
            var edge = Math.Log(x) / relative;
            double Density(double z) => Normal.PDF(0, 1, z) * Beta.CDF(alpha, beta, Math.Min(1, x * Math.Exp(-relative * z)));
            var (from, expected) = (Math.Clamp(edge, -8, 8), Normal.CDF(0, 1, edge));
            const int Pieces = 8;
            for (var i = 0; i < Pieces; i++)
                expected += Integrate.GaussKronrod(Density, from + (8 - from) * i / Pieces, from + (8 - from) * (i + 1) / Pieces, 1e-8, 12);
            Assert.Equal(expected, survival.Cdf(x), 1e-6);
        }
    }

    // 400 000 seasons, so that a share has a standard deviation of 0.0008 at most.
    [Theory]
    [InlineData(0.6, 0.12, 0.05)]
    [InlineData(0.85, 0.04, 0.08)]
    [InlineData(0.5, 0.2, 0.3)]
    [InlineData(0.9, 0.02, 0.3)]
    [InlineData(0.7, 0.4, 0.1)]
    [InlineData(0.9, 0.25, 0.4)]
    [InlineData(0.2, 0.2, 0.02)]
    public void Quantile_AgainstSimulatedSeasons_HasItsProbability(double mean, double spread, double relative)
    {
        const int Seasons = 400_000;
        var random = new Random(20260301);
        var size = mean * (1 - mean) / (spread * spread) - 1;
        var shares = new double[Seasons];
        for (var i = 0; i < Seasons; i++)
            shares[i] = Beta.Sample(random, mean * size, (1 - mean) * size) * Math.Exp(relative * Normal.Sample(random, 0, 1));
        var survival = new SeedSurvival(mean, spread, relative);

        Assert.All(Probabilities, probability =>
        {
            var at = survival.Quantile(probability);
            Assert.Equal(probability, (double)shares.Count(share => share <= at) / Seasons, 0.0035);
            Assert.Equal(probability, survival.Cdf(at), 1e-9);
        });
    }

    private static (double Mean, double Spread) MomentsOf(double alpha, double beta)
    {
        var size = alpha + beta;
        return (alpha / size, Math.Sqrt(alpha * beta / (size + 1)) / size);
    }

    [Theory]
    [InlineData(0.5, 0.5, false)]
    [InlineData(0.5, 0.49, true)]
    [InlineData(1, 0, true)]
    [InlineData(1, 0.01, false)]
    [InlineData(0, 0, false)]
    [InlineData(1.1, 0, false)]
    [InlineData(0.5, -0.1, false)]
    public void IsPossible_IsWhatASharesMeanAndSpreadAllow(double mean, double spread, bool possible)
    {
        Assert.Equal(possible, SeedSurvival.IsPossible(mean, spread));
        if (!possible)
            Assert.Throws<ArgumentOutOfRangeException>(() => new SeedSurvival(mean, spread, 0));
    }
}
