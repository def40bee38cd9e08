namespace CalibrationApi.Tests.Calculations.StandRisks;

/// <summary>Every way in which a question about the risk of a stand can be readable and wrong.</summary>
public sealed class StandRiskRequestValidatorTests
{
    private const string Counted =
        """{ "estimate": { "value": 70, "unit": "%" }, "lower": { "value": 60, "unit": "%" }, "upper": { "value": 80, "unit": "%" }, "coverageProbability": 0.95 }""";

    [Theory]
    [InlineData("/minimumStand/value", "0", "#/minimumStand", "number-out-of-range")]
    [InlineData("/probability", "0.4", "#/probability", "number-out-of-range")]
    [InlineData("/probability", "1", "#/probability", "number-out-of-range")]
    [InlineData("/germination/value", "0", "#/germination", "number-out-of-range")]
    [InlineData("/germination/value", "100.5", "#/germination", "number-out-of-range")]
    [InlineData("/purity/value", "0", "#/purity", "number-out-of-range")]
    [InlineData("/germinationSeedsTested", "9", "#/germinationSeedsTested", "number-out-of-range")]
    [InlineData("/thousandKernelMass/unit", "\"g\"", "#/thousandKernelMass", "unit-wrong-dimension")]
    [InlineData("/meteringUncertainty", """{ "value": 51, "unit": "%" }""", "#/meteringUncertainty", "number-out-of-range")]
    [InlineData("/emergence/mean/value", "0", "#/emergence/mean", "number-out-of-range")]
    [InlineData("/emergence/spread/value", "41", "#/emergence/spread", "settings-at-odds")]
    [InlineData("/emergence/mean/value", "100", "#/emergence/spread", "settings-at-odds")]
    [InlineData("/emergence/counted", Counted, "#/emergence/counted", "settings-at-odds")]
    [InlineData("/emergence/seasonSpread", """{ "value": 5, "unit": "%" }""", "#/emergence/seasonSpread", "settings-at-odds")]
    [InlineData("/emergence", """{ "counted": { } }""", "#/emergence/counted/estimate", "member-missing")]
    [InlineData(
        "/emergence",
        """{ "counted": { "estimate": { "value": 70, "unit": "%" }, "lower": { "value": 75, "unit": "%" }, "upper": { "value": 80, "unit": "%" }, "coverageProbability": 0.95 } }""",
        "#/emergence/counted/estimate",
        "settings-at-odds"
    )]
    [InlineData(
        "/emergence",
        """{ "counted": { "estimate": { "value": 70, "unit": "%" }, "lower": { "value": 0, "unit": "%" }, "upper": { "value": 400, "unit": "%" }, "coverageProbability": 0.95 } }""",
        "#/emergence/counted",
        "settings-at-odds"
    )]
    [InlineData(
        "/emergence",
        "{ \"counted\": " + Counted + ", \"seasonSpread\": { \"value\": 50, \"unit\": \"%\" } }",
        "#/emergence/seasonSpread",
        "settings-at-odds"
    )]
    [InlineData("/emergence", "{}", "#/emergence/mean", "member-missing")]
    [InlineData(
        "/survival",
        """{ "mean": { "value": 70, "unit": "%" }, "spread": { "value": 5, "unit": "%" } }""",
        "#/survival",
        "settings-at-odds"
    )]
    [InlineData("/seedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/rate", "settings-at-odds")]
    [InlineData("/maximumSeedsPerArea", """{ "value": 400, "unit": "/m2" }""", "#/maximumRate", "settings-at-odds")]
    [InlineData("/price/value", "-1", "#/price/value", "number-out-of-range")]
    [InlineData("/price/per", "\"ha\"", "#/price/per", "word-unknown")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.StandRisk).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/minimumStand", "#/minimumStand")]
    [InlineData("/emergence", "#/emergence")]
    [InlineData("/emergence/spread", "#/emergence/spread")]
    [InlineData("/germination", "#/germination")]
    [InlineData("/thousandKernelMass", "#/thousandKernelMass")]
    [InlineData("/price", "#/price")]
    public async Task Member_ThatIsNeeded_IsAskedForAtItsPlace(string pointer, string at)
    {
        using var response = await Question.Of(Question.StandRisk).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "member-missing");
    }

    [Theory]
    [InlineData("/germination", "#/germination")]
    [InlineData("/germinationSeedsTested", "#/germinationSeedsTested")]
    public async Task Survival_BesideGermination_IsAtOdds(string kept, string at)
    {
        var question = Question
            .Of(Question.StandRisk)
            .Without("/emergence")
            .With("/germinationSeedsTested", "200")
            .With("/survival", """{ "mean": { "value": 70, "unit": "%" }, "spread": { "value": 5, "unit": "%" } }""");
        if (kept != "/germination")
            question.Without("/germination");

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "settings-at-odds");
    }

    [Fact]
    public async Task Price_WithoutKernelMass_AsksForIt()
    {
        using var response = await Question
            .Of(Question.StandRisk)
            .Without("/thousandKernelMass")
            .Without("/rate")
            .Without("/maximumRate")
            .Without("/purity")
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/thousandKernelMass" && fault.Code == "member-missing");
    }
}
