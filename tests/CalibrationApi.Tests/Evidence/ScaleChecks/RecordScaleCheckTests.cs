using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.ScaleChecks;

/// <summary>A scale checked against known masses, and what follows for the tests weighed on it.</summary>
public sealed class RecordScaleCheckTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task Record_ScaleThatShowsTooMuch_FindsItsErrorAndKeepsTheReadings()
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.ScaleCheck.With("/note", "two brass masses");

        var check = (await service.PostAsync("/v1/scale-checks", draft)).Expect(201);

        Assert.Equal($"/v1/scale-checks/{check.Id}", check.Header("Location"));
        Assert.Equal("passed", check.Body.Word("/verdict"));
        // 20 g at 20 kg; the rounding of one indication is d/sqrt(12) (JCGM 100:2008, F.2.2.1).
        Assert.Equal(0.1, check.Body.Number("/error/value"), 1e-9);
        Assert.Equal(100 * 0.02 / Math.Sqrt(12) / 20, check.Body.Number("/standardUncertainty/value"), 1e-9);
        Assert.Equal(0.02, check.Body.Number("/largestDeviation/value"), 1e-12);
        // OIML R 76-1:2006, 3.5.1 and 3.5.2: class III to 2000 e in service, twice 1 e.
        Assert.Equal(0.04, check.Body.Number("/limit/value"), 1e-12);
        Assert.Contains("OIML R 76", check.Body.Word("/limitOrigin"), StringComparison.Ordinal);
        Assert.Equal("2026-03-01T08:00:00+01:00", check.Body.Word("/occurredAt"));
        Assert.True(JsonNode.DeepEquals(draft.Body, check.Body.At("/entered")));
        Assert.Equal(check.Bytes, (await service.GetAsync($"/v1/scale-checks/{check.Id}")).Expect(200).Bytes);
    }

    [Fact]
    public async Task Record_ReadingBeyondTheLimit_Fails()
    {
        var farm = await Farm.CreateAsync(service);

        var check = await farm.CheckScaleAsync(check => check.With("/readings/0", Farm.Reading(20, 20.2)));

        Assert.Equal("failed", check.Body.Word("/verdict"));
        Assert.Contains("Do not weigh with it", check.Body.Word("/headline"), StringComparison.Ordinal);
        Assert.Equal(
            "failed",
            Assert.Single(await service.ItemsAsync($"/v1/scale-checks?scale={farm.Scale}"))["verdict"]!.GetValue<string>()
        );
    }

    [Fact]
    public async Task Record_ReadingsInPounds_AreAnsweredInPounds()
    {
        var farm = await Farm.CreateAsync(service);
        var check = await farm.CheckScaleAsync(check =>
            check.With(
                "/readings/0",
                Draft.Json("""{ "known": { "value": 50, "unit": "lb" }, "indicated": { "value": 50.05, "unit": "lb" } }""")
            )
        );

        Assert.Equal("lb", check.Body.Word("/largestDeviation/unit"));
        Assert.Equal(0.05, check.Body.Number("/largestDeviation/value"), 1e-9);
        Assert.Equal("kg", (await service.GetAsync($"/v1/scale-checks/{check.Id}?units=metric")).Body.Word("/largestDeviation/unit"));
        Assert.Equal(
            (50, "lb"),
            (await service.GetAsync($"/v1/scale-checks/{check.Id}?units=metric")).Body.Quantity("/entered/readings/0/known")
        );
    }

    // True mass = indicated / (1 + error).
    [Fact]
    public async Task Error_OfTheLastCheck_CorrectsLaterTestsAndItsUncertaintyEnters()
    {
        var farm = await Farm.CreateAsync(service);
        var check = await farm.CheckScaleAsync();

        var test = (await farm.TestAsync()).Body;

        Assert.Equal(check.Id, test.Word("/usedHistory/scaleCheck/check"));
        Assert.Equal("2026-03-01T08:00:00+01:00", test.Word("/usedHistory/scaleCheck/occurredAt"));
        Assert.Equal(check.Body.Number("/error/value"), test.Number("/usedHistory/scaleCheck/error/value"), 1e-12);
        Assert.Equal((17.08 + 16.94) / 1.001 / (47 + 46.8), test.Number("/evaluation/totalMassOverTotalRevolutions/value"), 1e-12);
        Assert.Equal(17.08 / 1.001, test.Number("/evaluation/catches/0/metered/value"), 1e-12);
        var span = test.List("/evaluation/uncertaintyParts").Single(part => part!["source"]!.GetValue<string>() == "scale")!;
        Assert.Equal(check.Body.Number("/standardUncertainty/value"), span["relative"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.DoesNotContain("scale-check-overdue", test.Codes("/findings"));
    }

    [Fact]
    public async Task Error_OfACheckAfterTheTestOrOfAnotherScale_CorrectsNothing()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-04-20T08:00:00Z"));
        var other = await service.CreateAsync("/v1/scales", Farm.ScaleDraft);

        var before = (await farm.TestAsync()).Body;
        var onOther = (await farm.TestAsync(test => test.With("/scale", other).With("/occurredAt", "2026-04-21T08:00:00Z"))).Body;
        var after = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-21T08:00:00Z"))).Body;

        Assert.False(before.Has("/usedHistory/scaleCheck"));
        Assert.False(onOther.Has("/usedHistory/scaleCheck"));
        Assert.True(after.Has("/usedHistory/scaleCheck"));
    }

    [Fact]
    public async Task Error_OfASupersededCheck_CorrectsNoLonger()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = await farm.CheckScaleAsync();
        var before = (await farm.TestAsync()).Body;

        var right = await farm.CheckScaleAsync(check =>
            check.With("/readings/0", Farm.Reading(20, 20)).With("/supersedes", Farm.Supersedes(wrong.Id, "wrong mass on it"))
        );

        var after = (await farm.TestAsync()).Body;
        Assert.Equal(right.Id, after.Word("/usedHistory/scaleCheck/check"));
        Assert.Equal(0, after.Number("/usedHistory/scaleCheck/error/value"));
        // The test that was corrected by the wrong error stays as it was recorded, and says so when it is read.
        Assert.Equal(wrong.Id, before.Word("/usedHistory/scaleCheck/check"));
        Assert.Contains("scale-check-changed", (await service.GetAsync($"/v1/catch-tests/{before.Word("/id")}")).Body.Codes("/sinceThen"));
        Assert.False((await service.GetAsync($"/v1/catch-tests/{after.Word("/id")}")).Body.Has("/sinceThen"));
    }

    // Entered late, as after a day without network: the test should have been corrected by it.
    [Fact]
    public async Task Error_OfACheckEnteredLate_IsToldByTheTestsAfterIt()
    {
        var farm = await Farm.CreateAsync(service);
        var test = (await farm.TestAsync()).Body;

        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-04-17T08:00:00Z"));

        Assert.Contains("scale-check-changed", (await service.GetAsync($"/v1/catch-tests/{test.Word("/id")}")).Body.Codes("/sinceThen"));
    }

    [Theory]
    // Checked on 1 March at 07:00 UTC; by default a check lasts 365 days, this scale's 30.
    [InlineData(null, "2026-05-01T06:00:00Z", false)]
    [InlineData(30, "2026-03-31T07:00:00Z", false)]
    [InlineData(30, "2026-03-31T07:00:01Z", true)]
    [InlineData(30, "2026-05-01T06:00:00Z", true)]
    public async Task Overdue_CheckOlderThanItLasts_IsAWarning(int? days, string testedAt, bool isOverdue)
    {
        var farm = await Farm.CreateAsync(service);
        var scale = (await service.GetAsync($"/v1/scales/{farm.Scale}")).Expect(200);
        (
            await service.PutAsync(
                $"/v1/scales/{farm.Scale}",
                days is { } stated ? Farm.ScaleDraft.With("/daysBetweenChecks", stated) : Farm.ScaleDraft,
                scale.ETag
            )
        ).Expect(200);
        await farm.CheckScaleAsync();

        var findings = (await farm.TestAsync(test => test.With("/occurredAt", testedAt)))
            .Body.List("/findings")
            .Where(one => one!["code"]!.GetValue<string>() == "scale-check-overdue")
            .ToArray();

        Assert.Equal(isOverdue ? ["warning"] : [], findings.Select(finding => finding!["severity"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Overdue_ScaleThatWasNeverChecked_IsANote()
    {
        var farm = await Farm.CreateAsync(service);

        var finding = Assert.Single((await farm.TestAsync()).Body.List("/findings"), one =>
            one!["code"]!.GetValue<string>() == "scale-check-overdue"
        )!;

        Assert.Equal("note", finding["severity"]!.GetValue<string>());
    }

    [Fact]
    public async Task Failed_Check_IsAFindingOnTestsSinceTheLastGoodOne()
    {
        var farm = await Farm.CreateAsync(service);
        var beforeGood = (await farm.TestAsync(test => test.With("/occurredAt", "2026-03-10T06:00:00Z"))).Id;
        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-03-15T06:00:00Z"));
        var sinceGood = (await farm.TestAsync(test => test.With("/occurredAt", "2026-03-20T06:00:00Z"))).Id;
        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-03-25T06:00:00Z").With("/readings/0", Farm.Reading(20, 20.2)));
        var afterFailed = await farm.TestAsync(test => test.With("/occurredAt", "2026-03-30T06:00:00Z"));
        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-04-05T06:00:00Z"));
        var afterRepair = await farm.TestAsync(test => test.With("/occurredAt", "2026-04-10T06:00:00Z"));

        Assert.False((await service.GetAsync($"/v1/catch-tests/{beforeGood}")).Body.Has("/sinceThen"));
        Assert.Contains("scale-check-failed-later", (await service.GetAsync($"/v1/catch-tests/{sinceGood}")).Body.Codes("/sinceThen"));
        var stop = Assert.Single(afterFailed.Body.List("/evaluation/findings"), one =>
            one!["code"]!.GetValue<string>() == "scale-check-failed"
        )!;
        Assert.Equal("stop", stop["severity"]!.GetValue<string>());
        Assert.Contains("1.00 % off", stop["detail"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.DoesNotContain("scale-check-failed", afterRepair.Body.Codes("/evaluation/findings"));
        Assert.False((await service.GetAsync($"/v1/catch-tests/{afterRepair.Id}")).Body.Has("/sinceThen"));
    }

    [Fact]
    public async Task Failed_CheckThatWasSuperseded_IsNoFindingAnyLonger()
    {
        var farm = await Farm.CreateAsync(service);
        var test = (await farm.TestAsync()).Id;
        var failed = await farm.CheckScaleAsync(check =>
            check.With("/occurredAt", "2026-04-20T06:00:00Z").With("/readings/0", Farm.Reading(20, 20.2))
        );
        Assert.Contains("scale-check-failed-later", (await service.GetAsync($"/v1/catch-tests/{test}")).Body.Codes("/sinceThen"));

        await farm.CheckScaleAsync(check =>
            check.With("/occurredAt", "2026-04-20T06:00:00Z").With("/supersedes", Farm.Supersedes(failed.Id, "a stone lay on it"))
        );

        Assert.False((await service.GetAsync($"/v1/catch-tests/{test}")).Body.Has("/sinceThen"));
    }

    // A test entered after the check that failed: its first answer says already what it will say when it is read.
    [Fact]
    public async Task Failed_CheckKnownWhenATestIsEnteredLate_IsToldAtOnce()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-04-20T06:00:00Z").With("/readings/0", Farm.Reading(20, 20.2)));

        var test = await farm.TestAsync();

        Assert.Contains("scale-check-failed-later", test.Body.Codes("/sinceThen"));
        Assert.Equal(test.Bytes, (await service.GetAsync($"/v1/catch-tests/{test.Id}")).Bytes);
    }

    [Theory]
    [InlineData("/scale", null, "#/scale", "member-missing")]
    [InlineData("/readings", null, "#/readings", "member-missing")]
    [InlineData("/readings", "[]", "#/readings", "too-few")]
    [InlineData("/readings", "[ null ]", "#/readings/0", "member-missing")]
    [InlineData("/readings/0/known", null, "#/readings/0/known", "member-missing")]
    [InlineData("/readings/0/indicated", null, "#/readings/0/indicated", "member-missing")]
    [InlineData("/readings/0/known", """{ "value": 0, "unit": "kg" }""", "#/readings/0/known", "number-out-of-range")]
    [InlineData("/readings/0/known", """{ "value": 20, "unit": "L" }""", "#/readings/0/known", "unit-wrong-dimension")]
    [InlineData("/readings/0/indicated", """{ "value": 20.02, "unit": "lb" }""", "#/readings/0/indicated", "number-out-of-range")]
    [InlineData("/readings/0/indicated", """{ "value": 24.1, "unit": "kg" }""", "#/readings/0/indicated", "number-out-of-range")]
    [InlineData("/occurredAt", null, "#/occurredAt", "member-missing")]
    [InlineData("/recordedBy", null, "#/recordedBy", "member-missing")]
    public async Task Record_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = json is null ? farm.ScaleCheck.Without(pointer) : farm.ScaleCheck.With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/scale-checks", draft))).RefusedAsync(422, at, code);
    }

    // Such a check would say nothing, and no later test on the scale could be evaluated with it.
    [Theory]
    [InlineData(
        """{ "known": { "value": 20, "unit": "kg" }, "indicated": { "value": 20, "unit": "kg" }, "knownUncertainty": { "value": 5, "unit": "kg" } }"""
    )]
    [InlineData("""{ "known": { "value": 20, "unit": "g" }, "indicated": { "value": 20, "unit": "g" } }""")]
    public async Task Record_ReadingsThatSayNothingOfTheScale_AreRefused(string reading)
    {
        var farm = await Farm.CreateAsync(service);

        var reply = await service.WithoutTraceAsync(() =>
            service.PostAsync("/v1/scale-checks", farm.ScaleCheck.With("/readings/0", Draft.Json(reading)))
        );

        await reply.RefusedAsync(422, "#/readings", "number-out-of-range");
    }
}
