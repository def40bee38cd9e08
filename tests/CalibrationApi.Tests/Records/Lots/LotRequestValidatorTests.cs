namespace CalibrationApi.Tests.Records.Lots;

/// <summary>The rules of a lot.</summary>
public sealed class LotRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/product", null, "#/product", "member-missing")]
    [InlineData("/product", "\"" + "01968f00-0000-7000-8000-0000000000ff" + "\"", "#/product", "id-unknown")]
    [InlineData("/thousandKernelMass", """{ "value": 45, "unit": "g" }""", "#/thousandKernelMass", "unit-wrong-dimension")]
    [InlineData("/thousandKernelMass", """{ "value": 0, "unit": "g/1000" }""", "#/thousandKernelMass", "number-out-of-range")]
    [InlineData("/germination", """{ "value": 101, "unit": "%" }""", "#/germination", "number-out-of-range")]
    [InlineData("/germination", """{ "value": 0, "unit": "%" }""", "#/germination", "number-out-of-range")]
    [InlineData("/purity", """{ "value": 1.2, "unit": "1" }""", "#/purity", "number-out-of-range")]
    [InlineData("/moisture", """{ "value": -1, "unit": "%" }""", "#/moisture", "number-out-of-range")]
    [InlineData("/treatment", "\" \"", "#/treatment", "text-wrong")]
    public async Task Lot_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var product = await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var draft = Farm.LotDraft(product);
        draft = json is null ? draft.Without(pointer) : draft.With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/lots", draft))).RefusedAsync(422, at, code);
    }

    [Fact]
    public async Task Lot_Everything_ReadsBackAsEntered()
    {
        var product = await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var draft = Farm.LotDraft(product)
            .With("/germination", Draft.Quantity(0.94, "1"))
            .With("/purity", Draft.Quantity(99.5, "%"))
            .With("/bulkDensity", Draft.Quantity(48, "lb/bu-us"))
            .With("/moisture", Draft.Quantity(13.5, "%"));

        var lot = (await service.GetAsync($"/v1/lots/{await service.CreateAsync("/v1/lots", draft)}")).Body;

        Assert.Equal((48, "lb/bu-us"), lot.Quantity("/bulkDensity"));
        Assert.Equal((0.94, "1"), lot.Quantity("/germination"));
        Assert.Equal("fungicide", lot.Word("/treatment"));
    }
}
