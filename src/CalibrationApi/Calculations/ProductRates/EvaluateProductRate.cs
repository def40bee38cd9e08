using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Http;
using CalibrationApi.Observability;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Finds rates of products from nutrients that are wanted.</summary>
internal static class EvaluateProductRate
{
    /// <summary>Finds the rates of products that supply the nutrients wanted.</summary>
    /// <remarks>
    /// The rates that meet every target at the least cost, or the least total mass where there are no prices, after credits and
    /// fixed rates are taken off: what each product supplies, what remains over, what it costs, packages over an area. Among
    /// equal costs the least mass is taken, then earlier products before later ones. Where the targets cannot be met, the
    /// nearest rates: limits (at-most, most) are kept as far as they can be, then the sum over all targets of what is missing,
    /// or for exact targets too much, each divided by its target, is least; findings say why. Nothing is stored.
    /// </remarks>
    /// <param name="body">The nutrients wanted, the products at hand, credits.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    /// <response code="200">Rates, supply, surplus and cost.</response>
    public static Results<JsonAnswer<ProductRateAnswer>, ProblemResult> Handle(JsonBody<ProductRateRequest> body, [FromQuery] string? units = null) => Evaluate(body.Value, units);

    /// <summary>The answer to one question, sent by itself or among many.</summary>
    public static Results<JsonAnswer<ProductRateAnswer>, ProblemResult> Evaluate(ProductRateRequest request, string? units)
    {
        var answerUnits = ProductRateMapping.UnitsFor(request, units);
        var result = ProductRateEvaluation.Evaluate(ProductRateMapping.ToEngine(request));
        Evaluations.Count(Evaluations.ProductRate, Evaluations.Answered);
        return JsonAnswer.Of(ProductRateMapping.ToAnswer(request, result, answerUnits));
    }
}
