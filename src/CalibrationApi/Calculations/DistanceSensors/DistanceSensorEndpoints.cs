using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>Routes of distance sensors.</summary>
internal static class DistanceSensorEndpoints
{
    private const string Tag = "Distance sensors";

    public static void AddDistanceSensors(this IServiceCollection services) =>
        services.AddSingleton<IValidator<DistanceSensorRequest>, DistanceSensorRequestValidator>();

    public static void MapDistanceSensors(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/distance-sensor", EvaluateDistanceSensor.Handle).WithName("evaluateDistanceSensor").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<DistanceSensorRequest, DistanceSensorAnswer>("/calculations/distance-sensor", EvaluateDistanceSensor.Evaluate).WithName("evaluateDistanceSensorBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
