using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>Routes of bulk densities.</summary>
internal static class BulkDensityEndpoints
{
    private const string Tag = "Bulk densities";

    public static void AddBulkDensities(this IServiceCollection services) =>
        services.AddSingleton<IValidator<BulkDensityRequest>, BulkDensityRequestValidator>();

    public static void MapBulkDensities(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/bulk-density", EvaluateBulkDensity.Handle).WithName("evaluateBulkDensity").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<BulkDensityRequest, BulkDensityAnswer>("/calculations/bulk-density", EvaluateBulkDensity.Evaluate).WithName("evaluateBulkDensityBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
