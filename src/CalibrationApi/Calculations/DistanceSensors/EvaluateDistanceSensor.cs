using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>Evaluates runs over a measured course.</summary>
internal static class EvaluateDistanceSensor
{
    /// <summary>Evaluates the runs of a distance sensor over a measured course.</summary>
    /// <remarks>
    /// From one or more runs: pulses per distance and the rolling circumference with their uncertainty, slip against reference
    /// runs, ground speed, the width that passes really cover, what wrong numbers in the controller do to the rate, and what to
    /// type in. Nothing is stored.
    /// </remarks>
    /// <param name="body">The runs, and what the controller holds.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">The evaluation.</response>
    public static Results<JsonAnswer<DistanceSensorAnswer>, ProblemResult> Handle(JsonBody<DistanceSensorRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<DistanceSensorAnswer>, ProblemResult> Evaluate(DistanceSensorRequest request, string? units)
    {
        var answerUnits = DistanceSensorMapping.UnitsFor(request, units);
        var outcome = DistanceSensorEvaluation.Evaluate(DistanceSensorMapping.ToEngine(request));
        if (!outcome.IsAnswered)
        {
            Evaluations.Count(Evaluations.DistanceSensor, Evaluations.Refused);
            return ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
        }

        var answer = DistanceSensorMapping.ToAnswer(request, outcome.Result, answerUnits);
        Evaluations.Count(Evaluations.DistanceSensor, answer.Verdict);
        return JsonAnswer.Of(answer);
    }
}
