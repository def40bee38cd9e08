namespace CalibrationApi.Hosting.Pipeline;

/// <summary>Headers with which browsers and caches are told what they must not do with an answer.</summary>
internal static class SecurityHeaders
{
    // Answers are data: nothing in them runs, loads anything or stands in a frame.
    private const string OfData = "default-src 'none'; frame-ancestors 'none'";

    // The page is made of files of this service and calls this service only. Its library writes styles into the page, and
    // makes a function of the text that it is handed for trying requests.
    private const string OfReferencePage =
        "default-src 'none'; script-src 'self' 'unsafe-eval'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private static readonly TimeSpan OverTlsOnly = TimeSpan.FromDays(365);

    public static void AddSecurityHeaders(this IServiceCollection services) => services.AddHsts(hsts => hsts.MaxAge = OverTlsOnly);

    /// <summary>Comes before everything that answers.</summary>
    public static void UseSecurityHeaders(this WebApplication app) =>
        app.Use(
            (context, next) =>
            {
                // At the last moment: a failure on the way clears what was set before.
                context.Response.OnStarting(static state => Write((HttpContext)state), context);
                return next(context);
            }
        );

    private static Task Write(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        // A page that needs less says so itself.
        if (headers.ContentSecurityPolicy.Count == 0)
            headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments("/reference") ? OfReferencePage : OfData;
        // Nobody has to know which version of it.
        headers.Remove("x-swagger-ui-version");
        if (headers.CacheControl.Count == 0)
            headers.CacheControl = "no-store";
        return Task.CompletedTask;
    }
}
