using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>Routes of volume checks.</summary>
internal static class VolumeCheckEndpoints
{
    private const string Tag = "Volume checks";

    public static void AddVolumeChecks(this IServiceCollection services) =>
        services.AddSingleton<IValidator<VolumeCheckRequest>, VolumeCheckRequestValidator>();

    public static void MapVolumeChecks(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/volume-check", EvaluateVolumeCheck.Handle).WithName("evaluateVolumeCheck").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<VolumeCheckRequest, VolumeCheckAnswer>("/calculations/volume-check", EvaluateVolumeCheck.Evaluate).WithName("evaluateVolumeCheckBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
