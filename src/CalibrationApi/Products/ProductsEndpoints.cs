using CalibrationApi.Records;
using CalibrationApi.Storage.Records;
using FluentValidation;

namespace CalibrationApi.Products;

/// <summary>Routes of products.</summary>
internal static class ProductsEndpoints
{
    public static void AddProducts(this IServiceCollection services) =>
        services.AddSingleton<IValidator<ProductRequest>, ProductRequestValidator>();

    public static void MapProducts(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<ProductRequest, ProductAnswer>(RecordKind.Products, "products", "Product", "product");
}
