using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>n = R W v / k for a rate and a ground speed, and the corners of a range of both.</summary>
public sealed class MeterSpeedTests
{
    // 90 kg/ha over 9 m at 9 km/h with 0.342 kg/rev.
    [Fact]
    public void MeterSpeed_OneRateAndSpeed_IsTheFlowOverTheMassPerRevolution()
    {
        var corner = Assert.Single(Only(Asked.Question([90], [9])).Corners);

        NearlyEqual.Assert(0.009 * 9 * 2.5 / 0.342, corner.MeterSpeed.RevolutionsPerSecond);
        Assert.True(corner.Within);
    }

    [Fact]
    public void Corners_RangeOfRatesAndSpeeds_AreTheirFourExtremes()
    {
        var corners = Only(Asked.Question([60, 120, 90], [12, 6, 9])).Corners;

        Assert.Equal(4, corners.Count);
        Assert.Equal(
            [(60, 6), (60, 12), (120, 6), (120, 12)],
            corners.Select(corner => (Whole(corner.Rate), Whole(corner.GroundSpeed))).Order());

        static int Whole(IQuantity quantity) => (int)Math.Round(DisplayUnits.Metric.Value(quantity));
    }

    // Zero in a variable-rate map means off, not a meter that turns infinitely slowly.
    [Fact]
    public void Corners_ZeroRate_IsNoCorner()
    {
        var with = Only(Asked.Question([0, 60, 120], [9]));
        var without = Only(Asked.Question([60, 120], [9]));

        Assert.Equal(without.Corners, with.Corners);
        Assert.Equal(without.Margin, with.Margin);
        Assert.Equal(2, with.SpeedWindows.Count);
    }

    [Fact]
    public void Corners_SameRateTwice_CountsOnce() => Assert.Single(Only(Asked.Question([90, 90], [9, 9])).Corners);

    [Theory]
    [InlineData(6, "under the least")]
    [InlineData(300, "above the highest")]
    public void Findings_CornerOutsideTheLimits_AreWarnedOfWithTheRemedy(double rate, string expected)
    {
        var result = MeterSpeedEvaluation.Evaluate(Asked.Question([rate], [9]));

        Assert.False(result.Elements[0].Fits);
        var finding = Assert.Single(result.Findings, each => each.Code == FindingCode.OutsideMeterWindow);
        Assert.Contains(expected, finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.StartsWith("No element serves all rates at all ground speeds.", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_LessThanTenPercentOfRoom_AreNoted()
    {
        // The fastest corner turns 85.3 rpm of 90.
        var result = MeterSpeedEvaluation.Evaluate(Asked.Question([90, 216], [9]));

        Assert.True(result.Elements[0].Fits);
        Assert.Single(result.Findings, each => each.Code == FindingCode.NearMeterLimit);
    }

    [Fact]
    public void Evaluate_NothingToAnswer_IsRefusedAsACodingMistake()
    {
        Assert.Throws<ArgumentException>(() => MeterSpeedEvaluation.Evaluate(Asked.Question([0], [9])));
        Assert.Throws<ArgumentException>(() => MeterSpeedEvaluation.Evaluate(Asked.Question([90], [])));
        Assert.Throws<ArgumentException>(() => MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9]) with { Elements = [] }));
    }

    private static ElementResult Only(MeterSpeedQuestion question) => Assert.Single(MeterSpeedEvaluation.Evaluate(question).Elements);
}

/// <summary>Speed window for a rate, rate window for a speed.</summary>
public sealed class MeterWindowTests
{
    private static readonly ElementResult Result =
        Assert.Single(MeterSpeedEvaluation.Evaluate(Asked.Question([60, 120], [6, 12])).Elements);

    // v = n k / (R W).
    [Fact]
    public void SpeedWindows_EachRate_EndWhereTheMeterMeetsItsLimits()
    {
        foreach (var window in Result.SpeedWindows)
        {
            var perMetre = window.Rate.KilogramsPerSquareMetre * 9;
            NearlyEqual.Assert(4.0 / 60 * 0.342 / perMetre, window.Minimum!.Value.MetresPerSecond);
            NearlyEqual.Assert(90.0 / 60 * 0.342 / perMetre, window.Maximum!.Value.MetresPerSecond);
        }
    }

