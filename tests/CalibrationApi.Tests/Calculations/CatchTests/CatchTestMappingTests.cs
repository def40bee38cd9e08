namespace CalibrationApi.Tests.Calculations.CatchTests;

/// <summary>Every way to give masses, counts and controller entries arrives at the engine as meant.</summary>
public sealed class CatchTestMappingTests
{
    // 47 revolutions, in each of the ways that a machine shows them.
    [Theory]
    [InlineData("""{ "pulses": 16920 }""")]
    [InlineData("""{ "turns": { "value": 23.5, "unit": "rev" } }""")]
    [InlineData("""{ "indicatedMass": { "value": 16.074, "unit": "kg" } }""")]
    [InlineData("""{ "indicatedMass": { "value": 16074, "unit": "g" } }""")]
    [InlineData("""{ "runTime": { "value": 1, "unit": "min" } }""")]
    [InlineData("""{ "revolutions": { "value": 47, "unit": "rev" } }""")]
    public async Task Count_GivenInAnyWay_IsTheSameNumberOfRevolutions(string count)
    {
        var one = count.Insert(1, """ "net": { "value": 17.08, "unit": "kg" }, """);

        var answer = await Question
            .Of(Question.CatchTest)
            .With("/catches", $"[{one}]")
            .With("/pulsesPerRevolution", """{ "value": 360, "unit": "pulses/rev" }""")
            .With("/meterRevolutionsPerTurn", """{ "value": 2, "unit": "1" }""")
            .With("/meterSpeed", """{ "value": 47, "unit": "rpm" }""")
            .AnswerAsync();

        Assert.Equal(47, answer.Number("/catches/0/revolutions/value"), 1e-9);
        Assert.Equal(17.08 / 47, answer.Number("/massPerRevolution/value"), 1e-9);
    }

