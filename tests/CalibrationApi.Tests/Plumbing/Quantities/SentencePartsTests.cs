using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalibrationApi.Tests.Plumbing.Quantities;

public sealed partial class SentencePartsTests
{
    public static TheoryData<string> Operations => [.. Question.Operations];

    [Theory]
    [MemberData(nameof(Operations))]
    public async Task Answer_EachSentence_IsItsTemplateFilledWithItsValues(string operation)
    {
        using var response = await Question.Of(operation).AskAsync();

        Assert.NotEmpty(Templates(JsonNode.Parse(await response.Content.ReadAsStringAsync())));
    }

    [Fact]
    public async Task Answer_InOtherUnits_HasTheSameTemplates()
    {
        Assert.Equal(await Asked("metric"), await Asked("us"));

        static async Task<List<string>> Asked(string units)
        {
            using var body = new StringContent(Question.Of(Question.CatchTest).Text, Encoding.UTF8, "application/json");
            using var response = await ApiHost.Client.PostAsync($"{Question.PathOf(Question.CatchTest)}?units={units}", body);
            return Templates(JsonNode.Parse(await response.Content.ReadAsStringAsync()));
        }
    }

    // The templates of all sentences of an answer, each asserted to give its sentence.
    private static List<string> Templates(JsonNode? node)
    {
        var templates = new List<string>();
        switch (node)
        {
            case JsonArray list:
                templates.AddRange(list.SelectMany(Templates));
                break;
            case JsonObject one:
                if (one["headline"] is { } headline)
                    templates.Add(Rebuilt((string)headline!, one["headlineParts"]));
                if (one["detail"] is { } detail)
                    templates.Add(Rebuilt((string)detail!, one["parts"]));
                templates.AddRange(
                    one.Where(member => member.Key is not ("parts" or "headlineParts")).SelectMany(member => Templates(member.Value))
                );
                break;
        }
        return templates;
    }

    private static string Rebuilt(string sentence, JsonNode? parts)
    {
        if (parts is null)
            return sentence;
        var values = parts["values"]!.AsArray();
        var texts = values.ToDictionary(value => (string)value!["name"]!, value => (string)value!["text"]!);
        var template = (string)parts["template"]!;
        var used = new HashSet<string>();
        var filled = Place()
            .Replace(template, match =>
            {
                used.Add(match.Groups[1].Value);
                return match.Value switch
                {
                    "{{" => "{",
                    "}}" => "}",
                    _ => texts[match.Groups[1].Value],
                };
            });

        Assert.Equal(sentence, filled);
        Assert.All(texts.Keys, name => Assert.Contains(name, used));
        Assert.All(values, value => Assert.True(value!["unit"] is null || value["value"] is not null));
        return template;
    }

    [GeneratedRegex(@"\{\{|\}\}|\{(\w+)\}")]
    private static partial Regex Place();
}
