using System.Text;
using System.Text.Json;

namespace CalibrationApi.Contract.Tests;

/// <summary>Compares what a page prints with what the service answers.</summary>
internal static class PrintedAnswer
{
    // The last digits may differ from one processor family to another.
    private const double SameNumber = 1e-9;

    /// <summary>Every value inside a value, itself included.</summary>
    public static IEnumerable<JsonElement> Nodes(JsonElement node)
    {
        yield return node;
        var children = node.ValueKind switch
        {
            JsonValueKind.Object => node.EnumerateObject().Select(member => member.Value),
            JsonValueKind.Array => node.EnumerateArray(),
            _ => [],
        };
        foreach (var below in children.SelectMany(Nodes))
            yield return below;
    }

    /// <summary>
    /// Whether a value printed is a part of an answer: an object may leave members out; everything else is printed whole.
    /// </summary>
    public static bool IsPart(JsonElement shown, JsonElement answered) =>
        shown.ValueKind == answered.ValueKind
        && shown.ValueKind switch
        {
            JsonValueKind.Object => shown
                .EnumerateObject()
                .All(member =>
                    answered.TryGetProperty(member.Name, out var value)
                        ? IsPart(member.Value, value)
                        // A filter writes null for what is absent.
                        : member.Value.ValueKind == JsonValueKind.Null
                ),
            JsonValueKind.Array => shown.GetArrayLength() == answered.GetArrayLength()
                && shown.EnumerateArray().Zip(answered.EnumerateArray()).All(pair => IsPart(pair.First, pair.Second)),
            JsonValueKind.Number => Math.Abs(shown.GetDouble() - answered.GetDouble()) <= SameNumber * Math.Abs(answered.GetDouble()),
            JsonValueKind.String => shown.GetString() == answered.GetString(),
            _ => true,
        };

    /// <summary>Lines of text, each as a value.</summary>
    public static IEnumerable<JsonElement> Lines(string output) =>
        output.Split(["\r\n", "\n"], StringSplitOptions.RemoveEmptyEntries).Select(line => JsonSerializer.SerializeToElement(line));

    /// <summary>Values of JSON, one after the other.</summary>
    public static JsonElement[] Values(string output)
    {
        var values = new List<JsonElement>();
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(output), new JsonReaderOptions { AllowMultipleValues = true });
        while (reader.Read())
            values.Add(JsonElement.ParseValue(ref reader));
        return [.. values];
    }
}
