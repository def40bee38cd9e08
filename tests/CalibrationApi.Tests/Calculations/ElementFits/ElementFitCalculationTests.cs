namespace CalibrationApi.Tests.Calculations.ElementFits;

/// <summary>What a question about the fit of elements is answered; the numbers of the engine have their own tests.</summary>
public sealed class ElementFitCalculationTests
{
    private const string ElementFit = "element-fit";

    // 10 kg/ha x 9 m x 11 km/h is 1.65 kg/min; a litre delivers 0.78 kg x 0.9.
    [Fact]
    public async Task Answer_DemoQuestion_PutsTheNearestElementFirst()
    {
        var answer = await Question.Of(ElementFit).AnswerAsync();

        Assert.Equal((10, "kg/ha"), answer.Quantity("/highestNeed/rate"));
        Assert.Equal((11, "km/h"), answer.Quantity("/highestNeed/groundSpeed"));
        Assert.Equal((1.65, "kg/min"), answer.Quantity("/highestNeed/massFlow"));
        Assert.Equal("L", answer.Word("/window/lower/unit"));
        Assert.Equal(1.65 / (0.78 * 0.9 * 90), answer.Number("/window/lower/value"), 1e-12);
        Assert.Equal(0.63 / (0.78 * 0.9 * 4), answer.Number("/window/upper/value"), 1e-12);
        Assert.False(answer.Flag("/window/isEmpty"));
        Assert.Equal("small-seed roller", answer.Word("/elements/0/name"));
        Assert.True(answer.Flag("/elements/0/fits"));
        Assert.True(answer.Number("/elements/0/probability") > 0.99);
        Assert.Equal("coarse roller", answer.Word("/elements/2/name"));
        Assert.Equal(100 * (4 / (0.63 / (0.61 * 0.78 * 0.9)) - 1), answer.Number("/elements/2/tooSlowBy/value"), 1e-9);
        Assert.False(answer.Has("/elements/2/tooFastBy"));
        Assert.False(answer.Has("/waysOut"));
        Assert.Equal(["outside-meter-window"], answer.Codes("/findings"));
        Assert.Equal(["manual-first", "unexpected-start", "rotating-parts", "product-dust"], answer.Codes("/cautions"));
    }

    [Fact]
    public async Task MeterSpeed_AskedWithTheExpectedDelivery_FindsTheSameSpeeds()
    {
        var fit = await Question.Of(ElementFit).AnswerAsync();
        var delivery = $$"""{ "value": {{fit.Number("/elements/0/expected/value"):R}}, "unit": "kg/rev" }""";

        var speeds = await Question
            .Of(Question.MeterSpeed)
            .With("/rates", """[{ "value": 6, "unit": "kg/ha" }, { "value": 10, "unit": "kg/ha" }]""")
            .With("/elements", $$"""[{ "name": "small-seed roller", "massPerRevolution": {{delivery}} }]""")
            .AnswerAsync();

        Assert.Equal(speeds.Number("/elements/0/corners/0/meterSpeed/value"), fit.Number("/elements/0/lowestMeterSpeed/value"), 1e-9);
        Assert.Equal(speeds.Number("/elements/0/corners/3/meterSpeed/value"), fit.Number("/elements/0/highestMeterSpeed/value"), 1e-9);
    }

