using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>What happens to rate, mass and money if the old value stays.</summary>
public sealed class EffectOnApplicationTests
{
    private static readonly MassPerArea Target = new(0.009);

    private static readonly Area FortyEightHectares = new(480_000);

    [Fact]
    public void Of_MeterThatDeliversMore_OverApplies()
    {
        var effect = EffectOnApplication.Of(Target, 0.06, FortyEightHectares, 0.42);

        NearlyEqual.Assert(0.00954, effect.AppliedRate.KilogramsPerSquareMetre);
        Assert.Equal(0.009 * 0.06 * 480_000, effect.MassOverArea!.Value.Kilograms, 1e-9);
        Assert.Equal(0.009 * 0.06 * 480_000 * 0.42, effect.Cost!.Value, 1e-9);
    }

    [Fact]
    public void Of_MeterThatDeliversLess_MissesProduct()
    {
        var effect = EffectOnApplication.Of(Target, -0.05, FortyEightHectares, 0.42);

        Assert.True(effect.AppliedRate.KilogramsPerSquareMetre < 0.009);
        Assert.True(effect.MassOverArea!.Value.Kilograms < 0);
        Assert.True(effect.Cost < 0);
    }

    [Fact]
    public void Of_NoAreaOrPrice_LeavesMassOrMoneyOut()
    {
        var rateOnly = EffectOnApplication.Of(Target, 0.06, null, 0.42);
        var withoutPrice = EffectOnApplication.Of(Target, 0.06, FortyEightHectares, null);

        Assert.Null(rateOnly.MassOverArea);
        Assert.Null(rateOnly.Cost);
        Assert.NotNull(withoutPrice.MassOverArea);
        Assert.Null(withoutPrice.Cost);
    }

    [Fact]
    public void Evaluate_ValueInForceAndTargetRate_GivesTheEffectOfTheChange()
    {
        var result = (Given.Test(Given.Net(17.08, 47)).InForce(0.342) with { TargetRate = Target, Area = FortyEightHectares }).Evaluated();

        NearlyEqual.Assert(0.009 * (1 + result.Change!.Delta.Value), result.EffectIfValueInForceStays!.AppliedRate.KilogramsPerSquareMetre);
    }

    [Fact]
    public void Evaluate_NoTargetRate_GivesNoEffect() =>
        Assert.Null(Given.Test(Given.Net(17.08, 47)).InForce(0.342).Evaluated().EffectIfValueInForceStays);

    [Fact]
    public void Evaluate_StartValueOnly_GivesNoEffectBecauseNothingIsInForce() =>
        Assert.Null(
            (Given.Test(Given.Net(17.08, 47)).StartingFrom(0.342) with { TargetRate = Target }).Evaluated().EffectIfValueInForceStays
        );
}
