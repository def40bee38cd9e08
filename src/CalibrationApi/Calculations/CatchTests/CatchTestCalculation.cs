using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Evaluates a catch test.</summary>
/// <remarks>
/// From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has changed
/// against the value in force, and what to do now. Nothing is stored; the same question always gets the same answer.
/// </remarks>
/// <request>The catches and what is known about scale, counter and product.</request>
/// <response code="200">The evaluation.</response>
internal static class CatchTestCalculation
{
    public static Calculation<CatchTestRequest, CatchTestQuestion, CatchTestResult, CatchTestAnswer> Declaration { get; } =
        new(typeof(CatchTestCalculation))
        {
            Name = "catch-test",
            Tag = "Catch tests",
            Says = "What the catches say, how sure it is, and what to do now.",
            Json = CatchTestJson.Default,
            Units = CatchTestMapping.UnitsFor,
            Question = CatchTestMapping.ToEngine,
            Evaluate = CatchTestEvaluation.Evaluate,
            Refusals = CatchTestCodes.Refusals,
            Answer = CatchTestMapping.ToAnswer,
            Verdict = answer => answer.Verdict,
            Rows = ("catches", CatchTestData.MostCatches),
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(CatchTestRequest))]
[JsonSerializable(typeof(CatchTestAnswer))]
internal sealed partial class CatchTestJson : JsonSerializerContext;
