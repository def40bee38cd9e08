using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;
using CalibrationApi.Administration.Audit;
using CalibrationApi.Administration.Keys;
using CalibrationApi.Administration.Workspaces;
using CalibrationApi.Changes;
using CalibrationApi.Evidence.Adoptions;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Evidence.History;
using CalibrationApi.Evidence.ScaleChecks;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Plans;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Scales;
using CalibrationApi.Reference.Codes;
using CalibrationApi.Reference.Units;

namespace CalibrationApi;

/// <summary>
/// Source-generated serialization of what crosses the border beside the calculations, which bring their own. How it is read and
/// written is set in <see cref="JsonSettings"/>.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(UnitsAnswer))]
[JsonSerializable(typeof(CodesAnswer))]
[JsonSerializable(typeof(RecordCatchTestRequest))]
[JsonSerializable(typeof(CatchTestContext))]
[JsonSerializable(typeof(CatchTestRecordAnswer))]
[JsonSerializable(typeof(RecomputationAnswer))]
[JsonSerializable(typeof(AdoptionRequest))]
[JsonSerializable(typeof(AdoptionAnswer))]
[JsonSerializable(typeof(Page<ValueInForceAnswer>))]
[JsonSerializable(typeof(ScaleCheckRequest))]
[JsonSerializable(typeof(ScaleCheckOutcome))]
[JsonSerializable(typeof(ScaleCheckAnswer))]
[JsonSerializable(typeof(HistoryItem))]
[JsonSerializable(typeof(ChangeItem))]
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
