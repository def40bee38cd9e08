using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Plumbing.Quantities;

/// <summary>Whoever puts the value of an assumption where it points to, and asks again, is not told of it again.</summary>
public sealed class AssumptionPointersTests(RecordService service) : IClassFixture<RecordService>
{
    // Nothing overrides these: they come from the scale, from all readings together or from a judgement that is not for sale.
    private static readonly string[] WithoutPointer =
    [
        "leastCatch",
        "scaleError",
        "scaleLimit",
        "sharedTare",
        "weighed/sharedTare",
        "likelyMistakes/prior",
        "price",
        "nutrient",
    ];

    public static TheoryData<string> Operations => [.. Question.Operations];

    [Theory]
    [MemberData(nameof(Operations))]
    public async Task Pointer_OfEachAssumption_OverridesIt(string operation)
    {
        var question = Draft.Of(Question.Of(operation).Text);
        var seen = new HashSet<(string, string)>();
        foreach (var asked in WithOneMemberLeftOut(question.Body).Prepend(question.Body))
        {
            foreach (var assumption in await AssumptionsAsync(operation, asked) ?? [])
            {
                var name = (string)assumption["name"]!;
                if ((string?)assumption["pointer"] is not { } pointer)
                    Assert.Contains(name, WithoutPointer);
                else if (seen.Add((name, pointer)) && ValueOf(assumption) is { } value)
                    Assert.DoesNotContain(pointer, Pointers(await AssumptionsAsync(operation, Put(asked, pointer, value)), assumption));
            }
        }
    }

    [Fact]
    public async Task Pointer_OfAStoredTest_PointsIntoItsResolvedQuestion()
    {
        var farm = await Farm.CreateAsync(service);
        var record = (await service.PostAsync("/v1/catch-tests", farm.CatchTest)).Expect(201).Json;
        var assumption = record["evaluation"]!["assumptions"]!.AsArray().Single(one => (string)one!["name"]! == "wantedPrecision")!;

        var again = await AssumptionsAsync(
            Question.CatchTest,
            Put(record["resolved"]!, (string)assumption["pointer"]!, assumption["value"]!)
        );

        Assert.DoesNotContain("wantedPrecision", again!.Select(one => (string)one["name"]!));
    }

    private static async Task<List<JsonObject>?> AssumptionsAsync(string operation, JsonNode body)
    {
        using var response = await Question.AskAsync(ApiHost.Client, operation, body.ToJsonString());
        var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
        return answer["assumptions"]?.AsArray().Select(one => one!.AsObject()).ToList();
    }

    private static List<string?> Pointers(List<JsonObject>? assumptions, JsonObject like)
    {
        Assert.NotNull(assumptions);
        return
        [
            .. assumptions
                .Where(one => (string)one["name"]! == (string)like["name"]! && (string?)one["meter"] == (string?)like["meter"])
                .Select(one => (string?)one["pointer"]),
        ];
    }

    private static JsonNode? ValueOf(JsonObject assumption) =>
        assumption["value"] ?? assumption["number"] ?? assumption["word"] ?? assumption["flag"];

    private static JsonNode Put(JsonNode question, string pointer, JsonNode value)
    {
        var body = question.DeepClone();
        var at = body;
        var parts = pointer["#/".Length..].Split('/');
        foreach (var part in parts[..^1])
            at = at is JsonArray list ? list[int.Parse(part)]! : at[part] ??= new JsonObject();
        at[parts[^1]] = value.DeepClone();
        return body;
    }

    private static IEnumerable<JsonNode> WithOneMemberLeftOut(JsonNode question)
    {
        foreach (var path in Members(question, ""))
            yield return new Draft(question.DeepClone()).Without(path).Body;
    }

    private static IEnumerable<string> Members(JsonNode? node, string path) =>
        node switch
        {
            JsonObject one => one.SelectMany(member => Members(member.Value, $"{path}/{member.Key}").Prepend($"{path}/{member.Key}")),
            JsonArray list => list.Take(2).SelectMany((item, place) => Members(item, $"{path}/{place}")),
            _ => [],
        };
}
