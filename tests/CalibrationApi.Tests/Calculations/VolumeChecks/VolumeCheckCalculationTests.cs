namespace CalibrationApi.Tests.Calculations.VolumeChecks;

/// <summary>What a volume check is answered; the numbers of the engine have their own tests.</summary>
public sealed class VolumeCheckCalculationTests
{
    [Fact]
    public async Task Answer_DemoQuestion_ExpectsVolumeTimesDensityTimesFill()
    {
        var answer = await Question.Of(Question.VolumeCheck).AnswerAsync();

        Assert.Equal("kg/rev", answer.Word("/expected/unit"));
        Assert.Equal(0.61 * 0.62 * 0.9, answer.Number("/expected/value"), 1e-12);
        Assert.True(answer.Number("/expected/lower/value") < 0.342 && answer.Number("/expected/upper/value") > 0.342);
        Assert.Equal(100 * 0.342 / (0.61 * 0.62), answer.Number("/checked/fillEfficiency/value"), 1e-9);
        Assert.Empty(answer.List("/findings"));
        Assert.Contains("The value in force, 0.342 kg/rev, is 0.5 % above that", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task StartValue_PutIntoACatchPlan_IsTaken()
    {
        var startValue = (await Question.Of(Question.VolumeCheck).AnswerAsync()).At("/startValue")!.ToJsonString();

        var plan = await Question
            .Of(Question.CatchPlan)
            .Without("/meters/0/valueInForce")
            .With("/meters/0/startValue", startValue)
            .AnswerAsync();

        Assert.NotEmpty(plan.List("/meters"));
    }

    [Fact]
    public async Task NothingToCheck_ExpectationOnly()
    {
        var answer = await Question.Of(Question.VolumeCheck).Without("/massPerRevolution").AnswerAsync();

        Assert.False(answer.Has("/checked"));
        Assert.EndsWith("Use it to plan a catch, not to seed.", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task MoreThanTheElementHolds_IsSaidWithWhatWouldFit()
    {
        var answer = await Question.Of(Question.VolumeCheck).With("/massPerRevolution/value", "0.754").AnswerAsync();

        Assert.Equal(["more-than-the-element-holds"], answer.Codes("/findings"));
        Assert.Contains("pounds taken as kilograms", answer.Word("/findings/0/detail"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task LearnedFrom_AnotherProduct_ScalesWithDensity()
    {
        var answer = await Question
            .Of(Question.VolumeCheck)
            .With(
                "/learnedFrom",
                """{ "massPerRevolution": { "value": 0.53, "unit": "kg/rev" }, "bulkDensity": { "value": 96, "unit": "kg/hL" } }"""
            )
            .AnswerAsync();

        Assert.Equal(0.53 * 62 / 96, answer.Number("/expected/value"), 1e-12);
        Assert.Contains("learnedFrom/spread", answer.List("/assumptions").Select(one => one!["name"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(Question.VolumeCheck).AnswerAsync("?units=us");

        Assert.Equal("lb/rev", answer.Word("/startValue/unit"));
        Assert.DoesNotContain("kg", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_InOtherUnits_HasTheSameAnswer()
    {
        // NIST SP 811: 1 lb/ft3 is 0.45359237 / 0.3048^3 kg/m3.
        var pounds = await Question
            .Of(Question.VolumeCheck)
            .Convert("/displacement", "ft3", 28.316846592)
            .Convert("/bulkDensity", "lb/ft3", 0.45359237 / 0.028316846592 / 10)
            .Convert("/massPerRevolution", "lb/rev", 0.45359237)
            .AnswerAsync();
        var metric = await Question.Of(Question.VolumeCheck).AnswerAsync();

        Assert.Equal("lb/rev", pounds.Word("/expected/unit"));
        Assert.Equal(metric.Number("/checked/ratio/value"), pounds.Number("/checked/ratio/value"), 1e-10);
        Assert.Equal(metric.Number("/expected/upper/value"), pounds.Number("/expected/upper/value") * 0.45359237, 1e-12);
    }
}
