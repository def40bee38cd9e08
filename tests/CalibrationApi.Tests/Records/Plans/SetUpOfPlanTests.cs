using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Records.Plans;

/// <summary>Rates and set-up of a stored plan: what its own calculations would answer, and what is still open.</summary>
public sealed class SetUpOfPlanTests(RecordService service) : IClassFixture<RecordService>
{
    private const string Stand = """{ "plants": { "value": 300, "unit": "/m2" }, "emergence": { "value": 85, "unit": "%" } }""";

    [Fact]
    public async Task SetUp_StatedRateAndValueInForce_IsThatOfTheSameQuestionsAskedByThemselves()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/fieldEfficiency", Draft.Quantity(65, "%")));
        var question = Draft.Of(
            """
            {
              "coveredWidth": { "value": 9, "unit": "m" }, "workingWidth": { "value": 9, "unit": "m" }, "fieldEfficiency": { "value": 65, "unit": "%" },
              "area": { "value": 48, "unit": "ha" }, "rates": [ { "value": 90, "unit": "kg/ha" } ], "groundSpeeds": [ { "value": 9, "unit": "km/h" } ],
              "speedLimits": { "minimum": { "value": 4, "unit": "rpm" }, "maximum": { "value": 90, "unit": "rpm" } },
              "elements": [ { "name": "coarse", "massPerRevolution": { "value": 0.342, "unit": "kg/rev" } } ]
            }
            """
        );

        foreach (var query in (string[])["", "?units=us"])
        {
            var asked = (await service.PostAsync($"/v1/calculations/meter-speed{query}", question)).Expect(200);
            var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up{query}")).Expect(200);
            Assert.True(JsonNode.DeepEquals(asked.Json, setUp.Body.At("/meters/0/meterSpeed")), setUp.Text);
            Assert.Equal("ready", setUp.Body.Word("/verdict"));
        }

