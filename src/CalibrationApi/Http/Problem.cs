using System.Diagnostics;
using CalibrationApi.Contract;
using Microsoft.AspNetCore.WebUtilities;

namespace CalibrationApi.Http;

/// <summary>What went wrong and what to do about it (RFC 9457).</summary>
public sealed class Problem
{
    /// <summary>Kind of problem; <c>about:blank</c> says that the status tells it all. Act on <c>errors[].code</c>; <c>/reference/codes</c> explains every one.</summary>
    public required string Type { get; init; }

    /// <summary>The name of the status.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What went wrong, in one sentence.</summary>
    public required string Detail { get; init; }

    /// <summary>Identifier under which the service's operator finds this request in the logs.</summary>
    public required string TraceId { get; init; }

    /// <summary>Every error found, at least one.</summary>
    public required IReadOnlyList<ProblemError> Errors { get; init; }

    internal static Problem For(string traceId, int status, string detail, IReadOnlyList<ProblemError> errors) => new()
    {
        Type = "about:blank",
        Title = ReasonPhrases.GetReasonPhrase(status),
        Status = status,
        Detail = detail,
        TraceId = traceId,
        Errors = errors,
    };

    internal static string TraceIdOf(HttpContext context) => Activity.Current?.TraceId.ToString() ?? context.TraceIdentifier;
}

/// <summary>One error of a request.</summary>
public sealed class ProblemError
{
    /// <summary>Where in the body, as an RFC 6901 JSON pointer in its URI fragment form, for example <c>#/catches/0/gross</c>; absent when it is not about the body.</summary>
    public string? Pointer { get; init; }

    /// <summary>The query parameter it is about; absent when it is not about the query.</summary>
    public string? Parameter { get; init; }

    /// <summary>The header it is about; absent when it is not about a header.</summary>
    public string? Header { get; init; }

    /// <summary>The row of a table it is about, as a spreadsheet counts it: the header is row 1. Absent when what was sent is no table.</summary>
    public long? Row { get; init; }

    /// <summary>The column of a table it is about, as its header writes it; absent when it is about no single column.</summary>
    public string? Column { get; init; }

    /// <summary>Stable code.</summary>
    [KnownWords(typeof(ErrorCode))]
    public required string Code { get; init; }

    /// <summary>What is wrong and what to do.</summary>
    public required string Detail { get; init; }
}
