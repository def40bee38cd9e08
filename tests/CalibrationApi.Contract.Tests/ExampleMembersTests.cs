using System.Text.Json.Nodes;

namespace CalibrationApi.Contract.Tests;

/// <summary>No example shows what the schema beside it does not have, a secret least of all.</summary>
public sealed class ExampleMembersTests
{
    [Fact]
    public async Task Examples_OfAnswers_ShowOnlyWhatTheirSchemaHas()
    {
        var contract = JsonNode.Parse((await ServedContract.GetAsync()).Text)!;
        var shown = 0;
        var surplus = new List<string>();
        foreach (var (path, item) in contract["paths"]!.AsObject())
        foreach (var (method, operation) in item!.AsObject().Where(one => one.Value is JsonObject body && body.ContainsKey("responses")))
        foreach (var (status, response) in operation!["responses"]!.AsObject())
        {
            var media = response!["content"]?["application/json"];
            if (media?["example"] is not { } example)
                continue;
            shown++;
            surplus.AddRange(Surplus(contract, media["schema"], example, $"{method} {path} {status}"));
        }

        Assert.True(shown > 60, $"Only {shown} answers have an example.");
        Assert.Empty(surplus);
    }

    [Fact]
    public async Task Key_AnsweredAgain_IsShownWithoutItsText()
    {
        var answers = JsonNode.Parse((await ServedContract.GetAsync()).Text)!["paths"]!["/v1/keys"]!["post"]!["responses"]!;

        Assert.NotNull(Example("201")["key"]);
        Assert.Null(Example("200")["key"]);
        Assert.NotNull(Example("200")["start"]);

        JsonNode Example(string status) => answers[status]!["content"]!["application/json"]!["example"]!;
    }

    private static IEnumerable<string> Surplus(JsonNode contract, JsonNode? schema, JsonNode? example, string at)
    {
        while (schema?["$ref"]?.GetValue<string>() is { } reference)
            schema = contract["components"]!["schemas"]![reference.Split('/')[^1]];
        return example switch
        {
            JsonArray items => items.SelectMany((item, i) => Surplus(contract, schema?["items"], item, $"{at}/{i}")),
            JsonObject members when schema?["properties"] is JsonObject known => members.SelectMany(member =>
                known.ContainsKey(member.Key)
                    ? Surplus(contract, known[member.Key], member.Value, $"{at}/{member.Key}")
                    : [$"{at}/{member.Key}"]
            ),
            _ => [],
        };
    }
}
