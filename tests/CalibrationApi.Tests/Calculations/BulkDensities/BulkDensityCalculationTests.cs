namespace CalibrationApi.Tests.Calculations.BulkDensities;

/// <summary>What a question about a bulk density is answered; the numbers of the engine have their own tests.</summary>
public sealed class BulkDensityCalculationTests
{
    private const string Stated = """{ "value": 1250, "unit": "kg/m3" }""";

    // 6.22, 6.16 and 6.24 kg in 10 L.
    [Fact]
    public async Task Answer_DemoQuestion_IsTheMeanOfTheWeighings()
    {
        var answer = await Question.Of(Question.BulkDensity).AnswerAsync();

        Assert.Equal("kg/hL", answer.Word("/bulkDensity/unit"));
        Assert.Equal(62.07, answer.Number("/bulkDensity/value"), 0.01);
        Assert.True(answer.Number("/bulkDensity/expandedUncertainty") > 0);
        Assert.Equal("weighed", answer.Word("/basis"));
        Assert.Equal((62.2, "kg/hL"), answer.Quantity("/weighings/0/bulkDensity"));
        Assert.Equal((6.22, "kg"), answer.Quantity("/weighings/0/net"));
        Assert.StartsWith("The bulk density of malting barley is 62.07 kg/hL", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_DemoQuestion_TellsTheDensityInEveryUnit()
    {
        var answer = await Question.Of(Question.BulkDensity).AnswerAsync();

        var all = answer
            .List("/inOtherUnits")
            .ToDictionary(one => one!["unit"]!.GetValue<string>(), one => one!["value"]!.GetValue<double>());
        Assert.Equal(["kg/hL", "kg/m3", "kg/L", "lb/ft3", "lb/bu-us", "lb/bu-imp"], all.Keys);
        // NIST SP 811: 1 lb/ft3 is 16.018 46 kg/m3.
        Assert.Equal(all["kg/m3"], all["lb/ft3"] * 16.01846, 1e-3);
        // Canadian Grain Commission: 1.247 kg/hL for a pound in an Avery bushel.
        Assert.Equal(all["kg/hL"], all["lb/bu-imp"] * 1.247, 0.025);
    }

    [Fact]
    public async Task Answer_DemoQuestion_TellsWhatTheTankHolds()
    {
        var answer = await Question.Of(Question.BulkDensity).AnswerAsync();

        Assert.Equal(answer.Number("/bulkDensity/value") / 100 * 2000 * 0.95, answer.Number("/tank/mass/value"), 1e-6);
        Assert.Equal(answer.Number("/tank/mass/value") / 90, answer.Number("/tank/area/value"), 1e-9);
        Assert.True(answer.Number("/tank/lowerMass/value") < answer.Number("/tank/upperMass/value"));
        Assert.Contains("tank-entry", answer.Codes("/cautions"));
    }

    [Fact]
    public async Task Reference_OfTheMaterial_ComesAsPrintedWithEverySource()
    {
        var answer = await Question.Of(Question.BulkDensity).AnswerAsync();

        Assert.Equal("barley", answer.Word("/reference/material"));
        Assert.Equal((48, "lb/bu-us"), answer.Quantity("/reference/published/0/low"));
        Assert.Equal("legal-bushel-weight", answer.Word("/reference/published/0/kind"));
        Assert.All(answer.List("/reference/published"), one => Assert.NotEqual("", one!["source"]!.GetValue<string>()));
    }

    [Fact]
    public async Task StatedDensity_OfSingleGranules_IsChallenged()
    {
        var answer = await Without("/weighed").With("/reference", "\"urea-granular\"").With("/statedDensity", Stated).AnswerAsync();

        Assert.Equal("stated", answer.Word("/basis"));
        Assert.Contains("density-unlike-reference", answer.Codes("/findings"));
        Assert.Equal("warning", answer.Word("/findings/0/severity"));
        Assert.Equal((1250, "kg/m3"), answer.Quantity("/bulkDensity"));
    }

    [Fact]
    public async Task Reference_Alone_GivesAValueToStartFrom()
    {
        var answer = await Without("/weighed").With("/reference", "\"sugar-beet\"").AnswerAsync();

        Assert.Equal("published", answer.Word("/basis"));
        Assert.Contains("published-density-only", answer.Codes("/findings"));
        Assert.Equal("lotToLot", answer.Word("/assumptions/0/name"));
        Assert.Equal("dry", answer.Word("/reference/moisture/0/basis"));
        Assert.True(answer.Number("/reference/moisture/0/changePerPoint/value") < 0);
    }

    [Theory]
    [InlineData("lb/bu-us", 77.23)]
    [InlineData("lb/bu-imp", 74.83)]
    public async Task TestWeight_InPoundsPerBushel_IsTakenByTheBushelNamed(string unit, double kilogramsPerHectolitre)
    {
        var answer = await Without("/weighed")
            .With("/reference", "\"wheat\"")
            .With("/testWeight", $$"""{ "value": 60, "unit": "{{unit}}" }""")
            .AnswerAsync("?units=metric");

        Assert.Equal(kilogramsPerHectolitre, answer.Number("/bulkDensity/value"), 0.01);
        Assert.Contains("other-bushel", answer.Codes("/findings"));
        Assert.Equal(unit == "lb/bu-imp", answer.Has("/looseDensity"));
    }

    [Fact]
    public async Task FilledTank_IsMassOverVolume()
    {
        var answer = await Without("/weighed")
            .Without("/reference")
            .With("/filledTank", """{ "mass": { "value": 2000, "unit": "lb" }, "volume": { "value": 40, "unit": "ft3" } }""")
            .AnswerAsync();

        Assert.Equal("filled-tank", answer.Word("/basis"));
        Assert.Equal((50, "lb/ft3"), answer.Quantity("/bulkDensity"));
        Assert.False(answer.Has("/reference"));
        Assert.False(answer.Has("/weighings"));
    }

    [Theory]
    [InlineData("""{ "volume": { "value": 250, "unit": "bu-us" } }""", "lb")]
    [InlineData("""{ "volume": { "value": 250, "unit": "bu-us" }, "targetRate": { "value": 90, "unit": "lb/ac" } }""", "lb")]
    [InlineData("""{ "volume": { "value": 9000, "unit": "L" }, "targetRate": { "value": 100, "unit": "kg/ha" } }""", "kg")]
    public async Task Tank_BesideADensityInPounds_IsToldInThemUnlessTheRateIsMetric(string tank, string unit)
    {
        var answer = await Without("/weighed")
            .With("/testWeight", """{ "value": 60, "unit": "lb/bu-us" }""")
            .With("/tank", tank)
            .AnswerAsync();

        Assert.Equal(unit, answer.Word("/tank/mass/unit"));
        Assert.Equal((60, "lb/bu-us"), answer.Quantity("/bulkDensity"));
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(Question.BulkDensity).AnswerAsync("?units=us");

        Assert.Equal("lb/bu-us", answer.Word("/bulkDensity/unit"));
        Assert.Equal("lb", answer.Word("/tank/mass/unit"));
        Assert.DoesNotContain("kg", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Query_UnitsUsOfAFertilizer_IsByTheCubicFoot()
    {
        var answer = await Without("/weighed").With("/reference", "\"urea-granular\"").AnswerAsync("?units=us");

        Assert.Equal((46, "lb/ft3"), answer.Quantity("/bulkDensity"));
    }

    [Fact]
    public async Task Question_InPoundsAndInKilograms_HasTheSameAnswer()
    {
        const double Pound = 0.45359237;
        var question = Question.Of(Question.BulkDensity).Convert("/weighed/scale/division", "lb", Pound);
        foreach (var i in (int[])[0, 1, 2])
            question.Convert($"/weighed/weighings/{i}/gross", "lb", Pound).Convert($"/weighed/weighings/{i}/tare", "lb", Pound);

        var pounds = await question.AnswerAsync();
        var metric = await Question.Of(Question.BulkDensity).AnswerAsync();

        Assert.Equal("lb/ft3", pounds.Word("/bulkDensity/unit"));
        Assert.Equal(1, pounds.Number("/inOtherUnits/0/value") / metric.Number("/inOtherUnits/0/value"), 1e-12);
    }

    private static Question Without(string pointer) => Question.Of(Question.BulkDensity).Without(pointer);
}
