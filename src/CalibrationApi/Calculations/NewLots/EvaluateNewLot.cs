using CalibrationApi.Engine.NewLots;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>What another lot or treatment of a product changes.</summary>
internal static class EvaluateNewLot
{
    /// <summary>Finds what a new lot or treatment changes, and whether to test.</summary>
    /// <remarks>
    /// The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities;
    /// whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density is
    /// unknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot,
    /// treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
    /// </remarks>
    /// <param name="body">The value in force and the two lots.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Verdict, predicted mass per revolution, rate and effects.</response>
    public static Results<JsonAnswer<NewLotAnswer>, ProblemResult> Handle(JsonBody<NewLotRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<NewLotAnswer>, ProblemResult> Evaluate(NewLotRequest request, string? units)
    {
        var answerUnits = NewLotMapping.UnitsFor(request, units);
        var answer = NewLotMapping.ToAnswer(request, NewLotEvaluation.Evaluate(NewLotMapping.ToEngine(request)), answerUnits);
        Evaluations.Count(Evaluations.NewLot, answer.Verdict);
        return JsonAnswer.Of(answer);
    }
}
