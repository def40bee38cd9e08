using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;
using CalibrationApi.Adoptions;
using CalibrationApi.Audit;
using CalibrationApi.Calculations;
using CalibrationApi.CatchTests;
using CalibrationApi.Codes;
using CalibrationApi.Containers;
using CalibrationApi.History;
using CalibrationApi.Http;
using CalibrationApi.Keys;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Plans;
using CalibrationApi.Products;
using CalibrationApi.Records;
using CalibrationApi.ScaleChecks;
using CalibrationApi.Scales;
using CalibrationApi.Units;
using CalibrationApi.Workspaces;

namespace CalibrationApi;

/// <summary>
/// Source-generated serialization of what crosses the border beside the calculations, which bring their own. How it is read and
/// written is set in <see cref="JsonSettings"/>.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(UnitsAnswer))]
[JsonSerializable(typeof(CodesAnswer))]
[JsonSerializable(typeof(RecordCatchTestRequest))]
[JsonSerializable(typeof(UsedHistory))]
[JsonSerializable(typeof(RecomputationAnswer))]
[JsonSerializable(typeof(AdoptionRequest))]
[JsonSerializable(typeof(AdoptionAnswer))]
[JsonSerializable(typeof(Page<ValueInForceAnswer>))]
[JsonSerializable(typeof(ScaleCheckRequest))]
[JsonSerializable(typeof(HistoryItem))]
[JsonSerializable(typeof(MachineRequest))]
[JsonSerializable(typeof(ProductRequest))]
[JsonSerializable(typeof(LotRequest))]
[JsonSerializable(typeof(ScaleRequest))]
[JsonSerializable(typeof(ContainerRequest))]
[JsonSerializable(typeof(PlanRequest))]
[JsonSerializable(typeof(PlanSetUpAnswer))]
[JsonSerializable(typeof(KeyRequest))]
[JsonSerializable(typeof(RotationRequest))]
[JsonSerializable(typeof(RevocationRequest))]
[JsonSerializable(typeof(KeyAnswer))]
[JsonSerializable(typeof(WorkspaceRequest))]
[JsonSerializable(typeof(WorkspaceAnswer))]
[JsonSerializable(typeof(AuditItem))]
[JsonSerializable(typeof(RefusalItem))]
internal sealed partial class ContractJson : JsonSerializerContext
{
    // Before anything else of this program runs, so that whoever reads or writes a contract type finds it, also without a host.
    [ModuleInitializer]
    internal static void Tell() => JsonSettings.Contexts = () => [Default, .. CalculationList.All.Select(calculation => calculation.Json)];
}
