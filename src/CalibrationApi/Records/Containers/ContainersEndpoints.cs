using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Containers;

/// <summary>Routes of containers.</summary>
internal static class ContainersEndpoints
{
    public static void MapContainers(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<ContainerRequest, ContainerAnswer>(RecordKind.Containers, "containers", "Container", "container");
}
