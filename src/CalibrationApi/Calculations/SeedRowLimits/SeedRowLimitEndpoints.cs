using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>Routes of fertilizer with the seed.</summary>
internal static class SeedRowLimitEndpoints
{
    private const string Tag = "Seed-row limits";

    public static void AddSeedRowLimits(this IServiceCollection services) =>
        services.AddSingleton<IValidator<SeedRowLimitRequest>, SeedRowLimitRequestValidator>();

    public static void MapSeedRowLimits(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/seed-row-limit", EvaluateSeedRowLimit.Handle).WithName("evaluateSeedRowLimit").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<SeedRowLimitRequest, SeedRowLimitAnswer>("/calculations/seed-row-limit", EvaluateSeedRowLimit.Evaluate).WithName("evaluateSeedRowLimitBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
