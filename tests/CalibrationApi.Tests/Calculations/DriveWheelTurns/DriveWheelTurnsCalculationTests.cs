namespace CalibrationApi.Tests.Calculations.DriveWheelTurns;

/// <summary>What a question about turns of a drive wheel is answered; the numbers of the engine have their own tests.</summary>
public sealed class DriveWheelTurnsCalculationTests
{
    [Fact]
    public async Task Answer_DemoQuestion_CorrectsTheSetting()
    {
        var answer = await Question.Of(Question.DriveWheelTurns).AnswerAsync();

        Assert.Equal("correct", answer.Word("/verdict"));
        Assert.Equal(["rate-off-target"], answer.Codes("/reasons"));
        Assert.Equal("measured-run", answer.Word("/circumferenceFrom"));
        Assert.Equal(42 * answer.Number("/correction/factor/value") / 100, answer.Number("/correction/setting"), 1e-9);
        Assert.Equal(
            0.5 * answer.Number("/correction/factor/value") / 100,
            answer.Number("/correction/meterRevolutionsPerTurn/value"),
            1e-9
        );
        Assert.EndsWith(
            "As a first step, move the setting from 42 to about 39. Then test again.",
            answer.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.Equal("jacked-machine", answer.Codes("/cautions")[^1]);
    }

    // On paper: 46.3 m in 20 turns, on 3 m.
    [Fact]
    public async Task Turns_ForEachArea_AreAsOnPaper()
    {
        var answer = await Question.Of(Question.DriveWheelTurns).AnswerAsync();

        Assert.Equal((0.1, "ha"), answer.Quantity("/turns/0/area"));
        Assert.Equal(1000 / (46.3 / 20 * 3), answer.Number("/turns/0/turns/value"), 1e-9);
        Assert.Equal((144, "rev"), answer.Quantity("/turns/0/wholeTurns"));
        Assert.Equal((16_000, "g"), answer.Quantity("/turns/0/catchInAll"));
        Assert.Equal(800, answer.Number("/turns/0/catchPerOutlet/value"), 1e-9);
        Assert.Equal(400 / (46.3 / 20 * 3) / 2, answer.Number("/turns/1/meterRevolutions/value"), 1e-9);
    }

    [Fact]
    public async Task Rate_OfTwoTests_IsThatOfAllOutlets()
    {
        var answer = await Question.Of(Question.DriveWheelTurns).AnswerAsync();

        // 1738 g from 5 of 20 outlets in 58 turns.
        Assert.Equal(1.738 * 4 / (58 * 46.3 / 20 * 3) * 10_000, answer.Number("/turnTests/0/rate/value"), 1e-9);
        Assert.Equal(
            (answer.Number("/turnTests/0/rate/value") + answer.Number("/turnTests/1/rate/value")) / 2,
            answer.Number("/rate/value"),
            0.001
        );
        Assert.True(answer.Number("/rate/expandedUncertainty") > 0);
        Assert.False(answer.Flag("/acceptance/withinTolerance"));
    }

    [Fact]
    public async Task Outlets_WeighedApart_AreCompared()
    {
        var answer = await Question.Of(Question.DriveWheelTurns).AnswerAsync();

        Assert.Equal(
            [true, true, true, true, false],
            answer.List("/outlets").Select(outlet => outlet!["withinTolerance"]!.GetValue<bool>())
        );
        Assert.Contains("outlet-off-mean", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Areas_BeforeAnythingWasCaught_AreAnsweredWithTurns()
    {
        var answer = await Question.Of(Question.DriveWheelTurns).Without("/turnTests").AnswerAsync();

        Assert.StartsWith(
            "Turn the drive wheel 144.0 times for 0.1 ha and expect 16 kg in all, 0.8 kg from each outlet.",
            answer.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.Equal("untested", answer.Word("/verdict"));
        Assert.False(answer.Has("/rate"));
        Assert.Empty(answer.List("/turnTests"));
    }

    [Fact]
    public async Task Diameter_InPlaceOfAMeasurement_IsAnAssumption()
    {
        var answer = await Question
            .Of(Question.DriveWheelTurns)
            .With("/wheel", """{ "diameter": { "value": 74, "unit": "cm" } }""")
            .AnswerAsync();

        Assert.Equal(Math.PI * 0.74, answer.Number("/circumference/value"), 1e-9);
        Assert.Contains("circumference-from-diameter", answer.Codes("/findings"));
        Assert.Contains("wheel/circumference", answer.List("/assumptions").Select(one => one!["name"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Skid_LowersTheRate()
    {
        var rolling = await Question.Of(Question.DriveWheelTurns).AnswerAsync();
        var skidding = await Question.Of(Question.DriveWheelTurns).With("/skid", """{ "value": 5, "unit": "%" }""").AnswerAsync();

        Assert.Equal(0.95, skidding.Number("/rate/value") / rolling.Number("/rate/value"), 1e-9);
        Assert.Contains("skid-counted-twice", skidding.Codes("/findings"));
    }

    [Fact]
    public async Task Rate_ThatIsAbsurd_ForbidsTheTest()
    {
        var answer = await Question.Of(Question.DriveWheelTurns).With("/workingWidth/value", "0.02").AnswerAsync();

        Assert.Equal("investigate", answer.Word("/verdict"));
        Assert.Equal(["rate-implausible"], answer.Codes("/reasons"));
        Assert.StartsWith("Do not use this test", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task MassPerRevolution_OfTheMeter_GivesTheRateToExpect()
    {
        var answer = await Question
            .Of(Question.DriveWheelTurns)
            .With("/massPerRevolution", """{ "value": 222.24, "unit": "g/rev" }""")
            .AnswerAsync();

        Assert.Equal(160, answer.Number("/expectedRate/value"), 1e-9);
        Assert.Equal(222.24, answer.Number("/neededPerMeterRevolution/value"), 1e-9);
    }

    // 160 kg/ha on the 6.945 m2 of a turn are 111.12 g; a meter of 222.24 g turns half as often.
    [Fact]
    public async Task MassPerRevolution_WithoutItsGearing_GivesTheOneThatTheTargetNeeds()
    {
        var answer = await Question
            .Of(Question.DriveWheelTurns)
            .Without("/meterRevolutionsPerTurn")
            .With("/massPerRevolution", """{ "value": 222.24, "unit": "g/rev" }""")
            .AnswerAsync();

        Assert.Equal(
            ("1", 0.5),
            (answer.Word("/neededMeterRevolutionsPerTurn/unit"), Math.Round(answer.Number("/neededMeterRevolutionsPerTurn/value"), 9))
        );
        Assert.False(answer.Has("/expectedRate"));
    }

    [Fact]
    public async Task Question_InFeetAndPounds_HasTheSameAnswer()
    {
        const double Pound = 0.45359237,
            Acre = 0.40468564224,
            Foot = 0.3048;
        var question = Question
            .Of(Question.DriveWheelTurns)
            .Convert("/wheel/measuredRun/distance", "ft", Foot)
            .Convert("/workingWidth", "ft", Foot)
            .Convert("/areas/0", "ac", Acre)
            .Convert("/areas/1", "ac", Acre)
            .Convert("/targetRate", "lb/ac", Pound / Acre);
        for (var test = 0; test < 2; test++)
        {
            for (var outlet = 0; outlet < 5; outlet++)
                question.Convert($"/turnTests/{test}/perOutlet/{outlet}", "lb", Pound * 1000);
        }

        var pounds = await question.AnswerAsync();
        var metric = await Question.Of(Question.DriveWheelTurns).AnswerAsync();

        foreach (
            var (pointer, unit, factor) in (ReadOnlySpan<(string, string, double)>)
                [
                    ("/rate", "lb/ac", Pound / Acre),
                    ("/circumference", "ft", Foot),
                    ("/areaPerTurn", "ac", Acre),
                    ("/turns/0/turns", "rev", 1),
                    ("/turns/0/catchInAll", "lb", Pound * 1000),
                    ("/neededPerTurn", "lb/rev", Pound * 1000),
                    ("/acceptance/deviation", "%", 1),
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
        var answer = await Question.Of(Question.DriveWheelTurns).AnswerAsync("?units=us");

        Assert.Equal("lb/ac", answer.Word("/rate/unit"));
        Assert.Contains("lb/ac", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.Equal("1", answer.Word("/correction/meterRevolutionsPerTurn/unit"));
    }
}
