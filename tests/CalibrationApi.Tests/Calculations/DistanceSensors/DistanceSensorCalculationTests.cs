namespace CalibrationApi.Tests.Calculations.DistanceSensors;

/// <summary>What a question about a distance sensor is answered; the numbers of the engine have their own tests.</summary>
public sealed class DistanceSensorCalculationTests
{
    [Fact]
    public async Task Answer_DemoQuestion_SaysWhatToTypeIn()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync();

        Assert.Equal("adopt", answer.Word("/verdict"));
        Assert.Equal(["distance-changed"], answer.Codes("/reasons"));
        Assert.Equal(1276, answer.Number("/enter/value"));
        Assert.Equal((100, "m"), answer.Quantity("/enter/distance"));
        Assert.EndsWith(
            "counts too little distance and applies too little. Type in 1276 pulses per 100 m.",
            answer.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.Equal(["manual-first", "moving-machine"], answer.Codes("/cautions"));
    }

    [Fact]
    public async Task Value_IsToldInEveryForm()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync();

        var pulses = answer.Number("/pulsesPerDistance/value");
        Assert.Equal((pulses, "pulses/100m"), answer.Quantity("/pulsesPerDistance"));
        Assert.Equal(pulses / 100, answer.Number("/pulsesPerLength/value"), 1e-9);
        Assert.Equal(100 / pulses, answer.Number("/distancePerPulse/value"), 1e-9);
        Assert.Equal(40 * 100 / pulses, answer.Number("/rollingCircumference/value"), 1e-9);
        Assert.Equal((1274 + 1279 + 1276) / 3.0, answer.Number("/totalPulsesOverTotalDistance/value"), 1e-9);
    }

    [Fact]
    public async Task Uncertainty_IsTakenApart()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync();

        Assert.Equal(["runs", "tape"], answer.List("/uncertaintyParts").Select(part => part!["source"]!.GetValue<string>()));
        Assert.Equal(0.1 / Math.Sqrt(3), answer.Number("/uncertaintyParts/1/relative/value"), 1e-9);
        Assert.Equal(0.95, answer.Number("/pulsesPerDistance/coverageProbability"));
    }

    [Fact]
    public async Task Run_WithATime_HasItsGroundSpeed()
    {
        var answer = await Question.Of(Question.DistanceSensor).Without("/runs/2/time").AnswerAsync();

        Assert.Equal(9, answer.Number("/runs/1/groundSpeed/value"), 1e-9);
        Assert.Equal("km/h", answer.Word("/runs/1/groundSpeed/unit"));
        Assert.False(answer.Has("/runs/2/groundSpeed"));
    }

    // On paper: 1276.33/1310 of the distance, 9/8.97 of the width, 170 kg/ha on 48 ha at 0.42 EUR/kg.
    [Fact]
    public async Task Effect_OfTheNumbersInForce_IsAsOnPaper()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync();

        var factor = answer.Number("/pulsesPerDistance/value") / 1310 * 9 / 8.97;
        Assert.Equal((factor - 1) * 100, answer.Number("/effectIfNumbersStay/rateChange/value"), 1e-9);
        Assert.Equal(170 * factor, answer.Number("/effectIfNumbersStay/appliedRate/value"), 1e-9);
        Assert.Equal((factor - 1) * 170 * 48, answer.Number("/effectIfNumbersStay/massOverArea/value"), 1e-6);
        Assert.Equal((factor - 1) * 170 * 48 * 0.42, answer.Number("/effectIfNumbersStay/totalCost/value"), 1e-6);
        Assert.Equal("EUR", answer.Word("/effectIfNumbersStay/totalCost/currency"));
    }

    [Fact]
    public async Task Effect_OnGroundDrivenMeters_IsOverlapAndAreaCountOnly()
    {
        var controlled = await Question.Of(Question.DistanceSensor).AnswerAsync();
        var ground = await Question.Of(Question.DistanceSensor).With("/meterDrive", "\"ground-driven\"").AnswerAsync();

        Assert.Equal((9 / 8.97 - 1) * 100, ground.Number("/effectIfNumbersStay/rateChange/value"), 1e-9);
        Assert.Equal(
            controlled.Number("/effectIfNumbersStay/areaCounted/value"),
            ground.Number("/effectIfNumbersStay/areaCounted/value"),
            1e-9
        );
        Assert.Equal(controlled.Number("/enter/value"), ground.Number("/enter/value"));
        Assert.Contains("meterDrive", controlled.List("/assumptions").Select(one => one!["name"]!.GetValue<string>()));
        Assert.DoesNotContain("meterDrive", ground.List("/assumptions").Select(one => one!["name"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Width_ShowsTheOverlapOfThePasses()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync();

        Assert.Equal((9, "m"), answer.Quantity("/width/nominal"));
        Assert.Equal(0.03, answer.Number("/width/overlap/value"), 1e-9);
        Assert.Equal(0.03 / 8.97 * 100, answer.Number("/width/overlapShare/value"), 1e-9);
    }

    [Fact]
    public async Task Skid_AgainstTheReference_IsPositiveWhereTheWheelTurnsLessOften()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync();

        Assert.Equal((1 - answer.Number("/pulsesPerDistance/value") / 1251) * 100, answer.Number("/skid/value"), 1e-9);
        Assert.Contains("wheel-slips", answer.Codes("/findings"));
    }

    [Theory]
    [InlineData("""{ "distancePerPulse": { "value": 7.633587786259542, "unit": "cm" } }""")]
    [InlineData("""{ "pulses": 1597.152, "distance": { "value": 400, "unit": "ft" } }""")]
    [InlineData("""{ "wheelCircumference": { "value": 3.0534351145038168, "unit": "m" } }""")]
    public async Task ValueInForce_InAnyForm_IsTheSameComparison(string value)
    {
        var usual = await Question.Of(Question.DistanceSensor).AnswerAsync();
        var other = await Question.Of(Question.DistanceSensor).With("/valueInForce", value).AnswerAsync();

        Assert.Equal(usual.Number("/change/value"), other.Number("/change/value"), 1e-9);
        Assert.Equal(usual.Number("/probabilityWithinTolerance"), other.Number("/probabilityWithinTolerance"), 1e-9);
    }

    [Fact]
    public async Task Turns_WithoutPulsesPerTurn_TellTheCircumference()
    {
        var question = Question
            .Of(Question.DistanceSensor)
            .Without("/pulsesPerTurn")
            .Without("/referenceRuns")
            .With("/valueInForce", """{ "wheelCircumference": { "value": 3.05, "unit": "m" } }""")
            .With("/controllerEntry", """{ "form": "wheel-circumference", "unit": "cm", "decimals": 1 }""");
        for (var i = 0; i < 3; i++)
            question.Without($"/runs/{i}/pulses").With($"/runs/{i}/turns", $$"""{ "value": {{32 + i / 10.0}}, "unit": "rev" }""");

        var answer = await question.AnswerAsync();

        Assert.False(answer.Has("/pulsesPerDistance"));
        Assert.False(answer.Has("/runs/0/pulsesPerDistance"));
        Assert.Equal(100 / 32.1, answer.Number("/rollingCircumference/value"), 0.01);
        Assert.Equal("cm", answer.Word("/enter/unit"));
        Assert.False(answer.Has("/enter/distance"));
    }

    [Fact]
    public async Task BareRuns_AreAnsweredWithoutComparison()
    {
        var answer = await Question
            .Of(Question.DistanceSensor)
            .Without("/valueInForce")
            .Without("/controllerEntry")
            .Without("/width")
            .AnswerAsync();

        Assert.Equal(["no-value-in-force"], answer.Codes("/reasons"));
        Assert.False(answer.Has("/change"));
        Assert.False(answer.Has("/enter"));
        Assert.False(answer.Has("/effectIfNumbersStay"));
        Assert.False(answer.Has("/width"));
    }

    [Fact]
    public async Task Entry_WithoutItsDistance_CountsOverAHundredMetresAndSaysSo()
    {
        var answer = await Question.Of(Question.DistanceSensor).Without("/controllerEntry/distance").AnswerAsync();

        Assert.Equal((100, "m"), answer.Quantity("/enter/distance"));
        Assert.Contains("controllerEntry/distance", answer.List("/assumptions").Select(one => one!["name"]!.GetValue<string>()));
    }

    [Fact]
    public async Task OneRun_IsToBeRepeatedOnce()
    {
        var answer = await Question.Of(Question.DistanceSensor).Without("/runs/2").Without("/runs/1").AnswerAsync();

        Assert.Equal("repeat", answer.Word("/verdict"));
        Assert.Equal(1, answer.Number("/moreRuns"));
        Assert.Contains("single-reading", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Question_InFeetAndPounds_HasTheSameAnswer()
    {
        const double Pound = 0.45359237,
            Acre = 0.40468564224,
            Foot = 0.3048;
        var feet = Question
            .Of(Question.DistanceSensor)
            .Convert("/runs/0/distance", "ft", Foot)
            .Convert("/runs/1/distance", "ft", Foot)
            .Convert("/runs/2/distance", "ft", Foot)
            .Convert("/referenceRuns/0/distance", "ft", Foot)
            .Convert("/targetRate", "lb/ac", Pound / Acre)
            .Convert("/area", "ac", Acre);

        var pounds = await feet.AnswerAsync();
        var metric = await Question.Of(Question.DistanceSensor).AnswerAsync();

        foreach (
            var (pointer, unit, factor) in (ReadOnlySpan<(string, string, double)>)
                [
                    ("/pulsesPerDistance", "pulses/100m", 1),
                    ("/pulsesPerLength", "/ft", 1 / Foot),
                    ("/rollingCircumference", "ft", Foot),
                    ("/runs/0/groundSpeed", "mi/h", 1.609344),
                    ("/effectIfNumbersStay/appliedRate", "lb/ac", Pound / Acre),
                    ("/effectIfNumbersStay/massOverArea", "lb", Pound),
                    ("/skid", "%", 1),
                    ("/width/overlap", "ft", Foot),
                ]
        )
        {
            var (value, symbol) = pounds.Quantity(pointer);
            Assert.Equal(unit, symbol);
            Assert.True(Math.Abs(value * factor / metric.Number(pointer + "/value") - 1) < 1e-9, pointer);
        }
    }

    [Fact]
    public async Task Query_UnitsUs_WritesAllOfTheAnswerInThem()
    {
        var answer = await Question.Of(Question.DistanceSensor).AnswerAsync("?units=us");

        Assert.Equal("lb/ac", answer.Word("/effectIfNumbersStay/appliedRate/unit"));
        Assert.Equal("ft", answer.Word("/rollingCircumference/unit"));
        Assert.Equal("/ft", answer.Word("/pulsesPerLength/unit"));
        // What is typed in stays as the controller takes it.
        Assert.Equal((100, "m"), answer.Quantity("/enter/distance"));
    }
}
