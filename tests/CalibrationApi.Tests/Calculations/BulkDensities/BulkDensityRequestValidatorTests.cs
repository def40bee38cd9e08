using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.BulkDensities;

/// <summary>Every way in which a question about a bulk density can be readable and wrong.</summary>
public sealed class BulkDensityRequestValidatorTests
{
    [Theory]
    [InlineData("/reference", "\"sand\"", "#/reference", ErrorCode.WordUnknown)]
    [InlineData("/weighed/volume/value", "0", "#/weighed/volume", ErrorCode.NumberOutOfRange)]
    [InlineData("/weighed/volume/unit", "\"bu\"", "#/weighed/volume", ErrorCode.UnitAmbiguous)]
    [InlineData("/weighed/volume/value", "0.1", "#/weighed/weighings/0/gross", ErrorCode.NumberOutOfRange)]
    [InlineData("/weighed/volumeTolerance/value", "51", "#/weighed/volumeTolerance", ErrorCode.NumberOutOfRange)]
    [InlineData("/weighed/weighings", "[]", "#/weighed/weighings", ErrorCode.TooFew)]
    [InlineData("/weighed/weighings/0/tare/value", "6.84", "#/weighed/weighings/0/tare", ErrorCode.TareAboveGross)]
    [InlineData("/weighed/weighings/1/net", """{ "value": 6, "unit": "kg" }""", "#/weighed/weighings/1/net", ErrorCode.SettingsAtOdds)]
    [InlineData("/weighed/weighings/1", """{ "net": { "value": 6, "unit": "kg" } }""", "#/weighed/weighings", ErrorCode.SettingsAtOdds)]
    [InlineData("/weighed/weighings/1", "{}", "#/weighed/weighings/1/gross", ErrorCode.MemberMissing)]
    [InlineData(
        "/weighed/weighings/1",
        """{ "gross": { "value": 6, "unit": "kg" } }""",
        "#/weighed/weighings/1/tare",
        ErrorCode.MemberMissing
    )]
    [InlineData("/weighed/sharedTare", """{ "value": 0.62, "unit": "kg" }""", "#/weighed/weighings/0/tare", ErrorCode.SettingsAtOdds)]
    [InlineData("/weighed/scale/division/value", "0", "#/weighed/scale/division", ErrorCode.NumberOutOfRange)]
    [InlineData("/testWeight", """{ "value": 60, "unit": "lb/bu-us" }""", "#/testWeight", ErrorCode.SettingsAtOdds)]
    [InlineData("/testWeight", """{ "value": 60, "unit": "lb/bu" }""", "#/testWeight", ErrorCode.UnitAmbiguous)]
    [InlineData("/statedDensity", """{ "value": -1, "unit": "kg/hL" }""", "#/statedDensity", ErrorCode.NumberOutOfRange)]
    [InlineData(
        "/filledTank",
        """{ "mass": { "value": 1, "unit": "t" }, "volume": { "value": 1, "unit": "L" } }""",
        "#/filledTank/mass",
        ErrorCode.NumberOutOfRange
    )]
    [InlineData("/lotToLot", """{ "value": 5, "unit": "%" }""", "#/lotToLot", ErrorCode.SettingsAtOdds)]
    [InlineData("/tank/fill/value", "120", "#/tank/fill", ErrorCode.NumberOutOfRange)]
    [InlineData("/coverageProbability", "1", "#/coverageProbability", ErrorCode.NumberOutOfRange)]
    [InlineData("/product", "\" \"", "#/product", ErrorCode.TextWrong)]
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#/weighed" && fault.Code == ErrorCode.MemberMissing);
    }
}
