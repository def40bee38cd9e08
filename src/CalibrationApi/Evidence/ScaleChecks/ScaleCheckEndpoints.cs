using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Operations;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>Routes of scale checks.</summary>
internal static class ScaleCheckEndpoints
{
    private const string Tag = "Scale checks";

    public static void MapScaleChecks(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/scale-checks", RecordScaleCheck.HandleAsync)
            .WithName("recordScaleCheck")
            .WithTags(Tag)
            .Needs(Scope.Write)
            .Produces<ScaleCheckAnswer>(StatusCodes.Status201Created)
            .Produces<ScaleCheckAnswer>()
            .WithMetadata(Declared.Storing);
        routes
            .MapGet("/scale-checks/{id}", RecordScaleCheck.Get)
            .WithName("getScaleCheck")
            .WithTags(Tag)
            .Needs(Scope.Read)
            .Produces<ScaleCheckAnswer>()
            .WithMetadata(Declared.Reading);
    }
}
