using System.Globalization;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Plumbing.Http;

/// <summary>Questions that are changed at random: whatever comes, the service answers it or says what is wrong with it.</summary>
public sealed class MutatedQuestionsTests
{
    private const int QuestionsPerOperation = 200;
    private const int Seed = 20261;

    private static readonly string[] Words =
    [
        "kg",
        "lb",
        "bu",
        "t",
        "",
        "kg/ha",
        "rev",
        "each",
        "shared",
        "😀",
        "mass-per-pulse",
        "\\u0000",
        "%",
        "shared-shaft",
        "III",
    ];

    public static TheoryData<string> Each => [.. Question.Operations];

    [Theory]
    [MemberData(nameof(Each))]
    public async Task Post_QuestionChangedAtRandom_IsAnsweredOrRefusedButNeverFails(string operation)
    {
        var random = new Random(Seed);
        var statuses = new Dictionary<int, int>();
        for (var i = 0; i < QuestionsPerOperation; i++)
        {
            var text = Mutated(operation, random);

            using var response = await Question.AskAsync(ApiHost.Client, operation, text, random.Next(4) == 0 ? "?units=us" : "");

            var status = (int)response.StatusCode;
            statuses[status] = statuses.GetValueOrDefault(status) + 1;
            Assert.True(status is 200 or 400 or 422, $"{status} for {text}");
            if (status == 200)
                Assert.DoesNotMatch("NaN|Infinity|∞", (await ReadAsync(response)).ToJsonString());
            else
                await ProblemBody.ReadAsync(response, status);
        }

        // Mutations that never hit, or that only break, would test nothing.
        Assert.Equal([200, 400, 422], statuses.Keys.Order());
        Assert.True(statuses.Values.Min() >= QuestionsPerOperation / 20);
    }

    [Theory]
    [MemberData(nameof(Each))]
    public async Task Post_QuestionWithoutOneOfItsMembers_IsAnsweredOrRefusedButNeverFails(string operation)
    {
        var members = Members(Draft.Of(Question.Of(operation).Text).Body, "").ToArray();

        Assert.True(members.Length >= 5);
        foreach (var member in members)
        {
            using var response = await Question.AskAsync(ApiHost.Client, operation, Question.Of(operation).Without(member).Text, "");

            Assert.True((int)response.StatusCode is 200 or 422, $"{(int)response.StatusCode} without {member}");
        }
    }

    private static IEnumerable<string> Members(JsonNode node, string at) =>
        node switch
        {
            JsonObject members => members.SelectMany(member => Members(member.Value!, $"{at}/{member.Key}").Prepend($"{at}/{member.Key}")),
            JsonArray items => items.SelectMany((item, i) => Members(item!, string.Create(CultureInfo.InvariantCulture, $"{at}/{i}"))),
            _ => [],
        };

    private static async Task<JsonNode> ReadAsync(HttpResponseMessage response)
    {
        Assert.Equal("application/json", response.Content.Headers.ContentType?.MediaType);
        return JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
    }

    private static string Mutated(string operation, Random random)
    {
        var body = JsonNode.Parse(Question.Of(operation).Text)!;
        for (var changes = random.Next(1, 4); changes > 0; changes--)
        {
            var nodes = Nodes(body).Where(node => node.Parent is not null).ToArray();
            if (nodes.Length > 0)
                Change(nodes[random.Next(nodes.Length)], random);
        }

        var text = body.ToJsonString();
        return random.Next(12) switch
        {
            0 => text[..random.Next(text.Length)],
            1 => Twice(text, random),
            _ => text,
        };
    }

    private static IEnumerable<JsonNode> Nodes(JsonNode? node)
    {
        if (node is null)
            return [];
        IEnumerable<JsonNode?> children = node switch
        {
            JsonObject members => members.Select(member => member.Value),
            JsonArray items => items,
            _ => [],
        };
        return children.SelectMany(Nodes).Prepend(node);
    }

    private static void Change(JsonNode node, Random random)
    {
        var parent = node.Parent!;
        switch (random.Next(7))
        {
            case 0 when parent is JsonObject members:
                members.Remove(node.GetPropertyName());
                break;
            case 0 when parent is JsonArray items:
                items.RemoveAt(node.GetElementIndex());
                break;
            case 1 when parent is JsonArray items:
                items.Add(node.DeepClone());
                break;
            case 1 when parent is JsonObject members:
                members[node.GetPropertyName() + (random.Next(4) == 0 ? "x" : "")] = node.DeepClone();
                break;
            case 2:
                node.ReplaceWith(Words[random.Next(Words.Length)]);
                break;
            case 3 when random.Next(3) == 0:
                node.ReplaceWith(
                    JsonNode.Parse(
                        random.Next(5) switch
                        {
                            0 => "null",
                            1 => "true",
                            2 => "[]",
                            3 => "{}",
                            _ => "[null]",
                        }
                    )
                );
                break;
            default:
                Scale(node, random);
                break;
        }
    }

    // Powers of ten from one end of the numbers to the other, both signs, and the plain slip of a decimal point.
    private static void Scale(JsonNode node, Random random)
    {
        if (node is not JsonValue value || !value.TryGetValue<double>(out var number))
            return;
        var power = random.Next(3) == 0 ? random.Next(-320, 309) : random.Next(-3, 4);
        var scaled = number * Math.Pow(10, power) * (random.Next(6) == 0 ? -1 : 1);
        node.ReplaceWith(JsonNode.Parse(double.IsFinite(scaled) ? scaled.ToString("R", CultureInfo.InvariantCulture) : "1e999"));
    }

    private static string Twice(string text, Random random)
    {
        var name = random.Next(2) == 0 ? "\"value\":" : "\"unit\":";
        var at = text.IndexOf(name, random.Next(text.Length / 2), StringComparison.Ordinal);
        return at < 0 ? text : text.Insert(at, name + (name == "\"unit\":" ? "\"kg\"," : "1,"));
    }
}