        var answer = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Body;
        Assert.Equal((0.342, "kg/rev"), answer.Quantity("/meters/0/values/0"));
        Assert.Equal("value-in-force", answer.Word("/meters/0/values/0/from"));
        Assert.Equal("target-rate", answer.Word("/meters/0/rateFrom"));
        Assert.Equal("lot A", answer.Word("/meters/0/lot"));
    }

    [Fact]
    public async Task SetUp_StandWanted_GivesTheSeedingRateOfItsLot()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/rowSpacing", Draft.Quantity(15, "cm")));
        await farm.AdoptAsync();
        var lot = await service.CreateAsync(
            "/v1/lots",
            Farm.LotDraft(farm.Product).With("/germination", Draft.Quantity(96, "%")).With("/purity", Draft.Quantity(99, "%"))
        );
        var plan = await PlanAsync(farm, Stand, lot);
        var question = Draft.Of(
            """
            {
              "targetStand": { "value": 300, "unit": "/m2" }, "thousandKernelMass": { "value": 45, "unit": "g/1000" }, "germination": { "value": 96, "unit": "%" },
              "emergence": { "value": 85, "unit": "%" }, "purity": { "value": 99, "unit": "%" }, "rowSpacing": { "value": 15, "unit": "cm" },
              "area": { "value": 48, "unit": "ha" }, "price": { "value": 420, "currency": "EUR", "per": "t" }
            }
            """
        );

        var asked = (await service.PostAsync("/v1/calculations/seeding-rate", question)).Expect(200);
        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200);

        Assert.True(JsonNode.DeepEquals(asked.Json, setUp.Body.At("/meters/0/seedingRate")), setUp.Text);
        Assert.Equal(asked.Body.Quantity("/rate"), setUp.Body.Quantity("/meters/0/rate"));
        Assert.Equal("stand", setUp.Body.Word("/meters/0/rateFrom"));
        // 300 x 45 / (0.96 x 0.85 x 0.99) grams on a hectare of 10 000 m2.
        Assert.Equal(300 * 45 / (0.96 * 0.85 * 0.99) / 100, setUp.Body.Number("/meters/0/rate/value"), 1e-9);
    }

    [Fact]
    public async Task CatchPlanAndCatchTest_StandWanted_TakeTheRateThatFollows()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await PlanAsync(
            farm,
            """{ "plants": { "value": 300, "unit": "/m2" }, "survival": { "value": 75, "unit": "%" } }""",
            farm.Lot
        );
        var rate = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body.Number("/meters/0/rate/value");
        var stated = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/targetRate", Draft.Quantity(rate, "kg/ha")));

        var catchPlan = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200);
        var test = await farm.TestAsync(test => test.With("/plan", plan));

        Assert.Equal(180, rate, 1e-9);
        Assert.True(
            JsonNode.DeepEquals((await service.GetAsync($"/v1/plans/{stated}/catch-plan")).Expect(200).Json, catchPlan.Json),
            catchPlan.Text
        );
        Assert.Equal(
            rate * (1 + test.Body.Number("/evaluation/change/value") / 100),
            test.Body.Number("/evaluation/effectIfValueInForceStays/appliedRate/value"),
            1e-9
        );
    }

    [Theory]
    [InlineData("/thousandKernelMass", "thousand-kernel mass")]
    [InlineData("/germination", "germination")]
    public async Task SetUp_LotThatLacksAValue_NamesItAndAnswersTheRest(string member, string named)
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var lot = Farm.LotDraft(farm.Product).With("/germination", Draft.Quantity(96, "%"));
        var plan = await PlanAsync(farm, Stand, await service.CreateAsync("/v1/lots", lot.Without(member)));

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Equal("blocked", setUp.Word("/verdict"));
        Assert.Equal(("#/meters/0/lot", "missing-value"), (setUp.Word("/missing/0/pointer"), setUp.Word("/missing/0/kind")));
        Assert.Contains(named, setUp.Word("/missing/0/detail"), StringComparison.Ordinal);
        Assert.Equal(0.342, setUp.Number("/meters/0/values/0/value"));
        Assert.False(setUp.Has("/meters/0/rate"));
        // A catch cannot be planned without a rate.
        await (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).RefusedAsync(422, "#/meters/0/lot", "value-missing");
    }

    [Fact]
    public async Task SetUp_NothingInForce_PredictsByVolumeAndSaysSo()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var expected = (
            await service.PostAsync(
                "/v1/calculations/volume-check",
                Draft.Of("""{ "displacement": { "value": 0.6, "unit": "L" }, "bulkDensity": { "value": 62, "unit": "kg/hL" } }""")
            )
        )
            .Expect(200)
            .Body;

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Equal("displacement", setUp.Word("/meters/0/values/0/from"));
        Assert.Equal(expected.Number("/expected/value"), setUp.Number("/meters/0/values/0/value"));
        // The fine element has no displacement, so nothing is said of it.
        Assert.Single(setUp.List("/meters/0/values"));
    }

    [Fact]
    public async Task SetUp_NothingKnownOfTheElement_IsOpen()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/element", "fine"));

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Equal(("#/meters/0/startValue", "missing-value"), (setUp.Word("/missing/0/pointer"), setUp.Word("/missing/0/kind")));
        Assert.Contains("still missing", setUp.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SetUp_ElementTooSlowForTheRate_LeadsTheHeadline()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/targetRate", Draft.Quantity(400, "kg/ha")));

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Equal("blocked", setUp.Word("/verdict"));
        Assert.StartsWith("front: coarse: 400 kg/ha at 9 km/h takes", setUp.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SetUp_NutrientsWanted_GivesTheFertilizerItsRate()
    {
        var (farm, urea) = await WithFertilizerAsync();
        var plan = await service.CreateAsync("/v1/plans", Nourished(farm, urea));

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Equal("nutrients", setUp.Word("/meters/1/rateFrom"));
        // 69 kg N from a product of 46 %, of which 23 kg are there already.
        Assert.Equal(100, setUp.Number("/meters/1/rate/value"), 1e-9);
        Assert.Equal("met", setUp.Word("/nutrients/verdict"));
    }

    [Fact]
    public async Task SetUp_FertilizerWithoutAnalysis_IsOpen()
    {
        var (farm, _) = await WithFertilizerAsync();
        var unknown = await service.CreateAsync("/v1/products", Draft.Of("""{ "name": "grey granules" }"""));
        var plan = await service.CreateAsync("/v1/plans", Nourished(farm, unknown));

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Contains(setUp.List("/missing"), one => one!["pointer"]!.GetValue<string>() == "#/meters/1/product");
        await (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).ProblemAsync(422);
    }

    [Fact]
    public async Task SetUp_FertilizerWithTheSeed_IsComparedWithPublishedLimits()
    {
        var (farm, urea) = await WithFertilizerAsync();
        var draft = Nourished(farm, urea)
            .With("/meters/1/withSeed", true)
            .With("/seedRow", Draft.Json("""{ "crop": "wheat", "soil": "medium", "moisture": "good", "region": "CA-MB" }"""));
        var plan = await service.CreateAsync("/v1/plans", draft);
        var asked = (
            await service.PostAsync(
                "/v1/calculations/seed-row-limit",
                Draft.Of(
                    """
                    {
                      "crop": "wheat", "soil": "medium", "moisture": "good", "region": "CA-MB", "rowSpacing": { "value": 10, "unit": "in" }, "seedRowWidth": { "value": 2, "unit": "in" },
                      "opener": "spoon", "products": [ { "name": "urea", "analysis": [ { "nutrient": "N", "share": { "value": 46, "unit": "%" } } ], "nitrogenForm": "urea", "rates": [ { "value": 100, "unit": "kg/ha" } ] } ]
                    }
                    """
                )
            )
        ).Expect(200);

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200);

        Assert.Equal(asked.Body.Word("/verdict"), setUp.Body.Word("/seedRow/verdict"));
        Assert.Equal("above", setUp.Body.Word("/seedRow/verdict"));
        Assert.StartsWith(setUp.Body.Word("/seedRow/headline"), setUp.Body.Word("/headline"), StringComparison.Ordinal);
        Assert.Equal("blocked", setUp.Body.Word("/verdict"));
        Assert.NotEmpty(setUp.Body.List("/cautions"));
    }

    [Fact]
    public async Task SetUp_SeedRowOfAMachineWithoutOpeners_IsOpenAndGivesNoLimit()
    {
        var farm = await Farm.CreateAsync(service);
        var urea = await UreaAsync();
        var draft = Nourished(farm, urea)
            .With("/meters/1/withSeed", true)
            .With("/seedRow", Draft.Json("""{ "crop": "wheat", "soil": "medium", "moisture": "good" }"""));
        var plan = await service.CreateAsync("/v1/plans", draft);

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Contains(setUp.List("/missing"), one => one!["pointer"]!.GetValue<string>() == "#/machine");
        Assert.False(setUp.Has("/seedRow"));
    }

    [Fact]
    public async Task SetUp_OtherLotThanTheValueInForce_SaysWhatItMeans()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync(adoption => adoption.With("/lot", farm.Lot));
        var heavier = await service.CreateAsync(
            "/v1/lots",
            Farm.LotDraft(farm.Product)
                .With("/name", "lot B")
                .With("/thousandKernelMass", Draft.Quantity(52, "g/1000"))
                .With("/treatment", "none")
        );
        var same = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var other = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/lot", heavier));

        var before = (await service.GetAsync($"/v1/plans/{same}/set-up")).Expect(200).Body;
        var after = (await service.GetAsync($"/v1/plans/{other}/set-up")).Expect(200).Body;

        Assert.False(before.Has("/meters/0/newLot"));
        Assert.Equal("test-now", after.Word("/meters/0/newLot/verdict"));
        Assert.Equal("blocked", after.Word("/verdict"));
    }

    [Fact]
    public async Task SetUp_LotRetiredSince_IsOpenAndTheRestIsAnswered()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var lot = (await service.PostAsync("/v1/lots", Farm.LotDraft(farm.Product))).Expect(201);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/lot", lot.Id));
        (await service.PutAsync($"/v1/lots/{lot.Id}", Farm.LotDraft(farm.Product).With("/retired", true), lot.ETag)).Expect(200);

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.Equal(("#/meters/0/lot", "record-at-odds"), (setUp.Word("/missing/0/pointer"), setUp.Word("/missing/0/kind")));
        Assert.True(setUp.Has("/meters/0/meterSpeed"));
    }

    [Fact]
    public async Task SetUp_NoPublishedLimitForThePlace_IsOpenAndBlocksNothing()
    {
        var (farm, urea) = await WithFertilizerAsync();
        var plan = await service.CreateAsync(
            "/v1/plans",
            Nourished(farm, urea)
                .With("/meters/1/withSeed", true)
                .With("/seedRow", Draft.Json("""{ "crop": "barley", "soil": "medium", "moisture": "good", "region": "elsewhere" }"""))
        );

        var setUp = (await service.GetAsync($"/v1/plans/{plan}/set-up")).Expect(200).Body;

        Assert.StartsWith(
            "One thing is still missing: No published limit is held for what lies with the seed of barley",
            setUp.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "ask the agriculture department or the extension service of your region",
            setUp.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.Empty(setUp.List("/obstacles"));
        Assert.Equal("no-published-number", setUp.Word("/missing/0/kind"));
    }

    [Fact]
    public async Task SetUp_UnknownPlan_IsNotFound() =>
        await (await service.GetAsync($"/v1/plans/{Farm.NoRecord}/set-up")).RefusedAsync(404, null, "not-found");

    private async Task<(Farm Farm, string Urea)> WithFertilizerAsync()
    {
        var farm = await Farm.CreateAsync(service, machine =>
            machine.With("/rowSpacing", Draft.Quantity(10, "in")).With("/seedRowWidth", Draft.Quantity(2, "in")).With("/opener", "spoon")
        );
        await farm.AdoptAsync();
        return (farm, await UreaAsync());
    }

    private Task<string> UreaAsync() =>
        service.CreateAsync(
            "/v1/products",
            Draft.Of(
                """{ "name": "urea", "analysis": [ { "nutrient": "N", "share": { "value": 46, "unit": "%" } } ], "nitrogenForm": "urea" }"""
            )
        );

    private static Draft Nourished(Farm farm, string fertilizer) =>
        farm
            .PlanDraft.Add(
                "/meters",
                new JsonObject
                {
                    ["meter"] = "rear",
                    ["element"] = "small seed",
                    ["product"] = fertilizer,
                    ["startValue"] = Draft.Quantity(0.9, "kg/rev"),
                }
            )
            .With("/nutrients", Draft.Json("""[ { "nutrient": "N", "amount": { "value": 69, "unit": "kg/ha" } } ]"""))
            .With(
                "/nutrientCredits",
                Draft.Json("""[ { "nutrient": "N", "amount": { "value": 23, "unit": "kg/ha" }, "origin": "soil" } ]""")
            );

    private async Task<string> PlanAsync(Farm farm, string stand, string lot) =>
        await service.CreateAsync(
            "/v1/plans",
            farm.PlanDraft.Without("/meters/0/targetRate").With("/meters/0/lot", lot).With("/meters/0/stand", Draft.Json(stand))
        );
}
