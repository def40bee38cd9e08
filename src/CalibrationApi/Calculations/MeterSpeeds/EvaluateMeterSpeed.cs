using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Compares the metering elements of a meter with what is asked of it.</summary>
internal static class EvaluateMeterSpeed
{
    /// <summary>Finds meter speeds, windows and the best metering element.</summary>
    /// <remarks>
    /// For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which each
    /// rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its limits.
    /// Elements come best first. Nothing is stored.
    /// </remarks>
    /// <param name="body">Rates, ground speeds and the elements that the machine has.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Speeds, windows and ranking.</response>
    public static Results<JsonAnswer<MeterSpeedAnswer>, ProblemResult> Handle(JsonBody<MeterSpeedRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<MeterSpeedAnswer>, ProblemResult> Evaluate(MeterSpeedRequest request, string? units)
    {
        var answerUnits = MeterSpeedMapping.UnitsFor(request, units);
        var result = MeterSpeedEvaluation.Evaluate(MeterSpeedMapping.ToEngine(request));
        Evaluations.Count(Evaluations.MeterSpeed, Evaluations.Answered);
        return JsonAnswer.Of(MeterSpeedMapping.ToAnswer(result, answerUnits));
    }
}
