using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace CalibrationApi.Reference.Codes;

/// <summary>Lists every code that answers carry.</summary>
internal static class ListCodes
{
    private static readonly CodesAnswer Answer = new() { Codes = CodeList.All };

    /// <summary>Lists every code with its cause and what to do.</summary>
    /// <remarks>
    /// The stable codes of errors, refusals, findings, reasons and cautions, each with its cause, its remedy, and the statuses
    /// or severities that it comes with: for translations and for help inside a client. People read the same at
    /// <c>/reference/codes</c>. Within v1 codes are only added.
    /// </remarks>
    /// <response code="200">Every code.</response>
    public static Results<JsonAnswer<CodesAnswer>, ProblemResult> Handle(HttpResponse response)
    {
        response.Headers.CacheControl = CodesEndpoints.ForAnHour;
        return JsonAnswer.Of(Answer);
    }
}
