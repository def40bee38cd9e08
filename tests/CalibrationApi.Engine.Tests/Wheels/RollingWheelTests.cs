using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.Wheels;

public sealed class RollingWheelTests
{
    [Fact]
    public void Circumference_TimesTurns_IsTheDistance() =>
        NearlyEqual.Assert(46.3, RollingWheel.Circumference(new Length(46.3), 20).Metres * 20);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Circumference_WithoutTurns_IsRefused(double turns) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RollingWheel.Circumference(new Length(1), turns));

    [Theory]
    [InlineData(100, 50, false)]
    [InlineData(1, 10, false)]
    [InlineData(0.99, 10, true)]
    [InlineData(300, 10, false)]
    [InlineData(300.1, 10, true)]
    public void IsNoWheel_DistanceInATurn_BeginsBeyondWhatWheelsRoll(double metres, double turns, bool isNone) =>
        Assert.Equal(isNone, RollingWheel.IsNoWheel(metres, turns));
}
