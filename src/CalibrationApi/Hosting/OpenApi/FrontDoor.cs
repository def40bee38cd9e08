using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>The address without a path: a person gets the reference page, a program is told where the contract is.</summary>
internal static class FrontDoor
{
    private const string Page = "text/html";
    private const string Json = "application/json";

    // Link relations of RFC 8631, for programs that read headers only.
    private const string Links =
        "</openapi/v1.json>; rel=\"service-desc\"; type=\"application/json\", </reference>; rel=\"service-doc\"; type=\"text/html\", </healthz/ready>; rel=\"status\"";

    private static readonly string Told = new JsonObject
    {
        ["name"] = "Calibration API",
        ["contract"] = "/openapi/v1.json",
        ["reference"] = "/reference/index.html",
        ["codes"] = "/reference/codes",
        ["units"] = "/v1/units",
        ["health"] = "/healthz/ready",
    }.ToJsonString();

    public static void MapFrontDoor(this WebApplication app) => app.MapGet("/", Answer).IsPublic().ExcludeFromDescription();

    private static IResult Answer(HttpContext context)
    {
        context.Response.Headers.Link = Links;
        context.Response.Headers.Vary = "Accept";
        return MediaTypes.Best(context.Request, [Json, Page]) == Page
            ? TypedResults.Redirect("/reference/")
            : TypedResults.Text(Told, Json);
    }
}
