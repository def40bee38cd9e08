using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.StandRisks;

/// <summary>Routes of stand risks.</summary>
internal static class StandRiskEndpoints
{
    private const string Tag = "Stand risks";

    public static void AddStandRisks(this IServiceCollection services) =>
        services.AddSingleton<IValidator<StandRiskRequest>, StandRiskRequestValidator>();

    public static void MapStandRisks(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/stand-risk", EvaluateStandRisk.Handle).WithName("evaluateStandRisk").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<StandRiskRequest, StandRiskAnswer>("/calculations/stand-risk", EvaluateStandRisk.Evaluate).WithName("evaluateStandRiskBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
