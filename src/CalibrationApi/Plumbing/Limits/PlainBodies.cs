using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Operations;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>Takes bodies only as they are: a compressed one could unpack to anything (RFC 9110 section 12.5.3, RFC 7694).</summary>
internal static class PlainBodies
{
    private const string Identity = "identity";

    public static Task RefuseCompressedAsync(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        // Where nobody reads a body, what came with the request does not matter.
        if (
            !TakesBody(context.GetEndpoint())
            || request.Headers.ContentEncoding.Count == 0
            || !HasBody(context)
            || request.Headers.ContentEncoding.All(IsIdentity)
        )
            return next(context);
        // What would be taken instead.
        context.Response.Headers.AcceptEncoding = Identity;
        if (Posted(context.GetEndpoint()) is { } posted)
            context.Response.Headers["Accept-Post"] = posted.Types;
        return ProblemResult
            .Of(
                StatusCodes.Status415UnsupportedMediaType,
                ErrorCodes.EncodingUnsupported,
                "Compressed bodies are not taken. Send the body as it is, without Content-Encoding."
            )
            .ExecuteAsync(context);
    }

    private static bool TakesBody(Endpoint? route) =>
        route?.Metadata.GetMetadata<IAcceptsMetadata>() is not null || Posted(route) is not null;

    private static PostedMedia? Posted(Endpoint? route) => route?.Metadata.GetMetadata<PostedMedia>();

    private static bool IsIdentity(string? coding) => Identity.Equals(coding, StringComparison.OrdinalIgnoreCase);

    private static bool HasBody(HttpContext context) =>
        context.Features.Get<IHttpRequestBodyDetectionFeature>()?.CanHaveBody ?? context.Request.ContentLength > 0;
}
