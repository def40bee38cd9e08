using System.Text.Json.Nodes;
using CalibrationApi.Reference.Codes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The contract tells the words that answers can hold.</summary>
public sealed class KnownWordsTests
{
    private const string Codes = "x-codes";

    private static readonly JsonObject Schemas = ContractDocument.Committed.Json["components"]!["schemas"]!.AsObject();

    [Fact]
    public void Codes_OfWhatManyAnswersShare_AreListedByEachAnswer()
    {
        var shared = WithCode.Where(schema => schema.Value!["properties"]!["code"]!["examples"] is null).ToArray();

        Assert.Superset(
            new HashSet<string> { "FindingAnswer", "CautionAnswer", "ReasonAnswer" },
            shared.Select(schema => schema.Key).ToHashSet()
        );
        Assert.All(shared, schema =>
        {
            var lists = Lists.Where(list => Items(list.Value!) == $"#/components/schemas/{schema.Key}").ToArray();
            Assert.NotEmpty(lists);
            Assert.All(lists, list =>
            {
                Assert.True(
                    list.Value![Codes]?.AsArray().Count > 0,
                    $"A list of {schema.Key}, {list.Key}, names no codes. Use [SentCodes]."
                );
                Assert.All(list.Value[Codes]!.AsArray(), code =>
                    Assert.Contains(
                        $"`{code!.GetValue<string>()}`",
                        list.Value["description"]!.GetValue<string>(),
                        StringComparison.Ordinal
                    )
                );
            });
        });
    }

    // A list that every answer has alike would help nobody.
    [Fact]
    public void Codes_OfFindings_AreOthersForEachCalculation()
    {
        var lists = Lists.Where(list => list.Key == "findings").Select(list => list.Value![Codes]!.ToJsonString()).ToArray();

        Assert.True(lists.Length > 14);
        // An adoption and the value in force that it makes are noticed alike.
        Assert.Equal(lists.Length - 1, lists.Distinct().Count());
    }

    [Theory]
    [InlineData("/v1/calculations/catch-test", "settings-at-odds")]
    [InlineData("/v1/catch-tests", "settings-at-odds")]
    [InlineData("/v1/catch-tests/{id}/recomputations", "settings-at-odds")]
    [InlineData("/v1/adoptions", "typed-decimal-slip")]
    [InlineData("/v1/calculations/stand-risk", null)]
    public void Refusals_OfAnOperation_StandAtItsStatus422(string path, string? code)
    {
        var response = ContractDocument.Committed.Json["paths"]![path]!["post"]!["responses"]!["422"]!;

        if (code is null)
            Assert.Equal("#/components/responses/UnprocessableEntity", (string?)response["$ref"]);
        else
            Assert.Contains(code, response[Codes]!.AsArray().Select(one => one!.GetValue<string>()));
        Assert.Null(ContractDocument.Committed.Json["components"]!["responses"]!["UnprocessableEntity"]![Codes]);
    }

    // The list of codes is itself what lists them.
    private static IEnumerable<KeyValuePair<string, JsonNode?>> WithCode =>
        Schemas.Where(schema => schema.Value!["properties"]?["code"] is not null && schema.Key != nameof(CodeAnswer));

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Lists =>
        Schemas.SelectMany(schema => schema.Value!["properties"]?.AsObject() ?? []).Where(member => Items(member.Value!) is not null);

    private static string? Items(JsonNode member) => (string?)member["items"]?["$ref"];

    [Fact]
    public void Descriptions_OfMembersWithKnownWords_NameEachOfThem()
    {
        var members = Schemas
            .SelectMany(schema => schema.Value!["properties"]?.AsObject() ?? [])
            .Where(member => member.Value!["examples"] is not null && member.Key != "unit")
            .Select(member => member.Value!)
            .ToArray();

        Assert.NotEmpty(members);
        Assert.All(members, member =>
            Assert.All(member["examples"]!.AsArray(), word =>
                Assert.Contains($"`{word!.GetValue<string>()}`", member["description"]!.GetValue<string>(), StringComparison.Ordinal)
            )
        );
    }
}
