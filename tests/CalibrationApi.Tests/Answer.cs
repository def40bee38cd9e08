using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests;

/// <summary>An answer of the service, read by pointers.</summary>
internal sealed class Answer(JsonNode body)
{
    public static async Task<Answer> ReadAsync(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.OK, $"{(int)response.StatusCode}: {text}");
        Assert.Equal("application/json", response.Content.Headers.ContentType?.MediaType);
        return new Answer(JsonNode.Parse(text)!);
    }

    public JsonNode? At(string pointer)
    {
        var node = body;
        foreach (var part in pointer.TrimStart('/').Split('/'))
            node = node is JsonArray array ? array[int.Parse(part, CultureInfo.InvariantCulture)] : node?[part];
        return node;
    }

    public bool Has(string pointer) => At(pointer) is not null;

    public double Number(string pointer) => Needed(pointer).GetValue<double>();

    public string Word(string pointer) => Needed(pointer).GetValue<string>();

    public bool Flag(string pointer) => Needed(pointer).GetValue<bool>();

    public JsonArray List(string pointer) => Needed(pointer).AsArray();

    /// <summary>Number and unit of a quantity.</summary>
    public (double Value, string Unit) Quantity(string pointer) => (Number(pointer + "/value"), Word(pointer + "/unit"));

    public IReadOnlyList<string> Codes(string list) => [.. List(list).Select(item => item!["code"]!.GetValue<string>())];

    private JsonNode Needed(string pointer) =>
        At(pointer) ?? throw new Xunit.Sdk.XunitException($"The answer has no {pointer}: {body.ToJsonString()}");
}
