using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>Evaluates a bulk density without storing anything.</summary>
internal static class EvaluateBulkDensity
{
    /// <summary>Finds the bulk density of a product and how sure it is.</summary>
    /// <remarks>
    /// From weighings of a known volume, a filled tank, a test weight or a stated number: the density with its interval, in every
    /// unit, beside the published densities of its material. A density far from them is challenged, a measured one never
    /// replaced. With nothing but a reference it gives a published value to start from. On wish what a tank holds and how far
    /// that goes. Nothing is stored.
    /// </remarks>
    /// <param name="body">What the density is known from.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">The density, its interval and its reference.</response>
    public static Results<JsonAnswer<BulkDensityAnswer>, ProblemResult> Handle(JsonBody<BulkDensityRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<BulkDensityAnswer>, ProblemResult> Evaluate(BulkDensityRequest request, string? units)
    {
        var answerUnits = BulkDensityMapping.UnitsFor(request, units);
        var result = BulkDensityEvaluation.Evaluate(BulkDensityMapping.ToEngine(request));
        Evaluations.Count(Evaluations.BulkDensity, Evaluations.Answered);
        return JsonAnswer.Of(BulkDensityMapping.ToAnswer(result, answerUnits));
    }
}
