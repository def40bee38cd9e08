using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Plans;

/// <summary>Routes of plans.</summary>
internal static class PlansEndpoints
{
    public static void MapPlans(this IEndpointRouteBuilder routes)
    {
        routes.MapDescribedRecords<PlanRequest, PlanAnswer>(RecordKind.Plans, "plans", "Plan", "plan for a field");
        routes
            .MapGet("/plans/{id}/catch-plan", PlanCatchOfPlan.Handle)
            .WithName("planCatchOfPlan")
            .WithTags("Plans")
            .Needs(Scope.Read)
            .WithMetadata(new RefusedWith(CatchPlanCodes.Refusals))
            .WithMetadata(Declared.ComputingFromRecord);
        routes
            .MapGet("/plans/{id}/set-up", SetUpOfPlan.Handle)
            .WithName("setUpOfPlan")
            .WithTags("Plans")
            .Needs(Scope.Read)
            .WithMetadata(Declared.ComputingFromRecord);
    }
}
