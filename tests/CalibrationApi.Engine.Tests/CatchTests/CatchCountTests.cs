using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>How many catches a wanted precision takes.</summary>
public sealed class CatchCountTests
{
    // t(nu0 + c - 1) s0 / sqrt(c) when nothing but the repeatability counts.
    [Theory]
    [InlineData(1, 4)]
    [InlineData(2, 5)]
    [InlineData(9, 12)]
    public void ExpectedPrecision_OnlyRepeatability_FallsWithTheRootOfTheCatches(int catches, double nu) =>
        NearlyEqual.Assert(
            StudentT.CoverageFactor(0.95, nu) * 0.01 / Math.Sqrt(catches),
            CatchCount.ExpectedPrecision(catches, 1e-4, 4, 0, 0, 0.95),
            1e-11
        );

    [Fact]
    public void ExpectedPrecision_CommonPart_IsNotAveraged()
    {
        var many = CatchCount.ExpectedPrecision(CatchCount.Most, 1e-4, 4, 0, 0.01, 0.95);

        Assert.True(many > StudentT.CoverageFactor(0.95, double.PositiveInfinity) * 0.01);
    }

    [Fact]
    public void ExpectedPrecision_OneMoreCatch_IsAlwaysSmaller()
    {
        var precisions = Enumerable
            .Range(1, CatchCount.Most)
            .Select(catches => CatchCount.ExpectedPrecision(catches, 1e-4, 4, 2e-5, 0.001, 0.95))
            .ToArray();

        Assert.All(precisions.Zip(precisions.Skip(1)), pair => Assert.True(pair.First > pair.Second));
    }

    [Theory]
    [InlineData(0.03)]
    [InlineData(0.015)]
    [InlineData(0.006)]
    public void Needed_WantedPrecision_IsTheSmallestNumberThatReachesIt(double wanted)
    {
        var needed = CatchCount.Needed(wanted, 1, 1e-4, 4, 2e-5, 0.001, 0.95);

        Assert.NotNull(needed);
        Assert.True(CatchCount.ExpectedPrecision(needed.Value, 1e-4, 4, 2e-5, 0.001, 0.95) <= wanted);
        if (needed > 1)
            Assert.True(CatchCount.ExpectedPrecision(needed.Value - 1, 1e-4, 4, 2e-5, 0.001, 0.95) > wanted);
    }

    [Fact]
    public void Needed_AtLeast_IsRespected() => Assert.Equal(7, CatchCount.Needed(0.1, 7, 1e-4, 4, 0, 0, 0.95));

    [Fact]
    public void Needed_CommonPartAloneTooWide_IsNone()
    {
        Assert.True(CatchCount.OutOfReach(0.03, 0.016, 0.95));
        Assert.Null(CatchCount.Needed(0.03, 1, 1e-4, 4, 0, 0.016, 0.95));
    }

    [Fact]
    public void Needed_MoreThanIsPractical_IsNone()
    {
        Assert.False(CatchCount.OutOfReach(0.001, 0, 0.95));
        Assert.Null(CatchCount.Needed(0.001, 1, 1e-4, 4, 0, 0, 0.95));
    }
}
