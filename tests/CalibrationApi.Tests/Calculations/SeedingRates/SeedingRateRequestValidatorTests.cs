namespace CalibrationApi.Tests.Calculations.SeedingRates;

/// <summary>Every way in which a question about a seeding rate can be readable and wrong.</summary>
public sealed class SeedingRateRequestValidatorTests
{
    [Theory]
    [InlineData("/targetStand/value", "0", "#/targetStand", "number-out-of-range")]
    [InlineData("/targetStand/unit", "\"/kg\"", "#/targetStand", "unit-wrong-dimension")]
    [InlineData("/germination/value", "0", "#/germination", "number-out-of-range")]
    [InlineData("/germination/value", "101", "#/germination", "number-out-of-range")]
    [InlineData("/emergence/value", "0", "#/emergence", "number-out-of-range")]
    [InlineData("/purity/value", "100.1", "#/purity", "number-out-of-range")]
    [InlineData("/thousandKernelMass/value", "0", "#/thousandKernelMass", "number-out-of-range")]
    [InlineData("/kernelMassUncertainty/value", "60", "#/kernelMassUncertainty", "number-out-of-range")]
    [InlineData("/germinationSeedsTested", "0", "#/germinationSeedsTested", "number-out-of-range")]
    [InlineData("/crop", "\"dandelion\"", "#/crop", "word-unknown")]
    [InlineData("/rowSpacing/value", "0", "#/rowSpacing", "number-out-of-range")]
    [InlineData("/area/value", "-1", "#/area", "number-out-of-range")]
    [InlineData("/price/value", "-1", "#/price/value", "number-out-of-range")]
    [InlineData("/price/currency", "\"euro\"", "#/price/currency", "text-wrong")]
    [InlineData("/package", "{}", "#/package/mass", "member-missing")]
    [InlineData("/package/seeds", "50000", "#/package/seeds", "settings-at-odds")]
    [InlineData("/package/price", """{ "value": -3, "currency": "EUR" }""", "#/package/price/value", "number-out-of-range")]
    [InlineData("/package/price", """{ "value": 3, "currency": "EUR" }""", "#/package/price", "settings-at-odds")]
    [InlineData("/package/price", """{ "value": 3, "currency": "€" }""", "#/package/price/currency", "text-wrong")]
    [InlineData("/statedRate/madeBy", "\"guess\"", "#/statedRate/madeBy", "word-unknown")]
    [InlineData("/seedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/seedsPerArea", "settings-at-odds")]
    [InlineData("/germinableSeedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/germinableSeedsPerArea", "settings-at-odds")]
    [InlineData("/rate", """{ "value": 150, "unit": "kg/ha" }""", "#/rate", "settings-at-odds")]
    [InlineData("/rate", """{ "value": 150, "unit": "kg/ha" }""", "#/statedRate", "settings-at-odds")]
    [InlineData("/seedsPerMass", """{ "value": 20000, "unit": "/kg" }""", "#/seedsPerMass", "settings-at-odds")]
    [InlineData("/seedsPerMass", """{ "value": 0.001, "unit": "/kg" }""", "#/seedsPerMass", "number-out-of-range")]
    [InlineData("/sample", """{ "seeds": 1, "mass": { "value": 1, "unit": "t" } }""", "#/sample", "settings-at-odds")]
    [InlineData("/sample", """{ "seeds": 0, "mass": { "value": 20, "unit": "g" } }""", "#/sample/seeds", "number-out-of-range")]
    [InlineData("/survival", """{ "value": 80, "unit": "%" }""", "#/germination", "settings-at-odds")]
    [InlineData("/survival", """{ "value": 80, "unit": "%" }""", "#/emergence", "settings-at-odds")]
    [InlineData("/emergenceRange/minimum/value", "95", "#/emergenceRange/minimum", "settings-at-odds")]
    [InlineData("/emergenceRange/minimum/value", "88", "#/emergenceRange", "settings-at-odds")]
    [InlineData(
        "/survivalRange",
        """{ "minimum": { "value": 70, "unit": "%" }, "maximum": { "value": 90, "unit": "%" } }""",
        "#/survivalRange",
        "settings-at-odds"
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
    [InlineData("/emergenceRange/minimum", "#/emergenceRange/minimum")]
    public async Task Member_ThatIsNeeded_IsAskedFor(string pointer, string at)
    {
        using var response = await Question.Of(Question.SeedingRate).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "member-missing");
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
        Assert.Equal(("#/rowSpacing", "member-missing"), (fault.Pointer, fault.Code));
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
