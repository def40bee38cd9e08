using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>Plans a catch test without storing anything.</summary>
internal static class PlanCatch
{
    /// <summary>Plans a catch test of one or several meters.</summary>
    /// <remarks>
    /// For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,
    /// container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, the
    /// steps with their dependencies, and the cautions. Nothing is stored.
    /// </remarks>
    /// <param name="body">The meters and what is at hand: scale, container, time.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">The plan.</response>
    public static Results<JsonAnswer<CatchPlanAnswer>, ProblemResult> Handle(JsonBody<CatchPlanRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The plan of one test, sent by itself or among many.</summary>
    public static Results<JsonAnswer<CatchPlanAnswer>, ProblemResult> Evaluate(CatchPlanRequest request, string? units)
    {
        var answerUnits = CatchPlanMapping.UnitsFor(request, units);
        var outcome = CatchPlanEvaluation.Evaluate(CatchPlanMapping.ToEngine(request));
        Evaluations.Count(Evaluations.CatchPlan, outcome.IsAnswered ? Evaluations.Answered : Evaluations.Refused);
        return outcome.IsAnswered
            ? JsonAnswer.Of(CatchPlanMapping.ToAnswer(outcome.Result, answerUnits))
            : ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
    }
}
