using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>Day-to-day scatter from neighbouring tests.</summary>
public sealed class DayToDayFromHistoryTests
{
    // Half the mean squared successive difference of the logarithms, without known variance: +-2 % each time.
    [Fact]
    public void Of_ValuesThatAlternate_IsTheRootOfHalfTheMeanSquaredDifference()
    {
        var tests = Series(0, 1.00, 1.02, 1.00, 1.02, 1.00);

        NearlyEqual.Assert(Math.Log(1.02) / Math.Sqrt(2), DayToDayFromHistory.Of(tests)!.Value, 1e-12);
    }

    [Fact]
    public void Of_RandomUncertainty_IsTakenOff()
    {
        var tests = Series(0.01, 1.00, 1.02, 1.00, 1.02, 1.00);

        NearlyEqual.Assert(Math.Sqrt((Math.Pow(Math.Log(1.02), 2) - 2e-4) / 2), DayToDayFromHistory.Of(tests)!.Value, 1e-10);
    }

    // A meter that wears steadily by 1 % per test hardly differs from its neighbour, though its series spans 9 %.
    [Fact]
    public void Of_SlowDrift_HardlyCounts() =>
        Assert.InRange(
            DayToDayFromHistory.Of(Series(0, [.. Enumerable.Range(0, 10).Select(i => Math.Exp(0.01 * i))]))!.Value,
            0.007,
            0.0071
        );

    [Fact]
    public void Of_UnderFiveTests_SaysNothing() => Assert.Null(DayToDayFromHistory.Of(Series(0, 1.00, 1.02, 1.00, 1.02)));

    [Fact]
    public void Of_PairsOfDifferentLots_AreLeftOut()
    {
        var tests = Series(0, 1.00, 1.01, 1.00, 1.01, 1.00, 1.50).ToArray();
        tests[^1] = tests[^1] with { Lot = "another" };

        NearlyEqual.Assert(Math.Log(1.01) / Math.Sqrt(2), DayToDayFromHistory.Of(tests)!.Value, 1e-12);
    }

    [Fact]
    public void Of_TooFewPairsOfOneLot_SaysNothing()
    {
        var tests = Series(0, 1.00, 1.01, 1.00, 1.01, 1.00).Select((test, i) => test with { Lot = $"lot {i / 2}" }).ToArray();

        Assert.Null(DayToDayFromHistory.Of(tests));
    }

    [Fact]
    public void Of_ValuesThatNeverDiffer_IsTheFloor() =>
        Assert.Equal(DayToDayFromHistory.Floor, DayToDayFromHistory.Of(Series(0.005, 1, 1, 1, 1, 1, 1)));

    private static List<PastTest> Series(double uncertainty, params double[] values) =>
        [.. values.Select(value => new PastTest(value, uncertainty, "lot", [value], [0.0]))];
}
