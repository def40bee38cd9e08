using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Records.Plans;

/// <summary>The catch plan of a stored plan, made of its records and the values in force.</summary>
public sealed class PlanCatchOfPlanTests(RecordService service) : IClassFixture<RecordService>
{
    // Composed by hand from the same records: what is stored adds nothing of its own.
    [Fact]
    public async Task CatchPlan_OfStoredRecords_IsThatOfTheSameQuestionAskedWhole()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync(
            "/v1/plans",
            farm.PlanDraft.With("/wantedPrecision", Draft.Quantity(3, "%")).With("/maximumRunTime", Draft.Quantity(300, "s"))
        );
        var question = Draft.Of(
            """
            {
              "groundSpeed": { "value": 9, "unit": "km/h" }, "wantedPrecision": { "value": 3, "unit": "%" }, "maximumRunTime": { "value": 300, "unit": "s" },
              "scale": { "division": { "value": 0.02, "unit": "kg" }, "accuracyClass": "III", "capacity": { "value": 50, "unit": "kg" } },
              "container": { "volume": { "value": 30, "unit": "L" }, "tare": { "value": 1.62, "unit": "kg" } },
              "meters": [ {
                "meter": "front", "product": "malting barley", "coveredWidth": { "value": 9, "unit": "m" }, "targetRate": { "value": 90, "unit": "kg/ha" },
                "bulkDensity": { "value": 62, "unit": "kg/hL" }, "valueInForce": { "value": 0.342, "unit": "kg/rev" },
                "speedLimits": { "minimum": { "value": 4, "unit": "rpm" }, "maximum": { "value": 90, "unit": "rpm" } } } ],
              "restorePoints": [ { "name": "side cover" } ]
            }
            """
        );

