using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>Shares between what was counted and what was believed.</summary>
public sealed class LearnedShareTests
{
    private static readonly double Z = StudentT.CoverageFactor(0.95, double.PositiveInfinity);

    // Where both spreads are small the logarithm and the logit are straight lines, and two normal distributions combine in closed form.
    [Fact]
    public void Of_NarrowPriorAndCounts_IsTheMeanWeightedByPrecision()
    {
        const double Prior = 0.60, Spread = 0.004, Counted = 0.606, Uncertainty = 0.006;
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

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(1, 0.1)]
    [InlineData(0.5, 0)]
    public void Of_ImpossiblePrior_Throws(double mean, double spread) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LearnedShare.Of(Share(0.5, 0.1), mean, spread, 0.95));

    private static ShareOfSeeds Share(double value, double uncertainty) =>
        new(value, value * Math.Exp(-Z * uncertainty / value), value * Math.Exp(Z * uncertainty / value));
}
