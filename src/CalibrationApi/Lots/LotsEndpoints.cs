using CalibrationApi.Records;
using CalibrationApi.Storage.Records;
using FluentValidation;

namespace CalibrationApi.Lots;

/// <summary>Routes of lots.</summary>
internal static class LotsEndpoints
{
    public static void AddLots(this IServiceCollection services) =>
        services.AddSingleton<IValidator<LotRequest>, LotRequestValidator>();

    public static void MapLots(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<LotRequest, LotAnswer>(RecordKind.Lots, "lots", "Lot", "lot of a product");
}
