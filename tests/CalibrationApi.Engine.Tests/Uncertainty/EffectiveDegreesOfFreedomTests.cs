using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Uncertainty;

public sealed class EffectiveDegreesOfFreedomTests
{
    private const double Infinite = double.PositiveInfinity;

    [Fact]
    public void Combine_OnePart_KeepsItsDegreesOfFreedom() => Assert.Equal(4, EffectiveDegreesOfFreedom.Combine((0.0001, 4)), 1e-12);

    [Fact]
    public void Combine_TwoEqualParts_AddTheirDegreesOfFreedom() =>
        Assert.Equal(10, EffectiveDegreesOfFreedom.Combine((2, 5), (2, 5)), 1e-12);

    [Fact]
    public void Combine_PartKnownWithoutDoubt_RaisesThem() =>
        Assert.Equal(16, EffectiveDegreesOfFreedom.Combine((1, 4), (1, Infinite)), 1e-12);

    [Fact]
    public void Combine_OnlyPartsKnownWithoutDoubt_IsInfinite() =>
        Assert.Equal(Infinite, EffectiveDegreesOfFreedom.Combine((1, Infinite), (2, Infinite)));

    [Fact]
    public void Combine_Result_IsNotTruncated() =>
        Assert.Equal(5 * 2.25, EffectiveDegreesOfFreedom.Combine((1, 5), (0.5, Infinite)), 1e-12);

    [Fact]
    public void Combine_Result_LiesBetweenTheSmallestAndTheSumOfTheParts()
    {
        var nu = EffectiveDegreesOfFreedom.Combine((0.2, 3), (1.1, 7), (0.4, 12));

        Assert.InRange(nu, 3, 3 + 7 + 12);
    }

    [Fact]
    public void Combine_NothingAtAll_IsInfinite() => Assert.Equal(Infinite, EffectiveDegreesOfFreedom.Combine());

    [Fact]
    public void Combine_NegativeVariance_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EffectiveDegreesOfFreedom.Combine((-1, 4)));

    [Fact]
    public void Combine_DegreesOfFreedomNotPositive_AreRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EffectiveDegreesOfFreedom.Combine((1, 0)));
}
