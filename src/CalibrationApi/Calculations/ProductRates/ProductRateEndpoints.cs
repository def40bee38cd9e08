using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Routes of product rates.</summary>
internal static class ProductRateEndpoints
{
    private const string Tag = "Product rates";

    public static void AddProductRates(this IServiceCollection services) =>
        services.AddSingleton<IValidator<ProductRateRequest>, ProductRateRequestValidator>();

    public static void MapProductRates(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/product-rate", EvaluateProductRate.Handle).WithName("evaluateProductRate").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<ProductRateRequest, ProductRateAnswer>("/calculations/product-rate", EvaluateProductRate.Evaluate).WithName("evaluateProductRateBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
