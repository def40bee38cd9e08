using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>The old value, aged by a day, and the new one combined.</summary>
public sealed class CombinedValueTests
{
    private static readonly CatchTestQuestion TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    [Fact]
    public void Combined_OldUncertaintyKnownAndNoChange_LiesBetweenOldAndNew()
    {
        var result = TwoCatches.InForce(0.36, 0.01).Evaluated();

        Assert.NotNull(result.Change!.Combined);
        Assert.InRange(result.Change.Combined.Value, 0.36, result.Estimate.Value.Value);
    }

    [Fact]
    public void Combined_OldValueHardlyKnown_IsTheNewValue()
    {
        var result = TwoCatches.InForce(0.36, 5).Evaluated();

        NearlyEqual.Assert(result.Estimate.Value.Value, result.Change!.Combined!.Value, 1e-4);
    }

    [Fact]
    public void Combined_TwoValues_IsKnownBetterThanTheNewOneOnItsDay()
    {
        var result = TwoCatches.InForce(0.36, 0.01).Evaluated();

        var fresh = Math.Sqrt(result.Estimate.RelativeVariance + 0.01 * 0.01);
        Assert.True(result.Change!.Combined!.StandardUncertainty / result.Change.Combined.Value < fresh);
    }

    // Inverse-variance mean by hand: the aged old variance is u^2 + sigma_d^2, the fresh one adds sigma_d^2 too.
    [Fact]
    public void Combined_SameScale_WeighsWithoutTheSharedSpan()
    {
        var result = TwoCatches.InForce(0.36, 0.01).Evaluated();

        var aged = 0.01 * 0.01 + 0.01 * 0.01;
        var fresh = result.Estimate.VarianceWithoutSpan + 0.01 * 0.01;
        var expected = (0.36 / aged + result.Estimate.Value.Value / fresh) / (1 / aged + 1 / fresh);
        NearlyEqual.Assert(expected, result.Change!.Combined!.Value, 1e-12);
        var variance = 1 / (1 / aged + 1 / fresh) + result.Estimate.Span * result.Estimate.Span;
        NearlyEqual.Assert(expected * Math.Sqrt(variance), result.Change.Combined.StandardUncertainty, 1e-12);
    }

    [Theory]
    [InlineData(0.36, null)]
    [InlineData(0.36, 0.0)]
    [InlineData(0.30, 0.01)]
    public void Combined_OldUncertaintyUnknownOrAChangeDetected_IsNotOffered(double inForce, double? uncertainty) =>
        Assert.Null(TwoCatches.InForce(inForce, uncertainty).Evaluated().Change!.Combined);
}
