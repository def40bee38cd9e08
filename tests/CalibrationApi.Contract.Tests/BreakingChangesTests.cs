using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The contract breaks no client of the last released one, and the comparison does find what breaks.</summary>
public sealed class BreakingChangesTests
{
    private static readonly string Released = Repository.PathOf("openapi", "released", "v1.json");

    public static TheoryData<string> Breaks =>
        [
            "member of an answer removed",
            "member of a request required",
            "operation removed",
            "word of a closed list removed",
            "greatest length cut",
            "status removed",
            "type changed",
            "operation renamed",
            "header removed",
            "media type removed",
            "parameter removed",
            "parameter required",
        ];

    [Fact]
    public async Task CommittedContract_ComparedWithTheReleasedOne_BreaksNothing()
    {
        var comparison = await NodeTools.ScriptAsync("breaking");

        Assert.True(comparison.ExitCode == 0, comparison.Everything);
    }

    [Theory]
    [MemberData(nameof(Breaks))]
    public async Task Comparison_WithAContractThatBreaksClients_Fails(string kind)
    {
        var broken = JsonNode.Parse(await File.ReadAllTextAsync(Released))!;
        Break(broken, kind);
        var folder = Directory.CreateTempSubdirectory("calibration-diff-");
        try
        {
            var file = Path.Combine(folder.FullName, "v1.json");
            await File.WriteAllTextAsync(file, broken.ToJsonString());

            var comparison = await NodeTools.RunAsync("redocly", "diff", Released, file, "--config", "redocly.yaml", "--fail-on", "major");

            Assert.True(comparison.ExitCode != 0, comparison.Everything);
            Assert.Matches("[1-9][0-9]* major", comparison.Output);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void ClosedLists_OfSchemasThatAreOnlyAnswered_AreUnits()
    {
        // A new word of such a list would break clients, and the comparison is told that new words break nobody.
        var closed = ContractDocument.Committed.Json["components"]!["schemas"]!
            .AsObject()
            .Where(schema => schema.Value!["additionalProperties"]?.ToJsonString() != "false")
            .SelectMany(schema =>
                schema.Value!["properties"]?.AsObject().Select(member => (Schema: schema.Key, Member: member.Key, member.Value)) ?? []
            )
            .Where(member => (member.Value!["enum"] ?? member.Value["items"]?["enum"]) is not null)
            .ToArray();

        Assert.NotEmpty(closed);
        Assert.All(closed, member =>
            Assert.True(member.Member == "unit", $"{member.Schema}.{member.Member} closes a list that has to stay open. Use [KnownWords].")
        );
    }

    private static void Break(JsonNode contract, string kind)
    {
        var schemas = contract["components"]!["schemas"]!;
        switch (kind)
        {
            case "member of an answer removed":
                schemas["Money"]!["properties"]!.AsObject().Remove("currency");
                schemas["Money"]!["required"] = new JsonArray("value");
                break;
            case "member of a request required":
                schemas["ProductOfTest"]!["required"] = new JsonArray("name");
                break;
            case "operation removed":
                contract["paths"]!.AsObject().Remove("/v1/units");
                break;
            case "word of a closed list removed":
                schemas["ScaleOfTest"]!["properties"]!["accuracyClass"]!["enum"]!.AsArray().RemoveAt(0);
                break;
            case "greatest length cut":
                schemas["Exclusion"]!["properties"]!["reason"]!["maxLength"] = 10;
                break;
            case "status removed":
                contract["paths"]!["/v1/products/{id}"]!["get"]!["responses"]!.AsObject().Remove("304");
                break;
            case "type changed":
                schemas["Money"]!["properties"]!["value"]!["type"] = "string";
                break;
            case "operation renamed":
                contract["paths"]!["/v1/units"]!["get"]!["operationId"] = "getUnits";
                break;
            case "header removed":
                contract["paths"]!["/v1/products"]!["get"]!["responses"]!["200"]!["headers"]!.AsObject().Remove("Link");
                break;
            case "media type removed":
                contract["paths"]!["/v1/products"]!["get"]!["responses"]!["200"]!["content"]!.AsObject().Remove("text/csv");
                break;
            case "parameter removed":
                contract["paths"]!["/v1/products"]!["get"]!["parameters"]!.AsArray().RemoveAt(0);
                break;
            case "parameter required":
                contract["components"]!["parameters"]!["Limit"]!["required"] = true;
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind));
        }
    }
}