        foreach (var query in (string[])["", "?units=us"])
        {
            var asked = (await service.PostAsync($"/v1/calculations/catch-plan{query}", question)).Expect(200);
            var planned = (await service.WithoutTraceAsync(() => service.GetAsync($"/v1/plans/{plan}/catch-plan{query}"))).Expect(200);
            // There is no question here for an assumption to point into.
            var whole = asked.Json;
            foreach (var assumption in whole["assumptions"]!.AsArray())
                assumption!.AsObject().Remove("pointer");
            Assert.True(JsonNode.DeepEquals(whole, planned.Json), planned.Text);
        }
    }

    [Fact]
    public async Task CatchPlan_NothingInForce_TakesTheStartValueOrSaysThatItIsMissing()
    {
        var farm = await Farm.CreateAsync(service);
        var without = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var with = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/startValue", Draft.Quantity(0.30, "kg/rev")));

        var unknown = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/element", "fine"));
        await (await service.GetAsync($"/v1/plans/{unknown}/catch-plan")).RefusedAsync(422, "#/meters/0/startValue", "value-missing");
        var start = (await service.GetAsync($"/v1/plans/{with}/catch-plan")).Expect(200).Body;
        await farm.AdoptAsync();
        var inForce = (await service.GetAsync($"/v1/plans/{with}/catch-plan")).Expect(200).Body;

        // Less per revolution, and the meter has to turn faster for the same rate.
        Assert.Equal(0.342 / 0.30, start.Number("/meters/0/meterSpeed/value") / inForce.Number("/meters/0/meterSpeed/value"), 1e-9);
        Assert.Equal(
            inForce.Number("/meters/0/revolutions/value"),
            (await service.GetAsync($"/v1/plans/{without}/catch-plan")).Expect(200).Body.Number("/meters/0/revolutions/value")
        );
    }

    // The set-up says to go on with the catch plan, so the catch plan has to take the same value.
    [Fact]
    public async Task CatchPlan_NothingMeasuredYet_TakesTheValueOfTheSetUpAndSaysSo()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        var planned = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Body;

        Assert.Equal("ready", setUp.Word("/verdict"));
        var assumption = Assert.Single(planned.List("/assumptions"), one => one!["name"]!.GetValue<string>() == "startValue")!;
        Assert.Equal(setUp.Number("/meters/0/values/0/value"), assumption["value"]!["value"]!.GetValue<double>());
        Assert.Equal("front", assumption["meter"]!.GetValue<string>());
        var us = (await service.GetAsync($"/v1/plans/{plan}/catch-plan?units=us")).Expect(200).Body;
        Assert.Contains(us.List("/assumptions"), one =>
            one!["name"]!.GetValue<string>() == "startValue" && one["value"]!["unit"]!.GetValue<string>() == "lb/rev"
        );
    }

    [Fact]
    public async Task CatchPlan_AnotherValueAdopted_FollowsIt()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var before = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Body;

        await farm.AdoptAsync(adoption =>
            adoption
                .With("/typedIn", Draft.Quantity(0.684, "kg/rev"))
                .With("/occurredAt", "2026-04-01T08:00:00Z")
                .With(
                    "/despite",
                    new JsonArray(
                        new JsonObject { ["code"] = "typed-more-than-element-holds", ["reason"] = "another gear" },
                        new JsonObject { ["code"] = "typed-twice-or-half", ["reason"] = "another gear" }
                    )
                )
        );

        var after = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Body;
        // Twice as much per revolution: the meter turns half as fast.
        Assert.Equal(before.Number("/meters/0/meterSpeed/value") / 2, after.Number("/meters/0/meterSpeed/value"), 1e-9);
    }

    // A test that turned out wrong says nothing of how well the number is known.
    [Fact]
    public async Task CatchPlan_TestBehindTheValueSuperseded_ForgetsItsUncertainty()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.363, "kg/rev")));
        var byHand = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Text;
        var wrong = await farm.TestAsync();
        await farm.AdoptAsync(adoption =>
            adoption
                .With("/typedIn", Draft.Quantity(0.363, "kg/rev"))
                .With("/test", wrong.Id)
                .With("/occurredAt", "2026-04-18T08:00:00+02:00")
        );
        var tested = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Text;

        await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrong.Id)));

        Assert.NotEqual(byHand, tested);
        Assert.Equal(byHand, (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Text);
    }

    [Theory]
    [InlineData("/meters/0/meter", "middle", "meter-not-on-machine")]
    [InlineData("/meters/0/element", "small seed", "element-not-in-meter")]
    public async Task CatchPlan_MeterOrElementThatTheMachineHasNot_IsRefusedAtItsMember(string pointer, string wrong, string code)
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With(pointer, wrong));

        await (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).RefusedAsync(422, "#" + pointer, code);
    }

    [Theory]
    [InlineData("machines", "#/machine")]
    [InlineData("scales", "#/scale")]
    [InlineData("containers", "#/container")]
    [InlineData("products", "#/meters/0/product")]
    [InlineData("lots", "#/meters/0/lot")]
    public async Task CatchPlan_RetiredRecord_IsRefusedAtItsMember(string path, string pointer)
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        await farm.RetireAsync(
            path,
            path switch
            {
                "machines" => farm.Machine,
                "scales" => farm.Scale,
                "containers" => farm.Container,
                "products" => farm.Product,
                _ => farm.Lot,
            }
        );

        await (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).RefusedAsync(422, pointer, "record-retired");
    }

    [Fact]
    public async Task CatchPlan_LotOfAnotherProduct_IsRefused()
    {
        var (farm, other) = (await Farm.CreateAsync(service), await Farm.CreateAsync(service));
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/lot", other.Lot));

        await (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).RefusedAsync(422, "#/meters/0/lot", "records-at-odds");
    }

    [Fact]
    public async Task CatchPlan_UnknownPlan_IsNotFound() =>
        await (await service.GetAsync($"/v1/plans/{Farm.NoRecord}/catch-plan")).RefusedAsync(404, null, "not-found");
}
