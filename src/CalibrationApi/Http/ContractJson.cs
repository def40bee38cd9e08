using System.Text.Json.Serialization;
using CalibrationApi.Adoptions;
using CalibrationApi.Audit;
using CalibrationApi.Calculations.BulkDensities;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.DistanceSensors;
using CalibrationApi.Calculations.DriveWheelTurns;
using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.NewLots;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.Calculations.StandCounts;
using CalibrationApi.Calculations.StandRisks;
using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.CatchTests;
using CalibrationApi.Codes;
using CalibrationApi.Containers;
using CalibrationApi.History;
using CalibrationApi.Keys;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Plans;
using CalibrationApi.Products;
using CalibrationApi.ScaleChecks;
using CalibrationApi.Scales;
using CalibrationApi.Units;
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
