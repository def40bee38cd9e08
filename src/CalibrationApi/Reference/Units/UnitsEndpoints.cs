using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Operations;

namespace CalibrationApi.Reference.Units;

/// <summary>Routes of the units.</summary>
internal static class UnitsEndpoints
{
    public static void MapUnits(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet("/units", ListUnits.Handle)
            .WithName("listUnits")
            .WithTags("Units")
            .IsPublic()
            .Sends("Cache-Control", "The list may be kept for an hour; it changes only with a new version of the service.");
}
