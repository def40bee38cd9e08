using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>Routes of catch plans.</summary>
internal static class CatchPlanEndpoints
{
    private const string Tag = "Catch plans";

    public static void AddCatchPlans(this IServiceCollection services) =>
        services.AddSingleton<IValidator<CatchPlanRequest>, CatchPlanRequestValidator>();

    public static void MapCatchPlans(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/catch-plan", PlanCatch.Handle).WithName("planCatch").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<CatchPlanRequest, CatchPlanAnswer>("/calculations/catch-plan", PlanCatch.Evaluate).WithName("planCatchBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
