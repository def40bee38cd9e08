using CalibrationApi.Access;
using FluentValidation;

namespace CalibrationApi.MeterSpeeds;

/// <summary>Routes of meter speeds.</summary>
internal static class MeterSpeedEndpoints
{
    public static void AddMeterSpeeds(this IServiceCollection services) =>
        services.AddSingleton<IValidator<MeterSpeedRequest>, MeterSpeedRequestValidator>();

    public static void MapMeterSpeeds(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/calculations/meter-speed", EvaluateMeterSpeed.Handle).WithName("evaluateMeterSpeed").WithTags("Meter speeds").Needs(Scope.Calculate);
}
