using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Settings;
using Microsoft.AspNetCore.Diagnostics;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>
/// One line for each request: what was asked by its route, how it ended, how long it took, by which key. Nothing of what was sent.
/// </summary>
/// <remarks>
/// Addresses are written as route templates: whatever a client puts into a path or a query, be it a key, does not get into the
/// log. Refused requests cost their sender nothing, so only so many a minute get a line, and so many that failed; the others are counted.
/// </remarks>
internal sealed partial class RequestLog(CalibrationSettings settings, TimeProvider clock, FailureLines failures, ILoggerFactory loggers)
{
    // A name without a point: a shell exports no variable with one, and the name is part of Logging__LogLevel__….
    public const string Category = "CalibrationRequests";

    private readonly ILogger log = loggers.CreateLogger(Category);
    private readonly LineBudget refused = new(settings.RefusedRequestsLoggedPerMinute, clock);

    public async Task LogAsync(HttpContext context, RequestDelegate next)
    {
        if (!log.IsEnabled(LogLevel.Warning))
        {
            await next(context);
            return;
        }

        var start = clock.GetTimestamp();
        try
        {
            await next(context);
        }
        finally
        {
            Write(context, clock.GetElapsedTime(start));
        }
    }

    private void Write(HttpContext context, TimeSpan duration)
    {
        var status = context.Response.StatusCode;
        if (!IsToBeTold(context, status))
            return;
        var level = status >= 500 ? LogLevel.Warning : LogLevel.Information;
        var method = KnownMethod(context.Request.Method);
        var route = RouteOf(context) ?? "-";
        var milliseconds = Math.Round(duration.TotalMilliseconds, 3);
        var key = Requester.KeyOf(context) ?? "-";
        Answered(log, level, method, route, status, milliseconds, key, context.TraceIdentifier);
    }

    // A method is whatever its sender writes.
    private static string KnownMethod(string method) =>
        HttpMethods.IsGet(method)
        || HttpMethods.IsPost(method)
        || HttpMethods.IsPut(method)
        || HttpMethods.IsHead(method)
        || HttpMethods.IsOptions(method)
        || HttpMethods.IsDelete(method)
        || HttpMethods.IsPatch(method)
            ? HttpMethods.GetCanonicalizedValue(method)
            : "other";

    /// <summary>The template of the route that a request took; null when it took none.</summary>
    public static string? RouteOf(HttpContext context)
    {
        // After a failure the route is only known to the handler of failures.
        var endpoint = context.GetEndpoint() ?? context.Features.Get<IExceptionHandlerFeature>()?.Endpoint;
        return (endpoint as RouteEndpoint)?.RoutePattern.RawText;
    }

    private bool IsToBeTold(HttpContext context, int status)
    {
        if (status < 400)
            return true;
        if (status >= 500)
            return failures.Tells(context);
        var (isToBeTold, untoldBefore) = refused.Take();
        if (untoldBefore > 0)
            NotTold(log, untoldBefore);
        return isToBeTold;
    }

    [LoggerMessage(Message = "{Method} {Route} {Status} {Milliseconds} ms, key {Key}, request {RequestId}")]
    private static partial void Answered(
        ILogger log,
        LogLevel level,
        string method,
        string route,
        int status,
        double milliseconds,
        string key,
        string requestId
    );

    [LoggerMessage(
        Level = LogLevel.Information,
        Message = "{Count} more requests were refused before this one and got no line of their own."
    )]
    private static partial void NotTold(ILogger log, int count);
}
