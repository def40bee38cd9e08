using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.Adoptions;

/// <summary>The values in force: the number in the controller, since when, from which test and under which conditions.</summary>
public sealed class ReadAdoptionsTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task InForce_NothingAdopted_IsAnEmptyList()
    {
        var farm = await Farm.CreateAsync(service);

        Assert.Empty(await farm.InForceAsync());
    }

    [Fact]
    public async Task InForce_ValueFromATest_TellsWhereItComesFrom()
    {
        var farm = await Farm.CreateAsync(service);
        var conditions = Draft.Json("""{ "tankLevel": { "value": 80, "unit": "%" }, "airTemperature": { "value": 11, "unit": "degC" } }""");
        var test = (await farm.TestAsync(test => test.With("/conditions", conditions))).Body;
        var adopted = await farm.AdoptAsync(adoption =>
            adoption
                .With("/test", test.Word("/id"))
                .With("/typedIn", Draft.Quantity(0.363, "kg/rev"))
                .With("/reason", "as tested")
                .With("/recordedBy", "B. Technician")
                .With("/occurredAt", "2026-04-18T23:30:00-04:00")
        );

        var value = new Answer(Assert.Single(await farm.InForceAsync())!);

        Assert.Equal(
            (farm.Machine, "front", "coarse", farm.Product),
            (value.Word("/machine"), value.Word("/meter"), value.Word("/element"), value.Word("/product"))
        );
        Assert.False(value.Has("/setting"));
        Assert.Equal((0.363, "kg/rev"), value.Quantity("/massPerRevolution"));
        Assert.Equal((0.363, "kg/rev"), value.Quantity("/typedIn"));
        Assert.Equal(adopted.Id, value.Word("/adoption"));
        Assert.Equal("2026-04-18T23:30:00-04:00", value.Word("/since"));
        // Half past three in the morning of the 19th in UTC, half past five in Vienna.
        Assert.Equal("2026-04-19", value.Word("/sinceLocalDate"));
        Assert.Equal(("B. Technician", "as tested"), (value.Word("/recordedBy"), value.Word("/reason")));
        Assert.Equal((farm.Lot, "fungicide"), (value.Word("/lot"), value.Word("/treatment")));
        Assert.Equal(test.Word("/id"), value.Word("/test"));
        Assert.True(JsonNode.DeepEquals(test.At("/evaluation/massPerRevolution"), value.At("/measured")));
        Assert.True(JsonNode.DeepEquals(conditions, value.At("/conditions")));
        Assert.Empty(value.List("/findings"));
        Assert.False(value.Has("/basisSupersededBy"));
    }

    [Fact]
    public async Task InForce_ValueStatedByHand_HasNoTestBehindIt()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption => adoption.Without("/lot").With("/setting", "gear 2"));

        var value = new Answer(Assert.Single(await farm.InForceAsync())!);

        Assert.Equal("gear 2", value.Word("/setting"));
        foreach (var member in (string[])["/test", "/measured", "/conditions", "/lot", "/treatment"])
            Assert.False(value.Has(member), member);
    }

    [Fact]
    public async Task InForce_SeveralSeries_IsOneValueEach()
    {
        var farm = await Farm.CreateAsync(service);
        var other = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        await farm.AdoptAsync(adoption => adoption.With("/element", "fine").With("/typedIn", Draft.Quantity(0.1, "kg/rev")));
        await farm.AdoptAsync(adoption => adoption.With("/setting", "low").With("/typedIn", Draft.Quantity(0.2, "kg/rev")));
        await farm.AdoptAsync(adoption =>
            adoption.With("/product", other.Product).With("/lot", other.Lot).With("/typedIn", Draft.Quantity(0.3, "kg/rev"))
        );
        await farm.AdoptAsync(adoption =>
            adoption.With("/meter", "rear").With("/element", "small seed").With("/typedIn", Draft.Quantity(0.03, "kg/rev"))
        );
        await other.AdoptAsync();

        Assert.Equal([0.03, 0.1, 0.2, 0.3, 0.342], Values(await farm.InForceAsync()).Order());
        Assert.Equal([0.03], Values(await farm.InForceAsync("?meter=rear")));
        Assert.Equal([0.1], Values(await farm.InForceAsync("?element=fine")));
        Assert.Equal([0.2], Values(await farm.InForceAsync("?setting=low")));
        Assert.Equal([0.3], Values(await farm.InForceAsync($"?product={other.Product}")));
        Assert.Empty(await farm.InForceAsync("?meter=rear&element=coarse"));
    }

    [Fact]
    public async Task InForce_AtAnInstant_IsTheNewestAdoptedByThen()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.34, "kg/rev")).With("/occurredAt", "2026-03-01T08:00:00Z")
        );
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.36, "kg/rev")).With("/occurredAt", "2026-04-01T08:00:00Z")
        );

        Assert.Equal([0.36], Values(await farm.InForceAsync()));
        Assert.Equal([0.36], Values(await farm.InForceAsync("?at=2026-04-01T08:00:00Z")));
        Assert.Equal([0.34], Values(await farm.InForceAsync("?at=2026-04-01T09:59:59%2B02:00")));
        Assert.Equal([0.34], Values(await farm.InForceAsync("?at=2026-03-01T08:00:00Z")));
        Assert.Empty(await farm.InForceAsync("?at=2026-03-01T07:59:59Z"));
    }

    // Entered after a day without network: it tells of the past and does not undo what was typed in since.
    [Fact]
    public async Task InForce_LateEntryOfAnOlderAdoption_DoesNotOverrideTheNewer()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.36, "kg/rev")).With("/occurredAt", "2026-04-01T08:00:00Z")
        );
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.34, "kg/rev")).With("/occurredAt", "2026-03-01T08:00:00Z")
        );

        Assert.Equal([0.36], Values(await farm.InForceAsync()));
        Assert.Equal([0.34], Values(await farm.InForceAsync("?at=2026-03-15T08:00:00Z")));
    }

    // A phone that goes ten minutes ahead: what its owner has just typed in is in the controller now.
    [Fact]
    public async Task InForce_AdoptedByAClockThatGoesAhead_IsInForceAtOnce()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.36, "kg/rev")).With("/occurredAt", "2026-05-04T10:10:00Z")
        );

        Assert.Equal([0.36], Values(await farm.InForceAsync()));
    }

    [Fact]
    public async Task InForce_TwoAdoptedForTheSameTime_IsTheOneReceivedLast()
    {
        var farm = await Farm.CreateAsync(service);
        var first = await farm.AdoptAsync();
        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.36, "kg/rev")));

        Assert.Equal([0.36], Values(await farm.InForceAsync()));
        Assert.Equal(200, (await service.GetAsync($"/v1/adoptions/{first.Id}")).Status);
    }

    [Fact]
    public async Task InForce_TwoAdoptedAtOnce_BothAreOnRecordAndOneIsInForce()
    {
        for (var round = 0; round < 10; round++)
        {
            var farm = await Farm.CreateAsync(service);

            var adopted = await Task.WhenAll(
                Enumerable
                    .Range(0, 4)
                    .Select(i => farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.34 + 0.01 * i, "kg/rev"))))
            );

            var value = Assert.Single(await farm.InForceAsync())!;
            var ids = (await service.ItemsAsync($"/v1/adoptions?machine={farm.Machine}"))
                .Select(line => line["id"]!.GetValue<string>())
                .ToArray();
            Assert.Equal(adopted.Select(one => one.Id).Order(), ids.Order());
            // Newest first: of equal times the one received last stands first, and it is the one in force.
            Assert.Equal(ids[0], value["adoption"]!.GetValue<string>());
        }
    }

    [Fact]
    public async Task InForce_SupersededAdoption_MakesWayForItsReplacement()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.33, "kg/rev")).With("/occurredAt", "2026-02-01T08:00:00Z")
        );
        var wrong = await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.324, "kg/rev")));
        await farm.AdoptAsync(adoption => adoption.With("/supersedes", Farm.Supersedes(wrong.Id, "digits swapped while noting it")));

        Assert.Equal([0.342], Values(await farm.InForceAsync()));
        Assert.Equal([0.33], Values(await farm.InForceAsync("?at=2026-03-02T06:59:59Z")));
    }

    // It was another meter's value all along: the earlier one of this meter is in force again.
    [Fact]
    public async Task InForce_AdoptionSupersededByOneOfAnotherMeter_FallsBackToTheEarlierValue()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.33, "kg/rev")).With("/occurredAt", "2026-02-01T08:00:00Z")
        );
        var wrong = await farm.AdoptAsync();
        await farm.AdoptAsync(adoption =>
            adoption
                .With("/meter", "rear")
                .With("/element", "small seed")
                .With("/supersedes", Farm.Supersedes(wrong.Id, "noted for the wrong meter"))
        );

        Assert.Equal([0.33], Values(await farm.InForceAsync("?meter=front")));
        Assert.Equal([0.342], Values(await farm.InForceAsync("?meter=rear")));
    }

    // The controller goes on with the number until somebody types another one; but nobody should seed on it unwarned.
    [Fact]
    public async Task InForce_TestBehindItSuperseded_StaysInForceWithAStopAndNamesTheTestInItsPlace()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = await farm.TestAsync();
        var adopted = await AdoptTestAsync(farm, wrong);
        var right = await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrong.Id, "the tare was wrong")));

        var value = new Answer(Assert.Single(await farm.InForceAsync())!);

        Assert.Equal(0.363, value.Number("/massPerRevolution/value"));
        Assert.Equal(adopted.Id, value.Word("/adoption"));
        Assert.Equal(right.Id, value.Word("/basisSupersededBy/record"));
        Assert.Equal("the tare was wrong", value.Word("/basisSupersededBy/reason"));
        var finding = Assert.Single(value.List("/findings"))!;
        Assert.Equal(("basis-superseded", "stop"), (finding["code"]!.GetValue<string>(), finding["severity"]!.GetValue<string>()));
        Assert.Contains("basis-superseded", (await service.GetAsync($"/v1/adoptions/{adopted.Id}")).Body.Codes("/findings"));
        // Adopting the value of the test in its place ends it.
        await AdoptTestAsync(farm, right);
        value = new Answer(Assert.Single(await farm.InForceAsync())!);
        Assert.Equal(right.Id, value.Word("/test"));
        Assert.Empty(value.List("/findings"));
    }

    // Only a test that stands can be adopted, so that one is named.
    [Fact]
    public async Task InForce_TestBehindItSupersededTwice_NamesTheTestThatStands()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = await farm.TestAsync();
        await AdoptTestAsync(farm, wrong);
        var wrongAgain = await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrong.Id)));
        var right = await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrongAgain.Id)));

        Assert.Equal(right.Id, new Answer(Assert.Single(await farm.InForceAsync())!).Word("/basisSupersededBy/record"));
        await AdoptTestAsync(farm, right);
    }

    // It was noted for the wrong element: the test in its place says nothing of this one.
    [Fact]
    public async Task InForce_TestBehindItSupersededByOneOfAnotherSeries_AsksForATest()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = await farm.TestAsync();
        await AdoptTestAsync(farm, wrong);
        await farm.TestAsync(test =>
            test.With("/element", "fine").With("/supersedes", Farm.Supersedes(wrong.Id, "it was the fine element"))
        );

        var value = new Answer(Assert.Single(await farm.InForceAsync())!);

        var finding = Assert.Single(value.List("/findings"))!;
        Assert.Equal(("basis-superseded", "stop"), (finding["code"]!.GetValue<string>(), finding["severity"]!.GetValue<string>()));
        Assert.Contains("it was the fine element", finding["detail"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("test again", finding["detail"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task InForce_InOtherUnits_KeepsTheNumberTypedIn()
    {
        var farm = await Farm.CreateAsync(service);
        var test = await farm.TestAsync();
        await AdoptTestAsync(farm, test);

        var us = new Answer(Assert.Single(await farm.InForceAsync("?units=us"))!);

        // 1 lb is 0.453 592 37 kg (NIST SP 811, B.8).
        Assert.Equal("lb/rev", us.Word("/massPerRevolution/unit"));
        Assert.Equal(0.363 / 0.45359237, us.Number("/massPerRevolution/value"), 1e-12);
        Assert.Equal("lb/rev", us.Word("/measured/unit"));
        Assert.Equal(
            test.Body.Number("/evaluation/massPerRevolution/expandedUncertainty") / 0.45359237,
            us.Number("/measured/expandedUncertainty"),
            1e-12
        );
        Assert.Equal((0.363, "kg/rev"), us.Quantity("/typedIn"));
    }

    [Fact]
    public async Task InForce_PageByPage_IsTheSameAsAtOnce()
    {
        var farm = await Farm.CreateAsync(service);
        foreach (var setting in (string[])["1", "2", "3", "4", "5"])
            await farm.AdoptAsync(adoption => adoption.With("/setting", setting));
        var whole = await farm.InForceAsync();

        var first = (await service.GetAsync($"/v1/machines/{farm.Machine}/values-in-force?limit=2")).Expect(200);
        var paged = await service.ItemsAsync($"/v1/machines/{farm.Machine}/values-in-force?limit=2");

        Assert.Equal(2, first.Body.List("/items").Count);
        Assert.NotNull(first.Next);
        Assert.Equal(5, paged.Count);
        Assert.Equal(whole.Select(item => item!.ToJsonString()), paged.Select(item => item.ToJsonString()));
    }

    [Fact]
    public async Task InForce_CursorOfOtherFilters_IsRefused()
    {
        var farm = await Farm.CreateAsync(service);
        foreach (var setting in (string[])["1", "2"])
            await farm.AdoptAsync(adoption => adoption.With("/setting", setting));
        var next = new Uri((await service.GetAsync($"/v1/machines/{farm.Machine}/values-in-force?limit=1")).Expect(200).Next!).Query;

        var fault = (
            await (await service.GetAsync($"/v1/machines/{farm.Machine}/values-in-force{next}&meter=front")).ProblemAsync(400)
        ).Only();

        Assert.Equal(("cursor", "cursor-invalid"), (fault.Parameter, fault.Code));
    }

    [Fact]
    public async Task InForce_RetiredMachine_CanStillBeRead()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        await farm.RetireAsync("machines", farm.Machine);

        Assert.Equal([0.342], Values(await farm.InForceAsync()));
    }

    [Fact]
    public async Task InForce_UnknownMachine_IsNotFound() =>
        await (await service.GetAsync($"/v1/machines/{Farm.NoRecord}/values-in-force")).RefusedAsync(404, null, "not-found");

    [Theory]
    [InlineData("at=yesterday", 422, "at", "time-wrong")]
    [InlineData("at=2026-04-01", 422, "at", "time-wrong")]
    [InlineData("units=imperial", 422, "units", "word-unknown")]
    [InlineData("limit=0", 422, "limit", "number-out-of-range")]
    [InlineData("lot=x", 400, "lot", "member-unknown")]
    [InlineData("meter=a&meter=b", 400, "meter", "member-duplicate")]
    public async Task InForce_WrongQuery_IsRefusedByItsName(string query, int status, string parameter, string code)
    {
        var farm = await Farm.CreateAsync(service);

        var fault = (await (await service.GetAsync($"/v1/machines/{farm.Machine}/values-in-force?{query}")).ProblemAsync(status)).Only();

        Assert.Equal((parameter, code), (fault.Parameter, fault.Code));
    }

    private static IEnumerable<double> Values(JsonArray items) =>
        items.Select(item => item!["massPerRevolution"]!["value"]!.GetValue<double>());

    private static Task<Reply> AdoptTestAsync(Farm farm, Reply test) =>
        farm.AdoptAsync(adoption =>
            adoption
                .With("/test", test.Id)
                .With("/typedIn", Draft.Quantity(test.Body.Number("/evaluation/enter/value"), test.Body.Word("/evaluation/enter/unit")))
                .With("/occurredAt", "2026-04-18T08:00:00+02:00")
        );
}
