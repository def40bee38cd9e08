using System.Text.Json;
using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>What the committed contract says, where a test needs more than calls.</summary>
internal static class ContractSchema
{
    private static readonly JsonElement Document = JsonDocument
        .Parse(File.ReadAllBytes(Repository.PathOf("openapi", "v1.json")))
        .RootElement;

    public static IEnumerable<string> Words(string schema, string member) =>
        Strings(
            Document
                .GetProperty("components")
                .GetProperty("schemas")
                .GetProperty(schema)
                .GetProperty("properties")
                .GetProperty(member)
                .GetProperty("enum")
        );

    public static IEnumerable<string> QueryWords(string path, string parameter) =>
        Strings(Parameter(path, parameter).GetProperty("schema").GetProperty("enum"));

    /// <summary>Names of the query parameters of an operation.</summary>
    public static IEnumerable<string> QueryOf(string path) =>
        Parameters(path).Select(parameter => parameter.GetProperty("name").GetString()!);

    /// <summary>Every operation as method and path, for example <c>GET /v1/scales/{id}</c>.</summary>
    public static IEnumerable<string> Operations() =>
        Document
            .GetProperty("paths")
            .EnumerateObject()
            .SelectMany(path => path.Value.EnumerateObject().Select(operation => $"{operation.Name.ToUpperInvariant()} {path.Name}"));

    private static JsonElement Parameter(string path, string name) =>
        Parameters(path).Single(parameter => parameter.GetProperty("name").GetString() == name);

    private static IEnumerable<JsonElement> Parameters(string path) =>
        Document
            .GetProperty("paths")
            .GetProperty(path)
            .GetProperty("get")
            .GetProperty("parameters")
            .EnumerateArray()
            .Select(Resolve)
            .Where(parameter => parameter.GetProperty("in").GetString() == "query");

    // Parameters that operations share stand among the components.
    private static JsonElement Resolve(JsonElement parameter) =>
        parameter.TryGetProperty("$ref", out var reference)
            ? Document.GetProperty("components").GetProperty("parameters").GetProperty(reference.GetString()!.Split('/')[^1])
            : parameter;

    private static IEnumerable<string> Strings(JsonElement list) => list.EnumerateArray().Select(word => word.GetString()!);
}
