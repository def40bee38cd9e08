using CalibrationApi.Engine.StandRisks;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.StandRisks;

/// <summary>Finds the rate for a minimum stand without storing anything.</summary>
internal static class EvaluateStandRisk
{
    /// <summary>Finds the rate that reaches a minimum stand with a wanted probability.</summary>
    /// <remarks>
    /// Emergence differs from season to season, and germination, kernel mass and metering are known only so well. The answer has the
    /// rate that reaches the minimum stand all the same with the wanted probability, what its margin costs, and how probable the
    /// minimum stand is at a rate of your own. Nothing is stored.
    /// </remarks>
    /// <param name="body">The minimum stand, the share of seeds that come up, and how much it differs.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Rates, probabilities and the cost of the margin.</response>
    public static Results<JsonAnswer<StandRiskAnswer>, ProblemResult> Handle(JsonBody<StandRiskRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<StandRiskAnswer>, ProblemResult> Evaluate(StandRiskRequest request, string? units)
    {
        var answerUnits = StandRiskMapping.UnitsFor(request, units);
        var result = StandRiskEvaluation.Evaluate(StandRiskMapping.ToEngine(request));
        Evaluations.Count(Evaluations.StandRisk, Evaluations.Answered);
        return JsonAnswer.Of(StandRiskMapping.ToAnswer(request, result, answerUnits));
    }
}
