using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Records.Plans;

/// <summary>What stands in the way of a plan, and what is never passed over in silence.</summary>
public sealed class SetUpObstaclesTests(RecordService service) : IClassFixture<RecordService>
{
    private const string Wheat = """{ "crop": "wheat", "soil": "medium", "moisture": "good", "region": "CA-MB" }""";

    [Theory]
    [InlineData("us", "lb/ac", "lb/rev", 90 * 0.892179121619709, 0.342 / 0.45359237)]
    [InlineData("metric", "kg/ha", "kg/rev", 90, 0.342)]
    [InlineData("as-asked", "kg/ha", "kg/rev", 90, 0.342)]
    public async Task SetUp_UnitsAskedFor_AreThoseOfStatedRatesAndValues(
        string units,
        string rateUnit,
        string valueUnit,
        double rate,
        double value
    )
    {
        var farm = await FieldAsync();
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);

        var setUp = await SetUpAsync(plan, $"?units={units}");

        Assert.Equal(rateUnit, setUp.Word("/meters/0/rate/unit"));
        Assert.Equal(rate, setUp.Number("/meters/0/rate/value"), 1e-9);
        Assert.Equal(valueUnit, setUp.Word("/meters/0/values/0/unit"));
        Assert.Equal(value, setUp.Number("/meters/0/values/0/value"), 1e-12);
    }

    [Fact]
    public async Task SetUp_FertilizerThatTheNutrientsDoNotNeed_NeedsNoValueAndLaysNothingWithTheSeed()
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 20)
            .With("/nutrientCredits", Draft.Json("""[ { "nutrient": "N", "amount": { "value": 30, "unit": "kg/ha" } } ]"""))
            .Without("/meters/1/startValue")
            .With("/meters/1/withSeed", true)
            .With("/seedRow", Draft.Json(Wheat));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal(0, setUp.Number("/meters/1/rate/value"));
        Assert.Empty(setUp.List("/missing"));
        Assert.False(setUp.Has("/seedRow"));
        Assert.Equal("ready", setUp.Word("/verdict"));
    }

    [Fact]
    public async Task SetUp_ProductOfUnknownAnalysisWithTheSeed_IsOpenAndGivesNoSum()
    {
        var farm = await FieldAsync();
        var unknown = await service.CreateAsync("/v1/products", Draft.Of("""{ "name": "grey granules" }"""));
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 5)
            .With("/meters/1/withSeed", true)
            .With("/seedRow", Draft.Json(Wheat))
            .With("/meters/0/product", unknown)
            .Without("/meters/0/lot")
            .With("/meters/0/withSeed", true);

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.False(setUp.Has("/seedRow"));
        Assert.Contains(setUp.List("/missing"), one => one!["pointer"]!.GetValue<string>() == "#/meters/0/product");
    }

    [Fact]
    public async Task SetUp_SeedSaidToBeWithTheSeed_NeedsNoAnalysis()
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 5)
            .With("/meters/1/withSeed", true)
            .With("/meters/0/withSeed", true)
            .With("/seedRow", Draft.Json(Wheat));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal("within", setUp.Word("/seedRow/verdict"));
        Assert.Equal("ready", setUp.Word("/verdict"));
    }

    [Theory]
    [InlineData(null, "#/seedRow")]
    [InlineData("""{ "crop": "wheat", "soil": "medium", "moisture": "good" }""", "#/seedRow/region")]
    public async Task SetUp_FertilizerWithTheSeedButNoSeedRowOrRegion_IsOpen(string? seedRow, string pointer)
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 5).With("/meters/1/withSeed", true);
        if (seedRow is not null)
            draft.With("/seedRow", Draft.Json(seedRow));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal(setUp.List("/obstacles").Count > 0 ? "blocked" : "incomplete", setUp.Word("/verdict"));
        Assert.Equal((pointer, "missing-value"), (setUp.Word("/missing/0/pointer"), setUp.Word("/missing/0/kind")));
    }

    // The published limit is for urea; nothing is held for potash, so somebody has to be asked. That forbids nothing, and a limit of
    // one's own settles it.
    [Fact]
    public async Task SetUp_NutrientWithTheSeedThatNoLimitJudges_IsOpenWithWhomToAskUntilALocalLimitDoes()
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("blend", "N", 20, "K2O", 20), 5)
            .With("/meters/1/withSeed", true)
            .With("/seedRow", Draft.Json(Wheat));
        var without = await service.CreateAsync("/v1/plans", draft);
        var with = await service.CreateAsync(
            "/v1/plans",
            draft.With(
                "/seedRow/localLimits",
                Draft.Json("""[ { "source": "the adviser of the county", "nutrient": "K2O", "rate": { "value": 15, "unit": "kg/ha" } } ]""")
            )
        );

        var open = await SetUpAsync(without);
        var settled = await SetUpAsync(with);

        Assert.Equal("within", open.Word("/seedRow/verdict"));
        Assert.Equal("incomplete", open.Word("/verdict"));
        Assert.Empty(open.List("/obstacles"));
        Assert.Equal(("#/seedRow/localLimits", "no-published-number"), (open.Word("/missing/0/pointer"), open.Word("/missing/0/kind")));
        Assert.Contains("Ask Manitoba Agriculture", open.Word("/missing/0/detail"), StringComparison.Ordinal);
        Assert.Equal("ready", settled.Word("/verdict"));
        Assert.Empty(settled.List("/obstacles"));
    }

    // Half the width each: the field gets 50 kg/ha of both together, and in no row do they add up.
    [Theory]
    [InlineData(4.5, 100, 46)]
    [InlineData(9, 50, 46)]
    public async Task SetUp_TwoMetersWithOneProduct_ShareTheRateByTheirWidths(double coveredWidth, double rate, double nitrogen)
    {
        var farm = await FieldAsync(machine =>
            machine
                .With("/meters/0/coveredWidth", Draft.Quantity(coveredWidth, "m"))
                .With("/meters/1/coveredWidth", Draft.Quantity(coveredWidth, "m"))
        );
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), nitrogen);
        draft
            .With("/meters/0", draft.At("/meters/1")!.DeepClone())
            .With("/meters/0/meter", "front")
            .With("/meters/0/element", "coarse")
            .With("/meters/0/withSeed", true)
            .With("/meters/1/withSeed", true)
            .With("/seedRow", Draft.Json(Wheat));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal(rate, setUp.Number("/meters/0/rate/value"), 1e-9);
        Assert.Equal(rate, setUp.Number("/meters/1/rate/value"), 1e-9);
        Assert.Equal(100, Assert.Single(setUp.List("/nutrients/products"))!["rate"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.Equal(46, setUp.Number("/seedRow/loads/0/rate/value"), 1e-9);
    }

    [Fact]
    public async Task SetUp_StatedRateOnHalfTheWidth_CountsForHalf()
    {
        var farm = await FieldAsync(machine => machine.With("/meters/0/coveredWidth", Draft.Quantity(4.5, "m")));
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 46)
            .With("/meters/0/product", await ProductAsync("starter", "N", 20))
            .Without("/meters/0/lot")
            .With("/meters/0/targetRate", Draft.Quantity(100, "kg/ha"))
            .With("/meters/0/startValue", Draft.Quantity(0.5, "kg/rev"));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        // 46 less half of 20, from a product of 46 %.
        Assert.Equal(36 / 0.46, setUp.Number("/meters/1/rate/value"), 1e-9);
    }

    [Fact]
    public async Task SetUp_MeterThatTheMachineNoLongerHas_LeavesTheNutrientsOpen()
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 46).With("/meters/0/meter", "sold");

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal(("#/meters/0/meter", "record-at-odds"), (setUp.Word("/missing/0/pointer"), setUp.Word("/missing/0/kind")));
        Assert.False(setUp.Has("/nutrients"));
        Assert.False(setUp.Has("/meters/0/rate"));
    }

    [Fact]
    public async Task SetUp_NutrientsThatNoProductBrings_AreOpen()
    {
        var farm = await FieldAsync();
        var plan = await service.CreateAsync(
            "/v1/plans",
            farm.PlanDraft.With("/nutrients", Draft.Json("""[ { "nutrient": "N", "amount": { "value": 50, "unit": "kg/ha" } } ]"""))
        );

        var setUp = await SetUpAsync(plan);

        Assert.Equal("incomplete", setUp.Word("/verdict"));
        Assert.Equal("#/nutrients", setUp.Word("/missing/0/pointer"));
        // The seed has its rate, so its catch can be planned all the same.
        (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200);
    }

    [Fact]
    public async Task SetUp_ProductsToChooseFromWithPricesOfTwoCurrencies_SaysThatTheCostIsNotLeast()
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("urea", "N", 46, price: "EUR"), 46);
        draft
            .With("/meters/0", draft.At("/meters/1")!.DeepClone())
            .With("/meters/0/meter", "front")
            .With("/meters/0/element", "coarse")
            .With("/meters/0/product", await ProductAsync("nitrate", "N", 33, price: "CZK"));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal("#/nutrients", setUp.Word("/missing/0/pointer"));
        Assert.Contains("least total mass", setUp.Word("/missing/0/detail"), StringComparison.Ordinal);
        Assert.Equal("met", setUp.Word("/nutrients/verdict"));
    }

    [Fact]
    public async Task SetUp_NewLotWithoutAnArea_NeedsNoneForItsVerdict()
    {
        var farm = await FieldAsync();
        await farm.AdoptAsync(adoption => adoption.With("/lot", farm.Lot));
        var other = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/name", "lot B"));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", farm.PlanDraft.Without("/area").With("/meters/0/lot", other)));

        Assert.Empty(setUp.List("/missing"));
        Assert.True(setUp.Has("/meters/0/newLot"));
    }

    // "coarse" is also how the name of the other element begins, whose own fault comes first.
    [Fact]
    public async Task SetUp_ElementNamedLikeTheBeginningOfAnother_TellsItsOwnFault()
    {
        var farm = await FieldAsync(machine =>
            machine.With(
                "/meters/0/elements",
                Draft.Json(
                    """[ { "name": "coarse wide", "displacementPerRevolution": { "value": 90, "unit": "L" } }, { "name": "coarse" } ]"""
                )
            )
        );

        var setUp = await SetUpAsync(
            await service.CreateAsync(
                "/v1/plans",
                farm.PlanDraft.With("/meters/0/targetRate", Draft.Quantity(400, "kg/ha")).With("/groundSpeed", Draft.Quantity(9, "km/h"))
            )
        );

        Assert.Equal("front", setUp.Word("/obstacles/0/meter"));
        Assert.StartsWith("coarse: 400 kg/ha at 9 km/h takes", setUp.Word("/obstacles/0/detail"), StringComparison.Ordinal);
    }

    // At 400 kg/ha the meter cannot deliver; at 1 kg/ha it only turns unevenly, and seed that is killed is worse.
    [Theory]
    [InlineData(400, "front: coarse: 400 kg/ha at 9 km/h takes")]
    [InlineData(1, "Above the published limit for wheat")]
    public async Task SetUp_SeveralThingsWrong_LeadsWithTheWorstAndCountsTheOthers(double rate, string worst)
    {
        var farm = await FieldAsync();
        var draft = Fed(farm, await ProductAsync("urea", "N", 46), 46)
            .With("/meters/1/withSeed", true)
            .Without("/meters/1/startValue")
            .With("/seedRow", Draft.Json(Wheat))
            .With("/meters/0/targetRate", Draft.Quantity(rate, "kg/ha"))
            .With("/groundSpeed", Draft.Quantity(9, "km/h"));

        var setUp = await SetUpAsync(await service.CreateAsync("/v1/plans", draft));

        Assert.Equal(2, setUp.List("/obstacles").Count);
        Assert.StartsWith(worst, setUp.Word("/headline"), StringComparison.Ordinal);
        Assert.EndsWith(
            "1 thing is more in the way, and 1 thing is still missing; see obstacles and missing.",
            setUp.Word("/headline"),
            StringComparison.Ordinal
        );
    }

    private async Task<Farm> FieldAsync(Action<Draft>? machine = null)
    {
        var farm = await Farm.CreateAsync(service, draft =>
        {
            draft.With("/rowSpacing", Draft.Quantity(9, "in")).With("/seedRowWidth", Draft.Quantity(1, "in"));
            machine?.Invoke(draft);
        });
        await farm.AdoptAsync();
        return farm;
    }

    private async Task<Answer> SetUpAsync(string plan, string query = "") =>
        (await service.GetAsync($"/v1/plans/{plan}/set-up{query}")).Expect(200).Body;

    private static Draft Fed(Farm farm, string fertilizer, double nitrogen) =>
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
            .With("/nutrients", new JsonArray(new JsonObject { ["nutrient"] = "N", ["amount"] = Draft.Quantity(nitrogen, "kg/ha") }));

    private Task<string> ProductAsync(
        string name,
        string nutrient,
        double share,
        string? other = null,
        double otherShare = 0,
        string? price = null
    )
    {
        var analysis = new JsonArray(new JsonObject { ["nutrient"] = nutrient, ["share"] = Draft.Quantity(share, "%") });
        if (other is not null)
            analysis.Add(new JsonObject { ["nutrient"] = other, ["share"] = Draft.Quantity(otherShare, "%") });
        var product = new Draft(
            new JsonObject
            {
                ["name"] = name,
                ["analysis"] = analysis,
                ["nitrogenForm"] = "urea",
            }
        );
        if (price is not null)
            product.With(
                "/price",
                new JsonObject
                {
                    ["value"] = 400,
                    ["currency"] = price,
                    ["per"] = "t",
                }
            );
        return service.CreateAsync("/v1/products", product);
    }
}
