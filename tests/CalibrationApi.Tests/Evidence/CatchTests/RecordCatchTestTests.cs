using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>A catch test as evidence: evaluated, and kept with everything it was evaluated from.</summary>
public sealed class RecordCatchTestTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task Record_Test_IsEvaluatedAndKeptWhole()
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.CatchTest.With("/note", "wind from the west");

        var stored = (await service.PostAsync("/v1/catch-tests", draft)).Expect(201);

        var test = stored.Body;
        Assert.Equal($"/v1/catch-tests/{stored.Id}", stored.Header("Location"));
        Assert.True(JsonNode.DeepEquals(draft.Body, test.At("/entered")), stored.Text);
        Assert.Equal("2026-04-18T06:40:00+02:00", test.Word("/occurredAt"));
        Assert.Equal("2026-04-18", test.Word("/localDate"));
        Assert.Equal("2026-05-04T10:00:00Z", test.Word("/receivedAt"));
        Assert.Equal("A. Operator", test.Word("/entered/recordedBy"));
        Assert.Equal(test.Word("/engineVersion"), test.Word("/evaluation/engineVersion"));
        Assert.Equal("adopt", test.Word("/evaluation/verdict"));
        // 17.08 kg and 16.94 kg over 47 and 46.8 revolutions.
        Assert.Equal((17.08 + 16.94) / (47 + 46.8), test.Number("/evaluation/totalMassOverTotalRevolutions/value"), 1e-12);
        Assert.Equal("kg/rev", test.Word("/evaluation/massPerRevolution/unit"));
        Assert.Equal(stored.Bytes, (await service.GetAsync($"/v1/catch-tests/{stored.Id}")).Expect(200).Bytes);
    }

    // Storing adds nothing to the evaluation: the complete question, asked without storing, is answered the same.
    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    [InlineData("?units=metric")]
    public async Task Evaluation_OfTheResolvedQuestionAskedAgain_IsTheSame(string query)
    {
        var farm = await Farm.CreateAsync(service);
        await farm.CheckScaleAsync();
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var id = (await farm.TestAsync(test => test.With("/plan", plan))).Id;

        var stored = (await service.GetAsync($"/v1/catch-tests/{id}")).Expect(200);
        var asked = (await service.PostAsync($"/v1/calculations/catch-test{query}", new Draft(stored.Json["resolved"]!))).Expect(200);
        var read = (await service.GetAsync($"/v1/catch-tests/{id}{query}")).Expect(200);

        AssertSameQuantities("", asked.Json, read.Json["evaluation"]!);
    }

    [Fact]
    public async Task Record_WithAPlan_TakesTargetRateAreaAndPrecisionFromIt()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/wantedPrecision", Draft.Quantity(2, "%")));

        var test = (await farm.TestAsync(test => test.With("/plan", plan))).Body;

        Assert.Equal((90, "kg/ha"), test.Quantity("/resolved/targetRate"));
        Assert.Equal((48, "ha"), test.Quantity("/resolved/area"));
        Assert.Equal((2, "%"), test.Quantity("/resolved/wantedPrecision"));
        Assert.Equal("EUR", test.Word("/evaluation/effectIfValueInForceStays/totalCost/currency"));
        // Rate as the controller believes it times what the meter delivers more than it believes.
        var factor = test.Number("/evaluation/massPerRevolution/value") / 0.342;
        Assert.Equal(90 * factor, test.Number("/evaluation/effectIfValueInForceStays/appliedRate/value"), 1e-9);
        Assert.Equal(90 * 48 * (factor - 1), test.Number("/evaluation/effectIfValueInForceStays/massOverArea/value"), 1e-6);
    }

    [Fact]
    public async Task Record_WithAPlan_StartsFromItsPredictedValueUntilOneIsInForce()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/startValue", Draft.Quantity(0.35, "kg/rev")));

        var before = (await farm.TestAsync(test => test.With("/plan", plan))).Body;
        var otherElement = (await farm.TestAsync(test => test.With("/plan", plan).With("/element", "fine"))).Body;
        await farm.AdoptAsync();
        var after = (await farm.TestAsync(test => test.With("/plan", plan))).Body;

        Assert.Equal((0.35, "kg/rev"), before.Quantity("/resolved/startValue"));
        Assert.Null(otherElement.At("/resolved/startValue"));
        Assert.Null(after.At("/resolved/startValue"));
        Assert.Equal((0.342, "kg/rev"), after.Quantity("/resolved/valueInForce"));
    }

    [Fact]
    public async Task Record_WhatTheTestStatesItself_GoesBeforePlanAndHistory()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);

        var test = (
            await farm.TestAsync(test =>
                test.With("/plan", plan)
                    .With("/targetRate", Draft.Quantity(80, "kg/ha"))
                    .With("/valueInForce", Draft.Quantity(0.36, "kg/rev"))
                    .With("/repeatability", Draft.Quantity(0.7, "%"))
                    .With("/dayToDay", Draft.Quantity(0.5, "%"))
            )
        ).Body;

        Assert.Equal((80, "kg/ha"), test.Quantity("/resolved/targetRate"));
        Assert.Equal((0.36, "kg/rev"), test.Quantity("/resolved/valueInForce"));
        Assert.Equal((0.7, "%"), test.Quantity("/resolved/repeatability"));
        Assert.Equal((0.5, "%"), test.Quantity("/resolved/dayToDay"));
        Assert.Empty(test.At("/usedHistory")!.AsObject());
    }

    [Fact]
    public async Task Record_RecordsOfTheMachine_EnterTheQuestion()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters/0/elements/0/pocketsPerRevolution", 12));

        var test = (await farm.TestAsync()).Body;

        Assert.Equal("seeder, front", test.Word("/resolved/meter"));
        Assert.Equal("malting barley", test.Word("/resolved/product/name"));
        Assert.Equal((62, "kg/hL"), test.Quantity("/resolved/product/bulkDensity"));
        Assert.Equal((0.02, "kg"), test.Quantity("/resolved/scale/division"));
        Assert.Equal("III", test.Word("/resolved/scale/accuracyClass"));
        Assert.Equal((0.1, "rev"), test.Quantity("/resolved/counterResolution"));
        Assert.Equal(12, test.Number("/resolved/pocketsPerRevolution"));
        Assert.Equal("mass-per-revolution", test.Word("/evaluation/enter/form"));
    }

    [Fact]
    public async Task Record_LotWithADensityOfItsOwn_GoesBeforeTheProduct()
    {
        var farm = await Farm.CreateAsync(service);
        var lot = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/bulkDensity", Draft.Quantity(66, "kg/hL")));

        Assert.Equal((66, "kg/hL"), (await farm.TestAsync(test => test.With("/lot", lot))).Body.Quantity("/resolved/product/bulkDensity"));
    }

    // 1 lb is 0.453 592 37 kg exactly (NIST SP 811, B.8): what was read is kept as read, beside the canonical value.
    [Fact]
    public async Task Record_MassesInPounds_AreKeptAsEnteredBesideTheirKilograms()
    {
        var farm = await Farm.CreateAsync(service);
        var stored = await farm.TestAsync(test =>
            test.With("/catches/0/gross", Draft.Quantity(41.2, "lb"))
                .With("/catches/0/tare", Draft.Quantity(3.6, "lb"))
                .With("/catches/1/gross", Draft.Quantity(41, "lb"))
                .With("/catches/1/tare", Draft.Quantity(3.6, "lb"))
        );

        var (entered, unit, kilograms) = service.Read<(double, string, double)>(
            "select net_entered, net_unit, net_kilograms from catches where position = 0 and test = (select seq from catch_tests where id = @Id)",
            new { stored.Id }
        );

        Assert.Equal(37.6, entered, 1e-12);
        Assert.Equal("lb", unit);
        Assert.Equal(37.6 * 0.45359237, kilograms, 1e-12);
        Assert.Equal((41.2, "lb"), stored.Body.Quantity("/entered/catches/0/gross"));
        Assert.Equal("lb", stored.Body.Word("/evaluation/catches/0/net/unit"));
        Assert.Equal(37.6, stored.Body.Number("/evaluation/catches/0/net/value"));
    }

    [Fact]
    public async Task Record_RateInPoundsPerAcre_ReadsBackAsEntered()
    {
        var farm = await Farm.CreateAsync(service);
        var stored = await farm.TestAsync(test => test.With("/targetRate", Draft.Quantity(200, "lb/ac")));

        var read = (await service.GetAsync($"/v1/catch-tests/{stored.Id}")).Expect(200);
        var metric = (await service.GetAsync($"/v1/catch-tests/{stored.Id}?units=metric")).Expect(200);

        Assert.Equal((200, "lb/ac"), read.Body.Quantity("/entered/targetRate"));
        Assert.Equal((200, "lb/ac"), read.Body.Quantity("/resolved/targetRate"));
        Assert.Equal((200, "lb/ac"), metric.Body.Quantity("/entered/targetRate"));
        Assert.Equal("kg/ha", metric.Body.Word("/resolved/targetRate/unit"));
    }

    [Fact]
    public async Task Record_ExcludedCatch_StaysInTheRecordAndCountsForNothing()
    {
        var farm = await Farm.CreateAsync(service);
        var stored = await farm.TestAsync(test =>
            test.Add("/catches", Farm.Catch(12, 47)).With("/catches/2/excluded", new JsonObject { ["reason"] = "spilled" })
        );

        Assert.Equal(3, stored.Body.List("/evaluation/catches").Count);
        Assert.Equal("spilled", stored.Body.Word("/evaluation/catches/2/excludedBecause"));
        Assert.Equal(
            2,
            service.Read<long>(
                "select count(*) from catches where counted = 1 and test = (select seq from catch_tests where id = @Id)",
                new { stored.Id }
            )
        );
    }

    [Fact]
    public async Task Record_MostCatches_AreAllKept()
    {
        var farm = await Farm.CreateAsync(service);
        var catches = new JsonArray([.. Enumerable.Range(0, 50).Select(i => Farm.Catch(18.6 + 0.02 * (i % 7), 47))]);

        var stored = await farm.TestAsync(test => test.With("/catches", catches));
        var oneTooMany = await service.WithoutTraceAsync(() =>
            service.PostAsync("/v1/catch-tests", farm.CatchTest.With("/catches", catches.DeepClone()).Add("/catches", Farm.Catch(18.6, 47)))
        );

        Assert.Equal(50, stored.Body.List("/evaluation/catches").Count);
        await oneTooMany.RefusedAsync(422, "#/catches", "too-many");
    }

    [Fact]
    public async Task Record_NamesInAnyScript_GoThroughEvaluationAndLists()
    {
        var farm = await Farm.CreateAsync(service, machine =>
            machine.With("/name", "Сеялка «Восток»").With("/meters/0/position", "前 🌾").With("/meters/0/elements/0/name", "Zellenrad groß")
        );

        var stored = await farm.TestAsync(test =>
            test.With("/meter", "前 🌾").With("/element", "Zellenrad groß").With("/recordedBy", "Jürgen \"der Ältere\"")
        );

        Assert.Equal("Сеялка «Восток», 前 🌾", stored.Body.Word("/resolved/meter"));
        var line = Assert.Single(
            await service.ItemsAsync(
                $"/v1/history?machine={farm.Machine}&meter={Uri.EscapeDataString("前 🌾")}&element={Uri.EscapeDataString("Zellenrad groß")}"
            )
        );
        Assert.Equal("Jürgen \"der Ältere\"", line["recordedBy"]!.GetValue<string>());
    }

    // The longest names that records may have must not keep a test out.
    [Fact]
    public async Task Record_LongestNamesOfMachineAndMeter_AreTaken()
    {
        var (name, position) = (new string('m', 100), new string('p', 100));
        var farm = await Farm.CreateAsync(service, machine => machine.With("/name", name).With("/meters/0/position", position));

        var stored = await farm.TestAsync(test => test.With("/meter", position));

        Assert.Contains(position, stored.Body.Word("/resolved/meter"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Record_BodyOfTheGreatestSize_IsTakenAndOneByteMoreIsNot()
    {
        const int Most = 1024 * 1024;
        var farm = await Farm.CreateAsync(service);
        var text = farm.CatchTest.Text;

        var taken = await service.PostAsync("/v1/catch-tests", text + new string(' ', Most - Encoding.UTF8.GetByteCount(text)));
        var refused = await service.WithoutTraceAsync(() =>
            service.PostAsync("/v1/catch-tests", text + new string(' ', Most - Encoding.UTF8.GetByteCount(text) + 1))
        );

        taken.Expect(201);
        await refused.RefusedAsync(413, null, "body-too-large");
    }

    // Entered later than it happened, as after a day without network: it stands where it belongs by its own time.
    [Fact]
    public async Task Record_LateEntry_StandsAtItsOwnTimeInTheList()
    {
        var farm = await Farm.CreateAsync(service);
        var newer = await farm.TestAsync(test => test.With("/occurredAt", "2026-04-20T06:00:00Z"));
        var late = await farm.TestAsync(test => test.With("/occurredAt", "2026-04-10T06:00:00Z"));

        var ids = (await service.ItemsAsync($"/v1/catch-tests?machine={farm.Machine}")).Select(item => item["id"]!.GetValue<string>());

        Assert.Equal([newer.Id, late.Id], ids);
    }

    private static void AssertSameQuantities(string pointer, JsonNode? expected, JsonNode? actual)
    {
        switch (expected)
        {
            case JsonObject members:
                Assert.Equal(members.Select(member => member.Key), actual!.AsObject().Select(member => member.Key));
                foreach (var (name, member) in members)
                    AssertSameQuantities($"{pointer}/{name}", member, actual[name]);
                break;
            case JsonArray items:
                Assert.Equal(items.Count, actual!.AsArray().Count);
                for (var i = 0; i < items.Count; i++)
                    AssertSameQuantities($"{pointer}/{i}", items[i], actual[i]);
                break;
            case JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.Number:
                // A stored number was rounded to fifteen digits before it was converted.
                var number = value.GetValue<double>();
                Assert.True(Math.Abs(number - actual!.GetValue<double>()) <= 1e-12 * Math.Abs(number), $"{pointer}: {number}, {actual}");
                break;
            // Sentences stay in the units they were written in.
            case not null
                when pointer.EndsWith("/detail", StringComparison.Ordinal)
                    || pointer.EndsWith("/headline", StringComparison.Ordinal)
                    || pointer.EndsWith("/origin", StringComparison.Ordinal):
                break;
            default:
                Assert.True(JsonNode.DeepEquals(expected, actual), $"{pointer}: {expected}, {actual}");
                break;
        }
    }
}
