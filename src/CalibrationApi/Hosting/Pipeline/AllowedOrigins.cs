using CalibrationApi.Plumbing.Limits;
using CalibrationApi.Plumbing.Settings;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace CalibrationApi.Hosting.Pipeline;

/// <summary>
/// Pages of other origins that may call this service from a browser (CORS, WHATWG Fetch); none unless they are configured.
/// </summary>
internal static class AllowedOrigins
{
    private static readonly TimeSpan PreflightAge = TimeSpan.FromMinutes(10);

    // A page reads only those headers of an answer that are named here, besides a few that every page may read.
    private static readonly string[] Exposed =
    [
        HeaderNames.ETag,
        HeaderNames.Location,
        HeaderNames.Link,
        HeaderNames.RetryAfter,
        HeaderNames.ContentDisposition,
        HeaderNames.Allow,
        "Accept-Post",
        "Idempotent-Replayed",
        HeaderNames.WWWAuthenticate,
        RateLimitFields.Policies,
        RateLimitFields.Standings,
    ];

    private static readonly string[] Taken =
    [
        HeaderNames.Authorization,
        HeaderNames.ContentType,
        HeaderNames.IfMatch,
        HeaderNames.IfNoneMatch,
        "Idempotency-Key",
        HeaderNames.TraceParent,
    ];

    public static void AddAllowedOrigins(this IServiceCollection services, CalibrationSettings settings) =>
        services.AddCors(cors =>
            cors.AddDefaultPolicy(policy =>
                policy
                    .WithOrigins([.. settings.AllowedOrigins])
                    .WithMethods(HttpMethods.Get, HttpMethods.Head, HttpMethods.Post, HttpMethods.Put)
                    .WithHeaders(Taken)
                    .WithExposedHeaders(Exposed)
                    .SetPreflightMaxAge(PreflightAge)
            )
        );

    public static void UseAllowedOrigins(this WebApplication app)
    {
        if (app.Services.GetRequiredService<CalibrationSettings>().AllowedOrigins.Count == 0)
            return;
        app.Use(
            (context, next) =>
            {
                // To every answer, also to those without an origin: a cache must not give to one page what was made for another.
                context.Response.OnStarting(() =>
                {
                    var vary = context.Response.Headers.Vary;
                    if (!vary.Contains(HeaderNames.Origin))
                        context.Response.Headers.Vary = StringValues.Concat(vary, HeaderNames.Origin);
                    return Task.CompletedTask;
                });
                return next(context);
            }
        );
        app.UseCors();
    }
}
