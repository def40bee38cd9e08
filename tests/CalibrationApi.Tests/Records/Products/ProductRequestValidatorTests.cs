namespace CalibrationApi.Tests.Records.Products;

/// <summary>The rules of a product.</summary>
public sealed class ProductRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/material", "\"wet\"", "#/material", "word-unknown")]
    [InlineData("/bulkDensity", """{ "value": 62, "unit": "lb/bu" }""", "#/bulkDensity", "unit-ambiguous")]
    [InlineData("/bulkDensity", """{ "value": 0.5, "unit": "kg/m3" }""", "#/bulkDensity", "number-out-of-range")]
    [InlineData("/bulkDensity", """{ "unit": "kg/hL" }""", "#/bulkDensity/value", "member-missing")]
    [InlineData("/price/currency", "\"euro\"", "#/price/currency", "text-wrong")]
    [InlineData("/price/per", "\"bu-us\"", "#/price/per", "word-unknown")]
    [InlineData("/price/value", "-1", "#/price/value", "number-out-of-range")]
    [InlineData("/note", "\"\"", "#/note", "text-wrong")]
    public async Task Product_MemberThatBreaksARule_IsRefusedThere(string pointer, string json, string at, string code) =>
        await (
            await service.WithoutTraceAsync(() => service.PostAsync("/v1/products", Farm.ProductDraft.With(pointer, Draft.Json(json))))
        ).RefusedAsync(422, at, code);

    [Theory]
    [InlineData("free-flowing")]
    [InlineData("small-seed")]
    [InlineData("dusty")]
    public async Task Product_Material_EntersTheQuestionOfItsTests(string material)
    {
        var farm = await Farm.CreateAsync(service);
        var product = await service.CreateAsync("/v1/products", Farm.ProductDraft.With("/material", material));

        Assert.Equal(
            material,
            (await farm.TestAsync(test => test.With("/product", product).Without("/lot"))).Body.Word("/resolved/product/material")
        );
    }

    // What is known at least of a product is its name.
    [Fact]
    public async Task Product_NameAlone_IsTaken() => await service.CreateAsync("/v1/products", Draft.Of("""{ "name": "oats" }"""));
}
