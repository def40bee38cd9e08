using System.IO.Compression;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Operations;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Net.Http.Headers;

namespace CalibrationApi.Hosting.Pipeline;

/// <summary>Sends public documents and lists of records compressed to whoever can read that, and nothing else.</summary>
/// <remarks>
/// The length of a compressed answer tells whether what a caller sent occurs in it a second time. An answer that repeats the request
/// beside a secret gives the secret away so, letter by letter. Hence questions, records, keys, the audit and problems go out as they are.
/// </remarks>
internal static class CompressedAnswers
{
    private const string Weak = "W/";

    // It is no route; the files of the reference page come packed from their library.
    private const string Contract = "/openapi";

    public static void AddCompressedAnswers(this IServiceCollection services)
    {
        // At its fastest it packs the contract worse than gzip does.
        services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Optimal);
        services.AddResponseCompression(compression =>
        {
            // What is compressed holds no secret beside what was sent, so TLS gives nothing away.
            compression.EnableForHttps = true;
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
            compression.MimeTypes =
            [
                "application/json",
                "application/x-ndjson",
                "application/yaml",
                "application/javascript",
                "text/csv",
                "text/html",
                "text/css",
                "text/javascript",
            ];
        });
    }

    /// <summary>Comes after the routing, which says what the answer will be.</summary>
    public static void UseCompressedAnswers(this WebApplication app) => app.UseWhen(MayBeCompressed, branch =>
        {
            branch.Use(
                (context, next) =>
                {
                    context.Response.OnStarting(static state => Tell((HttpContext)state), context);
                    return next(context);
                }
            );
            branch.UseResponseCompression();
        });

    /// <summary>Whether an answer holds nothing that its length could give away.</summary>
    public static bool MayBeCompressed(EndpointMetadataCollection route) =>
        route.GetMetadata<IAllowAnonymous>() is not null
        || (route.GetMetadata<PlainList>() is not null && route.GetMetadata<NeededScope>()?.Scope == Scope.Read);

    private static bool MayBeCompressed(HttpContext context) =>
        HttpMethods.IsGet(context.Request.Method)
        && (context.Request.Path.StartsWithSegments(Contract) || (context.GetEndpoint() is { } route && MayBeCompressed(route.Metadata)));

    // The same document has other bytes in each encoding, and one tag for all of them: a weak one (RFC 9110, section 8.8.1), which
    // If-None-Match compares as such (section 13.1.2).
    private static Task Tell(HttpContext context)
    {
        var headers = context.Response.Headers;
        if (!headers.Vary.ToString().Contains(HeaderNames.AcceptEncoding, StringComparison.OrdinalIgnoreCase))
            headers.Append(HeaderNames.Vary, HeaderNames.AcceptEncoding);
        if (headers.ETag.ToString() is { Length: > 0 } tag && !tag.StartsWith(Weak, StringComparison.Ordinal))
            headers.ETag = Weak + tag;
        return Task.CompletedTask;
    }
}
