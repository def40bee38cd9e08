using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>A stored test finds by itself the earlier one, set up apart, that bears it out.</summary>
public sealed class EarlierTestRecordsTests(RecordService service) : IClassFixture<RecordService>
{
    // 0.30 in force, 0.363 measured: a fifth more.
    [Fact]
    public async Task Record_SecondTestOfALargeChange_IsBorneOutByTheFirst()
    {
        var farm = await PrepareAsync();
        var first = (await farm.TestAsync()).Body;

        var second = (await SecondAsync(farm)).Body;

        Assert.Equal(("repeat", "second-test-needed"), (first.Word("/evaluation/verdict"), first.Word("/evaluation/reasons/0/code")));
        Assert.False(first.Has("/usedHistory/earlierTest"));
        Assert.Equal(("adopt", "change-confirmed"), (second.Word("/evaluation/verdict"), second.Word("/evaluation/reasons/0/code")));
        Assert.Equal(first.Word("/id"), second.Word("/usedHistory/earlierTest/test"));
        Assert.Equal(
            (first.Word("/id"), first.Word("/occurredAt")),
            (second.Word("/evaluation/secondTest/test"), second.Word("/evaluation/secondTest/occurredAt"))
        );
        Assert.True(second.Flag("/evaluation/secondTest/confirms"));
        Assert.Contains("the test of 2026-04-18 agrees", second.Word("/evaluation/headline"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/lot")]
    [InlineData("/setting")]
    [InlineData("/element")]
    public async Task Record_TestOfSomethingElse_BearsNothingOut(string member)
    {
        var farm = await PrepareAsync();
        await farm.TestAsync();
        var lot = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/name", "lot B"));
        var inForce = Draft.Json("""{ "value": 0.30, "unit": "kg/rev" }""");

        var second = (await SecondAsync(farm, test => test.With("/valueInForce", inForce)
                    .With(
                        member,
                        member switch
                        {
                            "/lot" => lot,
                            "/setting" => "low",
                            _ => "fine",
                        }
                    ))).Body;

        Assert.False(second.Has("/usedHistory/earlierTest"));
        Assert.Equal("repeat", second.Word("/evaluation/verdict"));
    }

    [Fact]
    public async Task Record_TestFromBeforeTheLastAdoption_BearsNothingOut()
    {
        var farm = await PrepareAsync();
        await farm.TestAsync();
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.301, "kg/rev")).With("/occurredAt", "2026-04-18T12:00:00+02:00")
        );

        Assert.Equal("repeat", (await SecondAsync(farm)).Body.Word("/evaluation/verdict"));
    }

