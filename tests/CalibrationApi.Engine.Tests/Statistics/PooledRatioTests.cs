using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>The variance between catches as the root of its estimating equation, and the pooled value.</summary>
public sealed class PooledRatioTests
{
    private static readonly RepeatabilityPrior OnePercent = new(0.01, 4, "test");

    public static TheoryData<double[], double[]> Cases =>
        new()
        {
            { [0.3634, 0.3620], [4e-6, 5e-6] },
            { [0.36, 0.37, 0.35], [1e-6, 1e-4, 1e-3] },
            { [0.36, 0.36, 0.36], [1e-6, 1e-6, 1e-6] },
            { [0.30, 0.40, 0.36, 0.35, 0.37], [0, 0, 0, 0, 0] },
            { [1, 2, 5], [0.01, 0.2, 1] },
            { [0.36, 0.3601], [0.5, 0.5] },
            { [0.36, 0.3600001, 0.36], [1e-12, 1e-12, 1e-12] },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Pool_BetweenVariance_SolvesTheEstimatingEquation(double[] values, double[] variances)
    {
        var pooled = Pooled.Of(values, variances, OnePercent);

        var sum = 4 * 0.01 * 0.01 / pooled.BetweenVariance;
        for (var i = 0; i < values.Length; i++)
            sum += Math.Pow(values[i] / pooled.Value - 1, 2) / (pooled.BetweenVariance + variances[i]);
        NearlyEqual.Assert(4 + values.Length - 1, sum, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Pool_Value_IsTheMeanWeightedWithTheWholeVariance(double[] values, double[] variances)
    {
        var pooled = Pooled.Of(values, variances, OnePercent);

        var weights = variances.Select(v => 1 / (pooled.BetweenVariance + v)).ToArray();
        NearlyEqual.Assert(weights.Zip(values, (w, k) => w * k).Sum() / weights.Sum(), pooled.Value, 1e-14);
        NearlyEqual.Assert(weights.Sum(), pooled.SumOfWeights, 1e-14);
        NearlyEqual.Assert(1 / weights.Sum(), pooled.RelativeVariance, 1e-14);
        NearlyEqual.Assert(pooled.BetweenVariance * weights.Sum(w => w * w) / (weights.Sum() * weights.Sum()), pooled.BetweenShare, 1e-14);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Pool_DegreesOfFreedom_ArePriorPlusCatchesLessOne(double[] values, double[] variances) =>
        Assert.Equal(4 + values.Length - 1, Pooled.Of(values, variances, OnePercent).DegreesOfFreedom);

    [Fact]
    public void Pool_OneCatch_BelievesThePrior()
    {
        var pooled = Pooled.Of([0.36], [9e-6], OnePercent);

        Assert.Equal(0.36, pooled.Value);
        NearlyEqual.Assert(1e-4, pooled.BetweenVariance, 1e-14);
        NearlyEqual.Assert(1e-4 + 9e-6, pooled.RelativeVariance, 1e-14);
    }

    // s_p^2 = (nu0 s0^2 + (c - 1) s^2) / (nu0 + c - 1), the usual pooling of variances.
    [Fact]
    public void Pool_NoKnownVariance_IsTheUsualPoolingOfVariances()
    {
        double[] values = [0.98, 1.00, 1.02];

        var pooled = Pooled.Of(values, [0, 0, 0], OnePercent);

        NearlyEqual.Assert((4 * 1e-4 + 2 * 4e-4) / 6, pooled.BetweenVariance, 1e-13);
        NearlyEqual.Assert(1.0, pooled.Value, 1e-14);
    }

    [Fact]
    public void Pool_CatchesThatAgreeBetterThanBelieved_LowerTheVarianceBelowThePrior()
    {
        var pooled = Pooled.Of([0.36, 0.36, 0.36, 0.36], [0, 0, 0, 0], OnePercent);

        NearlyEqual.Assert(4 * 1e-4 / 7, pooled.BetweenVariance, 1e-13);
    }

    [Fact]
    public void Pool_WildCatches_RaiseTheVarianceAboveThePrior() =>
        Assert.True(Pooled.Of([0.30, 0.36, 0.42], [0, 0, 0], OnePercent).BetweenVariance > 50 * 1e-4);

    [Fact]
    public void Pool_CatchKnownLessWell_CountsLess()
    {
        var pooled = Pooled.Of([0.36, 0.40], [0, 0.01], OnePercent);

        Assert.InRange(pooled.Value, 0.36, 0.38);
    }

    [Fact]
    public void Pool_LeftOut_IsTheSameAsPoolingTheOthers()
    {
        var without = Pooled.Of([0.36, 0.44, 0.37], [1e-6, 2e-6, 3e-6], OnePercent, leftOut: 1);

        Assert.Equal(Pooled.Of([0.36, 0.37], [1e-6, 3e-6], OnePercent), without);
    }

    // No pre-test switches the prior off: the variance moves smoothly as one catch walks away.
    [Fact]
    public void Pool_OneCatchWalkingAway_ChangesTheIntervalWithoutAJump()
    {
        var widths = Enumerable
            .Range(0, 2001)
            .Select(i => Pooled.Of([0.36, 0.36, 0.36 * (1 + i * 1e-4)], [1e-6, 1e-6, 1e-6], OnePercent).RelativeVariance)
            .Select(Math.Sqrt)
            .ToArray();

        Assert.All(widths.Zip(widths.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0, 1e-4));
    }

    [Fact]
    public void Pool_NothingToPool_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Pooled.Of([], [], OnePercent));
        Assert.Throws<ArgumentException>(() => Pooled.Of([0.36], [1e-6], OnePercent, leftOut: 0));
        Assert.Throws<ArgumentException>(() => Pooled.Of([0.36, 0.37], [1e-6], OnePercent));
    }
}
