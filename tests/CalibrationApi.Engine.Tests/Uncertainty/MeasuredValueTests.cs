using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Uncertainty;

public sealed class MeasuredValueTests
{
    // t_0.975(9) = 2.262157, printed in every t table.
    [Fact]
    public void Create_NineDegreesOfFreedom_ExpandsWithTheTQuantile()
    {
        var measured = MeasuredValue.Create(100, TwoPartUncertainty.Of(2, 9), 0.95);

        Assert.Equal(2.262157, measured.CoverageFactor, 5e-7);
        Assert.Equal(measured.CoverageFactor * 2, measured.ExpandedUncertainty);
        Assert.Equal(100, measured.Value);
        Assert.Equal(0.95, measured.CoverageProbability);
    }

    [Fact]
    public void Create_InfiniteDegreesOfFreedom_ExpandsWithTheNormalQuantile() =>
        Assert.Equal(2.575829, MeasuredValue.Create(1, TwoPartUncertainty.Of(1, double.PositiveInfinity), 0.99).ExpandedUncertainty, 5e-7);

    [Fact]
    public void Create_NoUncertainty_HasAnIntervalWithoutWidth() =>
        Assert.Equal(0, MeasuredValue.Create(5, TwoPartUncertainty.Of(0, 4), 0.95).ExpandedUncertainty);
}
