using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Weighing;

public sealed class KnownScaleErrorTests
{
    [Theory]
    [InlineData(0.5)]
    [InlineData(-0.5)]
    [InlineData(double.NaN)]
    public void Constructor_ErrorOfHalfTheLoad_IsRefused(double relative) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new KnownScaleError(relative, 0.001));

    [Theory]
    [InlineData(-0.001)]
    [InlineData(0.5)]
    [InlineData(double.NaN)]
    public void Constructor_UncertaintyOutsideItsRange_IsRefused(double uncertainty) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new KnownScaleError(0.01, uncertainty));

    [Fact]
    public void Constructor_ErrorWithoutUncertainty_IsAccepted() => Assert.Equal(0, new KnownScaleError(-0.02, 0).StandardUncertainty);
}
