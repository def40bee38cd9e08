using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.Wheels;

public sealed class RollingWheelTests
{
    [Fact]
    public void Circumference_TimesTurns_IsTheDistance() =>
        NearlyEqual.Assert(46.3, RollingWheel.Circumference(new Length(46.3), 20).Metres * 20);

    [Fact]
    public void Turns_OfItsOwnCourse_AreThoseCounted() =>
        NearlyEqual.Assert(20, RollingWheel.Turns(new Length(46.3), RollingWheel.Circumference(new Length(46.3), 20)));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Circumference_WithoutTurns_IsRefused(double turns) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RollingWheel.Circumference(new Length(1), turns));

    // 100 m on a wheel of 2 m: 50 turns without slip.
    [Fact]
    public void SlipAndSkid_OfAFreeWheel_AreZero()
    {
        Assert.Equal(0, RollingWheel.Slip(new Length(100), 50, new Length(2)), 1e-15);
        Assert.Equal(0, RollingWheel.Skid(new Length(100), 50, new Length(2)), 1e-15);
    }

    [Fact]
    public void Slip_OfAWheelThatSpins_IsPositiveAndItsSkidNegative()
    {
        Assert.Equal(0.2, RollingWheel.Slip(new Length(100), 62.5, new Length(2)), 1e-12);
        Assert.Equal(-0.25, RollingWheel.Skid(new Length(100), 62.5, new Length(2)), 1e-12);
    }

    [Fact]
    public void Skid_OfAWheelThatDrags_IsPositiveAndItsSlipNegative()
    {
        Assert.Equal(0.2, RollingWheel.Skid(new Length(100), 40, new Length(2)), 1e-12);
        Assert.Equal(-0.25, RollingWheel.Slip(new Length(100), 40, new Length(2)), 1e-12);
    }

    // (1 - slip) and (1 - skid) are reciprocal: one is distance over turns, the other turns over distance.
    [Theory]
    [InlineData(37)]
    [InlineData(50)]
    [InlineData(71.5)]
    public void SlipAndSkid_OfOneRun_AreReciprocal(double turns) => NearlyEqual.Assert(
        1, (1 - RollingWheel.Slip(new Length(100), turns, new Length(2))) * (1 - RollingWheel.Skid(new Length(100), turns, new Length(2))));
}
