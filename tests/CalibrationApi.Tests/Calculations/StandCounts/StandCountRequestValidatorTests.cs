using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.StandCounts;

/// <summary>Every way in which a stand count can be readable and wrong.</summary>
public sealed class StandCountRequestValidatorTests
{
    [Theory]
    [InlineData("/counts", "[]", "#/counts", ErrorCode.TooFew)]
    [InlineData("/counts/0/plants", "-1", "#/counts/0/plants", ErrorCode.NumberOutOfRange)]
    [InlineData("/counts/0/row", "\" \"", "#/counts/0/row", ErrorCode.TextWrong)]
    [InlineData("/counts/0/ground", "{}", "#/counts/0/ground", ErrorCode.MemberMissing)]
    [InlineData("/counts/0/ground", """{ "length": { "value": 1, "unit": "m" } }""", "#/counts/0/ground/width", ErrorCode.MemberMissing)]
    [InlineData("/counts/0/ground", """{ "width": { "value": 1, "unit": "m" } }""", "#/counts/0/ground/length", ErrorCode.MemberMissing)]
    [InlineData("/counts/0/ground", """{ "rows": 2 }""", "#/counts/0/ground/rowLength", ErrorCode.MemberMissing)]
    [InlineData(
        "/counts/0/ground",
        """{ "rowLength": { "value": 1, "unit": "m" } }""",
        "#/counts/0/ground/rowSpacing",
        ErrorCode.MemberMissing
    )]
    [InlineData("/ground/area", """{ "value": 1, "unit": "m2" }""", "#/ground/area", ErrorCode.SettingsAtOdds)]
    [InlineData("/ground/hoopDiameter", """{ "value": 56, "unit": "cm" }""", "#/ground/hoopDiameter", ErrorCode.SettingsAtOdds)]
    [InlineData("/ground/rowLength/value", "0", "#/ground/rowLength", ErrorCode.NumberOutOfRange)]
    [InlineData("/ground/rowLength/unit", "\"m2\"", "#/ground/rowLength", ErrorCode.UnitWrongDimension)]
    [InlineData("/ground/rowSpacing/value", "1e309", "#/ground/rowSpacing", ErrorCode.NumberOutOfRange)]
    [InlineData("/ground/rows", "0", "#/ground/rows", ErrorCode.NumberOutOfRange)]
    [InlineData("/sown/germination/value", "0", "#/sown/germination", ErrorCode.NumberOutOfRange)]
    [InlineData("/sown/germination/value", "101", "#/sown/germination", ErrorCode.NumberOutOfRange)]
    [InlineData("/sown/purity/value", "0", "#/sown/purity", ErrorCode.NumberOutOfRange)]
    [InlineData("/sown/uncertainty", """{ "value": 60, "unit": "%" }""", "#/sown/uncertainty", ErrorCode.NumberOutOfRange)]
    [InlineData("/sown/seedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/sown/seedsPerArea", ErrorCode.SettingsAtOdds)]
    [InlineData("/sown", "{}", "#/sown/seedsPerArea", ErrorCode.MemberMissing)]
    [InlineData("/prior/reading", "\"germination\"", "#/prior/reading", ErrorCode.WordUnknown)]
    [InlineData("/prior/mean/value", "100", "#/prior/mean", ErrorCode.NumberOutOfRange)]
    [InlineData("/prior/spread/value", "0", "#/prior/spread", ErrorCode.NumberOutOfRange)]
    [InlineData(
        "/prior",
        """{ "reading": "emergence", "mean": { "value": 99.9, "unit": "%" }, "spread": { "value": 50, "unit": "%" } }""",
        "#/prior/spread",
        ErrorCode.SettingsAtOdds
    )]
    [InlineData("/targetStand/value", "-5", "#/targetStand", ErrorCode.NumberOutOfRange)]
    [InlineData("/minimumStand/unit", "\"/lb\"", "#/minimumStand", ErrorCode.UnitWrongDimension)]
    [InlineData("/statedStand", """{ "value": 20 }""", "#/statedStand", ErrorCode.UnitMissing)]
    [InlineData("/wantedPrecision", """{ "value": 0, "unit": "%" }""", "#/wantedPrecision", ErrorCode.NumberOutOfRange)]
    [InlineData("/coverageProbability", "1", "#/coverageProbability", ErrorCode.NumberOutOfRange)]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.StandCount).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/counts", "#/counts")]
    [InlineData("/counts/2/plants", "#/counts/2/plants")]
    [InlineData("/ground", "#/counts/0/ground")]
    [InlineData("/sown", "#/sown")]
    [InlineData("/sown/thousandKernelMass", "#/sown/thousandKernelMass")]
    [InlineData("/sown/germination", "#/sown/germination")]
    [InlineData("/prior/mean", "#/prior/mean")]
    public async Task Member_ThatIsNeeded_IsAskedForAtItsPlace(string pointer, string at)
    {
        using var response = await Question.Of(Question.StandCount).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == ErrorCode.MemberMissing);
    }

    [Fact]
    public async Task Counts_MoreThanAllowed_AreTooMany()
    {
        var question = Question.Of(Question.StandCount);
        for (var i = 0; i < 200; i++)
            question.Add("/counts", """{ "plants": 5 }""");

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal((("#/counts", ErrorCode.TooMany)), Assert.Single(problem.Faults.Select(fault => (fault.Pointer!, fault.Code))));
    }
}
