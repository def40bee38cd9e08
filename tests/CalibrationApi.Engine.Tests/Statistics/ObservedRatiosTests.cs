using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>Amounts over counts as ratios, whatever is counted.</summary>
public sealed class ObservedRatiosTests
{
    private static readonly ObservedRatios Three = new([2, 6.3, 3.8], [10, 30, 20], [1e-6, 2e-6, 3e-6], 1e-4, 4);

    [Fact]
    public void Values_AreAmountsOverCounts() => Assert.Equal([2.0 / 10, 6.3 / 30, 3.8 / 20], Three.Values);

    [Fact]
    public void Pool_TheRatios_IsThatOfTheirValues()
    {
        Assert.Equal(PooledRatio.Pool([0.2, 6.3 / 30, 0.19], [1e-6, 2e-6, 3e-6], [1e-4, 1e-4, 1e-4], 4), Three.Pool());
        Assert.Equal(PooledRatio.Pool([0.2, 0.19], [1e-6, 3e-6], [1e-4, 1e-4], 4), Three.Pool(leftOut: 1));
    }

    // Equal variances a: Q = sum((k_i/k - 1)^2) / a about the plain mean, and the spread squared is the same sum over n - 1.
    [Fact]
    public void Scatter_EquallyKnown_IsThePlainOne()
    {
        var (q, spread) = new ObservedRatios([0.98, 1.00, 1.02], [1, 1, 1], [1e-4, 1e-4, 1e-4], 3e-4, 4).Scatter();

        NearlyEqual.Assert(2 * 0.0004 / 4e-4, q, 1e-12);
        NearlyEqual.Assert(0.02, spread, 1e-12);
    }

    [Fact]
    public void Scatter_OfOne_IsNone() => Assert.Equal((0, 0), new ObservedRatios([2], [3], [0], 1e-4, 4).Scatter());
}
