using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>A request that gives every member that its schema knows: the example, with what it leaves out made up.</summary>
/// <remarks>
/// Members that exclude each other stand side by side in it, so the service refuses it as a whole. What it says about one
/// place of it is still what the tests are after.
/// </remarks>
internal sealed class FullRequest
{
    private readonly ContractDocument contract;
    private readonly JsonNode body;

    public FullRequest(ContractDocument contract, ContractOperation operation)
    {
        this.contract = contract;
        Operation = operation;
        body = Complete(operation.RequestSchema!, operation.RequestExample);
        Places = [.. Below("#", operation.RequestSchema!, body, [], [])];
    }

    public ContractOperation Operation { get; }

    /// <summary>Every place of the request, the whole of it first.</summary>
    public IReadOnlyList<Place> Places { get; }

    /// <summary>A request with one place changed.</summary>
    public HttpRequestMessage With(Place place, Action<JsonNode> change)
    {
        var changed = body.DeepClone();
        change(place.In(changed));
        return ExampleCalls.With(Operation, changed);
    }

    /// <summary>The same without what may be left out beside that place, and so without what excludes it.</summary>
    public HttpRequestMessage Alone(Place place, Action<JsonNode> change) => With(place, here =>
        {
            foreach (
                var name in here.Parent is JsonObject parent
                    ? parent.Select(member => member.Key).Except([.. place.NeededBeside, (string)place.Steps[^1]]).ToArray()
                    : []
            )
                here.Parent!.AsObject().Remove(name);
            change(here);
        });

    private JsonNode Complete(JsonNode schema, JsonNode? given)
    {
        var here = contract.Resolve(schema);
        switch (here["type"]!.GetValue<string>())
        {
            case "object":
                return new JsonObject(
                    (here["properties"]?.AsObject() ?? []).Select(member =>
                        KeyValuePair.Create(member.Key, (JsonNode?)Complete(member.Value!, given?[member.Key]))
                    )
                );
            case "array":
                var items = given is JsonArray { Count: > 0 } array ? array.ToArray() : [null];
                return new JsonArray([.. items.Select(item => Complete(here["items"]!, item))]);
            default:
                return given?.DeepClone() ?? MadeUp(here);
        }
    }

    private static JsonNode MadeUp(JsonObject schema) =>
        schema["type"]!.GetValue<string>() switch
        {
            _ when schema["enum"] is { } words => words[0]!.DeepClone(),
            "boolean" => false,
            "integer" => (int)(Bound(schema, "minimum") ?? Bound(schema, "exclusiveMinimum") + 1 ?? 1),
            "number" => Bound(schema, "minimum") ?? Bound(schema, "exclusiveMinimum") + 1 ?? 1,
            _ => schema["pattern"]?.GetValue<string>() == "^[A-Z]{3}$" ? "EUR" : "x",
        };

    private static double? Bound(JsonObject schema, string keyword) =>
        schema[keyword] is { } bound ? double.Parse(bound.ToJsonString(), CultureInfo.InvariantCulture) : null;

    private IEnumerable<Place> Below(string pointer, JsonNode schema, JsonNode value, object[] steps, string[] needed)
    {
        var here = contract.Resolve(schema);
        string[] required = [.. (here["required"]?.AsArray() ?? []).Select(name => name!.GetValue<string>())];
        yield return new Place(pointer, here, schema["description"]?.GetValue<string>() ?? "", value, steps, needed);
        if (value is JsonObject members)
        {
            foreach (var (name, member) in members)
            {
                foreach (var place in Below($"{pointer}/{name}", here["properties"]![name]!, member!, [.. steps, name], required))
                    yield return place;
            }
        }
        else if (value is JsonArray items)
        {
            // One item stands for all.
            foreach (var place in Below($"{pointer}/0", here["items"]!, items[0]!, [.. steps, 0], []))
                yield return place;
        }
    }

    /// <summary>One place of a request.</summary>
    /// <param name="Pointer">Where it is, as problems name it.</param>
    /// <param name="Schema">What the contract says of it.</param>
    /// <param name="Description">What it says of it in words, at this place.</param>
    /// <param name="Value">What stands there.</param>
    /// <param name="Steps">Names and indices that lead to it.</param>
    /// <param name="NeededBeside">Members that have to stand beside it.</param>
    internal sealed record Place(
        string Pointer,
        JsonObject Schema,
        string Description,
        JsonNode Value,
        object[] Steps,
        string[] NeededBeside
    )
    {
        public string Type => Schema["type"]!.GetValue<string>();

        /// <summary>A number that the contract states as a bound of this place.</summary>
        public double? Limit(string keyword) => Bound(Schema, keyword);

        /// <summary>This place in a copy of the request.</summary>
        public JsonNode In(JsonNode root) => Steps.Aggregate(root, (node, step) => (step is int index ? node[index] : node[(string)step])!);

        /// <summary>An error at this place: it names the place, or for a part of a quantity the quantity.</summary>
        public bool IsAbout(JsonNode error) =>
            error["pointer"]?.GetValue<string>() is { } pointer && (pointer == Pointer || pointer == Parent);

        private string Parent => Pointer[..Math.Max(1, Pointer.LastIndexOf('/'))];
    }
}
