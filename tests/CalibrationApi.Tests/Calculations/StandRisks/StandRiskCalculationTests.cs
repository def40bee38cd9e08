namespace CalibrationApi.Tests.Calculations.StandRisks;

/// <summary>What a question about the risk of a stand is answered; the numbers of the engine have their own tests.</summary>
public sealed class StandRiskCalculationTests
{
    // 240 / (0.95 x 0.79) seeds, times 48 g per thousand over 99 % purity.
    [Fact]
    public async Task Answer_DemoQuestion_IsThatOnPaper()
    {
        var answer = await Question.Of(Question.StandRisk).AnswerAsync();

        Assert.Equal(240 / (0.95 * 0.79), answer.Number("/atMean/seedsPerArea/value"), 1e-9);
        Assert.Equal(240 / (0.95 * 0.79) * 48e-6 / 0.99 * 1e4, answer.Number("/atMean/rate/value"), 1e-9);
        Assert.Equal(0.9, answer.Number("/needed/probabilityReached"), 1e-9);
        Assert.Equal((240, "/m2"), answer.Quantity("/needed/standReached"));
        Assert.Equal(170, answer.Number("/given/rate/value"), 1e-9);
        Assert.Equal(["stand-at-risk"], answer.Codes("/findings"));
    }

    // A spread that no one could see made an answer that is no number.
    [Theory]
    [InlineData("0")]
    [InlineData("1e-9")]
    public async Task Spread_NextToNothing_IsAnswered(string spread)
    {
        var answer = await Question
            .Of(Question.StandRisk)
            .Without("/emergence")
            .Without("/germination")
            .Without("/thousandKernelMass")
            .Without("/purity")
            .Without("/rate")
            .Without("/maximumRate")
            .Without("/price")
            .Without("/area")
            .With("/meteringUncertainty", """{ "value": 0, "unit": "%" }""")
            .With("/survival", $$"""{ "mean": { "value": 80, "unit": "%" }, "spread": { "value": {{spread}}, "unit": "%" } }""")
            .With("/seedsPerArea", """{ "value": 301, "unit": "/m2" }""")
            .AnswerAsync();

        Assert.Equal(300, answer.Number("/needed/seedsPerArea/value"), 1e-6);
        Assert.Equal(1, answer.Number("/given/probabilityReached"));
        Assert.Equal(1, answer.Number("/needed/probabilityReached"));
    }

    [Fact]
    public async Task Margin_CostsItsSeed()
    {
        var answer = await Question.Of(Question.StandRisk).AnswerAsync();

        var extra = answer.Number("/needed/rate/value") - answer.Number("/atMean/rate/value");
        Assert.Equal(extra, answer.Number("/margin/rate/value"), 1e-9);
        Assert.Equal(extra * 0.64, answer.Number("/margin/costPerArea/value"), 1e-9);
        Assert.Equal("ha", answer.Word("/margin/costPerArea/per"));
        Assert.Equal(extra * 0.64 * 48, answer.Number("/margin/totalCost/value"), 1e-7);
        Assert.Equal("EUR", answer.Word("/margin/totalCost/currency"));
    }

    [Fact]
    public async Task Given_TheRateNeeded_HasTheWantedProbability()
    {
        var needed = (await Question.Of(Question.StandRisk).AnswerAsync()).At("/needed/rate")!.ToJsonString();
        var back = await Question.Of(Question.StandRisk).With("/rate", needed).AnswerAsync();

        Assert.Equal(0.9, back.Number("/given/probabilityReached"), 1e-9);
    }

    [Fact]
    public async Task Emergence_FromAStandCount_IsTakenAsAnswered()
    {
        var counted = (await Question.Of(Question.StandCount).AnswerAsync()).At("/emergence")!.ToJsonString();
        var alone = await Question.Of(Question.StandRisk).With("/emergence", $$"""{ "counted": {{counted}} }""").AnswerAsync();
        var seasons = await Question
            .Of(Question.StandRisk)
            .With("/emergence", $$"""{ "counted": {{counted}}, "seasonSpread": { "value": 8, "unit": "%" } }""")
            .AnswerAsync();

        Assert.Contains("season-spread-missing", alone.Codes("/findings"));
        Assert.DoesNotContain("season-spread-missing", seasons.Codes("/findings"));
        Assert.True(seasons.Number("/margin/relative/value") > alone.Number("/margin/relative/value"));
    }

    [Fact]
    public async Task Survival_InPlaceOfEmergence_LeavesGerminationOut()
    {
        var answer = await Question
            .Of(Question.StandRisk)
            .Without("/germination")
            .Without("/emergence")
            .With("/survival", """{ "mean": { "value": 75, "unit": "%" }, "spread": { "value": 7, "unit": "%" } }""")
            .AnswerAsync();

        Assert.Equal(240 / 0.75, answer.Number("/atMean/seedsPerArea/value"), 1e-9);
        Assert.DoesNotContain("germination", answer.List("/uncertaintyParts").Select(part => part!["source"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Answer_SeedsOnly_HasNoMassAndNoMoney()
    {
        var answer = await Question
            .Of(Question.StandRisk)
            .Without("/thousandKernelMass")
            .Without("/purity")
            .Without("/price")
            .Without("/area")
            .Without("/rate")
            .Without("/maximumRate")
            .With("/seedsPerArea", """{ "value": 340, "unit": "/m2" }""")
            .With("/maximumSeedsPerArea", """{ "value": 345, "unit": "/m2" }""")
            .AnswerAsync();

        Assert.False(answer.Has("/needed/rate"));
        Assert.False(answer.Has("/margin/costPerArea"));
        Assert.Equal(340, answer.Number("/given/seedsPerArea/value"));
        Assert.Contains("rate-above-maximum", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Answer_SurvivalThatCanFail_HasNoRate()
    {
        var answer = await Question
            .Of(Question.StandRisk)
            .With("/probability", "0.99")
            .With("/emergence", """{ "mean": { "value": 50, "unit": "%" }, "spread": { "value": 35, "unit": "%" } }""")
            .AnswerAsync();

        Assert.False(answer.Has("/needed"));
        Assert.False(answer.Has("/margin"));
        Assert.Contains("probability-out-of-reach", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(Question.StandRisk).AnswerAsync("?units=us");

        Assert.Equal("lb/ac", answer.Word("/needed/rate/unit"));
        Assert.Equal("ac", answer.Word("/margin/costPerArea/per"));
        Assert.Contains("seeds/ft2", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.DoesNotContain("kg", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task MinimumStand_PerSquareFoot_AsksForPounds()
    {
        var answer = await Question
            .Of(Question.StandRisk)
            .Without("/rate")
            .Without("/maximumRate")
            .Without("/area")
            .With("/minimumStand", """{ "value": 22, "unit": "/ft2" }""")
            .AnswerAsync();

        Assert.Equal("lb/ac", answer.Word("/needed/rate/unit"));
        Assert.Equal("/ft2", answer.Word("/needed/seedsPerArea/unit"));
        Assert.Equal("ac", answer.Word("/margin/costPerArea/per"));
    }
}