    // R = n k / (W v).
    [Fact]
    public void RateWindows_EachGroundSpeed_EndWhereTheMeterMeetsItsLimits()
    {
        foreach (var window in Result.RateWindows)
        {
            NearlyEqual.Assert(4.0 / 60 * 0.342 / (9 * window.GroundSpeed.MetresPerSecond), window.Minimum!.Value.KilogramsPerSquareMetre);
            NearlyEqual.Assert(90.0 / 60 * 0.342 / (9 * window.GroundSpeed.MetresPerSecond), window.Maximum!.Value.KilogramsPerSquareMetre);
        }
    }

    // The two windows are one statement: at the fastest speed for a rate, the highest rate is that rate.
    [Fact]
    public void RateWindows_AtTheEndOfASpeedWindow_EndAtItsRate()
    {
        var fastest = Result.SpeedWindows[0].Maximum!.Value;
        var back = MeterSpeedEvaluation.Evaluate(Asked.Question([60], []) with { GroundSpeeds = [fastest] }).Elements[0].RateWindows[0];

        NearlyEqual.Assert(60.0 / 10_000, back.Maximum!.Value.KilogramsPerSquareMetre);
    }

    [Fact]
    public void Windows_MeterWithoutLimits_AreOpen()
    {
        var question = Asked.Question([90], [9]) with { Elements = [Asked.Element("roller", 0.342, MeterSpeedLimits.None)] };
        var result = Assert.Single(MeterSpeedEvaluation.Evaluate(question).Elements);

        Assert.Null(result.SpeedWindows[0].Minimum);
        Assert.Null(result.SpeedWindows[0].Maximum);
        Assert.Null(result.RateWindows[0].Minimum);
        Assert.Null(result.RateWindows[0].Maximum);
    }

    [Fact]
    public void SpeedWindows_InsideAndOutside_AgreeWithTheCorners()
    {
        var window = Result.SpeedWindows[0];
        foreach (var (factor, within) in ((double, bool)[])[(0.99, true), (1.01, false)])
        {
            var question = Asked.Question([60], []) with { GroundSpeeds = [new Speed(window.Maximum!.Value.MetresPerSecond * factor)] };
            Assert.Equal(within, MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0].Within);
        }
    }
}

/// <summary>The choice among the elements a machine has, ranked by the room to their nearer limit.</summary>
public sealed class ElementChoiceTests
{
    // min(ln(n_low / n_min), ln(n_max / n_high)) with n = 35.53 rpm between 4 and 90 rpm.
    [Fact]
    public void Margin_OneSpeed_IsTheLogarithmOfTheRoomToTheNearerLimit() => NearlyEqual.Assert(
        Math.Log(90 / (0.009 * 9 * 2.5 / 0.342 * 60)), MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Elements[0].Margin, 1e-9);

    [Theory]
    [InlineData(10, 20, 4, 90, 0.9162907318741551)]
    [InlineData(40, 60, 4, 90, 0.4054651081081644)]
    [InlineData(3, 20, 4, 90, -0.2876820724517809)]
    [InlineData(10, 120, 4, 90, -0.2876820724517809)]
    public void Margin_RangeOfSpeeds_TakesTheNearerEnd(double lowest, double highest, double minimum, double maximum, double expected) =>
        NearlyEqual.Assert(expected, new MeterSpeedLimits(new(minimum), new(maximum)).Margin(lowest, highest), 1e-12);

    [Fact]
    public void Margin_NoLimits_IsInfinite()
    {
        Assert.Equal(double.PositiveInfinity, MeterSpeedLimits.None.Margin(1, 2));
        Assert.Equal(double.PositiveInfinity, new MeterSpeedLimits(new(0), null).Margin(1, 2));
    }

    [Fact]
    public void Elements_Several_AreRankedByTheirRoom()
    {
        var question = Asked.Question([60, 120], [6, 12]) with
        {
            Elements = [Asked.Element("fine", 0.05), Asked.Element("medium", 0.60), Asked.Element("coarse", 2.5)],
        };

        var result = MeterSpeedEvaluation.Evaluate(question);

        Assert.Equal("medium", result.Elements[0].Element.Name);
        Assert.Equal(result.Elements.OrderByDescending(element => element.Margin), result.Elements);
        Assert.StartsWith("Use medium", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_NothingFits_NamesTheNearestAndWhatWouldHelp()
    {
        var question = Asked.Question([60], [9]) with { Elements = [Asked.Element("coarse", 10), Asked.Element("coarser", 20)] };

        var headline = MeterSpeedEvaluation.Evaluate(question).Headline.InMetric();

        Assert.Contains("The nearest is coarse:", headline, StringComparison.Ordinal);
        Assert.Contains("needs at least 44.4 km/h", headline, StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_NoLimitsKnown_SaysSo() => Assert.StartsWith(
        "No limits of the meter speed are known.",
        MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9]) with { Elements = [Asked.Element("roller", 0.342, MeterSpeedLimits.None)] }).Headline.InMetric(),
        StringComparison.Ordinal);
}

/// <summary>Ground spacing of discharge pulses, v / (n pockets).</summary>
public sealed class DischargeSpacingTests
{
    [Fact]
    public void DischargeSpacing_PocketsKnown_IsTheGroundBetweenTwoDischarges()
    {
        var question = Asked.Question([90], [9]) with { Elements = [Asked.Element("roller", 0.342) with { Pockets = 8 }] };
        var corner = MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0];

