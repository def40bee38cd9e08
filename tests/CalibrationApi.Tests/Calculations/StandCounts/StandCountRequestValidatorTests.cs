namespace CalibrationApi.Tests.Calculations.StandCounts;

/// <summary>Every way in which a stand count can be readable and wrong.</summary>
public sealed class StandCountRequestValidatorTests
{
    [Theory]
    [InlineData("/counts", "[]", "#/counts", "too-few")]
    [InlineData("/counts/0/plants", "-1", "#/counts/0/plants", "number-out-of-range")]
    [InlineData("/counts/0/row", "\" \"", "#/counts/0/row", "text-wrong")]
    [InlineData("/counts/0/ground", "{}", "#/counts/0/ground", "member-missing")]
    [InlineData("/counts/0/ground", """{ "length": { "value": 1, "unit": "m" } }""", "#/counts/0/ground/width", "member-missing")]
    [InlineData("/counts/0/ground", """{ "width": { "value": 1, "unit": "m" } }""", "#/counts/0/ground/length", "member-missing")]
    [InlineData("/counts/0/ground", """{ "rows": 2 }""", "#/counts/0/ground/rowLength", "member-missing")]
    [InlineData("/counts/0/ground", """{ "rowLength": { "value": 1, "unit": "m" } }""", "#/counts/0/ground/rowSpacing", "member-missing")]
    [InlineData("/ground/area", """{ "value": 1, "unit": "m2" }""", "#/ground/area", "settings-at-odds")]
    [InlineData("/ground/hoopDiameter", """{ "value": 56, "unit": "cm" }""", "#/ground/hoopDiameter", "settings-at-odds")]
    [InlineData("/ground/rowLength/value", "0", "#/ground/rowLength", "number-out-of-range")]
    [InlineData("/ground/rowLength/unit", "\"m2\"", "#/ground/rowLength", "unit-wrong-dimension")]
    [InlineData("/ground/rowSpacing/value", "1e309", "#/ground/rowSpacing", "number-out-of-range")]
    [InlineData("/ground/rows", "0", "#/ground/rows", "number-out-of-range")]
    [InlineData("/sown/germination/value", "0", "#/sown/germination", "number-out-of-range")]
    [InlineData("/sown/germination/value", "101", "#/sown/germination", "number-out-of-range")]
    [InlineData("/sown/purity/value", "0", "#/sown/purity", "number-out-of-range")]
    [InlineData("/sown/uncertainty", """{ "value": 60, "unit": "%" }""", "#/sown/uncertainty", "number-out-of-range")]
    [InlineData("/sown/seedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/sown/seedsPerArea", "settings-at-odds")]
    [InlineData("/sown", "{}", "#/sown/seedsPerArea", "member-missing")]
    [InlineData("/prior/reading", "\"germination\"", "#/prior/reading", "word-unknown")]
    [InlineData("/prior/mean/value", "100", "#/prior/mean", "number-out-of-range")]
    [InlineData("/prior/spread/value", "0", "#/prior/spread", "number-out-of-range")]
    [InlineData(
        "/prior",
        """{ "reading": "emergence", "mean": { "value": 99.9, "unit": "%" }, "spread": { "value": 50, "unit": "%" } }""",
        "#/prior/spread",
        "settings-at-odds"
    )]
    [InlineData("/targetStand/value", "-5", "#/targetStand", "number-out-of-range")]
    [InlineData("/minimumStand/unit", "\"/lb\"", "#/minimumStand", "unit-wrong-dimension")]
    [InlineData("/statedStand", """{ "value": 20 }""", "#/statedStand", "unit-missing")]
    [InlineData("/wantedPrecision", """{ "value": 0, "unit": "%" }""", "#/wantedPrecision", "number-out-of-range")]
    [InlineData("/coverageProbability", "1", "#/coverageProbability", "number-out-of-range")]
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "member-missing");
    }

    [Fact]
    public async Task Counts_MoreThanAllowed_AreTooMany()
    {
        var question = Question.Of(Question.StandCount);
        for (var i = 0; i < 200; i++)
            question.Add("/counts", """{ "plants": 5 }""");

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal((("#/counts", "too-many")), Assert.Single(problem.Faults.Select(fault => (fault.Pointer!, fault.Code))));
    }
}
