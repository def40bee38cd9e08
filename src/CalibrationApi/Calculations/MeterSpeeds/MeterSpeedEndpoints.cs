using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Routes of meter speeds.</summary>
internal static class MeterSpeedEndpoints
{
    private const string Tag = "Meter speeds";

    public static void AddMeterSpeeds(this IServiceCollection services) =>
        services.AddSingleton<IValidator<MeterSpeedRequest>, MeterSpeedRequestValidator>();

    public static void MapMeterSpeeds(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/meter-speed", EvaluateMeterSpeed.Handle).WithName("evaluateMeterSpeed").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<MeterSpeedRequest, MeterSpeedAnswer>("/calculations/meter-speed", EvaluateMeterSpeed.Evaluate).WithName("evaluateMeterSpeedBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
