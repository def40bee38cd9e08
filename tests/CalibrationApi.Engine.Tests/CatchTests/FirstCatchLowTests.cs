namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>A first catch that is low, as when the meter was not primed; one-sided.</summary>
public sealed class FirstCatchLowTests
{
    [Fact]
    public void FirstIsLow_FirstCatchFourPercentUnderTheOthers_IsSeen()
    {
        var agreement = Given.PureTest(0.3456, 0.36, 0.3605, 0.3598).Evaluated().Agreement;

        Assert.True(agreement.FirstIsLow);
        Assert.Equal(-0.04, agreement.FirstDeviation, 0.001);
    }

    [Fact]
    public void FirstIsLow_FirstCatchHigh_IsNeverSeen()
    {
        var agreement = Given.PureTest(0.40, 0.36, 0.3605, 0.3598).Evaluated().Agreement;

        Assert.Equal(1, agreement.FirstLowProbability);
        Assert.True(agreement.HasStray);
    }

    [Fact]
    public void FirstIsLow_AnotherCatchLow_IsNotSeen() =>
        Assert.False(Given.PureTest(0.36, 0.3456, 0.3605, 0.3598).Evaluated().Agreement.FirstIsLow);

    [Fact]
    public void FirstLowProbability_TwoCatches_CannotBeTold() =>
        Assert.Equal(1, Given.PureTest(0.34, 0.36).Evaluated().Agreement.FirstLowProbability);

    [Fact]
    public void FirstLowProbability_LowFirstCatch_IsHalfTheTwoSidedOne()
    {
        var agreement = Given.PureTest(0.342, 0.36, 0.36).Evaluated().Agreement;

        // The first catch is also the farthest, so the stray test holds the same t with c times two tails.
        NearlyEqual.Assert(agreement.FarthestProbability / 6, agreement.FirstLowProbability, 1e-9);
    }
}
