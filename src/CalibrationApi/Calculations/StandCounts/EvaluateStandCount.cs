using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>Evaluates counts of plants without storing anything.</summary>
internal static class EvaluateStandCount
{
    /// <summary>Evaluates a stand count.</summary>
    /// <remarks>
    /// From plants counted along rows, in frames or in hoops: plants per area with an interval that also holds for few and for
    /// clumped counts, how the counts scatter, how many of them a wanted precision takes, and which share of the seeds came up,
    /// with germination and without. Nothing is stored.
    /// </remarks>
    /// <param name="body">The counts, their ground, and what is known about what was sown.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Stand, survival and emergence.</response>
    public static Results<JsonAnswer<StandCountAnswer>, ProblemResult> Handle(JsonBody<StandCountRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<StandCountAnswer>, ProblemResult> Evaluate(StandCountRequest request, string? units)
    {
        var answerUnits = StandCountMapping.UnitsFor(request, units);
        var question = StandCountMapping.ToEngine(request);
        var result = StandCountEvaluation.Evaluate(question);
        Evaluations.Count(Evaluations.StandCount, Evaluations.Answered);
        return JsonAnswer.Of(StandCountMapping.ToAnswer(request, question, result, answerUnits));
    }
}
