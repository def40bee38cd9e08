using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>Answers what turns of a drive wheel stand for.</summary>
internal static class EvaluateDriveWheelTurns
{
    /// <summary>Finds the turns of a drive wheel for areas, and evaluates turn tests.</summary>
    /// <remarks>
    /// For ground-driven machines: how often to turn the drive wheel for an area, what has to fall meanwhile in all and from each
    /// outlet, the rate that turn tests give with its uncertainty, whether it is close enough to its target, a first correction
    /// of the setting, and outlets that differ from the others. Nothing is stored.
    /// </remarks>
    /// <param name="body">The wheel, the width, and what is known beside them.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Turns, catches, and the rate of the tests.</response>
    public static Results<JsonAnswer<DriveWheelTurnsAnswer>, ProblemResult> Handle(JsonBody<DriveWheelTurnsRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<DriveWheelTurnsAnswer>, ProblemResult> Evaluate(DriveWheelTurnsRequest request, string? units)
    {
        var answerUnits = DriveWheelTurnsMapping.UnitsFor(request, units);
        var answer = DriveWheelTurnsMapping.ToAnswer(DriveWheelEvaluation.Evaluate(DriveWheelTurnsMapping.ToEngine(request)), answerUnits);
        Evaluations.Count(Evaluations.DriveWheelTurns, answer.Verdict ?? Evaluations.Answered);
        return JsonAnswer.Of(answer);
    }
}