    [Fact]
    public async Task IndicatedMass_WithAnotherValueTypedIn_IsCountedByThat()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/catches", """[{ "net": { "value": 17.08, "unit": "kg" }, "indicatedMass": { "value": 18.8, "unit": "kg" } }]""")
            .With("/valueTypedIn", """{ "value": 400, "unit": "g/rev" }""")
            .AnswerAsync();

        Assert.Equal(47, answer.Number("/catches/0/revolutions/value"), 1e-9);
    }

    [Fact]
    public async Task Pulses_OnePerRevolution_AreLessSureThanThousand()
    {
        var coarse = await Question
            .Of(Question.CatchTest)
            .With("/pulsesPerRevolution", """{ "value": 1, "unit": "pulses/rev" }""")
            .With("/catches", """[{ "net": { "value": 17.08, "unit": "kg" }, "pulses": 47 }]""")
            .AnswerAsync();
        var fine = await Question
            .Of(Question.CatchTest)
            .With("/pulsesPerRevolution", """{ "value": 1000, "unit": "pulses/rev" }""")
            .With("/catches", """[{ "net": { "value": 17.08, "unit": "kg" }, "pulses": 47000 }]""")
            .AnswerAsync();

        Assert.True(Parts(coarse)[0].Relative > 1.05 * Parts(fine)[0].Relative);
    }

    [Fact]
    public async Task SharedTare_HasAPartOfItsOwnInTheUncertainty()
    {
        var shared = Question
            .Of(Question.CatchTest)
            .Without("/tareReading")
            .Without("/catches/0/tare")
            .Without("/catches/1/tare")
            .With("/sharedTare", """{ "value": 1.62, "unit": "kg" }""");

        var answer = await shared.AnswerAsync();

        Assert.Equal(17.08, answer.Number("/catches/0/net/value"), 1e-12);
        Assert.Contains(Parts(answer), part => part.Source == "shared-tare" && part.Relative > 0);
        // The same container weighed for each catch is rounded the same way each time; two containers are not.
        var sameContainer = Question.Of(Question.CatchTest);
        Assert.Equal(Parts(answer), Parts(await sameContainer.AnswerAsync()));
        var twoContainers = Question.Of(Question.CatchTest).With("/catches/1/tare/value", "1.66").With("/catches/1/gross/value", "18.60");
        Assert.DoesNotContain(Parts(await twoContainers.AnswerAsync()), part => part.Source == "shared-tare");
    }

    [Fact]
    public async Task ZeroedTare_CountsOneReadingAndNotTwo()
    {
        const string Net = """[{ "net": { "value": 17.08, "unit": "kg" }, "revolutions": { "value": 47, "unit": "rev" } }]""";
        // A coarse display, so that reading it once or twice makes a difference.
        var each = await Question.Of(Question.CatchTest).With("/scale/division/value", "0.5").With("/catches", Net).AnswerAsync();
        var zeroed = await Question
            .Of(Question.CatchTest)
            .With("/scale/division/value", "0.5")
            .With("/catches", Net)
            .With("/tareReading", "\"zeroed\"")
            .AnswerAsync();

        Assert.True(Parts(zeroed)[0].Relative < Parts(each)[0].Relative);
    }

    [Fact]
    public async Task KnownScaleError_IsCorrectedAndShown()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/scale/knownError", """{ "error": { "value": 2, "unit": "%" }, "standardUncertainty": { "value": 0.1, "unit": "%" } }""")
            .AnswerAsync();

        Assert.Equal(17.08, answer.Number("/catches/0/net/value"), 1e-12);
        Assert.Equal(17.08 / 1.02, answer.Number("/catches/0/metered/value"), 1e-9);
        Assert.Equal(34.02 / 1.02 / 93.8, answer.Number("/totalMassOverTotalRevolutions/value"), 1e-9);
        Assert.Equal(0.1, Parts(answer).Single(part => part.Source == "scale").Relative, 1e-9);
    }

    [Fact]
    public async Task CaughtPoints_AreScaledToAllAndMakeTheResultLessSure()
    {
        var answer = await Question.Of(Question.CatchTest).With("/caughtPoints", """{ "caught": 6, "total": 12 }""").AnswerAsync();

        Assert.Equal(2 * 17.08, answer.Number("/catches/0/metered/value"), 1e-9);
        Assert.Contains(Parts(answer), part => part.Source == "points-not-caught" && part.Relative > 0);
        Assert.Contains(answer.List("/assumptions"), item => item!["name"]!.GetValue<string>() == "caughtPoints/spread");
    }

    [Theory]
    [InlineData("mass-per-revolution", "kg/rev", 3, 0.363, 0.363)]
    [InlineData("mass-per-revolution", "g/rev", 1, 362.7, 0.3627)]
    [InlineData("mass-per-revolution", "lb/rev", 2, 0.80, 0.80 * 0.45359237)]
    [InlineData("mass-per-pulse", "g", 3, 1.007, 0.36252)]
    [InlineData("volume-per-revolution", "L", 3, 0.585, 0.585 * 0.62)]
    [InlineData("volume-per-revolution", "ft3", 4, 0.0207, 0.0207 * 28.316846592 * 0.62)]
    [InlineData("mass-per-time", "kg/min", 1, 21.8, 21.8 / 60)]
    [InlineData("mass-per-time", "lb/min", 0, 48, 48 * 0.45359237 / 60)]
    public async Task ControllerEntry_AnyForm_IsTheNumberToTypeIn(string form, string unit, int decimals, double typed, double resulting)
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/controllerEntry", $$"""{ "form": "{{form}}", "unit": "{{unit}}", "decimals": {{decimals}} }""")
            .With("/pulsesPerRevolution", """{ "value": 360, "unit": "pulses/rev" }""")
            .With("/meterSpeed", """{ "value": 60, "unit": "rpm" }""")
            .AnswerAsync();

        Assert.Equal((typed, unit), answer.Quantity("/enter"));
        Assert.Equal(form, answer.Word("/enter/form"));
        Assert.Equal(resulting, answer.Number("/enter/resultingMassPerRevolution/value"), 1e-12);
        Assert.Equal(100 * (resulting / answer.Number("/massPerRevolution/value") - 1), answer.Number("/enter/roundingError/value"), 1e-6);
    }

    [Theory]
    [InlineData(10, "kg", 2, 3.63, 0.363)]
    [InlineData(25, "lb", 1, 20.0, 0.8 * 0.45359237)]
    [InlineData(1, "kg", 3, 0.363, 0.363)]
    [InlineData(1000, "kg", 0, 363, 0.363)]
    public async Task ControllerEntry_MassPerRevolutions_IsForAsManyAsStated(
        int revolutions,
        string unit,
        int decimals,
        double typed,
        double resulting
    )
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With(
                "/controllerEntry",
                $$"""{ "form": "mass-per-revolutions", "revolutions": {{revolutions}}, "unit": "{{unit}}", "decimals": {{decimals}} }"""
            )
            .AnswerAsync();

        Assert.Equal((typed, unit), answer.Quantity("/enter"));
        Assert.Equal(revolutions, answer.Number("/enter/revolutions"));
        Assert.Equal(resulting, answer.Number("/enter/resultingMassPerRevolution/value"), 1e-12);
    }

    [Theory]
    [InlineData("t", 0.42)]
    [InlineData("kg", 420)]
    [InlineData("lb", 420 / 0.45359237)]
    [InlineData("ton-us", 0.42 / 0.90718474)]
    public async Task Price_PerAnyMass_CostsThatMuch(string per, double pricePerKilogram)
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/product/price", $$"""{ "value": 420, "currency": "CAD", "per": "{{per}}" }""")
            .AnswerAsync();

        Assert.Equal(
            answer.Number("/effectIfValueInForceStays/massOverArea/value") * pricePerKilogram,
            answer.Number("/effectIfValueInForceStays/totalCost/value"),
            1e-6
        );
        Assert.Equal("CAD", answer.Word("/effectIfValueInForceStays/totalCost/currency"));
    }

    [Fact]
    public async Task FromAnotherScale_MakesTheChangeLessSure()
    {
        var same = await Question.Of(Question.CatchTest).With("/valueInForce/fromAnotherScale", "false").AnswerAsync();
        var other = await Question.Of(Question.CatchTest).With("/valueInForce/fromAnotherScale", "true").AnswerAsync();

        Assert.True(other.Number("/change/expandedUncertainty") > same.Number("/change/expandedUncertainty"));
    }

    private static (string Source, double Relative)[] Parts(Answer answer) =>
        [
            .. answer
                .List("/uncertaintyParts")
                .Select(part => (part!["source"]!.GetValue<string>(), part["relative"]!["value"]!.GetValue<double>())),
        ];
}
