namespace CalibrationApi.Tests.Calculations.MeterSpeeds;

/// <summary>What a question about meter speeds is answered; the numbers of the engine have their own tests.</summary>
public sealed class MeterSpeedCalculationTests
{
    [Fact]
    public async Task Answer_DemoQuestion_PutsTheElementThatFitsFirst()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        Assert.Equal("small roller", answer.Word("/elements/0/name"));
        Assert.True(answer.Flag("/elements/0/fits"));
        Assert.False(answer.Flag("/elements/1/fits"));
        Assert.True(answer.Number("/elements/0/room/value") > 0);
        Assert.True(answer.Number("/elements/1/room/value") < 0);
        Assert.StartsWith("Use small roller", answer.Word("/headline"), StringComparison.Ordinal);
    }

    // n = rate x width x speed / mass per revolution, on paper: 6 kg/ha x 9 m x 11 km/h = 0.99 kg/min.
    [Theory]
    [InlineData(0, 4, 7, 4.0 * 9 * 7 / 600 / 0.031)]
    [InlineData(1, 4, 11, 4.0 * 9 * 11 / 600 / 0.031)]
    [InlineData(2, 6, 7, 6.0 * 9 * 7 / 600 / 0.031)]
    [InlineData(3, 6, 11, 6.0 * 9 * 11 / 600 / 0.031)]
    public async Task Corner_OfAConstantElement_TurnsAsOnPaper(int corner, double rate, double speed, double turns)
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        var at = $"/elements/0/corners/{corner}";
        Assert.Equal((rate, "kg/ha"), answer.Quantity(at + "/rate"));
        Assert.Equal((speed, "km/h"), answer.Quantity(at + "/groundSpeed"));
        Assert.Equal("rpm", answer.Word(at + "/meterSpeed/unit"));
        Assert.Equal(turns, answer.Number(at + "/meterSpeed/value"), 1e-9);
        Assert.Equal(speed / 3.6 / (turns / 60 * 24), answer.Number(at + "/dischargeSpacing/value"), 1e-9);
    }

    [Fact]
    public async Task RateOfZero_BesideOthers_MakesNoCornerAndNoWindow()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        Assert.Equal(4, answer.List("/elements/0/corners").Count);
        Assert.All(answer.List("/elements/0/corners"), corner => Assert.NotEqual(0, corner!["rate"]!["value"]!.GetValue<double>()));
        Assert.Equal(2, answer.List("/elements/0/speedWindows").Count);
    }

    [Fact]
    public async Task OneRateAndOneSpeed_MakeOneCorner()
    {
        var answer = await Question
            .Of(Question.MeterSpeed)
            .With("/rates", """[{ "value": 5, "unit": "kg/ha" }]""")
            .With("/groundSpeeds", """[{ "value": 9, "unit": "km/h" }]""")
            .AnswerAsync();

        Assert.Single(answer.List("/elements/0/corners"));
    }

    [Fact]
    public async Task MeasuredAt_BetweenTwoPoints_TurnsWhereTheLineDeliversTheRate()
    {
        var answer = await Question
            .Of(Question.MeterSpeed)
            .With("/rates", """[{ "value": 60, "unit": "kg/ha" }]""")
            .With("/groundSpeeds", """[{ "value": 9, "unit": "km/h" }]""")
            .AnswerAsync();

        var coarse = answer.Word("/elements/0/name") == "coarse roller" ? 0 : 1;
        var turns = answer.Number($"/elements/{coarse}/corners/0/meterSpeed/value");
        // On the line from 0.352 kg/rev at 5 rpm to 0.338 kg/rev at 60 rpm; 60 kg/ha x 9 m x 9 km/h is 8.1 kg/min.
        var delivered = 0.352 + (0.338 - 0.352) * (turns - 5) / (60 - 5);
        Assert.InRange(turns, 5, 60);
        Assert.Equal(8.1, turns * delivered, 1e-9);
        Assert.DoesNotContain("outside-measured-speeds", answer.Codes("/findings"));
    }

    [Fact]
    public async Task SpeedOutsideTheMeasuredOnes_IsSaid()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        Assert.Contains("outside-measured-speeds", answer.Codes("/findings"));
    }

    [Fact]
    public async Task NoElementFits_TheNearestIsNamedWithWhatWouldHelp()
    {
        var answer = await Question.Of(Question.MeterSpeed).With("/elements/0/massPerRevolution/value", "3").AnswerAsync();

        Assert.StartsWith(
            "No element serves all rates at all ground speeds. The nearest is ",
            answer.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.All(answer.List("/elements"), element => Assert.False(element!["fits"]!.GetValue<bool>()));
        Assert.Contains("outside-meter-window", answer.Codes("/findings"));
    }

    [Fact]
    public async Task NoLimits_NothingIsSaidAboutRoom()
    {
        var answer = await Question.Of(Question.MeterSpeed).Without("/speedLimits").AnswerAsync();

        Assert.False(answer.Has("/elements/0/room"));
        Assert.False(answer.Has("/elements/0/speedWindows/0/minimum"));
        Assert.StartsWith("No limits of the meter speed are known.", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task OwnLimits_OfAnElement_GoBeforeTheCommonOnes()
    {
        var answer = await Question
            .Of(Question.MeterSpeed)
            .With("/elements/0/speedLimits", """{ "maximum": { "value": 20, "unit": "rpm" } }""")
            .AnswerAsync();

        Assert.DoesNotContain(answer.List("/elements"), element => element!["fits"]!.GetValue<bool>());
    }

    [Fact]
    public async Task Windows_AtTheirEnds_TurnAtTheLimits()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync();

        // 4 rpm and 90 rpm at 0.031 kg/rev, 9 m, 4 kg/ha and at 7 km/h.
        Assert.Equal(4 * 0.031 * 600 / (9 * 4.0), answer.Number("/elements/0/speedWindows/0/minimum/value"), 1e-9);
        Assert.Equal(90 * 0.031 * 600 / (9 * 4.0), answer.Number("/elements/0/speedWindows/0/maximum/value"), 1e-9);
        Assert.Equal(4 * 0.031 * 600 / (9 * 7.0), answer.Number("/elements/0/rateWindows/0/minimum/value"), 1e-9);
        Assert.Equal(90 * 0.031 * 600 / (9 * 7.0), answer.Number("/elements/0/rateWindows/0/maximum/value"), 1e-9);
    }

    [Fact]
    public async Task Capacity_IsWidthTimesSpeedTimesEfficiency()
    {
        var covered = await Question.Of(Question.MeterSpeed).AnswerAsync();
        var working = await Question
            .Of(Question.MeterSpeed)
            .With("/workingWidth", """{ "value": 18, "unit": "m" }""")
            .Without("/fieldEfficiency")
            .AnswerAsync();

        Assert.Equal(9 * 7 * 0.7 / 10, covered.Number("/capacity/0/areaPerHour/value"), 1e-9);
        Assert.Equal(18 * 11 * 0.7 / 10, working.Number("/capacity/1/areaPerHour/value"), 1e-9);
        Assert.Empty(covered.List("/assumptions"));
        Assert.Equal("fieldEfficiency", working.Word("/assumptions/0/name"));
    }

    [Fact]
    public async Task Question_InPoundsAndInKilograms_HasTheSameAnswer()
    {
        // NIST SP 811 (2008), appendix B.8.
        const double Pound = 0.45359237,
            Acre = 0.40468564224,
            Mile = 1.609344,
            Foot = 0.3048;
        var question = Question
            .Of(Question.MeterSpeed)
            .Convert("/coveredWidth", "ft", Foot)
            .Convert("/rates/0", "lb/ac", Pound / Acre)
            .Convert("/rates/1", "lb/ac", Pound / Acre)
            .Convert("/rates/2", "lb/ac", Pound / Acre)
            .Convert("/groundSpeeds/0", "mi/h", Mile)
            .Convert("/groundSpeeds/1", "mi/h", Mile)
            .Convert("/elements/0/massPerRevolution", "lb/rev", Pound)
            .Convert("/elements/1/measuredAt/0/massPerRevolution", "lb/rev", Pound)
            .Convert("/elements/1/measuredAt/1/massPerRevolution", "lb/rev", Pound);

        var pounds = await question.AnswerAsync();
        var metric = await Question.Of(Question.MeterSpeed).AnswerAsync();

        foreach (
            var (pointer, unit, factor) in (ReadOnlySpan<(string, string, double)>)
                [
                    ("/elements/0/corners/3/meterSpeed", "rpm", 1),
                    ("/elements/0/corners/3/rate", "lb/ac", Pound / Acre),
                    ("/elements/0/corners/0/dischargeSpacing", "ft", Foot),
                    ("/elements/0/speedWindows/1/maximum", "mi/h", Mile),
                    ("/elements/1/rateWindows/1/minimum", "lb/ac", Pound / Acre),
                    ("/elements/1/room", "%", 1),
                    ("/capacity/1/areaPerHour", "ac", Acre),
                ]
        )
        {
            var (value, symbol) = pounds.Quantity(pointer);
            Assert.Equal(unit, symbol);
            Assert.True(Math.Abs(value * factor / metric.Number(pointer + "/value") - 1) < 1e-9, pointer);
        }
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(Question.MeterSpeed).AnswerAsync("?units=us");

        Assert.Equal("lb/ac", answer.Word("/elements/0/corners/0/rate/unit"));
        Assert.Equal("ac", answer.Word("/capacity/0/areaPerHour/unit"));
        Assert.All(answer.List("/findings"), finding =>
            Assert.DoesNotContain("kg", finding!["detail"]!.GetValue<string>(), StringComparison.Ordinal)
        );
    }
}
