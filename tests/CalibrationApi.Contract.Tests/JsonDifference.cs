using System.Text.Json;
using System.Text.Json.Nodes;

namespace CalibrationApi.Contract.Tests;

/// <summary>
/// Compares JSON: numbers to a relative 1e-9, because the last digits of a function differ between processors; addresses of
/// next pages, cursors and texts of keys by their being there, because every database signs its own and neither a key nor a trace comes
/// twice; all else exactly.
/// </summary>
internal static class JsonDifference
{
    private const double SameNumber = 1e-9;

    /// <summary>The first place where two values differ, with both; null when they are alike.</summary>
    public static string? First(JsonNode? expected, JsonNode? actual, string pointer = "#") =>
        (expected, actual) switch
        {
            (JsonObject one, JsonObject other) => Members(one, other, pointer),
            (JsonArray one, JsonArray other) => Items(one, other, pointer),
            (JsonValue, JsonValue) when pointer is "#/next" or "#/after" or "#/key" || IsMadeAnew(pointer) => null,
            _ => Same(expected, actual) ? null : $"{pointer}: {Shown(expected)} was expected, {Shown(actual)} came",
        };

    private static bool IsMadeAnew(string pointer) =>
        pointer.EndsWith("/traceId", StringComparison.Ordinal) || pointer.EndsWith("/cursor", StringComparison.Ordinal);

    private static string? Members(JsonObject expected, JsonObject actual, string pointer)
    {
        foreach (var name in expected.Select(member => member.Key).Union(actual.Select(member => member.Key)))
        {
            if (First(expected[name], actual[name], $"{pointer}/{name}") is { } difference)
                return difference;
        }

        return null;
    }

    private static string? Items(JsonArray expected, JsonArray actual, string pointer)
    {
        if (expected.Count != actual.Count)
            return $"{pointer}: {expected.Count} items were expected, {actual.Count} came";
        return expected
            .Zip(actual)
            .Select((pair, i) => First(pair.First, pair.Second, $"{pointer}/{i}"))
            .FirstOrDefault(difference => difference is not null);
    }

    private static bool Same(JsonNode? expected, JsonNode? actual)
    {
        if (expected?.GetValueKind() != JsonValueKind.Number || actual?.GetValueKind() != JsonValueKind.Number)
            return JsonNode.DeepEquals(expected, actual);
        var (one, other) = (expected.GetValue<double>(), actual.GetValue<double>());
        return Math.Abs(one - other) <= SameNumber * Math.Max(Math.Abs(one), Math.Abs(other));
    }

    private static string Shown(JsonNode? value) => value?.ToJsonString() ?? "nothing";
}
