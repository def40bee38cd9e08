using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.Adoptions;

/// <summary>A value typed into a controller, kept with who, why and from which test.</summary>
public sealed class AdoptValueTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task Adopt_StatedByHand_IsKeptAsEntered()
    {
        var farm = await Farm.CreateAsync(service);

        var adopted = (await service.PostAsync("/v1/adoptions", farm.Adoption)).Expect(201);

        Assert.Equal($"/v1/adoptions/{adopted.Id}", adopted.Header("Location"));
        Assert.True(JsonNode.DeepEquals(farm.Adoption.Body, adopted.Body.At("/entered")));
        Assert.Equal((0.342, "kg/rev"), adopted.Body.Quantity("/massPerRevolution"));
        Assert.Equal("2026-03-02T08:00:00+01:00", adopted.Body.Word("/occurredAt"));
        Assert.Equal("2026-03-02", adopted.Body.Word("/localDate"));
        Assert.Equal("2026-05-04T10:00:00Z", adopted.Body.Word("/receivedAt"));
        Assert.Empty(adopted.Body.List("/findings"));
        Assert.Equal(adopted.Bytes, (await service.GetAsync($"/v1/adoptions/{adopted.Id}")).Bytes);
    }

    // The number in each form, as a person computes it from 0.36 kg per revolution.
    [Theory]
    [InlineData("mass-per-revolution", "kg/rev", 3, 0.36)]
    [InlineData("mass-per-revolution", "g/rev", 0, 360)]
    // 25 revolutions.
    [InlineData("mass-per-revolutions", "kg", 2, 9)]
    // 360 pulses per revolution.
    [InlineData("mass-per-pulse", "g", 3, 1.0)]
    // 62 kg/hL is 0.62 kg/L: 0.36 kg are 0.5806 L.
    [InlineData("volume-per-revolution", "L", 9, 0.580645161)]
    // 30 revolutions per minute.
    [InlineData("mass-per-time", "kg/min", 1, 10.8)]
    public async Task Adopt_NumberInTheFormOfTheController_IsItsMassPerRevolution(string form, string unit, int decimals, double typed)
    {
        var farm = await FarmOfFormAsync(form, unit, decimals);

        var adopted = await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(typed, unit)).With("/meterSpeed", Draft.Quantity(30, "rpm"))
        );

        // A value in force keeps its own unit where that is a mass per revolution.
        Assert.Equal(unit == "g/rev" ? 360 : 0.36, adopted.Body.Number("/massPerRevolution/value"), 1e-9);
        Assert.Equal(unit == "g/rev" ? unit : "kg/rev", adopted.Body.Word("/massPerRevolution/unit"));
        Assert.Equal((typed, unit), new Answer(Assert.Single(await farm.InForceAsync())!).Quantity("/typedIn"));
    }

    // What a test gives to type in, typed in, is what the test says the controller will then use.
    [Theory]
    [InlineData("mass-per-revolution", "kg/rev", 3)]
    [InlineData("mass-per-revolutions", "kg", 2)]
    [InlineData("mass-per-pulse", "g", 3)]
    [InlineData("volume-per-revolution", "L", 3)]
    [InlineData("mass-per-time", "kg/min", 2)]
    public async Task Adopt_NumberThatATestGave_IsWhatTheTestSaidWouldResult(string form, string unit, int decimals)
    {
        var farm = await FarmOfFormAsync(form, unit, decimals);
        var test = (await farm.TestAsync(test => test.With("/meterSpeed", Draft.Quantity(30, "rpm")))).Body;
        Assert.Equal(form, test.Word("/evaluation/enter/form"));

        var adopted = (
            await farm.AdoptAsync(adoption =>
                adoption
                    .With("/test", test.Word("/id"))
                    .With("/typedIn", Draft.Quantity(test.Number("/evaluation/enter/value"), test.Word("/evaluation/enter/unit")))
                    .With("/meterSpeed", Draft.Quantity(30, "rpm"))
                    .With("/occurredAt", "2026-04-18T08:00:00+02:00")
            )
        ).Body;

        Assert.Equal(test.Number("/evaluation/enter/resultingMassPerRevolution/value"), adopted.Number("/massPerRevolution/value"), 1e-12);
        Assert.Empty(adopted.List("/findings"));
    }

    [Theory]
    [InlineData("mass-per-revolution", "kg/rev", "kg", "#/typedIn", "unit-wrong-dimension")]
    [InlineData("mass-per-revolutions", "kg", "kg/min", "#/typedIn", "unit-wrong-dimension")]
    [InlineData("mass-per-time", "kg/min", "kg/min", "#/meterSpeed", "member-missing")]
    [InlineData("mass-per-revolution", "kg/rev", "furlong", "#/typedIn", "unit-unknown")]
    [InlineData("mass-per-revolution", "kg/rev", "bu", "#/typedIn", "unit-ambiguous")]
    public async Task Adopt_UnitThatTheFormDoesNotTake_IsRefused(string form, string unit, string typedUnit, string pointer, string code)
    {
        var farm = await FarmOfFormAsync(form, unit, 3);

        await RefusedAsync(farm.Adoption.With("/typedIn", Draft.Quantity(1, typedUnit)), pointer, code);
    }

    [Fact]
    public async Task Adopt_NumberWithoutAUnit_IsRefused()
    {
        var farm = await Farm.CreateAsync(service);

        await RefusedAsync(farm.Adoption.With("/typedIn", new JsonObject { ["value"] = 0.342 }), "#/typedIn", "unit-missing");
        await RefusedAsync(farm.Adoption.With("/typedIn", new JsonObject { ["unit"] = "kg/rev" }), "#/typedIn/value", "member-missing");
    }

    [Fact]
    public async Task Adopt_VolumeWithoutADensity_IsRefused()
    {
        var farm = await FarmOfFormAsync("volume-per-revolution", "L", 3);
        var product = await service.CreateAsync("/v1/products", Farm.ProductDraft.Without("/bulkDensity"));

        var fault = await RefusedAsync(
            farm.Adoption.With("/typedIn", Draft.Quantity(0.58, "L")).With("/product", product).Without("/lot"),
            "#/product",
            "density-missing"
        );

        Assert.Contains("Add it", fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Adopt_VolumeOfALotWithADensityOfItsOwn_TakesThat()
    {
        var farm = await FarmOfFormAsync("volume-per-revolution", "L", 3);
        var lot = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product).With("/bulkDensity", Draft.Quantity(70, "kg/hL")));

        var adopted = await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.5, "L")).With("/lot", lot));

        Assert.Equal(0.35, adopted.Body.Number("/massPerRevolution/value"), 1e-12);
    }

    // No meter delivers a tonne per revolution: a slip here would keep every later test out.
    [Theory]
    [InlineData(0, "kg/rev")]
    [InlineData(-0.342, "kg/rev")]
    [InlineData(1001, "kg/rev")]
    [InlineData(1e9, "kg/rev")]
    public async Task Adopt_NumberThatNoMeterDelivers_IsRefused(double value, string unit)
    {
        var farm = await Farm.CreateAsync(service);

        await RefusedAsync(farm.Adoption.With("/typedIn", Draft.Quantity(value, unit)), "#/typedIn/value", "number-out-of-range");
    }

    [Fact]
    public async Task Adopt_NumberThatNoMeterDeliversThroughItsForm_IsRefused()
    {
        var farm = await FarmOfFormAsync("mass-per-pulse", "g", 3);

        await RefusedAsync(farm.Adoption.With("/typedIn", Draft.Quantity(5, "t")), "#/typedIn/value", "number-out-of-range");
    }

    [Theory]
    [InlineData("/machine")]
    [InlineData("/meter")]
    [InlineData("/element")]
    [InlineData("/product")]
    [InlineData("/typedIn")]
    [InlineData("/reason")]
    [InlineData("/occurredAt")]
    [InlineData("/recordedBy")]
    public async Task Adopt_WithoutAMemberItNeeds_IsRefused(string member)
    {
        var farm = await Farm.CreateAsync(service);

        await RefusedAsync(farm.Adoption.Without(member), "#" + member, "member-missing");
    }

    [Theory]
    [InlineData("/meter", "rear")]
    [InlineData("/element", "fine")]
    [InlineData("/setting", "low")]
    public async Task Adopt_TestOfAnotherSeries_IsRefused(string member, string other)
    {
        var farm = await Farm.CreateAsync(service);
        var test = (await farm.TestAsync()).Id;
        var draft = farm.Adoption.With("/test", test).With(member, other);
        if (other == "rear")
            draft.With("/element", "small seed");

        await RefusedAsync(draft, "#/test", "records-at-odds");
    }

    [Fact]
    public async Task Adopt_SupersededTest_IsRefused()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = (await farm.TestAsync()).Id;
        var right = (await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrong)))).Id;

        await RefusedAsync(farm.Adoption.With("/test", wrong), "#/test", "already-superseded");
        await farm.AdoptAsync(adoption => adoption.With("/test", right).With("/typedIn", Draft.Quantity(0.363, "kg/rev")));
    }

    [Fact]
    public async Task Adopt_OtherNumberThanTheTestGave_IsWarnedOf()
    {
        var farm = await Farm.CreateAsync(service);
        var test = (await farm.TestAsync()).Id;

        var other = await farm.AdoptAsync(adoption => adoption.With("/test", test).With("/typedIn", Draft.Quantity(0.36, "kg/rev")));
        var same = await farm.AdoptAsync(adoption => adoption.With("/test", test).With("/typedIn", Draft.Quantity(0.363, "kg/rev")));
        var sameInGrams = await farm.AdoptAsync(adoption => adoption.With("/test", test).With("/typedIn", Draft.Quantity(363, "g/rev")));
        var otherInGrams = await farm.AdoptAsync(adoption => adoption.With("/test", test).With("/typedIn", Draft.Quantity(360, "g/rev")));

        Assert.Equal(["adopted-otherwise"], other.Body.Codes("/findings"));
        Assert.Empty(same.Body.List("/findings"));
        Assert.Empty(sameInGrams.Body.List("/findings"));
        Assert.Equal(["adopted-otherwise"], otherInGrams.Body.Codes("/findings"));
    }

    // Where the controller's form is not described, only what the test measured says what may be typed in.
    [Fact]
    public async Task Adopt_NumberOfATestOnAMeterWithoutAForm_IsTakenWithinItsUncertainty()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.Without("/meters/0/controllerEntry"));
        var test = (await farm.TestAsync()).Id;

        await RefusedAsync(
            farm.Adoption.With("/test", test).With("/typedIn", Draft.Quantity(0.38, "kg/rev")),
            "#/typedIn/value",
            "typed-off-test"
        );
        var rounded = await farm.AdoptAsync(adoption => adoption.With("/test", test).With("/typedIn", Draft.Quantity(0.363, "kg/rev")));

        Assert.Empty(rounded.Body.List("/findings"));
    }

    [Fact]
    public async Task Adopt_TestThatDidNotSayAdopt_IsWarnedOf()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.Without("/meters/0/elements/0/displacementPerRevolution"));
        var test = await farm.TestAsync(test => test.With("/catches", Farm.Catches(0.30, 0.40, 0.50)));
        Assert.Equal("investigate", test.Body.Word("/evaluation/verdict"));

        var adopted = await farm.AdoptAsync(adoption => adoption.With("/test", test.Id).With("/typedIn", Draft.Quantity(0.4, "kg/rev")));

        var finding = Assert.Single(adopted.Body.List("/findings"))!;
        Assert.Equal("adopted-otherwise", finding["code"]!.GetValue<string>());
        Assert.Contains("investigate", finding["detail"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private async Task<Farm> FarmOfFormAsync(string form, string unit, int decimals) => await Farm.CreateAsync(service, machine => machine
                .With(
                    "/meters/0/controllerEntry",
                    new JsonObject
                    {
                        ["form"] = form,
                        ["unit"] = unit,
                        ["decimals"] = decimals,
                        ["revolutions"] = form == "mass-per-revolutions" ? 25 : null,
                    }
                )
                .With("/meters/0/pulsesPerRevolution", Draft.Quantity(360, "pulses/rev")));

    private async Task<Fault> RefusedAsync(Draft draft, string pointer, string code) =>
        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/adoptions", draft))).RefusedAsync(422, pointer, code);
}
