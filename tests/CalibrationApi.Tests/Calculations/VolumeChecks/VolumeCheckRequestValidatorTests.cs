using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.VolumeChecks;

/// <summary>Every way in which a volume check can be readable and wrong.</summary>
public sealed class VolumeCheckRequestValidatorTests
{
    [Theory]
    [InlineData("/displacement/value", "0", "#/displacement", ErrorCode.NumberOutOfRange)]
    [InlineData("/displacement/unit", "\"bu\"", "#/displacement", ErrorCode.UnitAmbiguous)]
    [InlineData(
        "/displacement/relativeUncertainty",
        """{ "value": 101, "unit": "%" }""",
        "#/displacement/relativeUncertainty",
        ErrorCode.NumberOutOfRange
    )]
    [InlineData("/bulkDensity/value", "-62", "#/bulkDensity", ErrorCode.NumberOutOfRange)]
    [InlineData("/bulkDensity/unit", "\"lb/bu\"", "#/bulkDensity", ErrorCode.UnitAmbiguous)]
    [InlineData("/bulkDensity/relativeUncertainty/value", "-1", "#/bulkDensity/relativeUncertainty", ErrorCode.NumberOutOfRange)]
    [InlineData("/fillEfficiency", """{ "value": 0, "unit": "%" }""", "#/fillEfficiency", ErrorCode.NumberOutOfRange)]
    [InlineData("/fillEfficiency", """{ "value": 201, "unit": "%" }""", "#/fillEfficiency", ErrorCode.NumberOutOfRange)]
    [InlineData("/fillEfficiencySpread", """{ "value": 15, "unit": "kg" }""", "#/fillEfficiencySpread", ErrorCode.UnitWrongDimension)]
    [InlineData("/massPerRevolution/value", "0", "#/massPerRevolution", ErrorCode.NumberOutOfRange)]
    [InlineData("/learnedFrom", "{}", "#/learnedFrom/bulkDensity", ErrorCode.MemberMissing)]
    [InlineData("/coverageProbability", "0.2", "#/coverageProbability", ErrorCode.NumberOutOfRange)]
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == $"#{pointer}" && fault.Code == ErrorCode.MemberMissing);
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == $"#{pointer}" && fault.Code == ErrorCode.SettingsAtOdds);
    }
}