    [Fact]
    public async Task Record_TestThatWasSuperseded_BearsNothingOut()
    {
        var farm = await PrepareAsync();
        var wrong = (await farm.TestAsync()).Id;
        await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrong)).With("/catches", Farm.Catches(0.301, 0.302)));

        var second = (await SecondAsync(farm)).Body;

        Assert.Equal(("repeat", "tests-disagree"), (second.Word("/evaluation/verdict"), second.Word("/evaluation/reasons/0/code")));
    }

    // The same catches under another id and another time are no second set-up.
    [Fact]
    public async Task Record_SameCatchesSentTwice_BearNothingOut()
    {
        var farm = await PrepareAsync();
        await farm.TestAsync();

        var again = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-18T09:40:00+02:00"))).Body;

        Assert.Equal(("repeat", "second-test-needed"), (again.Word("/evaluation/verdict"), again.Word("/evaluation/reasons/0/code")));
    }

    [Fact]
    public async Task Record_EarlierTestSupersededLater_IsSaidSinceThen()
    {
        var farm = await PrepareAsync();
        var first = (await farm.TestAsync()).Id;
        var second = (await SecondAsync(farm)).Id;
        Assert.False((await service.GetAsync($"/v1/catch-tests/{second}")).Body.Has("/sinceThen"));

        await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(first)).With("/catches", Farm.Catches(0.301, 0.302)));

        Assert.Contains("basis-superseded", (await service.GetAsync($"/v1/catch-tests/{second}")).Body.Codes("/sinceThen"));
    }

    // 0.30 kg/rev with 62 kg/hL lets 0.363 be expected with 75 kg/hL: the change comes from the lot and needs no second test.
    [Theory]
    [InlineData(62, 75, "adopt")]
    [InlineData(62, 62, "repeat")]
    public async Task Record_NewLotOfKnownDensity_CountsALargeChangeFromItsPrediction(double before, double after, string verdict)
    {
        var farm = await PrepareAsync();
        var old = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/bulkDensity", Draft.Quantity(before, "kg/hL")));
        var now = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/bulkDensity", Draft.Quantity(after, "kg/hL")));
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.30, "kg/rev")).With("/lot", old).With("/occurredAt", "2026-04-02T08:00:00+02:00")
        );

        Assert.Equal(verdict, (await farm.TestAsync(test => test.With("/lot", now))).Body.Word("/evaluation/verdict"));
    }

    [Fact]
    public async Task Record_EarlierTestStated_IsTakenAsStated()
    {
        var farm = await PrepareAsync();
        await farm.TestAsync();

        var second = (
            await SecondAsync(farm, test =>
                test.With("/earlierTest", Draft.Json("""{ "value": 0.31, "unit": "kg/rev", "catches": 2, "test": "on paper" }"""))
            )
        ).Body;

        Assert.Equal("on paper", second.Word("/evaluation/secondTest/test"));
        Assert.False(second.Has("/usedHistory/earlierTest"));
    }

    // The same meter, but not what the plan says of it.
    [Theory]
    [InlineData("/element", "fine", "another element")]
    [InlineData("/setting", "low", "another setting")]
    [InlineData("/lot", null, "another lot")]
    [InlineData("/meter", "rear", "nothing for the meter rear")]
    public async Task Record_OtherThanPlanned_IsAFinding(string member, string? value, string words)
    {
        var farm = await PrepareAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        Assert.DoesNotContain("differs-from-plan", (await farm.TestAsync(test => test.With("/plan", plan))).Body.Codes("/findings"));

        var test = (
            await farm.TestAsync(test =>
            {
                test.With("/plan", plan);
                if (value is null)
                    test.Without(member);
                else
                    test.With(member, value);
                if (value == "rear")
                    test.With("/element", "small seed");
            })
        ).Body;

        Assert.Contains(
            words,
            Assert.Single(test.List("/findings"), one => one!["code"]!.GetValue<string>() == "differs-from-plan")![
                "detail"
            ]!.GetValue<string>(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Record_OutletsOfTheMeter_AreTheCatchPointsUnlessStated()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters/0/outlets", 24));

        Assert.Equal(24, (await farm.TestAsync()).Body.Number("/resolved/catchPoints"));
        Assert.Equal(6, (await farm.TestAsync(test => test.With("/catchPoints", 6))).Body.Number("/resolved/catchPoints"));
        Assert.Equal(
            2,
            (await farm.TestAsync(test => test.With("/caughtPoints", new JsonObject { ["caught"] = 2, ["total"] = 24 }))).Body.Number(
                "/resolved/catchPoints"
            )
        );
    }

    [Fact]
    public async Task Record_Keep_GivesBothNumbersAsTheControllerTakesThem()
    {
        var farm = await PrepareAsync();
        await farm.AdoptAsync(adoption =>
            adoption
                .With("/typedIn", Draft.Quantity(0.36, "kg/rev"))
                .With("/occurredAt", "2026-04-01T08:00:00Z")
                .With("/despite", new JsonArray(new JsonObject { ["code"] = "typed-off-value-in-force", ["reason"] = "another roller" }))
        );

        var test = (await farm.TestAsync()).Body;

        Assert.Equal("keep", test.Word("/evaluation/verdict"));
        Assert.Equal((0.36, "kg/rev"), test.Quantity("/evaluation/valueInForceEntry"));
        Assert.Equal((0.363, "kg/rev"), test.Quantity("/evaluation/measuredEntry"));
    }

    private async Task<Farm> PrepareAsync()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.30, "kg/rev")));
        return farm;
    }

    private static Task<Reply> SecondAsync(Farm farm, Action<Draft>? change = null) =>
        farm.TestAsync(test =>
        {
            test.With("/occurredAt", "2026-04-19T06:40:00+02:00")
                .With("/catches", new JsonArray(Farm.Catch(18.66, 47, 1.64), Farm.Catch(18.60, 46.9, 1.64)));
            change?.Invoke(test);
        });
}
