using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.Adoptions;

/// <summary>A number that nobody measured beside what the records have of its meter: the last test and the other products.</summary>
public sealed class TypedValueByHandTests(RecordService service) : IClassFixture<RecordService>
{
    // 0.363 measured, nothing in force: U and 10 % around it.
    [Theory]
    [InlineData(0.38, null)]
    [InlineData(0.47, "typed-off-last-test")]
    [InlineData(3.63, "typed-decimal-slip")]
    [InlineData(0.8, "typed-in-other-unit")]
    public async Task Adopt_FirstNumberByHand_IsComparedWithTheLastTest(double typed, string? code)
    {
        var farm = await FarmAsync();
        await farm.TestAsync();

        await AnsweredAsync(
            farm.Adoption.With("/typedIn", Draft.Quantity(typed, "kg/rev")).With("/occurredAt", "2026-04-18T12:00:00+02:00"),
            code
        );
    }

    // 0.60 kg/rev of a product of 78 kg/hL lets 0.477 be expected at 62 kg/hL.
    [Theory]
    [InlineData(0.46, null, new string[0])]
    [InlineData(0.60, null, new[] { "fits-other-product", "unlike-other-products" })]
    [InlineData(4.77, "typed-decimal-slip", null)]
    [InlineData(0.954, "typed-twice-or-half", null)]
    public async Task Adopt_FirstNumberByHand_IsComparedWithTheOtherProductsOfTheElement(double typed, string? code, string[]? findings)
    {
        var farm = await FarmAsync();
        await WheatAsync(farm, 0.60);

        var adopted = await AnsweredAsync(
            farm.Adoption.With("/typedIn", Draft.Quantity(typed, "kg/rev")).With("/occurredAt", "2026-04-18T12:00:00+02:00"),
            code
        );

        if (findings is null)
            return;
        Assert.Equal(findings, adopted!.Body.Codes("/findings"));
        Assert.Equal(adopted.Bytes, (await service.GetAsync($"/v1/adoptions/{adopted.Id}")).Bytes);
        Assert.Equal(
            findings,
            new Answer((await farm.InForceAsync()).Single(one => one!["product"]!.GetValue<string>() == farm.Product)!).Codes("/findings")
        );
    }

    // Within 10 % of the number before, and exactly that of the wheat.
    [Fact]
    public async Task Adopt_NumberOfAnotherProductByHand_NamesIt()
    {
        var farm = await FarmAsync();
        await WheatAsync(farm, 0.365);
        await farm.AdoptAsync();

        var adopted = (
            await AnsweredAsync(
                farm.Adoption.With("/typedIn", Draft.Quantity(0.365, "kg/rev")).With("/occurredAt", "2026-04-18T12:00:00+02:00"),
                null
            )
        )!.Body;

        var finding = Assert.Single(adopted.List("/findings"), one => one!["code"]!.GetValue<string>() == "fits-other-product")!;
        Assert.Equal("warning", finding["severity"]!.GetValue<string>());
        Assert.Contains("fits winter wheat", finding["detail"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Adopt_NumberThatItsTestGave_IsNotComparedWithOtherProducts()
    {
        var farm = await FarmAsync();
        await WheatAsync(farm, 0.363);
        await farm.AdoptAsync();
        var test = (await farm.TestAsync()).Body;
        var typed = test.Number("/evaluation/enter/value");

        var adopted = await AnsweredAsync(
            farm.Adoption.With("/test", test.Word("/id"))
                .With("/typedIn", Draft.Quantity(typed, "kg/rev"))
                .With("/occurredAt", "2026-04-18T12:00:00+02:00"),
            null
        );

        Assert.DoesNotContain("fits-other-product", adopted!.Body.Codes("/findings"));
    }

    [Theory]
    [InlineData(0.35, new string[0])]
    [InlineData(3.42, new[] { "stated-unlike-records" })]
    [InlineData(0.375, new[] { "fits-other-product" })]
    public async Task Record_ValueInForceStated_IsComparedWithTheRecords(double stated, string[] codes)
    {
        var farm = await FarmAsync();
        await WheatAsync(farm, 0.375, "/bulkDensity");
        await farm.AdoptAsync();

        var test = (
            await farm.TestAsync(test => test.With("/valueInForce", new JsonObject { ["value"] = stated, ["unit"] = "kg/rev" }))
        ).Body;

        Assert.Equal(
            codes,
            test.Codes("/findings").Where(code => code is "stated-unlike-records" or "fits-other-product" or "unlike-other-products")
        );
    }

    private Task<Farm> FarmAsync() =>
        Farm.CreateAsync(service, machine => machine.Without("/meters/0/elements/0/displacementPerRevolution"));

    private async Task WheatAsync(Farm farm, double value, string? without = null)
    {
        var draft = Farm.ProductDraft.With("/name", "winter wheat").With("/bulkDensity", Draft.Quantity(78, "kg/hL"));
        var wheat = await service.CreateAsync("/v1/products", without is null ? draft : draft.Without(without));
        await farm.AdoptAsync(adoption =>
            adoption.With("/product", wheat).Without("/lot").With("/typedIn", Draft.Quantity(value, "kg/rev"))
        );
    }

    private async Task<Reply?> AnsweredAsync(Draft draft, string? code)
    {
        if (code is null)
            return (await service.PostAsync("/v1/adoptions", draft)).Expect(201);
        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/adoptions", draft))).RefusedAsync(422, "#/typedIn/value", code);
        return null;
    }
}
