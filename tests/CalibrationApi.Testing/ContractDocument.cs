using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace CalibrationApi.Testing;

/// <summary>A contract (OpenAPI 3.1) that bodies can be checked against.</summary>
public sealed class ContractDocument
{
    private const string ComponentSchemas = "#/components/schemas/";

    private static readonly Lazy<ContractDocument> CommittedOnce = new(() =>
        Parse(File.ReadAllText(Repository.PathOf("openapi", "v1.json")))
    );

    // Every document has schemas of its own, so a name in one never means the schema of another.
    private readonly BuildOptions schemas = new() { SchemaRegistry = new SchemaRegistry(), Dialect = Dialect.Draft202012 };
    private readonly Uri address = new($"urn:uuid:{Guid.NewGuid()}");
    private readonly Dictionary<string, JsonSchema> compiled = new(StringComparer.Ordinal);
    private readonly Lock compiling = new();

    private readonly Lazy<CodeUse> codes;
    private readonly Lazy<SentCodes> sent;

    private ContractDocument(JsonObject json)
    {
        Json = json;
        codes = new(() => new CodeUse(this));
        sent = new(() => new SentCodes(this));
        Operations =
        [
            .. json["paths"]!
                .AsObject()
                .SelectMany(path =>
                    path.Value!.AsObject()
                        .Where(member => ContractOperation.Methods.Contains(member.Key))
                        .Select(member => new ContractOperation(member.Key.ToUpperInvariant(), path.Key, member.Value!.AsObject(), this))
                ),
        ];
        // The references of the document point into components/schemas; as a schema document of its own they stand in $defs.
        var definitions = JsonNode.Parse(
            json["components"]!["schemas"]!.ToJsonString().Replace(ComponentSchemas, "#/$defs/", StringComparison.Ordinal)
        )!;
        _ = JsonSchema.FromText(new JsonObject { ["$id"] = address.ToString(), ["$defs"] = definitions }.ToJsonString(), schemas);
    }

    /// <summary>The contract in <c>openapi/v1.json</c>.</summary>
    public static ContractDocument Committed => CommittedOnce.Value;

    /// <summary>The document.</summary>
    public JsonObject Json { get; }

    internal CodeUse Codes => codes.Value;

    internal SentCodes Sent => sent.Value;

    /// <summary>Every operation, in the order of the document.</summary>
    public IReadOnlyList<ContractOperation> Operations { get; }

    /// <summary>Reads a contract.</summary>
    public static ContractDocument Parse(string json) => new(JsonNode.Parse(json)!.AsObject());

    /// <summary>The operations at a path of a request, whatever their method; literal parts of a path go before parameters.</summary>
    public IReadOnlyList<ContractOperation> At(string path) =>
        [
            .. Operations
                .Where(operation => operation.Matches(path))
                .GroupBy(operation => operation.Path)
                .OrderBy(group => group.First().ParameterCount)
                .FirstOrDefault()
                ?? Enumerable.Empty<ContractOperation>(),
        ];

    /// <summary>What a reference of the document leads to; the node itself when it is none.</summary>
    public JsonObject Resolve(JsonNode node)
    {
        var here = node.AsObject();
        while (here["$ref"] is { } reference)
        {
            JsonNode target = Json;
            foreach (var part in reference.GetValue<string>().TrimStart('#', '/').Split('/'))
                target = target[part.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal)]!;
            here = target.AsObject();
        }

        return here;
    }

    /// <summary>How an instance differs from a schema of this document: a JSON pointer and a sentence for each fault.</summary>
    public IReadOnlyList<string> Faults(JsonNode schema, JsonElement instance)
    {
        var results = Compile(schema)
            .Evaluate(instance, new EvaluationOptions { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        if (results.IsValid)
            return [];
        var faults = (results.Details ?? [])
            .Where(detail => detail.Errors is { Count: > 0 })
            .SelectMany(detail => detail.Errors!.Select(error => $"#{detail.InstanceLocation}: {error.Value}"))
            .Distinct()
            .ToArray();
        return faults.Length > 0 ? faults : ["#: does not fit its schema"];
    }

    private JsonSchema Compile(JsonNode schema)
    {
        var text = schema.ToJsonString().Replace(ComponentSchemas, $"{address}#/$defs/", StringComparison.Ordinal);
        lock (compiling)
        {
            if (!compiled.TryGetValue(text, out var found))
                compiled[text] = found = JsonSchema.FromText(text, schemas);
            return found;
        }
    }
}
