using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace CalibrationApi.Reference.Units;

/// <summary>Lists every unit that payloads take.</summary>
internal static class ListUnits
{
    // The table never changes while the service runs.
    private static readonly UnitsAnswer Answer = new()
    {
        Units =
        [
            .. UnitTable.All.Select(unit => new UnitAnswer
            {
                Symbol = unit.Symbol,
                Dimension = UnitsAnswer.Word(unit.Dimension),
                ToSi = new FactorAnswer { Numerator = unit.ToSi.Numerator, Denominator = unit.ToSi.Denominator },
                OffsetInSi = unit.OffsetInSi == 0 ? null : unit.OffsetInSi,
                Ucum = unit.Ucum,
                UnitedNations = unit.UnitedNations,
                Adapt = unit.Adapt,
                Note = unit.Note,
            }),
        ],
    };

    /// <summary>Lists every unit with its exact factor.</summary>
    /// <remarks>
    /// The closed list of units that payloads take, by dimension, each with its exact factor to SI as a ratio of two whole
    /// numbers and its codes in UCUM, UN/ECE Recommendation 20 and AgGateway ADAPT where they have one.
    /// </remarks>
    /// <response code="200">Every unit.</response>
    public static Results<JsonAnswer<UnitsAnswer>, ProblemResult> Handle(HttpResponse response)
    {
        response.Headers.CacheControl = "public, max-age=3600";
        return JsonAnswer.Of(Answer);
    }
}
