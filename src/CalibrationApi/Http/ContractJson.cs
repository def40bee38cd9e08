using System.Text.Json.Serialization;
using CalibrationApi.Adoptions;
using CalibrationApi.Audit;
using CalibrationApi.BulkDensities;
using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.Codes;
using CalibrationApi.Containers;
using CalibrationApi.DistanceSensors;
using CalibrationApi.DriveWheelTurns;
using CalibrationApi.History;
using CalibrationApi.Keys;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.MeterSpeeds;
using CalibrationApi.NewLots;
using CalibrationApi.Plans;
using CalibrationApi.ProductRates;
using CalibrationApi.Products;
using CalibrationApi.ScaleChecks;
using CalibrationApi.Scales;
using CalibrationApi.SeedRowLimits;
using CalibrationApi.SeedingRates;
using CalibrationApi.StandCounts;
using CalibrationApi.StandRisks;
using CalibrationApi.Units;
using CalibrationApi.VolumeChecks;
using CalibrationApi.Workspaces;

namespace CalibrationApi.Http;

/// <summary>Source-generated serialization of everything that crosses the border. Its options are set in <see cref="JsonSettings"/>.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(Problem))]
[JsonSerializable(typeof(CatchTestRequest))]
[JsonSerializable(typeof(CatchTestAnswer))]
[JsonSerializable(typeof(CatchPlanRequest))]
[JsonSerializable(typeof(CatchPlanAnswer))]
[JsonSerializable(typeof(MeterSpeedRequest))]
[JsonSerializable(typeof(MeterSpeedAnswer))]
[JsonSerializable(typeof(BulkDensityRequest))]
[JsonSerializable(typeof(BulkDensityAnswer))]
[JsonSerializable(typeof(VolumeCheckRequest))]
[JsonSerializable(typeof(VolumeCheckAnswer))]
[JsonSerializable(typeof(DistanceSensorRequest))]
[JsonSerializable(typeof(DistanceSensorAnswer))]
[JsonSerializable(typeof(DriveWheelTurnsRequest))]
[JsonSerializable(typeof(DriveWheelTurnsAnswer))]
[JsonSerializable(typeof(SeedRowLimitRequest))]
[JsonSerializable(typeof(SeedRowLimitAnswer))]
[JsonSerializable(typeof(ProductRateRequest))]
[JsonSerializable(typeof(ProductRateAnswer))]
[JsonSerializable(typeof(SeedingRateRequest))]
[JsonSerializable(typeof(SeedingRateAnswer))]
[JsonSerializable(typeof(NewLotRequest))]
[JsonSerializable(typeof(NewLotAnswer))]
[JsonSerializable(typeof(StandCountRequest))]
[JsonSerializable(typeof(StandCountAnswer))]
[JsonSerializable(typeof(StandRiskRequest))]
[JsonSerializable(typeof(StandRiskAnswer))]
[JsonSerializable(typeof(UnitsAnswer))]
[JsonSerializable(typeof(CodesAnswer))]
[JsonSerializable(typeof(RecordCatchTestRequest))]
[JsonSerializable(typeof(UsedHistory))]
[JsonSerializable(typeof(RecomputationAnswer))]
[JsonSerializable(typeof(AdoptionRequest))]
[JsonSerializable(typeof(AdoptionAnswer))]
[JsonSerializable(typeof(ValuesInForceAnswer))]
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
internal sealed partial class ContractJson : JsonSerializerContext;
