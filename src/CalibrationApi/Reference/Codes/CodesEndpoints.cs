using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Operations;

namespace CalibrationApi.Reference.Codes;

/// <summary>Routes of the codes: as data and as a page.</summary>
internal static class CodesEndpoints
{
    /// <summary>The codes change only with a new version of the service.</summary>
    public const string ForAnHour = "public, max-age=3600";

    public static void MapCodes(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet("/codes", ListCodes.Handle)
            .WithName("listCodes")
            .WithTags("Codes")
            .IsPublic()
            .Sends("Cache-Control", "The list may be kept for an hour; it changes only with a new version of the service.");

    /// <summary>The page stands beside the reference page and is not part of the contract.</summary>
    public static void MapCodePage(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/reference/codes", (HttpResponse response) =>
            {
                response.Headers.CacheControl = ForAnHour;
                // The page holds its own style, takes its one script from here, and needs nothing from anywhere else.
                response.Headers.ContentSecurityPolicy =
                    "default-src 'none'; script-src 'self'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
                return Results.Content(CodePage.Html, "text/html; charset=utf-8");
            })
            .IsPublic()
            .ExcludeFromDescription();
        routes
            .MapGet("/reference/codes-page.js", () => Results.Text(Script.Value, "text/javascript; charset=utf-8"))
            .IsPublic()
            .ExcludeFromDescription();
    }

    private static readonly Lazy<string> Script = new(() =>
    {
        using var script = new StreamReader(typeof(CodesEndpoints).Assembly.GetManifestResourceStream("codes-page.js")!);
        return script.ReadToEnd();
    });
}
