namespace CalibrationApi.Tests.Calculations.CatchTests;

/// <summary>How likely mistakes are answered, and what a question or the records may say around them.</summary>
public sealed class LikelyMistakeAnswerTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task Answer_WorkedExample_HoldsNoMistake() =>
        Assert.Empty((await Question.Of(Question.CatchTest).AnswerAsync()).List("/likelyMistakes"));

    [Fact]
    public async Task Answer_OneGrossTenTimesTooLarge_PointsToItsCatch()
    {
        var answer = await Question.Of(Question.CatchTest).With("/catches/1/gross/value", "185.6").AnswerAsync();

        Assert.Equal("investigate", answer.Word("/verdict"));
        Assert.Equal("decimal-slip", answer.Word("/likelyMistakes/0/code"));
        Assert.Equal("#/catches/1", answer.Word("/likelyMistakes/0/catch"));
        Assert.False(answer.Flag("/likelyMistakes/0/cannotBeToldApart"));
        Assert.InRange(answer.Number("/likelyMistakes/0/probability"), 0.5, 1);
        Assert.InRange(answer.Number("/likelyMistakes/0/bayesFactor"), 10, 1e9);
        Assert.Contains(answer.Word("/likelyMistakes/0/check"), answer.Word("/headline"), StringComparison.Ordinal);
        Assert.Equal(["likely-mistake"], answer.Codes("/reasons"));
    }

    [Fact]
    public async Task Answer_WholeTestTwiceAsMuch_HasNoPointerAndListsTheGroup()
    {
        var answer = await Question.Of(Question.CatchTest).With("/valueInForce/value", "0.172").AnswerAsync();

        Assert.Equal("repeat", answer.Word("/verdict"));
        Assert.False(answer.Has("/likelyMistakes/0/catch"));
        Assert.True(answer.Flag("/likelyMistakes/0/cannotBeToldApart"));
        Assert.Equal(["cannot-be-told-apart"], answer.Codes("/reasons"));
    }

    [Fact]
    public async Task RuledOutMistakes_TheOneThatWasNamed_LeaveTheList()
    {
        Question Twice() => Question.Of(Question.CatchTest).With("/valueInForce/value", "0.181");
        var code = (await Twice().AnswerAsync()).Word("/likelyMistakes/0/code");

        var answer = await Twice().With("/ruledOutMistakes", $"[\"{code}\"]").AnswerAsync();

        Assert.Equal("count-halved", code);
        Assert.DoesNotContain(code, answer.Codes("/likelyMistakes"));
    }

    // Five sixths of the mass at six points: nothing reaches 10 %, and still a missed point is the first thing to look for.
    [Fact]
    public async Task Answer_LargeChange_ListsWhatCouldExplainItHoweverImprobable()
    {
        var answer = await Question.Of(Question.CatchTest).With("/valueInForce/value", "0.4353").With("/catchPoints", "6").AnswerAsync();

        Assert.Equal("repeat", answer.Word("/verdict"));
        Assert.Equal("catch-point-missed", answer.Word("/likelyMistakes/0/code"));
        Assert.InRange(answer.List("/likelyMistakes").Count, 3, 10);
        Assert.All(answer.List("/likelyMistakes"), each => Assert.NotEmpty(each!["check"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Answer_TareOfZeroWithTheContainerOnRecord_IsNotAdopted()
    {
        Question Zero() =>
            Question
                .Of(Question.CatchTest)
                .With("/catches/0/tare/value", "0")
                .With("/catches/1/tare/value", "0")
                .With("/valueInForce/value", "0.363");

        var known = await Zero().With("/container", """{ "tare": { "value": 1.62, "unit": "kg" } }""").AnswerAsync();

        Assert.Equal("tare-not-taken-off", known.Word("/likelyMistakes/0/code"));
        Assert.NotEqual("adopt", known.Word("/verdict"));
        Assert.Empty((await Zero().AnswerAsync()).List("/likelyMistakes"));
    }

    [Fact]
    public async Task Record_ScaleBehindTheValueInForceFoundOffLater_SaysSoFirst()
    {
        var farm = await Farm.CreateAsync(service);
        var basis = (await farm.TestAsync(test => test.With("/occurredAt", "2026-03-01T08:00:00+01:00"))).Id;
        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.363, "kg/rev")).With("/test", basis));
        await farm.CheckScaleAsync(check =>
            check.With("/occurredAt", "2026-04-01T08:00:00+02:00").With("/readings/0", Farm.Reading(20, 21))
        );

        var test = (await farm.TestAsync()).Body;

        Assert.Equal(5, test.Number("/resolved/valueInForce/scaleErrorFoundLater/error/value"), 1e-9);
        Assert.StartsWith(
            "The scale behind the value in force showed 5.0 % too much, as was found later. That alone makes 4.8 % less per revolution;",
            test.Word("/evaluation/headline"),
            StringComparison.Ordinal
        );
        Assert.Equal("old-scale-explains-change", test.Word("/evaluation/reasons/0/code"));
    }

    [Theory]
    [InlineData("otherElements", "another-element")]
    [InlineData("otherProducts", "another-product")]
    public async Task Others_ThatDeliverWhatWasFound_AreNamed(string member, string code)
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce/value", "0.24")
            .With("/" + member, """[ { "name": "the grey one", "massPerRevolution": { "value": 363, "unit": "g/rev" } } ]""")
            .AnswerAsync();

        Assert.Equal(code, answer.Word("/likelyMistakes/0/code"));
        Assert.Contains("the grey one", answer.Word("/likelyMistakes/0/detail"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/container", """{ "volume": { "value": 0, "unit": "L" } }""", "#/container/volume", "number-out-of-range")]
    [InlineData("/container", """{ "tare": { "value": -1, "unit": "kg" } }""", "#/container/tare", "number-out-of-range")]
    [InlineData("/otherContainers", """[ { "name": "tub" } ]""", "#/otherContainers/0/tare", "member-missing")]
    [InlineData("/otherElements", """[ { "name": "fine" } ]""", "#/otherElements/0/massPerRevolution", "member-missing")]
    [InlineData(
        "/otherProducts",
        """[ { "massPerRevolution": { "value": 1, "unit": "kg" } } ]""",
        "#/otherProducts/0/massPerRevolution",
        "unit-wrong-dimension"
    )]
    [InlineData("/catchPoints", "0", "#/catchPoints", "number-out-of-range")]
    [InlineData("/ruledOutMistakes", """["spilt-coffee"]""", "#/ruledOutMistakes/0", "word-unknown")]
    public async Task Context_OutOfRange_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.CatchTest).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal((at, code), (fault.Pointer, fault.Code));
    }

    [Fact]
    public async Task Record_ContextFromTheRecords_EntersTheQuestion()
    {
        var farm = await Farm.CreateAsync(service);
        await service.CreateAsync("/v1/adoptions", farm.Adoption);
        await service.CreateAsync("/v1/adoptions", farm.Adoption.With("/element", "fine").With("/typedIn", Draft.Quantity(0.11, "kg/rev")));
        var otherLot = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product));

        var test = (await farm.TestAsync(test => test.With("/container", farm.Container).With("/lot", otherLot))).Body;

        Assert.Equal((30, "L"), test.Quantity("/resolved/container/volume"));
        Assert.Equal((1.62, "kg"), test.Quantity("/resolved/container/tare"));
        Assert.Equal("fine", test.Word("/resolved/otherElements/0/name"));
        Assert.Equal((0.11, "kg/rev"), test.Quantity("/resolved/otherElements/0/massPerRevolution"));
        Assert.True(test.Flag("/resolved/newLot"));
        Assert.Empty(test.List("/evaluation/likelyMistakes"));
    }
}
