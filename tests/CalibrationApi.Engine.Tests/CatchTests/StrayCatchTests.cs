using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>One catch that stands apart, judged by its deleted residual.</summary>
public sealed class StrayCatchTests
{
    // The two others are equal, so tau^2 = nu0 s0^2 / (nu0 + 1) and u^2 = tau^2 / 2; nu0 + c - 2 = 5 degrees of freedom.
    [Fact]
    public void FarthestProbability_ThreeCatches_IsTheBonferroniCorrectedDeletedResidual()
    {
        var agreement = Given.PureTest(0.36, 0.36, 0.378).Evaluated().Agreement;

        var t = 0.05 / Math.Sqrt(4e-4 / 5 * 1.5);
        Assert.Equal(2, agreement.FarthestCatch);
        Assert.Equal(0.05, agreement.FarthestDeviation, 1e-12);
        NearlyEqual.Assert(3 * StudentT.TwoSided(t, 5), agreement.FarthestProbability, 1e-6);
    }

    [Fact]
    public void HasStray_OneCatchTenPercentOff_IsSeen()
    {
        var agreement = Given.PureTest(0.36, 0.361, 0.396, 0.359).Evaluated().Agreement;

        Assert.True(agreement.HasStray);
        Assert.Equal(2, agreement.FarthestCatch);
    }

    // At three catches Grubbs' statistic reaches its bound as soon as two readings are equal; the prior keeps its head.
    [Theory]
    [InlineData(0.36, 0.36, 0.3636)]
    [InlineData(0.36, 0.36, 0.3645)]
    [InlineData(0.36, 0.36, 0.3555)]
    public void HasStray_TwoEqualReadingsAndAnHonestThird_IsNotSeen(double first, double second, double third) =>
        Assert.False(Given.PureTest(first, second, third).Evaluated().Agreement.HasStray);

    [Fact]
    public void FarthestCatch_TwoCatches_CannotBeTold()
    {
        var agreement = Given.PureTest(0.36, 0.40).Evaluated().Agreement;

        Assert.Null(agreement.FarthestCatch);
        Assert.False(agreement.HasStray);
    }

    [Fact]
    public void FarthestCatch_AfterAnExcludedOne_IsCountedAmongAllCatches()
    {
        var agreement = Given
            .Test(
                Given.Delivering(0.36, excludedBecause: "spilled"),
                Given.Delivering(0.36),
                Given.Delivering(0.36),
                Given.Delivering(0.40)
            )
            .Evaluated()
            .Agreement;

        Assert.Equal(3, agreement.FarthestCatch);
    }

    [Fact]
    public void FarthestProbability_ManyOrdinaryCatches_NeverExceedsOne() =>
        Assert.InRange(Given.PureTest([.. Enumerable.Repeat(0.36, 20)]).Evaluated().Agreement.FarthestProbability, 0, 1);
}
