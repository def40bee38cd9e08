using System.Reflection;
using System.Text.Json.Nodes;

namespace CalibrationApi.Contract;

/// <summary>The examples of the contract, embedded at build time.</summary>
/// <remarks>
/// A calculation is shown with the file of demo-data that bears its name, so that the contract, the first commands of the
/// README and http-examples all show the same question. Everything else is <c>Examples/{operationId}.request.json</c> and
/// <c>.answer.json</c>; tests compare the answers with what the service answers and can rewrite them.
/// </remarks>
internal static class ContractExamples
{
    public static JsonNode? Request(string operationId, string path) =>
        Read($"examples/{operationId}.request.json") ?? Read($"demo-data/{path.Split('/')[^1]}.json");

    public static JsonNode? Answer(string operationId) => Read($"examples/{operationId}.answer.json");

    private static JsonNode? Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name);
        return stream is null ? null : JsonNode.Parse(stream);
    }
}
