namespace CalibrationApi.Tests.Calculations.VolumeChecks;

/// <summary>Every way in which a volume check can be readable and wrong.</summary>
public sealed class VolumeCheckRequestValidatorTests
{
    [Theory]
    [InlineData("/displacement/value", "0", "#/displacement", "number-out-of-range")]
    [InlineData("/displacement/unit", "\"bu\"", "#/displacement", "unit-ambiguous")]
    [InlineData(
        "/displacement/relativeUncertainty",
        """{ "value": 101, "unit": "%" }""",
        "#/displacement/relativeUncertainty",
        "number-out-of-range"
    )]
    [InlineData("/bulkDensity/value", "-62", "#/bulkDensity", "number-out-of-range")]
    [InlineData("/bulkDensity/unit", "\"lb/bu\"", "#/bulkDensity", "unit-ambiguous")]
    [InlineData("/bulkDensity/relativeUncertainty/value", "-1", "#/bulkDensity/relativeUncertainty", "number-out-of-range")]
    [InlineData("/fillEfficiency", """{ "value": 0, "unit": "%" }""", "#/fillEfficiency", "number-out-of-range")]
    [InlineData("/fillEfficiency", """{ "value": 201, "unit": "%" }""", "#/fillEfficiency", "number-out-of-range")]
    [InlineData("/fillEfficiencySpread", """{ "value": 15, "unit": "kg" }""", "#/fillEfficiencySpread", "unit-wrong-dimension")]
    [InlineData("/massPerRevolution/value", "0", "#/massPerRevolution", "number-out-of-range")]
    [InlineData("/learnedFrom", "{}", "#/learnedFrom/bulkDensity", "member-missing")]
    [InlineData("/coverageProbability", "0.2", "#/coverageProbability", "number-out-of-range")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.VolumeCheck).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/displacement")]
    [InlineData("/bulkDensity")]
    public async Task Member_ThatIsMissing_IsAskedFor(string pointer)
    {
        using var response = await Question.Of(Question.VolumeCheck).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == $"#{pointer}" && fault.Code == "member-missing");
    }

    [Theory]
    [InlineData("/fillEfficiency", """{ "value": 90, "unit": "%" }""")]
    [InlineData("/fillEfficiencySpread", """{ "value": 5, "unit": "%" }""")]
    public async Task FillEfficiency_StatedAndLearned_IsAtOdds(string pointer, string json)
    {
        using var response = await Question
            .Of(Question.VolumeCheck)
            .With(
                "/learnedFrom",
                """{ "massPerRevolution": { "value": 0.53, "unit": "kg/rev" }, "bulkDensity": { "value": 96, "unit": "kg/hL" } }"""
            )
            .With(pointer, json)
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == $"#{pointer}" && fault.Code == "settings-at-odds");
    }
}
