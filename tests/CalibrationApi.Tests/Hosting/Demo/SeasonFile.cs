using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Hosting.Demo;

/// <summary>The requests of the invented season, as the file holds them.</summary>
internal static class SeasonFile
{
    /// <summary>Path and body of each request, in order.</summary>
    public static IReadOnlyList<(string Path, JsonObject Body)> Requests { get; } =
    [
        .. JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "demo-data", "season.json")))!["requests"]!
            .AsArray()
            .Select(request => (request!["path"]!.GetValue<string>(), request["body"]!.AsObject())),
    ];

    public static IReadOnlyList<JsonObject> CatchTests { get; } = [.. Of("/v1/catch-tests")];

    public static IReadOnlyList<JsonObject> Adoptions { get; } = [.. Of("/v1/adoptions")];

    public static IReadOnlyList<JsonObject> Plans { get; } = [.. Of("/v1/plans")];

    /// <summary>What happened at a time: tests, adoptions, checks of scales.</summary>
    public static IReadOnlyList<JsonObject> Evidence { get; } =
    [.. Requests.Select(request => request.Body).Where(body => body.ContainsKey("occurredAt"))];

    public static string Id(JsonObject body) => body["id"]!.GetValue<string>();

    private static IEnumerable<JsonObject> Of(string path) =>
        Requests.Where(request => request.Path == path).Select(request => request.Body);
}
