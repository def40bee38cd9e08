using System.Diagnostics;
using System.Text.Json.Serialization;
using CalibrationApi.Plumbing.Contract;
using Microsoft.AspNetCore.WebUtilities;

namespace CalibrationApi.Plumbing.Http;

/// <summary>What went wrong and what to do about it (RFC 9457).</summary>
public sealed class Problem
{
    /// <summary>
    /// Kind of problem; <c>about:blank</c> says that the status tells it all, other kinds are those registered with IANA. Act on
    /// <c>errors[].code</c>; <c>/reference/codes</c> explains every one.
    /// </summary>
    public required string Type { get; init; }

    /// <summary>The name of the status.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What went wrong, in one sentence.</summary>
    public required string Detail { get; init; }

    /// <summary>Identifier under which the service's operator finds this request in the logs.</summary>
    public required string TraceId { get; init; }

    /// <summary>With 429: the policies of <c>RateLimit-Policy</c> that were exceeded.</summary>
    [JsonPropertyName("violated-policies")]
    public IReadOnlyList<string>? ViolatedPolicies { get; init; }

    /// <summary>Every error found, at least one.</summary>
    public required IReadOnlyList<ProblemError> Errors { get; init; }

    internal static Problem For(string traceId, int status, ProblemKind kind, string detail, IReadOnlyList<ProblemError> errors) =>
        new()
        {
            Type = kind.Type,
            Title = ReasonPhrases.GetReasonPhrase(status),
            Status = status,
            Detail = detail,
            TraceId = traceId,
            ViolatedPolicies = kind.ViolatedPolicies,
            Errors = errors,
        };

    internal static string TraceIdOf(HttpContext context) => Activity.Current?.TraceId.ToString() ?? context.TraceIdentifier;
}

/// <summary>Kind of a problem.</summary>
/// <param name="Type">Its URI.</param>
/// <param name="ViolatedPolicies">Names of the policies that were exceeded, with a problem of that kind.</param>
internal sealed record ProblemKind(string Type, IReadOnlyList<string>? ViolatedPolicies = null)
{
    // The registry of RFC 9457 section 4.2, with the types of draft-ietf-httpapi-ratelimit-headers-10.
    private const string Registry = "https://iana.org/assignments/http-problem-types#";

    /// <summary>The status says it all.</summary>
    public static ProblemKind Plain { get; } = new("about:blank");

    /// <summary>For the moment the service can do less than it usually does.</summary>
    public static ProblemKind ReducedCapacity { get; } = new(Registry + "temporary-reduced-capacity");

    /// <summary>Somebody asked more than a policy allows.</summary>
    public static ProblemKind QuotaExceeded(string policy) => new(Registry + "quota-exceeded", [policy]);
}

/// <summary>One error of a request.</summary>
public sealed class ProblemError
{
    /// <summary>
    /// Where in the body, as an RFC 6901 JSON pointer in its URI fragment form, for example <c>#/catches/0/gross</c>; absent when it is not
    /// about the body.
    /// </summary>
    public string? Pointer { get; init; }

    /// <summary>The query parameter it is about; absent when it is not about the query.</summary>
    public string? Parameter { get; init; }

    /// <summary>The header it is about; absent when it is not about a header.</summary>
    public string? Header { get; init; }

    /// <summary>
    /// The row of a table it is about, as a spreadsheet counts it: the header is row 1. Absent when what was sent is no table.
    /// </summary>
    public long? Row { get; init; }

    /// <summary>The column of a table it is about, as its header writes it; absent when it is about no single column.</summary>
    public string? Column { get; init; }

    /// <summary>
    /// Stable code. Those with which the engine refuses stand at the status 422 of the operation; <c>GET /v1/codes</c> explains each.
    /// </summary>
    [KnownWords(typeof(ErrorCodes), nameof(ErrorCodes.InProblems))]
    public required ErrorCode Code { get; init; }

    /// <summary>What is wrong and what to do.</summary>
    public required string Detail { get; init; }
}

/// <summary>Source-generated serialization of problems.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(Problem))]
internal sealed partial class ProblemJson : JsonSerializerContext;
