using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Weighing;

public sealed class ScaleTests
{
    private static readonly Scale Platform = new() { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III };

    [Theory]
    [InlineData(9, 0.02)]
    [InlineData(10, 0.02)]
    [InlineData(10.02, 0.04)]
    [InlineData(40, 0.04)]
    [InlineData(40.02, 0.06)]
    public void LimitAt_ClassThree_IsTheLimitInServiceAtTheNetLoad(double net, double expected)
    {
        var (limit, origin) = Platform.LimitAt(new Mass(net));

        Assert.Equal(expected, limit.Kilograms, 1e-12);
        Assert.Contains("OIML R 76", origin, StringComparison.Ordinal);
        Assert.Contains("class III", origin, StringComparison.Ordinal);
    }

    [Fact]
    public void LimitAt_VerificationIntervalOfItsOwn_CountsInsteadOfTheDivision()
    {
        var scale = Platform with { VerificationInterval = new Mass(0.1) };

        Assert.Equal(0.1, scale.LimitAt(new Mass(17)).Limit.Kilograms, 1e-12);
    }

    [Fact]
    public void LimitAt_StatedAccuracy_GoesBeforeTheClass()
    {
        var (limit, origin) = (Platform with { StatedAccuracy = new Mass(0.05) }).LimitAt(new Mass(17));

        Assert.Equal(0.05, limit.Kilograms);
        Assert.Equal("stated accuracy of the scale", origin);
    }

    [Theory]
    [InlineData(2, 0.02)]
    [InlineData(4, 0.02)]
    [InlineData(17, 0.085)]
    public void LimitAt_NothingKnownButTheDivision_IsTheLargerOfADivisionAndHalfAPercent(double net, double expected)
    {
        var (limit, origin) = new Scale { Division = new Mass(0.02) }.LimitAt(new Mass(net));

        Assert.Equal(expected, limit.Kilograms, 1e-12);
        Assert.Contains("judgement", origin, StringComparison.Ordinal);
    }

    [Fact]
    public void RelativeSpanUncertainty_Limit_IsTakenAsRectangular() =>
        NearlyEqual.Assert(0.04 / Math.Sqrt(3) / 17.08, Platform.RelativeSpanUncertainty(new Mass(17.08)));

    [Fact]
    public void RelativeSpanUncertainty_KnownError_TakesThePlaceOfEveryLimit()
    {
        var scale = Platform with { StatedAccuracy = new Mass(1), KnownError = new KnownScaleError(0.01, 0.0004) };

        Assert.Equal(0.0004, scale.RelativeSpanUncertainty(new Mass(17)));
    }

    [Fact]
    public void RandomUncertainty_TwoReadings_IsTheTriangularSumOfTwoRoundings() =>
        NearlyEqual.Assert(0.02 / Math.Sqrt(6), Platform.RandomUncertainty(TareReading.Each));

    [Fact]
    public void RandomUncertainty_SharedTare_LeavesTheGrossReadingOnly() =>
        NearlyEqual.Assert(0.02 / Math.Sqrt(12), Platform.RandomUncertainty(TareReading.Shared));

    [Fact]
    public void RandomUncertainty_Zeroed_AddsAQuarterDivisionOfZeroSetting() =>
        NearlyEqual.Assert(0.02 * Math.Sqrt(1.0 / 12 + 1.0 / 48), Platform.RandomUncertainty(TareReading.Zeroed));

    [Fact]
    public void RandomUncertainty_SwingingLoad_AddsItsScatterInQuadrature()
    {
        var scale = Platform with { ReadingScatter = new Mass(0.03) };

        NearlyEqual.Assert(Math.Sqrt(0.02 * 0.02 / 6 + 0.03 * 0.03), scale.RandomUncertainty(TareReading.Each));
    }

    [Fact]
    public void RandomUncertainty_ThreeWaysOfTaring_AreOrderedAsTheirReadings() =>
        Assert.True(
            Platform.RandomUncertainty(TareReading.Shared) < Platform.RandomUncertainty(TareReading.Zeroed)
                && Platform.RandomUncertainty(TareReading.Zeroed) < Platform.RandomUncertainty(TareReading.Each)
        );

    [Theory]
    [InlineData(TareReading.Each, 0)]
    [InlineData(TareReading.Zeroed, 0)]
    [InlineData(TareReading.Shared, 0.005773502691896258)]
    public void SharedTareUncertainty_OnlyASharedReading_HasOne(TareReading tare, double expected) =>
        NearlyEqual.Assert(expected, Platform.SharedTareUncertainty(tare));

    [Fact]
    public void RandomUncertainty_UnknownWayOfTaring_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Platform.RandomUncertainty((TareReading)9));
}
