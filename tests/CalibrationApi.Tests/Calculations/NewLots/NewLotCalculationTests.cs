namespace CalibrationApi.Tests.Calculations.NewLots;

/// <summary>What a question about a new lot is answered; the numbers of the engine have their own tests.</summary>
public sealed class NewLotCalculationTests
{
    [Fact]
    public async Task Answer_DemoQuestion_HoldsVerdictPredictionRateAndEffects()
    {
        var answer = await Question.Of(Question.NewLot).AnswerAsync();

        Assert.Equal("test-now", answer.Word("/verdict"));
        Assert.Equal(0.363 * 63.5 / 66, answer.Number("/predictedMassPerRevolution/value"), 1e-12);
        Assert.Equal(["density-differs", "other-lot", "within-tolerance-not-shown"], answer.Codes("/reasons"));
        Assert.Equal(153.3 * 43.6 / 47.2, answer.Number("/rate/forSameSeeds/value"), 1e-9);
        Assert.Equal(153.3 * 43.6 / 47.2 * 94 / 96, answer.Number("/rate/forSameStand/value"), 1e-9);
        Assert.Equal(63.5 / 66 * 100 - 100, answer.Number("/effectIfValueStays/rateDeviation/value"), 1e-9);
        Assert.Equal(47.2 / 43.6 * 63.5 / 66 * 100 - 100, answer.Number("/effectIfNothingIsChanged/seedsDeviation/value"), 1e-9);
        Assert.Equal("EUR", answer.Word("/effectIfNothingIsChanged/totalCost/currency"));
        Assert.InRange(answer.Number("/probabilityWithinTolerance"), 0.3, 0.8);
        Assert.Contains("treated-seed", answer.Codes("/cautions"));
        Assert.Empty(answer.List("/assumptions"));
        Assert.StartsWith("Test now, before sowing", answer.Word("/headline"), StringComparison.Ordinal);
    }

    // What the answer offers can be sent on as it is.
    [Fact]
    public async Task StartValue_GoesIntoACatchPlanAsItIs()
    {
        var answer = await Question.Of(Question.NewLot).AnswerAsync();

        var plan = await Question
            .Of(Question.CatchPlan)
            .Without("/meters/0/valueInForce")
            .With("/meters/0/startValue", answer.At("/startValue")!.ToJsonString())
            .AnswerAsync();

        Assert.NotEmpty(plan.List("/meters"));
    }

    [Fact]
    public async Task Densities_NotGiven_KeepTheValueAndAskForATest()
    {
        var answer = await Question.Of(Question.NewLot).Without("/newLot/bulkDensity").AnswerAsync();

        Assert.Equal("test-now", answer.Word("/verdict"));
        Assert.Equal((0.363, "kg/rev"), answer.Quantity("/predictedMassPerRevolution"));
        Assert.Equal("density-unknown", answer.Codes("/reasons")[0]);
        Assert.Equal("unknownDensityChange", answer.Word("/assumptions/0/name"));
        Assert.Contains(answer.List("/uncertaintyParts"), part => part!["source"]!.GetValue<string>() == "unknown-density");
    }

    [Fact]
    public async Task SameLotTreatmentAndDensity_NeedNoTest()
    {
        var answer = await Question
            .Of(Question.NewLot)
            .With("/sameLot", "true")
            .With("/newLot/bulkDensity/value", "66")
            .With("/newLot/thousandKernelMass/value", "47")
            .AnswerAsync();

        Assert.Equal("no-test-needed", answer.Word("/verdict"));
        Assert.Equal(["nothing-changed", "within-tolerance"], answer.Codes("/reasons"));
    }

    [Fact]
    public async Task Units_Us_WritesAnswerAndSentences()
    {
        var answer = await Question.Of(Question.NewLot).AnswerAsync("?units=us");

        Assert.Equal("lb/rev", answer.Word("/startValue/unit"));
        Assert.Equal("lb/ac", answer.Word("/rate/forSameSeeds/unit"));
        Assert.Contains("lb/bu-us", answer.Word("/reasons/0/detail"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/valueInForce/value", "0", "#/valueInForce", "number-out-of-range")]
    [InlineData("/valueInForce/relativeUncertainty/value", "0", "#/valueInForce/relativeUncertainty", "number-out-of-range")]
    [InlineData("/newLot/germination/value", "0", "#/newLot/germination", "number-out-of-range")]
    [InlineData("/newLot/bulkDensity/value", "0.1", "#/newLot/bulkDensity", "number-out-of-range")]
    [InlineData("/newLot/bulkDensity/unit", "\"lb/bu\"", "#/newLot/bulkDensity", "unit-ambiguous")]
    [InlineData("/lotBefore/purity/value", "120", "#/lotBefore/purity", "number-out-of-range")]
    [InlineData("/lotBefore/treatment", "\" \"", "#/lotBefore/treatment", "text-wrong")]
    [InlineData("/emergence/value", "0", "#/emergence", "number-out-of-range")]
    [InlineData("/tolerance/value", "0", "#/tolerance", "number-out-of-range")]
    [InlineData("/price/value", "-5", "#/price/value", "number-out-of-range")]
    [InlineData("/seedsPerArea", """{ "value": 300, "unit": "/m2" }""", "#/seedsPerArea", "settings-at-odds")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.NewLot).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/valueInForce", "#/valueInForce")]
    [InlineData("/lotBefore", "#/lotBefore")]
    [InlineData("/newLot", "#/newLot")]
    [InlineData("/area", "#/area")]
    public async Task Member_ThatIsNeeded_IsAskedFor(string pointer, string at)
    {
        using var response = await Question.Of(Question.NewLot).Without(pointer).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal((at, "member-missing"), (fault.Pointer, fault.Code));
    }
}
