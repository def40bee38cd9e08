using System.Globalization;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests;

/// <summary>A request body that a test changes at single places before it sends it.</summary>
internal sealed class Draft(JsonNode body)
{
    public JsonNode Body { get; } = body;

    public string Text => Body.ToJsonString();

    public static Draft Of(string json) => new(JsonNode.Parse(json)!);

    public static JsonNode Json(string json) => JsonNode.Parse(json)!;

    public static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };

    /// <summary>What stands at a pointer; null for nothing.</summary>
    public JsonNode? At(string pointer)
    {
        var (parent, name) = Parent(pointer);
        return parent is JsonArray array ? array[int.Parse(name, CultureInfo.InvariantCulture)] : parent[name];
    }

    /// <summary>Puts a value at a pointer such as <c>/catches/0/gross</c>.</summary>
    public Draft With(string pointer, JsonNode? value)
    {
        var (parent, name) = Parent(pointer);
        if (parent is JsonArray array)
            array[int.Parse(name, CultureInfo.InvariantCulture)] = value;
        else
            parent[name] = value;
        return this;
    }

    public Draft Without(string pointer)
    {
        var (parent, name) = Parent(pointer);
        if (parent is JsonArray array)
            array.RemoveAt(int.Parse(name, CultureInfo.InvariantCulture));
        else if (!parent.AsObject().Remove(name))
            throw new ArgumentException($"There is no {pointer} to take away.", nameof(pointer));
        return this;
    }

    /// <summary>Appends to the array at a pointer.</summary>
    public Draft Add(string pointer, JsonNode value)
    {
        At(pointer)!.AsArray().Add(value);
        return this;
    }

    private (JsonNode Parent, string Name) Parent(string pointer)
    {
        var parts = pointer.TrimStart('/').Split('/');
        var node = Body;
        foreach (var part in parts[..^1])
            node = (node is JsonArray array ? array[int.Parse(part, CultureInfo.InvariantCulture)] : node[part])
                ?? throw new ArgumentException($"There is no {part} on the way to {pointer}.", nameof(pointer));
        return (node, parts[^1]);
    }
}
