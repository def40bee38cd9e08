using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>Routes of seeding rates.</summary>
internal static class SeedingRateEndpoints
{
    private const string Tag = "Seeding rates";

    public static void AddSeedingRates(this IServiceCollection services) =>
        services.AddSingleton<IValidator<SeedingRateRequest>, SeedingRateRequestValidator>();

    public static void MapSeedingRates(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/seeding-rate", EvaluateSeedingRate.Handle).WithName("evaluateSeedingRate").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<SeedingRateRequest, SeedingRateAnswer>("/calculations/seeding-rate", EvaluateSeedingRate.Evaluate).WithName("evaluateSeedingRateBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
