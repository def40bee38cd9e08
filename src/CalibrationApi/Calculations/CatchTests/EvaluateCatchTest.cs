using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Evaluates a catch test without storing anything.</summary>
internal static class EvaluateCatchTest
{
    /// <summary>Evaluates a catch test.</summary>
    /// <remarks>
    /// From one or more catches: the mass per revolution with its uncertainty, whether the catches agree, what has changed
    /// against the value in force, and what to do now. Nothing is stored; the same question always gets the same answer.
    /// </remarks>
    /// <param name="body">The catches and what is known about scale, counter and product.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">The evaluation.</response>
    public static Results<JsonAnswer<CatchTestAnswer>, ProblemResult> Handle(JsonBody<CatchTestRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one test, sent by itself or among many.</summary>
    public static Results<JsonAnswer<CatchTestAnswer>, ProblemResult> Evaluate(CatchTestRequest request, string? units)
    {
        var answerUnits = CatchTestMapping.UnitsFor(request, units);
        var outcome = CatchTestEvaluation.Evaluate(CatchTestMapping.ToEngine(request));
        if (!outcome.IsAnswered)
        {
            Evaluations.Count(Evaluations.CatchTest, Evaluations.Refused);
            return ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
        }

        var answer = CatchTestMapping.ToAnswer(request, outcome.Result, answerUnits);
        Evaluations.Count(Evaluations.CatchTest, answer.Verdict);
        return JsonAnswer.Of(answer);
    }
}
