namespace CalibrationApi.Tests.Calculations.BulkDensities;

/// <summary>Every way in which a question about a bulk density can be readable and wrong.</summary>
public sealed class BulkDensityRequestValidatorTests
{
    [Theory]
    [InlineData("/reference", "\"sand\"", "#/reference", "word-unknown")]
    [InlineData("/weighed/volume/value", "0", "#/weighed/volume", "number-out-of-range")]
    [InlineData("/weighed/volume/unit", "\"bu\"", "#/weighed/volume", "unit-ambiguous")]
    [InlineData("/weighed/volume/value", "0.1", "#/weighed/weighings/0/gross", "number-out-of-range")]
    [InlineData("/weighed/volumeTolerance/value", "51", "#/weighed/volumeTolerance", "number-out-of-range")]
    [InlineData("/weighed/weighings", "[]", "#/weighed/weighings", "too-few")]
    [InlineData("/weighed/weighings/0/tare/value", "6.84", "#/weighed/weighings/0/tare", "tare-above-gross")]
    [InlineData("/weighed/weighings/1/net", """{ "value": 6, "unit": "kg" }""", "#/weighed/weighings/1/net", "settings-at-odds")]
    [InlineData("/weighed/weighings/1", """{ "net": { "value": 6, "unit": "kg" } }""", "#/weighed/weighings", "settings-at-odds")]
    [InlineData("/weighed/weighings/1", "{}", "#/weighed/weighings/1/gross", "member-missing")]
    [InlineData("/weighed/weighings/1", """{ "gross": { "value": 6, "unit": "kg" } }""", "#/weighed/weighings/1/tare", "member-missing")]
    [InlineData("/weighed/sharedTare", """{ "value": 0.62, "unit": "kg" }""", "#/weighed/weighings/0/tare", "settings-at-odds")]
    [InlineData("/weighed/scale/division/value", "0", "#/weighed/scale/division", "number-out-of-range")]
    [InlineData("/testWeight", """{ "value": 60, "unit": "lb/bu-us" }""", "#/testWeight", "settings-at-odds")]
    [InlineData("/testWeight", """{ "value": 60, "unit": "lb/bu" }""", "#/testWeight", "unit-ambiguous")]
    [InlineData("/statedDensity", """{ "value": -1, "unit": "kg/hL" }""", "#/statedDensity", "number-out-of-range")]
    [InlineData(
        "/filledTank",
        """{ "mass": { "value": 1, "unit": "t" }, "volume": { "value": 1, "unit": "L" } }""",
        "#/filledTank/mass",
        "number-out-of-range"
    )]
    [InlineData("/lotToLot", """{ "value": 5, "unit": "%" }""", "#/lotToLot", "settings-at-odds")]
    [InlineData("/tank/fill/value", "120", "#/tank/fill", "number-out-of-range")]
    [InlineData("/coverageProbability", "1", "#/coverageProbability", "number-out-of-range")]
    [InlineData("/product", "\" \"", "#/product", "text-wrong")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.BulkDensity).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Fact]
    public async Task Question_WithoutAnyEvidence_IsToldWhatToAdd()
    {
        using var response = await Question.Of(Question.BulkDensity).Without("/weighed").Without("/reference").AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/weighed" && fault.Code == "member-missing");
    }
}
