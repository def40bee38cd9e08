using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>Routes of drive wheel turns.</summary>
internal static class DriveWheelTurnsEndpoints
{
    private const string Tag = "Drive wheel turns";

    public static void AddDriveWheelTurns(this IServiceCollection services) =>
        services.AddSingleton<IValidator<DriveWheelTurnsRequest>, DriveWheelTurnsRequestValidator>();

    public static void MapDriveWheelTurns(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/drive-wheel-turns", EvaluateDriveWheelTurns.Handle).WithName("evaluateDriveWheelTurns").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<DriveWheelTurnsRequest, DriveWheelTurnsAnswer>("/calculations/drive-wheel-turns", EvaluateDriveWheelTurns.Evaluate).WithName("evaluateDriveWheelTurnsBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
