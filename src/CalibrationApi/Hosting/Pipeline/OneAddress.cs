using Microsoft.AspNetCore.Routing.Patterns;

namespace CalibrationApi.Hosting.Pipeline;

/// <summary>
/// Takes each address only as the contract writes it: in lower case, without a slash at the end; knows a method in capitals.
/// </summary>
/// <remarks>
/// Routes by themselves take further spellings. Whatever goes by the address would then be told apart where it is the
/// same: an Idempotency-Key would not hold for a repetition that is spelled differently, and rules of a proxy for a path
/// could be walked around.
/// </remarks>
internal static class OneAddress
{
    private const string Versions = "/v";

    /// <summary>Comes before routing, after what gives an empty refusal its body.</summary>
    public static void UseOneAddress(this WebApplication app)
    {
        var words = new Lazy<HashSet<string>>(() => Words(app.Services.GetRequiredService<EndpointDataSource>()));
        app.Use(
            (context, next) =>
            {
                context.Request.Method = HttpMethods.GetCanonicalizedValue(context.Request.Method);
                var path = context.Request.Path.Value!;
                if (!path.StartsWith(Versions, StringComparison.OrdinalIgnoreCase) || !(path.EndsWith('/') || IsMisspelled(path, words)))
                    return next(context);
                context.Response.StatusCode = StatusCodes.Status404NotFound;
                return Task.CompletedTask;
            }
        );
    }

    private static bool IsMisspelled(string path, Lazy<HashSet<string>> words) =>
        path.AsSpan().ContainsAnyInRange('A', 'Z')
        && path.Split('/').Any(segment => words.Value.TryGetValue(segment, out var word) && word != segment);

    private static HashSet<string> Words(EndpointDataSource endpoints) =>
        endpoints
            .Endpoints.OfType<RouteEndpoint>()
            .SelectMany(endpoint =>
                endpoint.RoutePattern.PathSegments.SelectMany(segment => segment.Parts).OfType<RoutePatternLiteralPart>()
            )
            .Select(part => part.Content)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
}
