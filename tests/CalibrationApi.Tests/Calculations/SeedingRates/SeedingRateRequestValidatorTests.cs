using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.SeedingRates;

/// <summary>Every way in which a question about a seeding rate can be readable and wrong.</summary>
public sealed class SeedingRateRequestValidatorTests
{
    [Theory]
    [InlineData("/targetStand/value", "0", "#/targetStand", ErrorCode.NumberOutOfRange)]
    [InlineData("/targetStand/unit", "\"/kg\"", "#/targetStand", ErrorCode.UnitWrongDimension)]
    [InlineData("/germination/value", "0", "#/germination", ErrorCode.NumberOutOfRange)]
    [InlineData("/germination/value", "101", "#/germination", ErrorCode.NumberOutOfRange)]
    [InlineData("/emergence/value", "0", "#/emergence", ErrorCode.NumberOutOfRange)]
    [InlineData("/purity/value", "100.1", "#/purity", ErrorCode.NumberOutOfRange)]
    [InlineData("/thousandKernelMass/value", "0", "#/thousandKernelMass", ErrorCode.NumberOutOfRange)]
    [InlineData("/kernelMassUncertainty/value", "60", "#/kernelMassUncertainty", ErrorCode.NumberOutOfRange)]
    [InlineData("/germinationSeedsTested", "0", "#/germinationSeedsTested", ErrorCode.NumberOutOfRange)]
    [InlineData("/crop", "\"dandelion\"", "#/crop", ErrorCode.WordUnknown)]
    [InlineData("/rowSpacing/value", "0", "#/rowSpacing", ErrorCode.NumberOutOfRange)]
    [InlineData("/area/value", "-1", "#/area", ErrorCode.NumberOutOfRange)]
    [InlineData("/price/value", "-1", "#/price/value", ErrorCode.NumberOutOfRange)]
    [InlineData("/price/currency", "\"euro\"", "#/price/currency", ErrorCode.TextWrong)]
    [InlineData("/package", "{}", "#/package/mass", ErrorCode.MemberMissing)]
    [InlineData("/package/seeds", "50000", "#/package/seeds", ErrorCode.SettingsAtOdds)]
    [InlineData("/package/price", """{ "value": -3, "currency": "EUR" }""", "#/package/price/value", ErrorCode.NumberOutOfRange)]
    [InlineData("/package/price", """{ "value": 3, "currency": "EUR" }""", "#/package/price", ErrorCode.SettingsAtOdds)]
    [InlineData("/package/price", """{ "value": 3, "currency": "€" }""", "#/package/price/currency", ErrorCode.TextWrong)]
    [InlineData("/statedRate/madeBy", "\"guess\"", "#/statedRate/madeBy", ErrorCode.WordUnknown)]
    [InlineData("/seedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/seedsPerArea", ErrorCode.SettingsAtOdds)]
    [InlineData("/germinableSeedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/germinableSeedsPerArea", ErrorCode.SettingsAtOdds)]
    [InlineData("/rate", """{ "value": 150, "unit": "kg/ha" }""", "#/rate", ErrorCode.SettingsAtOdds)]
    [InlineData("/rate", """{ "value": 150, "unit": "kg/ha" }""", "#/statedRate", ErrorCode.SettingsAtOdds)]
    [InlineData("/seedsPerMass", """{ "value": 20000, "unit": "/kg" }""", "#/seedsPerMass", ErrorCode.SettingsAtOdds)]
    [InlineData("/seedsPerMass", """{ "value": 0.001, "unit": "/kg" }""", "#/seedsPerMass", ErrorCode.NumberOutOfRange)]
    [InlineData("/sample", """{ "seeds": 1, "mass": { "value": 1, "unit": "t" } }""", "#/sample", ErrorCode.SettingsAtOdds)]
    [InlineData("/sample", """{ "seeds": 0, "mass": { "value": 20, "unit": "g" } }""", "#/sample/seeds", ErrorCode.NumberOutOfRange)]
    [InlineData("/survival", """{ "value": 80, "unit": "%" }""", "#/germination", ErrorCode.SettingsAtOdds)]
    [InlineData("/survival", """{ "value": 80, "unit": "%" }""", "#/emergence", ErrorCode.SettingsAtOdds)]
    [InlineData("/emergenceRange/lowest/value", "95", "#/emergenceRange/lowest", ErrorCode.SettingsAtOdds)]
    [InlineData("/emergenceRange/lowest/value", "88", "#/emergenceRange", ErrorCode.SettingsAtOdds)]
    [InlineData(
        "/survivalRange",
        """{ "lowest": { "value": 70, "unit": "%" }, "highest": { "value": 90, "unit": "%" } }""",
        "#/survivalRange",
        ErrorCode.SettingsAtOdds
    )]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.SeedingRate).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/targetStand", "#/targetStand")]
    [InlineData("/thousandKernelMass", "#/thousandKernelMass")]
    [InlineData("/germination", "#/germination")]
    [InlineData("/emergence", "#/emergence")]
    [InlineData("/emergenceRange/lowest", "#/emergenceRange/lowest")]
    public async Task Member_ThatIsNeeded_IsAskedFor(string pointer, string at)
    {
        using var response = await Question.Of(Question.SeedingRate).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == ErrorCode.MemberMissing);
    }

    [Fact]
    public async Task SeedsPerRow_WithoutRowSpacing_AsksForIt()
    {
        using var response = await Question
            .Of(Question.SeedingRate)
            .Without("/targetStand")
            .Without("/rowSpacing")
            .With("/seedsPerRow", """{ "value": 45, "unit": "/m" }""")
            .AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal(("#/rowSpacing", ErrorCode.MemberMissing), (fault.Pointer, fault.Code));
    }

    [Fact]
    public async Task UnusualButPossible_IsAnsweredWithFindings()
    {
        var answer = await Question
            .Of(Question.SeedingRate)
            .With("/germination/value", "55")
            .With("/emergence/value", "20")
            .With("/thousandKernelMass/value", "90")
            .Without("/emergenceRange")
            .Without("/statedRate")
            .AnswerAsync();

        Assert.Equal(["kernel-mass-unusual", "germination-low", "emergence-unusual", "seeds-above-published"], answer.Codes("/findings"));
    }
}
