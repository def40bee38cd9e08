using System.Text.Json;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Serialization.Json;

namespace CalibrationApi.Client;

/// <summary>Makes typed exceptions of problems (RFC 9457).</summary>
internal static class ProblemReading
{
    /// <summary>Of a refused request.</summary>
    public static async Task<CalibrationException> ReadAsync(
        HttpResponseMessage response,
        TimeSpan? retryAfter,
        CancellationToken cancellationToken
    )
    {
        var status = (int)response.StatusCode;
        var body = await response.Content.ReadAsByteArrayAsync(cancellationToken).ConfigureAwait(false);
        return Parse(body) is { Detail: not null } problem
            ? ToException(problem, status, retryAfter)
            : new CalibrationException(
                status,
                $"The answer was {status} {response.ReasonPhrase}, without a problem of the service. Is the address right?",
                [],
                retryAfter: retryAfter
            );
    }

    /// <summary>Of a problem as the service writes it.</summary>
    public static CalibrationException ToException(Problem problem, int status, TimeSpan? retryAfter = null)
    {
        var sentence = problem.Detail ?? problem.Title ?? "The service refused, without a reason.";
        CalibrationError[] errors =
        [
            .. (problem.Errors ?? []).Select(error => new CalibrationError(
                error.Code ?? "",
                error.Detail ?? "",
                error.Pointer,
                error.Parameter,
                error.Header
            )),
        ];
        return status switch
        {
            404 => new RecordNotFoundException(sentence, errors, problem.TraceId),
            412 => new RecordChangedException(sentence, errors, problem.TraceId),
            _ => new CalibrationException(status, sentence, errors, problem.TraceId, retryAfter),
        };
    }

    // A proxy answers in HTML, an older server not at all.
    private static Problem? Parse(byte[] body)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return document.RootElement.ValueKind == JsonValueKind.Object
                ? new JsonParseNode(document.RootElement).GetObjectValue(Problem.CreateFromDiscriminatorValue)
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
