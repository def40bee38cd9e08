using System.Globalization;

namespace CalibrationApi.Tests.Calculations.CatchTests;

/// <summary>What a catch test is answered; the numbers of the engine have their own tests.</summary>
public sealed class CatchTestCalculationTests
{
    // The invented worked example of the demo data, with the numbers as the documentation prints them.
    [Theory]
    [InlineData("/massPerRevolution/value", "0.36269")]
    [InlineData("/massPerRevolution/expandedUncertainty", "0.00605")]
    [InlineData("/massPerRevolution/coverageFactor", "2.541")]
    [InlineData("/massPerRevolution/coverageProbability", "0.95")]
    [InlineData("/massPerRevolution/degreesOfFreedom", "5.60")]
    [InlineData("/totalMassOverTotalRevolutions/value", "0.36269")]
    [InlineData("/meanOfRatios/value", "0.36269")]
    [InlineData("/uncertaintyParts/0/relative/value", "0.642")]
    [InlineData("/uncertaintyParts/1/relative/value", "0.136")]
    [InlineData("/catches/0/net/value", "17.08")]
    [InlineData("/catches/0/massPerRevolution/value", "0.36340")]
    [InlineData("/catches/1/net/value", "16.94")]
    [InlineData("/catches/1/massPerRevolution/value", "0.36197")]
    [InlineData("/agreement/spread/value", "0.28")]
    [InlineData("/agreement/q", "0.078")]
    [InlineData("/agreement/qProbability", "0.79")]
    [InlineData("/change/value", "6.05")]
    [InlineData("/change/expandedUncertainty", "4.97")]
    [InlineData("/change/coverageFactor", "2.01")]
    [InlineData("/probabilityWithinTolerance", "0.210")]
    [InlineData("/enter/value", "0.363")]
    [InlineData("/enter/roundingError/value", "0.087")]
    [InlineData("/effectIfValueInForceStays/appliedRate/value", "95.44")]
    [InlineData("/effectIfValueInForceStays/massOverArea/value", "261.3")]
    [InlineData("/effectIfValueInForceStays/totalCost/value", "109.74")]
    public async Task Answer_WorkedExample_HasThePrintedNumber(string pointer, string printed)
    {
        // The example was worked out with a repeatability of 1 %; the default is that of the catches' own size.
        var answer = await Question.Of(Question.CatchTest).With("/repeatability", """{ "value": 1, "unit": "%" }""").AnswerAsync();

        var decimals = printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1;
        Assert.Equal(printed, answer.Number(pointer).ToString("F" + decimals, CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task Answer_WorkedExample_SaysWhatToDoAndWhy()
    {
        var answer = await Question.Of(Question.CatchTest).AnswerAsync();

        Assert.Equal(
            "The meter delivers 6.0 % more per revolution than the value in force says. Adopt 0.363 kg/rev.",
            answer.Word("/headline")
        );
        Assert.Equal("adopt", answer.Word("/verdict"));
        Assert.Equal(["change-detected"], answer.Codes("/reasons"));
        Assert.Equal(
            "The value in force is within 5 % of the truth with a probability of only 21 %; the two catches agree.",
            answer.Word("/reasons/0/detail")
        );
        Assert.Equal(["default-repeatability-used"], answer.Codes("/findings"));
        Assert.True(answer.Flag("/agreement/agree"));
        Assert.Equal("value-in-force", answer.Word("/changeFrom"));
        Assert.False(answer.Has("/moreCatches"));
        Assert.Equal("1.0.0", answer.Word("/engineVersion"));
    }

    [Fact]
    public async Task Answer_WorkedExample_CanBeRedoneOnPaper()
    {
        var answer = await Question.Of(Question.CatchTest).AnswerAsync();

        Assert.Equal((17.08 + 16.94) / (47.0 + 46.8), answer.Number("/totalMassOverTotalRevolutions/value"), 1e-12);
        Assert.Equal((17.08 / 47.0 + 16.94 / 46.8) / 2, answer.Number("/meanOfRatios/value"), 1e-12);
    }

    [Fact]
    public async Task Answer_WorkedExample_NamesEveryValueThatWasNotAsked()
    {
        var answer = await Question.Of(Question.CatchTest).AnswerAsync();

        var names = answer.List("/assumptions").Select(item => item!["name"]!.GetValue<string>()).ToHashSet();
        Assert.Superset(
            new HashSet<string> { "repeatability", "scaleLimit", "dayToDay", "tolerance", "wantedPrecision", "secondTestChange" },
            names
        );
        Assert.All(answer.List("/assumptions"), item => Assert.False(string.IsNullOrWhiteSpace(item!["origin"]!.GetValue<string>())));
    }

    [Fact]
    public async Task Answer_SettingStated_IsNoAssumption()
    {
        var answer = await Question.Of(Question.CatchTest).With("/tolerance", """{ "value": 4, "unit": "%" }""").AnswerAsync();

        Assert.DoesNotContain(answer.List("/assumptions"), item => item!["name"]!.GetValue<string>() == "tolerance");
    }

    [Fact]
    public async Task Answer_ValueInForceThatHolds_IsKept()
    {
        var answer = await Question.Of(Question.CatchTest).With("/valueInForce/value", "0.362").AnswerAsync();

        Assert.Equal("keep", answer.Word("/verdict"));
        Assert.False(answer.Has("/enter"));
    }

    [Fact]
    public async Task Answer_LargeChange_AsksForASecondTest()
    {
        var answer = await Question.Of(Question.CatchTest).With("/valueInForce/value", "0.300").AnswerAsync();

        Assert.Equal("repeat", answer.Word("/verdict"));
        Assert.Equal(["second-test-needed"], answer.Codes("/reasons"));
        Assert.False(answer.Has("/moreCatches"));
        Assert.False(answer.Has("/secondTest"));
    }

    [Fact]
    public async Task Answer_EarlierTestThatAgrees_AdoptsTheValueOfBothAndSaysWhichConfirmed()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce/value", "0.300")
            .With(
                "/earlierTest",
                """{ "value": 0.365, "unit": "kg/rev", "catches": 2, "catchesUncertainty": { "value": 0.7, "unit": "%" }, "occurredAt": "2026-04-02T09:30:00+02:00" }"""
            )
            .AnswerAsync();

        Assert.Equal("adopt", answer.Word("/verdict"));
        Assert.Equal(["change-confirmed"], answer.Codes("/reasons"));
        Assert.Contains("the test of 2026-04-02 agrees", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.True(answer.Flag("/secondTest/agrees"));
        Assert.True(answer.Flag("/secondTest/confirms"));
        Assert.InRange(answer.Number("/secondTest/combined/value"), answer.Number("/massPerRevolution/value"), 0.365);
        Assert.Contains(answer.List("/assumptions"), item => item!["name"]!.GetValue<string>() == "earlierTest/fromAnotherScale");
    }

    [Fact]
    public async Task Answer_EarlierTestThatDoesNotAgree_SaysHowFarApartTheyAre()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce/value", "0.300")
            .With("/earlierTest", """{ "value": 0.302, "unit": "kg/rev", "catches": 2 }""")
            .AnswerAsync();

        Assert.Equal("repeat", answer.Word("/verdict"));
        Assert.Equal(["tests-disagree"], answer.Codes("/reasons"));
        Assert.False(answer.Flag("/secondTest/agrees"));
    }

    [Fact]
    public async Task Answer_ValueInForceWithEvidence_DrawsTheNumberTowardsItAndShowsWhatWasMeasured()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce/relativeUncertainty", """{ "value": 1, "unit": "%" }""")
            .AnswerAsync();

        Assert.Equal("adopt", answer.Word("/verdict"));
        Assert.InRange(answer.Number("/valueToUse/value"), 0.342, answer.Number("/massPerRevolution/value"));
        Assert.Contains("drawn-towards-old-number", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Answer_PrecisionNotReached_PromisesItsNumberOfCatches()
    {
        var wanted = Question.Of(Question.CatchTest).With("/wantedPrecision", """{ "value": 1.2, "unit": "%" }""");

        var usual = await wanted.AnswerAsync();
        var sure = await wanted.With("/precisionProbability", """{ "value": 95, "unit": "%" }""").AnswerAsync();

        Assert.True(usual.Number("/expectedPrecision/value") <= 1.2);
        Assert.True(sure.Number("/moreCatches") > usual.Number("/moreCatches"));
        Assert.Contains(usual.List("/assumptions"), item => item!["name"]!.GetValue<string>() == "precisionProbability");
        Assert.DoesNotContain(sure.List("/assumptions"), item => item!["name"]!.GetValue<string>() == "precisionProbability");
    }

    [Fact]
    public async Task Answer_PredictionForAnotherLot_CountsALargeChangeFromIt()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce/value", "0.300")
            .With("/predictedValue", """{ "value": 0.360, "unit": "kg/rev" }""")
            .AnswerAsync();

        Assert.Equal("adopt", answer.Word("/verdict"));
        Assert.Contains(answer.List("/assumptions"), item => item!["name"]!.GetValue<string>() == "predictedValue/relativeUncertainty");
    }

    [Fact]
    public async Task Answer_CatchesThatDiffer_AreInvestigated()
    {
        var answer = await Question.Of(Question.CatchTest).With("/catches/1/gross/value", "28.7").AnswerAsync();

        Assert.Equal("investigate", answer.Word("/verdict"));
        Assert.False(answer.Flag("/agreement/agree"));
    }

    [Fact]
    public async Task Answer_NoValueInForce_ComparesWithNothing()
    {
        var answer = await Question.Of(Question.CatchTest).Without("/valueInForce").AnswerAsync();

        Assert.Equal("adopt", answer.Word("/verdict"));
        Assert.Equal(["no-value-in-force"], answer.Codes("/reasons"));
        foreach (var absent in (string[])["/change", "/changeFrom", "/probabilityWithinTolerance", "/effectIfValueInForceStays"])
            Assert.False(answer.Has(absent), absent);
    }

    [Fact]
    public async Task Answer_StartValue_IsComparedWithButNotInForce()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .Without("/valueInForce")
            .With("/startValue", """{ "value": 0.35, "unit": "kg/rev", "relativeUncertainty": { "value": 10, "unit": "%" } }""")
            .AnswerAsync();

        Assert.Equal("start-value", answer.Word("/changeFrom"));
        Assert.Equal(100 * (answer.Number("/massPerRevolution/value") / 0.35 - 1), answer.Number("/change/value"), 1e-9);
        Assert.Equal("adopt", answer.Word("/verdict"));
    }

    [Fact]
    public async Task Answer_OldValueWithKnownUncertaintyAndNoChange_IsCombined()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce", """{ "value": 0.362, "unit": "kg/rev", "relativeUncertainty": { "value": 0.2, "unit": "%" } }""")
            .AnswerAsync();

        Assert.InRange(answer.Number("/combinedWithPrevious/value"), 0.362, answer.Number("/massPerRevolution/value"));
        Assert.True(answer.Number("/combinedWithPrevious/expandedUncertainty") < answer.Number("/massPerRevolution/expandedUncertainty"));
    }

    [Fact]
    public async Task Answer_ExcludedCatch_StaysVisibleAndDoesNotCount()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/catches/0/excluded", """{ "reason": "the chute was not closed" }""")
            .AnswerAsync();

        Assert.Equal(2, answer.List("/catches").Count);
        Assert.Equal("the chute was not closed", answer.Word("/catches/0/excludedBecause"));
        Assert.False(answer.Has("/catches/1/excludedBecause"));
        Assert.Equal(17.08, answer.Number("/catches/0/net/value"), 1e-12);
        Assert.Equal(16.94 / 46.8, answer.Number("/massPerRevolution/value"), 1e-9);
        Assert.Contains("catch-excluded", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Answer_UnitsOfTwoSystems_WarnsThatOneMayBeMislabelled()
    {
        var mixed = await Question.Of(Question.CatchTest).With("/catches/1/tare", """{ "value": 3.571, "unit": "lb" }""").AnswerAsync();
        var plain = await Question.Of(Question.CatchTest).AnswerAsync();

        Assert.Contains("mixed-mass-units", mixed.Codes("/findings"));
        Assert.DoesNotContain("mixed-mass-units", plain.Codes("/findings"));
    }

    [Fact]
    public async Task Answer_GramsAndKilograms_AreOneSystem()
    {
        var answer = await Question.Of(Question.CatchTest).With("/catches/1/tare", """{ "value": 1620, "unit": "g" }""").AnswerAsync();

        Assert.DoesNotContain("mixed-mass-units", answer.Codes("/findings"));
        Assert.Equal(16.94, answer.Number("/catches/1/net/value"), 1e-12);
    }

    [Fact]
    public async Task Answer_TextInAnyScript_ComesBackAsSent()
    {
        const string Reason = "ausgelaufen – розсипано – 撒了 – 😀 – <b>\"\\\u2028";

        var answer = await Question
            .Of(Question.CatchTest)
            .With("/meter", "\"vorn 前 😀\"")
            .With("/catches/0/excluded", System.Text.Json.JsonSerializer.Serialize(new { reason = Reason }))
            .AnswerAsync();

        Assert.Equal(Reason, answer.Word("/catches/0/excludedBecause"));
        Assert.Contains(answer.List("/findings"), finding =>
            finding!["detail"]!.GetValue<string>().EndsWith(Reason, StringComparison.Ordinal)
        );
    }
}
