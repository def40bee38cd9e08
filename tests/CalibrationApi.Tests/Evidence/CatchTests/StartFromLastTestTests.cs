namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>Where nothing has been adopted, a stored test is compared with the last one of its series.</summary>
public sealed class StartFromLastTestTests(RecordService service) : IClassFixture<RecordService>
{
    private const string Later = "2026-04-19T06:40:00+02:00";

    [Fact]
    public async Task Record_NothingAdopted_IsComparedWithTheLastTestAndSaysSo()
    {
        var farm = await FarmAsync();
        var first = (await farm.TestAsync()).Body;

        var second = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/catches", Farm.Catches(0.371, 0.372)))).Body;

        Assert.False(first.Has("/evaluation/change"));
        Assert.Equal(
            (first.Word("/id"), first.Word("/occurredAt")),
            (second.Word("/usedHistory/startValue/test"), second.Word("/usedHistory/startValue/occurredAt"))
        );
        Assert.Equal("start-value", second.Word("/evaluation/changeFrom"));
        Assert.Equal(first.Number("/evaluation/massPerRevolution/value"), second.Number("/resolved/startValue/value"), 1e-6);
        var assumption = Assert.Single(second.List("/evaluation/assumptions"), one => one!["name"]!.GetValue<string>() == "startValue")!;
        Assert.Contains("the test of 2026-04-18 measured", assumption["origin"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("adopt", second.Word("/evaluation/verdict"));
    }

    // It is known as well as one test and one day are: 1 % from day to day, and the catches.
    [Fact]
    public async Task Record_NothingAdopted_TheLastTestHasItsOwnUncertainty()
    {
        var farm = await FarmAsync();
        await farm.TestAsync();

        var known = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/dayToDay", Draft.Quantity(1, "%")))).Body;
        var steadier = (
            await farm.TestAsync(test => test.With("/occurredAt", "2026-04-18T06:50:00+02:00").With("/dayToDay", Draft.Quantity(0.2, "%")))
        ).Body;

        Assert.InRange(known.Number("/resolved/startValue/relativeUncertainty/value"), 1.05, 2);
        Assert.InRange(
            steadier.Number("/resolved/startValue/relativeUncertainty/value"),
            0.3,
            known.Number("/resolved/startValue/relativeUncertainty/value") - 0.2
        );
    }

    // A third less than the last test: the second-test rule holds against it, and the third test decides between the two.
    [Fact]
    public async Task Record_FarFromTheLastTest_TakesAThirdTest()
    {
        var farm = await FarmAsync();
        await farm.TestAsync();

        var second = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/catches", Farm.Catches(0.241, 0.242)))).Body;
        var third = (
            await farm.TestAsync(test =>
                test.With("/occurredAt", "2026-04-19T09:40:00+02:00").With("/catches", Farm.Catches(0.242, 0.2415))
            )
        ).Body;
        var back = (
            await farm.TestAsync(test => test.With("/occurredAt", "2026-04-19T08:40:00+02:00").With("/catches", Farm.Catches(0.362, 0.363)))
        ).Body;

        Assert.Equal(("repeat", "second-test-needed"), (second.Word("/evaluation/verdict"), second.Word("/evaluation/reasons/0/code")));
        Assert.Contains("less per revolution than the last test says", second.Word("/evaluation/headline"), StringComparison.Ordinal);
        Assert.Equal(("adopt", "change-confirmed"), (third.Word("/evaluation/verdict"), third.Word("/evaluation/reasons/0/code")));
        Assert.Equal(second.Word("/id"), third.Word("/usedHistory/earlierTest/test"));
        Assert.Equal("adopt", back.Word("/evaluation/verdict"));
    }

    // A test that waits for a second one is nothing to go by; the displacement stays what is compared with, and the second test confirms.
    [Fact]
    public async Task Record_AfterATestThatNeedsASecondOne_IsComparedAsThatWas()
    {
        var farm = await Farm.CreateAsync(service);
        var first = (await farm.TestAsync(test => test.With("/catches", Farm.Catches(0.205, 0.206)))).Body;

        var second = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/catches", Farm.Catches(0.2055, 0.2065)))).Body;

        Assert.Equal("second-test-needed", first.Word("/evaluation/reasons/0/code"));
        Assert.False(second.Has("/usedHistory/startValue"));
        Assert.Equal("change-confirmed", second.Word("/evaluation/reasons/0/code"));
    }

    [Fact]
    public async Task Record_LastTestSuperseded_IsNotComparedWithItAndSaysSoWhereItWas()
    {
        var farm = await FarmAsync();
        var first = (await farm.TestAsync()).Id;
        var second = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/catches", Farm.Catches(0.364, 0.365)))).Id;
        var better = (
            await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(first)).With("/catches", Farm.Catches(0.301, 0.302)))
        ).Body;

        Assert.False(better.Has("/usedHistory/startValue"));
        Assert.Contains("basis-superseded", (await service.GetAsync($"/v1/catch-tests/{second}")).Body.Codes("/sinceThen"));
    }

    [Fact]
    public async Task Record_AdoptionEnteredAfterwards_IsSaidSinceThen()
    {
        var farm = await FarmAsync();
        await farm.TestAsync();
        var second = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/catches", Farm.Catches(0.364, 0.365)))).Id;

        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.36, "kg/rev")));

        Assert.Contains("value-in-force-changed", (await service.GetAsync($"/v1/catch-tests/{second}")).Body.Codes("/sinceThen"));
    }

    // Adopted, stated by hand or in the plan: something better known stands before the last test, but a guess of the plan does not.
    [Theory]
    [InlineData("/valueInForce", false)]
    [InlineData("/startValue", false)]
    [InlineData(null, true)]
    public async Task Record_ValueStated_StandsBeforeTheLastTest(string? member, bool usesLast)
    {
        var farm = await FarmAsync();
        await farm.TestAsync();

        var second = (
            await farm.TestAsync(test =>
            {
                test.With("/occurredAt", Later);
                if (member is not null)
                    test.With(member, Draft.Json("""{ "value": 0.36, "unit": "kg/rev" }"""));
            })
        ).Body;

        Assert.Equal(usesLast, second.Has("/usedHistory/startValue"));
    }

    [Fact]
    public async Task Record_OtherLotThanTheLastTest_AllowsForItAndSaysSo()
    {
        var farm = await FarmAsync();
        await farm.TestAsync();
        var lot = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/name", "lot B"));

        var second = (await farm.TestAsync(test => test.With("/occurredAt", Later).With("/lot", lot))).Body;

        Assert.True(second.Number("/resolved/startValue/relativeUncertainty/value") > 5);
        Assert.True(second.Flag("/resolved/newLot"));
        Assert.Contains(
            "5 % were allowed for that",
            Assert.Single(second.List("/findings"), one => one!["code"]!.GetValue<string>() == "other-lot")!["detail"]!.GetValue<string>(),
            StringComparison.Ordinal
        );
    }

    private Task<Farm> FarmAsync() =>
        Farm.CreateAsync(service, machine => machine.Without("/meters/0/elements/0/displacementPerRevolution"));
}
