using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Products;

/// <summary>Routes of products.</summary>
internal static class ProductsEndpoints
{
    public static void MapProducts(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<ProductRequest, ProductAnswer>(RecordKind.Products, "products", "Product", "product");
}
