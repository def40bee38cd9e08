using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>Nothing in the contract is left unsaid, and the score that tells so does find what is.</summary>
public sealed partial class ScoreTests
{
    private static readonly Lazy<string> Committed = new(() => File.ReadAllText(ContractUpdate.CommittedContract));

    // One place of the document for each measure; taking it away costs the measure its full mark.
    private static readonly Dictionary<string, Action<JsonNode>> Losses = new()
    {
        ["operations described"] = contract => Operation(contract).AsObject().Remove("summary"),
        ["operations with their errors"] = contract =>
            Array.ForEach(["500", "503"], status => Operation(contract)["responses"]!.AsObject().Remove(status)),
        ["bodies described"] = contract => contract["paths"]!["/v1/products"]!["post"]!["requestBody"]!.AsObject().Remove("description"),
        ["bodies with an example"] = contract =>
            contract["paths"]!["/v1/products"]!["post"]!["requestBody"]!["content"]!["application/json"]!.AsObject().Remove("example"),
        ["parameters described"] = contract => Limit(contract).Remove("description"),
        ["parameters bounded"] = contract => Limit(contract)["schema"]!.AsObject().Remove("pattern"),
        ["parameters with an example or words"] = contract => Limit(contract).Remove("example"),
        ["statuses described"] = contract => Operation(contract)["responses"]!["200"]!["description"] = "OK",
        ["answers with an example"] = contract =>
            contract["components"]!["responses"]!["NotFound"]!["content"]!["application/problem+json"]!.AsObject().Remove("examples"),
        ["headers described"] = contract => CacheControl(contract).Remove("description"),
        ["headers bounded"] = contract => CacheControl(contract)["schema"] = new JsonObject { ["type"] = "string" },
        ["headers with an example"] = contract => CacheControl(contract).Remove("example"),
        ["schemas described"] = contract => contract["components"]!["schemas"]!["Money"]!.AsObject().Remove("description"),
        ["members described"] = contract => Member(contract, "Money", "currency").Remove("description"),
        ["lists bounded"] = contract => Member(contract, "UnitsAnswer", "units").Remove("maxItems"),
        ["texts bounded"] = contract => Member(contract, "UnitAnswer", "note").Remove("maxLength"),
        ["numbers with a format"] = contract => Member(contract, "Money", "value").Remove("format"),
        ["numbers sent with a range"] = contract => Member(contract, "Price", "value").Remove("maximum"),
        ["quantities sent with a range"] = contract => Reword(contract, "Range:", "Between:"),
        ["defaults with their origin"] = contract => Reword(contract, "published", "known"),
    };

    public static TheoryData<string> Measures => [.. Losses.Keys];

    [Fact]
    public async Task Score_OfTheCommittedContract_IsFull()
    {
        var score = await NodeTools.ScriptAsync("score");

        Assert.True(score.ExitCode == 0, $"Something in the contract is left unsaid.{Environment.NewLine}{score.Output}");
        // No measure without a way to lose it.
        Assert.Equal(Losses.Keys.Append("total").Order(StringComparer.Ordinal), Rows(score.Output).Keys.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Measures))]
    public async Task Score_OfAContractThatLeavesSomethingUnsaid_IsLess(string measure)
    {
        var contract = JsonNode.Parse(Committed.Value)!;
        Losses[measure](contract);
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(file, contract.ToJsonString());

            var score = await Command.RunAsync(NodeTools.Folder, "node", ["score.mjs", file]);

            Assert.Equal(1, score.ExitCode);
            Assert.NotEqual("100.0 %", Rows(score.Output)[measure]);
            Assert.NotEqual("100.0 %", Rows(score.Output)["total"]);
            Assert.Contains("Missing:", score.Output, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static Dictionary<string, string> Rows(string output) =>
        Row().Matches(output).ToDictionary(row => row.Groups[1].Value.TrimEnd(), row => row.Groups[2].Value);

    private static JsonNode Operation(JsonNode contract) => contract["paths"]!["/v1/units"]!["get"]!;

    private static JsonObject Limit(JsonNode contract) => contract["components"]!["parameters"]!["Limit"]!.AsObject();

    private static JsonObject CacheControl(JsonNode contract) =>
        Operation(contract)["responses"]!["200"]!["headers"]!["Cache-Control"]!.AsObject();

    private static JsonObject Member(JsonNode contract, string schema, string member) =>
        contract["components"]!["schemas"]![schema]!["properties"]![member]!.AsObject();

    private static void Reword(JsonNode contract, string was, string isNow)
    {
        var tolerance = Member(contract, "CatchTestRequest", "tolerance");
        tolerance["description"] = tolerance["description"]!.GetValue<string>().Replace(was, isNow, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^(\S.*?)\s+\d+ of\s+\d+\s+([\d.]+ %)", RegexOptions.Multiline)]
    private static partial Regex Row();
}
