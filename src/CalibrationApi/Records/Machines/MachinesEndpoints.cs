using CalibrationApi.Records.Describing;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Machines;

/// <summary>Routes of machines.</summary>
internal static class MachinesEndpoints
{
    public static void MapMachines(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<MachineRequest, MachineAnswer>(RecordKind.Machines, "machines", "Machine", "machine with its meters");
}
