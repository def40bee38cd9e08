using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>Compares fertilizer placed with the seed with published limits.</summary>
internal static class EvaluateSeedRowLimit
{
    /// <summary>Compares fertilizer placed with the seed with published limits.</summary>
    /// <remarks>
    /// The share of the seedbed that is used, the nutrients that lie with the seed in the worst zone, and every limit that is
    /// held for the crop and the region, with its source, year, place and conditions. A limit is used for its own crop, soil,
    /// moisture, opener and place only; where a source prints no number, there is none here. Where sources differ, all are
    /// shown and the stricter one leads. No answer says that a load is safe: local guidance, the product label and a licensed
    /// adviser go first. Nothing is stored.
    /// </remarks>
    /// <param name="body">Crop, soil, opener and what is placed with the seed.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question. Printed numbers keep the unit of their source.</param>
    /// <response code="200">Loads, limits and their verdicts.</response>
    public static Results<JsonAnswer<SeedRowLimitAnswer>, ProblemResult> Handle(JsonBody<SeedRowLimitRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<SeedRowLimitAnswer>, ProblemResult> Evaluate(SeedRowLimitRequest request, string? units)
    {
        var answer = SeedRowLimitMapping.ToAnswer(SeedRowEvaluation.Evaluate(SeedRowLimitMapping.ToEngine(request)), SeedRowLimitMapping.UnitsFor(request, units));
        Evaluations.Count(Evaluations.SeedRowLimit, answer.Verdict);
        return JsonAnswer.Of(answer);
    }
}
