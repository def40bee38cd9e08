using System.Text.Json.Serialization;
using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.MeterSpeeds;
using CalibrationApi.Units;

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
[JsonSerializable(typeof(UnitsAnswer))]
internal sealed partial class ContractJson : JsonSerializerContext;
