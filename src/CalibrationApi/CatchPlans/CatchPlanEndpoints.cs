using CalibrationApi.Access;
using FluentValidation;

namespace CalibrationApi.CatchPlans;

/// <summary>Routes of catch plans.</summary>
internal static class CatchPlanEndpoints
{
    public static void AddCatchPlans(this IServiceCollection services) =>
        services.AddSingleton<IValidator<CatchPlanRequest>, CatchPlanRequestValidator>();

    public static void MapCatchPlans(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/calculations/catch-plan", PlanCatch.Handle).WithName("planCatch").WithTags("Catch plans").Needs(Scope.Calculate);
}
