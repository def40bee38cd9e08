using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Weighing;

public sealed class OimlR76Tests
{
    public static TheoryData<AccuracyClass> Classes => [.. Enum.GetValues<AccuracyClass>()];

    [Theory]
    [MemberData(nameof(Classes))]
    public void LimitInService_AnyLoad_IsTwiceTheLimitOnVerification(AccuracyClass accuracyClass)
    {
        foreach (var load in (double[])[0, 1, 50, 51, 500, 501, 2000, 2001, 20_000, 250_000])
            Assert.Equal(2 * OimlR76.LimitOnVerification(accuracyClass, load), OimlR76.LimitInService(accuracyClass, load));
    }

    [Theory]
    [MemberData(nameof(Classes))]
    public void LimitOnVerification_GrowingLoad_NeverFallsAndTakesThreeSteps(AccuracyClass accuracyClass)
    {
        var limits = Enumerable.Range(0, 600).Select(i => OimlR76.LimitOnVerification(accuracyClass, Math.Pow(1.025, i) - 1)).ToArray();

        Assert.Equal([0.5, 1.0, 1.5], limits.Distinct());
        Assert.All(limits.Zip(limits.Skip(1)), pair => Assert.True(pair.First <= pair.Second));
    }

    [Fact]
    public void LimitOnVerification_BetterClass_IsNeverWiderAtTheSameLoad()
    {
        foreach (var load in (double[])[10, 60, 300, 700, 3000, 30_000])
        {
            var limits = Enum.GetValues<AccuracyClass>().Select(each => OimlR76.LimitOnVerification(each, load)).ToArray();
            Assert.All(limits.Zip(limits.Skip(1)), pair => Assert.True(pair.First <= pair.Second));
        }
    }

    // 16.10 kg - 6.10 kg on divisions of 0.02 kg is 500.00000000000006 intervals in binary, and 500 to anyone who reads the scale.
    [Theory]
    [InlineData(16.1, 6.1, 0.02, 0.5)]
    [InlineData(32.2, 7.2, 0.05, 0.5)]
    public void LimitOnVerification_NetLoadOnAStep_IsNotPushedOverByRounding(double gross, double tare, double interval, double expected)
    {
        var load = (gross - tare) / interval;

        Assert.True(load > 500);
        Assert.Equal(expected, OimlR76.LimitOnVerification(AccuracyClass.III, load));
    }

    [Theory]
    [InlineData(AccuracyClass.I, double.PositiveInfinity)]
    [InlineData(AccuracyClass.II, 100_000)]
    [InlineData(AccuracyClass.III, 10_000)]
    [InlineData(AccuracyClass.IIII, 1_000)]
    public void LargestLoad_OfAClass_IsTheLargestNumberOfIntervals(AccuracyClass accuracyClass, double expected) =>
        Assert.Equal(expected, OimlR76.LargestLoad(accuracyClass));

    [Fact]
    public void LimitOnVerification_BeyondTheLargestLoad_KeepsTheLastStep() =>
        Assert.Equal(1.5, OimlR76.LimitOnVerification(AccuracyClass.III, 50_000));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void LimitOnVerification_LoadThatCannotBe_IsRefused(double load) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OimlR76.LimitOnVerification(AccuracyClass.III, load));
}
