using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Hostile;

/// <summary>Bodies that fit a schema of the contract, and what is done to them so that they nearly do.</summary>
internal sealed class Payloads(ContractDocument contract, World world)
{
    // Stands in a tree where the text is to hold what no tree can; kept out of every ordinary value.
    private const string RawStart = "@raw:";

    // Around the limits of readers, and far beyond.
    private static readonly int[] Depths = [20, 31, 32, 33, 63, 65, 1000, 20_000];

    private static readonly JsonSerializerOptions AsTyped = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What may stand in the place of any value, as JSON text; some of it is none.</summary>
    private static readonly string[] OtherValues =
    [
        "null",
        "true",
        "0",
        "-0",
        "-1",
        "1e400",
        "-1e400",
        "1e-400",
        "5e-324",
        "1.7976931348623157e308",
        "9007199254740993",
        "2147483648",
        "NaN",
        "Infinity",
        "01",
        "+1",
        ".5",
        "0x10",
        "1_000",
        new('9', 400),
        "0." + new string('0', 400) + "1",
        "\"\"",
        "\" \"",
        "\"1\"",
        "\"kg\"",
        "[]",
        "{}",
        "[null]",
        "[[]]",
        "{\"\":{}}",
        "\"\\ud800\"",
        "\"\\udc00\\ud800\"",
        "\"\\u0000\"",
        "\"\\u001b[31m\"",
        "\"\t\"",
        "\"\\u202eevil\\u2066\"",
        "\"\\ufeff\\uffff\\ufffe\"",
        "\"😀\"",
        "\"e\\u0301\\u0301\\u0301\"",
        "\"ﷺ\"",
        "\"ı İ ß\"",
        "\"=cmd|' /C calc'!A0\"",
        "\"'; drop table keys; --\"",
        "\"<script>alert(1)</script>\"",
        "\"../../../etc/passwd\"",
        "\"{{7*7}}${7*7}\"",
        "\"%s%n%x\"",
        "\"2026-02-30T00:00:00Z\"",
        "\"0001-01-01T00:00:00+14:00\"",
        "\"9999-12-31T23:59:59.9999999-14:00\"",
        "\"2026-03-01T24:00:60Z\"",
        "\"2026-03-01\"",
        "\"00000000-0000-0000-0000-000000000000\"",
        "\"{value}\"",
        "undefined",
        "'x'",
        "/**/1",
    ];

    private static readonly string[] Names =
    [
        "",
        "id",
        "Id",
        "__proto__",
        "constructor",
        "$ref",
        "$type",
        "workspace",
        "createdAt",
        "etag",
        "😀",
        "value",
        "unit",
        "a.b",
        "a/b",
        "a~b",
        "\u0000",
        new('n', 3000),
    ];

    /// <summary>A body that fits the schema.</summary>
    public JsonNode Fitting(JsonNode schema, Random random) => Value(schema, "", random)!;

    /// <summary>The text of a body.</summary>
    public static string Text(JsonNode body, Random random)
    {
        var text = body.ToJsonString(random.Next(2) == 0 ? AsTyped : null);
        for (
            var start = text.IndexOf('"' + RawStart, StringComparison.Ordinal);
            start >= 0;
            start = text.IndexOf('"' + RawStart, start, StringComparison.Ordinal)
        )
        {
            var end = text.IndexOf('"', start + 1);
            var raw = text[(start + 1 + RawStart.Length)..end];
            text =
                text[..start]
                + (
                    raw[0] == 'd'
                        ? Deep(int.Parse(raw[1..], CultureInfo.InvariantCulture))
                        : OtherValues[int.Parse(raw, CultureInfo.InvariantCulture)]
                )
                + text[(end + 1)..];
        }

        return text;
    }

    /// <summary>Changes one place of a body.</summary>
    /// <returns>What was done.</returns>
    public string Change(JsonNode body, Random random)
    {
        var places = Below(body).Where(node => node.Parent is not null).ToArray();
        if (places.Length == 0)
            return "nothing to change";
        var place = places[random.Next(places.Length)];
        var parent = place.Parent!;
        switch (random.Next(11))
        {
            case 0 when parent is JsonObject members:
                members.Remove(place.GetPropertyName());
                return "member missing";
            case 1 when parent is JsonObject members:
                members[Names[random.Next(Names.Length)]] = random.Next(2) == 0 ? 1 : place.DeepClone();
                return "extra member";
            case 2 when parent is JsonArray items:
                for (var count = random.Next(4) == 0 ? 1500 : random.Next(1, 60); count > 0; count--)
                    items.Add(place.DeepClone());
                return "many items";
            case 3 when parent is JsonArray items:
                items.Clear();
                return "no items";
            case 4:
                place.ReplaceWith($"{RawStart}d{Depths[random.Next(Depths.Length)].ToString(CultureInfo.InvariantCulture)}");
                return "deep nesting";
            case 5 or 6 when Number(place) is { } number:
                Scale(place, number, random);
                return "other number";
            case 5 or 6 when place is JsonValue text && text.TryGetValue<string>(out var word):
                place.ReplaceWith(Reworded(word, random));
                return "other text";
            case 7
                when places.FirstOrDefault(node =>
                    node is JsonValue value && value.TryGetValue<string>(out var text) && text.StartsWith("019d", StringComparison.Ordinal)
                )
                    is { } id:
                id.ReplaceWith(AnyId(random));
                return "other id";
            default:
                place.ReplaceWith(RawStart + random.Next(OtherValues.Length).ToString(CultureInfo.InvariantCulture));
                return "other value";
        }
    }

