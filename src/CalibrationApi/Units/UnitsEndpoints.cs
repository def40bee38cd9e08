namespace CalibrationApi.Units;

/// <summary>Routes of the units.</summary>
internal static class UnitsEndpoints
{
    public static void MapUnits(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/units", ListUnits.Handle).WithName("listUnits").WithTags("Units");
}
