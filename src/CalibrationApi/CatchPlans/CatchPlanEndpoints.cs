using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.CatchPlans;

/// <summary>Routes of catch plans.</summary>
internal static class CatchPlanEndpoints
{
    private const string Tag = "Catch plans";

    public static void AddCatchPlans(this IServiceCollection services) =>
        services.AddSingleton<IValidator<CatchPlanRequest>, CatchPlanRequestValidator>();

    public static void MapCatchPlans(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/catch-plan", PlanCatch.Handle).WithName("planCatch").WithTags(Tag);
        routes.MapBatch<CatchPlanRequest, CatchPlanAnswer>("/calculations/catch-plan", PlanCatch.Evaluate).WithName("planCatchBatch").WithTags(Tag);
    }
}
