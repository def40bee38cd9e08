using System.Security.Cryptography;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>Answers with a record: body, entity tag, and 304 when the client has it already.</summary>
/// <param name="answer">The answer.</param>
/// <param name="isKept">A client may keep a copy; false for what is shown once.</param>
internal sealed class RecordResult(StoredAnswer answer, bool isKept = true) : IResult
{
    public RecordResult(byte[] body, string? etag = null)
        : this(new StoredAnswer(StatusCodes.Status200OK, null, etag ?? Tag(body), body)) { }

    /// <summary>An entity tag made of the body itself: another representation gets another tag.</summary>
    public static string Tag(byte[] body) => $"\"{Convert.ToHexStringLower(SHA256.HashData(body).AsSpan(0, 12))}\"";

    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        if (answer.ETag is { } tag)
            response.Headers.ETag = tag;
        response.Headers.CacheControl = isKept ? "private, no-cache" : "no-store";
        if (HttpMethods.IsGet(httpContext.Request.Method) && Matches(httpContext.Request.Headers.IfNoneMatch.ToString(), answer.ETag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return Task.CompletedTask;
        }

        response.StatusCode = answer.Status;
        if (answer.Location is { } location)
            response.Headers.Location = location;
        response.ContentType = "application/json; charset=utf-8";
        response.ContentLength = answer.Body.Length;
        return response.Body.WriteAsync(answer.Body).AsTask();
    }

    // If-None-Match compares weakly (RFC 9110 13.1.2).
    private static bool Matches(string header, string? tag) =>
        tag is not null
        && header.Length > 0
        && header
            .Split(',', StringSplitOptions.TrimEntries)
            .Any(one => one == "*" || one == tag || (one.StartsWith("W/", StringComparison.Ordinal) && one[2..] == tag));
}
