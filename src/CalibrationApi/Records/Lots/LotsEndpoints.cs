using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Lots;

/// <summary>Routes of lots.</summary>
internal static class LotsEndpoints
{
    public static void MapLots(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<LotRequest, LotAnswer>(RecordKind.Lots, "lots", "Lot", "lot of a product");
}
