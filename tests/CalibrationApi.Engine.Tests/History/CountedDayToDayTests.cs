using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>What of the difference between days a test counts with.</summary>
public sealed class CountedDayToDayTests
{
    private static readonly CatchTestLimits Usual = new();

    [Fact]
    public void Of_UnderFiveTests_SaysNothing() => Assert.Null(CountedDayToDay.Of(Series(1, 1.01, 1, 1.01), Usual));

    [Fact]
    public void Of_SteadyMeter_IsWhatItsHistorySays()
    {
        var tests = Series(1, 1.01, 1, 1.01, 1);

        var counted = CountedDayToDay.Of(tests, Usual)!;

        Assert.Equal(DayToDayFromHistory.Of(tests), counted.Relative);
        Assert.Null(counted.Finding);
    }

    [Fact]
    public void Of_UnsteadyMeter_IsTheMostThatTheToleranceLeavesRoomFor()
    {
        var counted = CountedDayToDay.Of(Series(1, 1.2, 1, 1.2, 1), Usual)!;

        Assert.Equal(CatchTestSettings.LargestDayToDay(Usual), counted.Relative);
        Assert.Equal((HistoryCodes.VariesFromDayToDay, Severity.Warning), (counted.Finding!.Code, counted.Finding.Severity));
        Assert.Contains("has varied by 12.9 %", counted.Finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("a tolerance of 5 % leaves room for", counted.Finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    // Settings that leave room for nothing are refused by themselves, and not hidden by what the history says.
    [Fact]
    public void Of_LimitsThatLeaveNoRoom_IsWhatItsHistorySays()
    {
        var limits = new CatchTestLimits { Tolerance = 0.01, WantedPrecision = 0.05 };
        var tests = Series(1, 1.2, 1, 1.2, 1);

        Assert.Equal(0, CatchTestSettings.LargestDayToDay(limits));
        Assert.Equal(DayToDayFromHistory.Of(tests), CountedDayToDay.Of(tests, limits)!.Relative);
    }

    // A tolerance this wide leaves room for more than is counted of any meter.
    [Fact]
    public void Of_MeterUnsteadyBeyondAllMeasure_IsAtMostAFifth()
    {
        var limits = new CatchTestLimits { Tolerance = 0.5, WantedPrecision = 0.05 };
        var tests = Series(1, 1.6, 1, 1.6, 1);

        Assert.True(DayToDayFromHistory.Of(tests) > CountedDayToDay.Most);
        Assert.Equal(CountedDayToDay.Most, CountedDayToDay.Of(tests, limits)!.Relative);
    }

    private static PastTest[] Series(params double[] values) => [.. values.Select(value => new PastTest(value, 0, "lot", [value], [0]))];
}