    [Fact]
    public async Task NoElements_WindowOnly()
    {
        var answer = await Question.Of(ElementFit).Without("/elements").AnswerAsync();

        Assert.Empty(answer.List("/elements"));
        Assert.StartsWith("Look for an element of about", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.Equal(0.95, answer.Number("/innerWindow/coverageProbability"));
    }

    [Fact]
    public async Task RatesTooFarApart_WaysOutAndTheirWindows()
    {
        var answer = await Question
            .Of(ElementFit)
            .With("/rates", """[{ "value": 3, "unit": "kg/ha" }, { "value": 180, "unit": "kg/ha" }]""")
            .AnswerAsync();

        Assert.True(answer.Flag("/window/isEmpty"));
        Assert.False(answer.Has("/innerWindow"));
        Assert.Equal("no-displacement-serves", answer.Codes("/findings")[0]);
        Assert.Equal(2, answer.List("/waysOut/shares").Count);
        Assert.False(answer.Flag("/waysOut/shares/0/window/isEmpty"));
        Assert.Equal(answer.Number("/waysOut/shares/0/maximumRate/value"), answer.Number("/waysOut/shares/1/minimumRate/value"));
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(ElementFit).AnswerAsync("?units=us");

        Assert.Equal("ft3", answer.Word("/window/middle/unit"));
        Assert.Equal("lb/min", answer.Word("/lowestNeed/massFlow/unit"));
        Assert.Contains(" ft3 per revolution", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_InOtherUnits_HasTheSameAnswer()
    {
        // NIST SP 811: 1 ft is 0.3048 m, 1 lb 0.45359237 kg, 1 mi 1609.344 m, 1 acre 43560 ft2.
        const double PoundPerAcre = 0.45359237 / (43_560 * 0.3048 * 0.3048) * 10_000;
        var pounds = Question
            .Of(ElementFit)
            .Convert("/bulkDensity", "lb/ft3", 0.45359237 / 28.316846592 * 100)
            .Convert("/coveredWidth", "ft", 0.3048)
            .Convert("/speedLimits/minimum", "rev/s", 60)
            .Convert("/speedLimits/maximum", "rev/s", 60);
        for (var i = 0; i < 2; i++)
            pounds = pounds.Convert($"/rates/{i}", "lb/ac", PoundPerAcre).Convert($"/groundSpeeds/{i}", "mi/h", 1.609344);
        for (var i = 0; i < 3; i++)
            pounds = pounds.Convert($"/elements/{i}/displacement", "ft3", 28.316846592);

        var (us, metric) = (await pounds.AnswerAsync(), await Question.Of(ElementFit).AnswerAsync());

        Assert.Equal(("lb/min", "rev/s"), (us.Word("/lowestNeed/massFlow/unit"), us.Word("/elements/0/lowestMeterSpeed/unit")));
        foreach (var end in new[] { "/window/lower", "/window/upper", "/window/middle", "/innerWindow/lower", "/innerWindow/upper" })
            Assert.Equal(metric.Number(end + "/value"), us.Number(end + "/value") * 28.316846592, 1e-10);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(metric.Word($"/elements/{i}/name"), us.Word($"/elements/{i}/name"));
            Assert.Equal(metric.Number($"/elements/{i}/probability"), us.Number($"/elements/{i}/probability"), 1e-10);
        }

        Assert.Equal(metric.Codes("/findings"), us.Codes("/findings"));
    }

    [Theory]
    [InlineData("/bulkDensity/value", "-62", "#/bulkDensity", "number-out-of-range")]
    [InlineData("/rates", "[]", "#/rates", "too-few")]
    [InlineData("/groundSpeeds/1/unit", "\"kg\"", "#/groundSpeeds/1", "unit-wrong-dimension")]
    [InlineData("/speedLimits", "{}", "#/speedLimits/minimum", "member-missing")]
    [InlineData("/speedLimits/minimum/value", "0", "#/speedLimits/minimum", "number-out-of-range")]
    [InlineData("/speedLimits/minimum/value", "90", "#/speedLimits/minimum", "settings-at-odds")]
    [InlineData("/rates", """[{ "value": 0, "unit": "kg/ha" }]""", "#/rates", "settings-at-odds")]
    [InlineData("/rates", """[{ "value": 0.000000001, "unit": "kg/ha" }]""", "#/rates", "settings-at-odds")]
    [InlineData("/fillEfficiency", """{ "value": 201, "unit": "%" }""", "#/fillEfficiency", "number-out-of-range")]
    [InlineData("/elements/0/kind", "\"roller\"", "#/elements/0/kind", "word-unknown")]
    [InlineData("/elements/0/displacement/value", "0", "#/elements/0/displacement", "number-out-of-range")]
    [InlineData("/coverageProbability", "0.2", "#/coverageProbability", "number-out-of-range")]
    public async Task Member_ThatIsWrong_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(ElementFit).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }
}
