using CalibrationApi.Engine.VolumeChecks;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>Checks a mass per revolution by volume without storing anything.</summary>
internal static class EvaluateVolumeCheck
{
    /// <summary>Finds what a metering element should deliver by its volume.</summary>
    /// <remarks>
    /// Displacement times bulk density times fill efficiency, with an interval; as a start value for a catch plan. A value
    /// measured or in force is compared with it: how far off it is, which fill efficiency it implies, and what may be wrong when
    /// that is more than the element holds. No verdict: only a catch test says what the meter delivers. Nothing is stored.
    /// </remarks>
    /// <param name="body">The element, the density, and a value to check.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">The expected value and the comparison.</response>
    public static Results<JsonAnswer<VolumeCheckAnswer>, ProblemResult> Handle(JsonBody<VolumeCheckRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<VolumeCheckAnswer>, ProblemResult> Evaluate(VolumeCheckRequest request, string? units)
    {
        var answerUnits = VolumeCheckMapping.UnitsFor(request, units);
        var result = VolumeCheckEvaluation.Evaluate(VolumeCheckMapping.ToEngine(request));
        Evaluations.Count(Evaluations.VolumeCheck, Evaluations.Answered);
        return JsonAnswer.Of(VolumeCheckMapping.ToAnswer(request, result, answerUnits));
    }
}
