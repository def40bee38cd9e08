using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>Routes of stand counts.</summary>
internal static class StandCountEndpoints
{
    private const string Tag = "Stand counts";

    public static void AddStandCounts(this IServiceCollection services) =>
        services.AddSingleton<IValidator<StandCountRequest>, StandCountRequestValidator>();

    public static void MapStandCounts(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/stand-count", EvaluateStandCount.Handle).WithName("evaluateStandCount").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<StandCountRequest, StandCountAnswer>("/calculations/stand-count", EvaluateStandCount.Evaluate).WithName("evaluateStandCountBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
