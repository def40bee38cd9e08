using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>How much seed to sow for a stand, and what stand a rate gives.</summary>
internal static class EvaluateSeedingRate
{
    /// <summary>Finds the seeding rate for a stand, or the stand of a rate.</summary>
    /// <remarks>
    /// From plants per area, seeds per area, seeds in a length of row, or a mass per area: all the others, with seeds per length of
    /// row, packages and cost. Units are exact; a rate made by dividing by 10 can be compared. What is unusual for the crop is said
    /// with the published range. Nothing is stored.
    /// </remarks>
    /// <param name="body">What is fixed, and what is known of the seed.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Rate, seeds, plants, packages and cost.</response>
    public static Results<JsonAnswer<SeedingRateAnswer>, ProblemResult> Handle(JsonBody<SeedingRateRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<SeedingRateAnswer>, ProblemResult> Evaluate(SeedingRateRequest request, string? units)
    {
        var answerUnits = SeedingRateMapping.UnitsFor(request, units);
        var result = SeedingRateEvaluation.Evaluate(SeedingRateMapping.ToEngine(request));
        Evaluations.Count(Evaluations.SeedingRate, Evaluations.Answered);
        return JsonAnswer.Of(SeedingRateMapping.ToAnswer(request, result, answerUnits));
    }
}
