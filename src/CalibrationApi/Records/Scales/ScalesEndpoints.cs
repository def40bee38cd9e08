using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Scales;

/// <summary>Routes of scales.</summary>
internal static class ScalesEndpoints
{
    public static void MapScales(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<ScaleRequest, ScaleAnswer>(RecordKind.Scales, "scales", "Scale", "scale");
}
