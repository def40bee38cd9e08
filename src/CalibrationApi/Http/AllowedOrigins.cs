using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;

namespace CalibrationApi.Http;

/// <summary>Pages of other origins that may call this service from a browser (CORS, WHATWG Fetch); none unless they are configured.</summary>
internal static class AllowedOrigins
{
    public const string Setting = "Calibration:AllowedOrigins";

    private static readonly TimeSpan PreflightAge = TimeSpan.FromMinutes(10);

    // A page reads only those headers of an answer that are named here, besides a few that every page may read.
    private static readonly string[] Exposed =
        [HeaderNames.ETag, HeaderNames.Location, HeaderNames.Link, HeaderNames.RetryAfter, HeaderNames.ContentDisposition, HeaderNames.Allow, "Accept-Post", "Idempotent-Replayed", HeaderNames.WWWAuthenticate];

    private static readonly string[] Taken = [HeaderNames.Authorization, HeaderNames.ContentType, HeaderNames.IfMatch, HeaderNames.IfNoneMatch, "Idempotency-Key"];

    /// <summary>Why the service must not start with what is configured; null when it may.</summary>
    public static string? Refusal(IConfiguration configuration)
    {
        var wrong = Configured(configuration).FirstOrDefault(text => !IsOrigin(text));
        return wrong is null
            ? null
            : $"Refusing to start: '{wrong}' in Calibration__AllowedOrigins is no origin as browsers write it. Give scheme, host and port only, in lower case, such as https://app.example or http://localhost:8080, without a slash at the end and without the scheme's usual port; separate several with semicolons.";
    }

    public static void AddAllowedOrigins(this WebApplicationBuilder builder) => builder.Services.AddCors(cors => cors.AddDefaultPolicy(policy => policy
        .WithOrigins(Configured(builder.Configuration))
        .WithMethods(HttpMethods.Get, HttpMethods.Head, HttpMethods.Post, HttpMethods.Put)
        .WithHeaders(Taken)
        .WithExposedHeaders(Exposed)
        .SetPreflightMaxAge(PreflightAge)));

    public static void UseAllowedOrigins(this WebApplication app)
    {
        if (Configured(app.Configuration).Length == 0)
            return;
        app.Use((context, next) =>
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
        });
        app.UseCors();
    }

    private static string[] Configured(IConfiguration configuration) =>
        (configuration[Setting] ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    // As a browser writes it in its Origin header, because the two are compared letter by letter.
    private static bool IsOrigin(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var uri)
        && (uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeHttps)
        && uri.IdnHost.All(char.IsAscii) && !uri.IdnHost.Contains('*', StringComparison.Ordinal)
        && text == $"{uri.Scheme}://{(uri.HostNameType == UriHostNameType.IPv6 ? uri.Host : uri.IdnHost)}{(uri.IsDefaultPort ? "" : $":{uri.Port}")}";
}
