using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Catches that rise or fall one after the other.</summary>
public sealed class CatchTrendTests
{
    [Fact]
    public void HasTrend_FiveCatchesThatRiseSteadily_IsSeenWithItsSlope()
    {
        var agreement = Given.PureTest(0.96, 0.98, 1.00, 1.02, 1.04).Evaluated().Agreement;

        Assert.True(agreement.HasTrend);
        Assert.Equal(0.02, agreement.TrendPerCatch, 1e-9);
    }

    [Fact]
    public void TrendPerCatch_FallingCatches_IsNegative() =>
        Assert.Equal(-0.02, Given.PureTest(1.04, 1.02, 1.00, 0.98, 0.96).Evaluated().Agreement.TrendPerCatch, 1e-9);

    [Fact]
    public void TrendProbability_FourCatches_IsNotAsked()
    {
        var agreement = Given.PureTest(0.96, 0.98, 1.00, 1.02).Evaluated().Agreement;

        Assert.Equal(1, agreement.TrendProbability);
        Assert.False(agreement.HasTrend);
    }

    [Fact]
    public void HasTrend_OrdinaryScatter_IsNotSeen() =>
        Assert.False(Given.PureTest(1.00, 1.004, 0.997, 1.002, 0.999).Evaluated().Agreement.HasTrend);

    // Perfectly linear values leave no residuals: tau^2 = nu0 s0^2 / (nu0 + c - 2), slope variance tau^2 / Sxx with Sxx = 10.
    [Fact]
    public void TrendProbability_PerfectLine_IsThatOfTheSlopeOverThePrior()
    {
        var agreement = Given.PureTest(0.998, 0.999, 1.000, 1.001, 1.002).Evaluated().Agreement;

        var t = 0.001 / Math.Sqrt(4e-4 / 7 / 10);
        NearlyEqual.Assert(StudentT.TwoSided(t, 7), agreement.TrendProbability, 1e-6);
    }
}
