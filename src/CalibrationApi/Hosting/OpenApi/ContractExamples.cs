using System.Reflection;
using System.Text.Json.Nodes;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>The examples of the contract, embedded at build time.</summary>
/// <remarks>
/// A calculation is shown with the file of demo-data that bears its name, a record with the first one of its kind in the demo
/// season, so that the contract, the README and http-examples all show the same. Whatever demo-data does not hold is
/// <c>Examples/{operationId}.request.json</c>. Answers are <c>Examples/{operationId}.answer.json</c>; tests compare them with
/// what the service answers over the demo season, and can rewrite them.
/// </remarks>
internal static class ContractExamples
{
    private static readonly Lazy<JsonArray> Season = new(() => Read("demo-data/season.json")?["requests"]?.AsArray() ?? []);

    public static JsonNode? Request(string operationId, string path) =>
        Read($"examples/{operationId}.request.json") ?? Read($"demo-data/{path.Split('/')[^1]}.json") ?? OfSeason(path);

    public static JsonNode? Answer(string operationId) => Read($"examples/{operationId}.answer.json");

    // A record is replaced by what could have created it.
    private static JsonNode? OfSeason(string path)
    {
        var collection = "/" + path.Replace("/{id}", "", StringComparison.Ordinal).TrimEnd('/');
        return Season.Value.FirstOrDefault(request => request!["path"]!.GetValue<string>() == collection)?["body"]?.DeepClone();
    }

    /// <summary>Problems of a status: a name for each, what is wrong in the request, and the body.</summary>
    public static JsonObject Problems(string status) => Read("examples/problems.json")?[status]?.AsObject() ?? [];

    private static JsonNode? Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name);
        return stream is null ? null : JsonNode.Parse(stream);
    }
}
