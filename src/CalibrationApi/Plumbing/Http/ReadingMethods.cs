namespace CalibrationApi.Plumbing.Http;

/// <summary>HEAD and OPTIONS, for every address that answers GET or anything else (RFC 9110 sections 9.3.2 and 9.3.7).</summary>
internal static class ReadingMethods
{
    /// <summary>Comes first in the pipeline: HEAD runs as GET, and what is written is thrown away.</summary>
    public static void UseHeadAsGet(this WebApplication app) =>
        app.Use((context, next) => HttpMethods.IsHead(context.Request.Method) ? HeadAsync(context, next) : next(context));

    private static async Task HeadAsync(HttpContext context, RequestDelegate next)
    {
        var body = context.Response.Body;
        context.Request.Method = HttpMethods.Get;
        context.Response.Body = Stream.Null;
        try
        {
            await next(context);
        }
        finally
        {
            context.Response.Body = body;
            context.Request.Method = HttpMethods.Head;
        }
    }

    /// <summary>
    /// What may be asked of an address for which routing found that the method does not fit; true when that was the question.
    /// </summary>
    public static bool AnswersOptions(HttpContext context)
    {
        var response = context.Response;
        if (response.StatusCode != StatusCodes.Status405MethodNotAllowed)
            return false;
        var allowed = response.Headers.GetCommaSeparatedValues("Allow");
        if (allowed.Contains(HttpMethods.Get) && !allowed.Contains(HttpMethods.Head))
            response.Headers.Allow = string.Join(", ", allowed.Append(HttpMethods.Head));
        if (!HttpMethods.IsOptions(context.Request.Method))
            return false;
        response.StatusCode = StatusCodes.Status204NoContent;
        return true;
    }
}