    /// <summary>An id of any kind: of the right one, of another one, of the other workspace, of nothing, or hardly an id.</summary>
    public string AnyId(Random random) =>
        random.Next(6) switch
        {
            0 => world.ForeignIds[random.Next(world.ForeignIds.Count)],
            1 => FreshId(random),
            2 => world.Ids.Values.ElementAt(random.Next(world.Ids.Count))[0].ToUpperInvariant(),
            _ => world.Ids.Values.ElementAt(random.Next(world.Ids.Count)) is { } ids ? ids[random.Next(ids.Length)] : "",
        };

    /// <summary>An id that no record has.</summary>
    public static string FreshId(Random random) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"019d{random.Next(0x8000, 0x10000):x4}-{random.Next(0x10000):x4}-7{random.Next(0x1000):x3}-8{random.Next(0x1000):x3}-{random.NextInt64(0x1000000000000):x12}"
        );

    private JsonNode? Value(JsonNode schema, string name, Random random)
    {
        var here = contract.Resolve(schema);
        if (here["enum"] is JsonArray words)
            return words[random.Next(words.Count)]!.DeepClone();
        switch (here["type"]!.GetValue<string>())
        {
            case "object":
                string[] required = [.. (here["required"]?.AsArray() ?? []).Select(member => member!.GetValue<string>())];
                return new JsonObject(
                    (here["properties"]?.AsObject() ?? [])
                        .Where(member => required.Contains(member.Key) || random.Next(3) == 0)
                        .Select(member => KeyValuePair.Create(member.Key, Value(member.Value!, member.Key, random)))
                );
            case "array":
                var count = Math.Max((int)(Bound(here, "minItems") ?? 0), random.Next(1, 4));
                return new JsonArray([.. Enumerable.Range(0, count).Select(_ => Value(here["items"]!, name, random))]);
            case "boolean":
                return random.Next(2) == 0;
            case "integer":
                return random.Next((int)(Bound(here, "minimum") ?? 0), (int)Math.Min(Bound(here, "maximum") ?? 20, 20) + 1);
            case "number":
                // Most quantities of the work lie within these powers of ten.
                return Math.Clamp(
                    Math.Round(Math.Pow(10, (random.NextDouble() * 4) - 1.5), 3),
                    Bound(here, "minimum") ?? 0,
                    Bound(here, "maximum") ?? 1e9
                );
            default:
                return Word(here, name, random);
        }
    }

    private string Word(JsonObject schema, string name, Random random)
    {
        if (schema["format"]?.GetValue<string>() == "date-time")
            return $"2026-0{random.Next(1, 10)}-{random.Next(10, 29)}T0{random.Next(10)}:00:00{(random.Next(2) == 0 ? "Z" : "+02:00")}";
        if (schema["pattern"]?.GetValue<string>() is { } pattern && pattern.StartsWith("^[0-9a-f]", StringComparison.Ordinal))
            return FreshId(random);
        if (schema["pattern"]?.GetValue<string>() == "^[A-Z]{3}$")
            return "EUR";
        return
            world.Ids.TryGetValue($"/v1/{name}s", out var ids)
            || (name is "test" or "record" && world.Ids.TryGetValue("/v1/catch-tests", out ids))
            ? ids[random.Next(ids.Length)]
            : $"word {random.Next(100)}";
    }

    private static void Scale(JsonNode place, double number, Random random)
    {
        var scaled =
            number * Math.Pow(10, random.Next(3) == 0 ? random.Next(-320, 309) : random.Next(-4, 5)) * (random.Next(5) == 0 ? -1 : 1);
        place.ReplaceWith(double.IsFinite(scaled) ? JsonValue.Create(scaled) : JsonValue.Create(RawStart + "5"));
    }

    private static string Reworded(string word, Random random) =>
        random.Next(6) switch
        {
            0 => word.ToUpperInvariant(),
            1 => word + " ",
            2 => string.Concat(Enumerable.Repeat(word + "x", random.Next(1, 500))),
            3 => word + "\u0000",
            4 => new string('\u0301', random.Next(1, 300)) + word,
            _ => new string([.. word.Reverse()]),
        };

    private static string Deep(int levels) =>
        levels % 2 == 0
            ? new string('[', levels) + new string(']', levels)
            : string.Concat(Enumerable.Repeat("{\"a\":", levels)) + "1" + new string('}', levels);

    private static IEnumerable<JsonNode> Below(JsonNode? node) =>
        node switch
        {
            null => [],
            JsonValue value when value.TryGetValue<string>(out var text) && text.StartsWith(RawStart, StringComparison.Ordinal) => [],
            JsonObject members => members.SelectMany(member => Below(member.Value)).Prepend(node),
            JsonArray items => items.SelectMany(Below).Prepend(node),
            _ => [node],
        };

    private static double? Number(JsonNode node) =>
        node is JsonValue value && value.GetValueKind() == JsonValueKind.Number
            ? double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture)
            : null;

    private static double? Bound(JsonObject schema, string keyword) =>
        schema[keyword] is { } bound ? double.Parse(bound.ToJsonString(), CultureInfo.InvariantCulture) : null;
}