        NearlyEqual.Assert(2.5 / (corner.MeterSpeed.RevolutionsPerSecond * 8), corner.DischargeSpacing!.Value.Metres);
    }

    // v cancels: k / (R W pockets).
    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    [InlineData(15)]
    public void DischargeSpacing_AnyGroundSpeed_IsTheSame(double speed)
    {
        var question = Asked.Question([90], [speed]) with { Elements = [Asked.Element("roller", 0.342) with { Pockets = 8 }] };

        NearlyEqual.Assert(
            0.342 / (0.009 * 9 * 8), MeterSpeedEvaluation.Evaluate(question).Elements[0].Corners[0].DischargeSpacing!.Value.Metres);
    }

    [Fact]
    public void DischargeSpacing_PocketsUnknown_IsNotSaid() =>
        Assert.Null(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Elements[0].Corners[0].DischargeSpacing);
}

/// <summary>Area per hour, W v times field efficiency.</summary>
public sealed class AreaPerHourTests
{
    [Fact]
    public void Capacity_EachGroundSpeed_IsInTheOrderGiven()
    {
        var question = Asked.Question([90], [12, 6]) with { FieldEfficiency = 0.8 };

        var capacity = MeterSpeedEvaluation.Evaluate(question).Capacity;

        Assert.Equal([12, 6], capacity.Select(each => Math.Round(DisplayUnits.Metric.Value(each.GroundSpeed))));
        NearlyEqual.Assert(9 * 12 / 10.0 * 0.8, DisplayUnits.Metric.Value(capacity[0].AreaPerHour));
        NearlyEqual.Assert(9 * 6 / 10.0 * 0.8, DisplayUnits.Metric.Value(capacity[1].AreaPerHour));
    }

    [Fact]
    public void Capacity_WorkingWidthStated_TakesItInPlaceOfTheCoveredOne()
    {
        var question = Asked.Question([90], [9]) with { FieldEfficiency = 1, WorkingWidth = new Length(18) };

        NearlyEqual.Assert(18 * 9 / 10.0, DisplayUnits.Metric.Value(MeterSpeedEvaluation.Evaluate(question).Capacity[0].AreaPerHour));
    }

    [Fact]
    public void Assumptions_FieldEfficiencyNotStated_IsListedAsFromMemory()
    {
        var assumption = Assert.Single(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9])).Assumptions);

        Assert.Equal("fieldEfficiency", assumption.Name);
        Assert.Equal(new Ratio(0.70), assumption.Value);
        Assert.Contains("from memory", assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Assumptions_FieldEfficiencyStated_AreNone() =>
        Assert.Empty(MeterSpeedEvaluation.Evaluate(Asked.Question([90], [9]) with { FieldEfficiency = 0.75 }).Assumptions);
}

/// <summary>Questions to start from.</summary>
internal static class Asked
{
    private static readonly MeterSpeedLimits FourToNinety = new(Planned.Rpm(4), Planned.Rpm(90));

    /// <summary>A meter of 9 m with one roller of 0.342 kg/rev.</summary>
    public static MeterSpeedQuestion Question(double[] kilogramsPerHectare, double[] kilometresPerHour) => new()
    {
        CoveredWidth = new Length(9),
        Rates = [.. kilogramsPerHectare.Select(rate => new MassPerArea(rate / 10_000))],
        GroundSpeeds = [.. kilometresPerHour.Select(speed => new Speed(speed / 3.6))],
        Elements = [Element("roller", 0.342)],
    };

    public static MeteringElement Element(string name, double perRevolution, MeterSpeedLimits? limits = null) =>
        new(name, DeliveryCurve.Constant(new MassPerRevolution(perRevolution)), limits ?? FourToNinety);
}
