using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The contract keeps what the last released one promised in ways that the comparison tool does not look at.</summary>
public sealed class KeptPromisesTests
{
    private static readonly string Released = File.ReadAllText(Repository.PathOf("openapi", "released", "v1.json"));

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Said)> Breaks = new()
    {
        ["header no longer promised"] = (
            contract => contract["paths"]!["/v1/products/{id}"]!["get"]!["responses"]!["200"]!["headers"]!["ETag"]!["required"] = false,
            "header ETag"
        ),
        ["word of an open list removed"] = (
            contract => Member(contract, "CatchTestAnswer", "verdict")["examples"]!.AsArray().RemoveAt(0),
            "CatchTestAnswer.verdict"
        ),
        ["code of a list removed"] = (
            contract => Member(contract, "CatchTestAnswer", "findings")["x-codes"]!.AsArray().RemoveAt(0),
            "CatchTestAnswer.findings"
        ),
        ["answer closed"] = (
            contract => contract["components"]!["schemas"]!["FindingAnswer"]!["additionalProperties"] = false,
            "FindingAnswer was open"
        ),
        ["range cut"] = (contract => Reword(contract, "to 50 %.", "to 20 %."), "takes less"),
        ["range begins later"] = (contract => Reword(contract, "Range: 0.1 to", "Range: 1 to"), "takes less"),
        ["default changed"] = (contract => Reword(contract, "Default 5 %", "Default 4 %"), "another value"),
        ["default dropped"] = (contract => Reword(contract, "Default 5 %", "Usually 5 %"), "another value"),
        ["default of a parameter changed"] = (
            contract => contract["components"]!["parameters"]!["Limit"]!["schema"]!["default"] = "50",
            "limit"
        ),
        ["tag changed"] = (contract => contract["paths"]!["/v1/units"]!["get"]!["tags"] = new JsonArray("Codes"), "tag"),
        ["parameter of a path renamed"] = (
            contract =>
            {
                var path = contract["paths"]!["/v1/products/{id}"]!.DeepClone();
                contract["paths"]!.AsObject().Remove("/v1/products/{id}");
                contract["paths"]!["/v1/products/{key}"] = path;
            },
            "moved"
        ),
    };

    public static TheoryData<string> Kinds => [.. Breaks.Keys];

    [Fact]
    public void CommittedContract_KeepsWhatWasPromised() =>
        Assert.Empty(KeptPromises.Broken(ContractDocument.Parse(Released), ContractDocument.Committed));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Broken_OfAContractThatBreaksAPromise_TellsIt(string kind)
    {
        var broken = JsonNode.Parse(Released)!;
        Breaks[kind].Change(broken);

        var told = KeptPromises.Broken(ContractDocument.Parse(Released), ContractDocument.Parse(broken.ToJsonString())).ToArray();

        Assert.Contains(told, promise => promise.Contains(Breaks[kind].Said, StringComparison.Ordinal));
    }

    [Fact]
    public void Broken_OfAContractThatOnlyAddsAndWidens_IsEmpty()
    {
        var wider = JsonNode.Parse(Released)!;
        Reword(wider, "to 50 %.", "to 60 %.");
        Reword(wider, "published acceptance limit", "acceptance limit published");
        Member(wider, "CatchTestAnswer", "findings")["x-codes"]!.AsArray().Add("a-new-code");

        Assert.Empty(KeptPromises.Broken(ContractDocument.Parse(Released), ContractDocument.Parse(wider.ToJsonString())));
    }

    private static JsonObject Member(JsonNode contract, string schema, string member) =>
        contract["components"]!["schemas"]![schema]!["properties"]![member]!.AsObject();

    private static void Reword(JsonNode contract, string was, string isNow)
    {
        var tolerance = Member(contract, "CatchTestRequest", "tolerance");
        var description = tolerance["description"]!.GetValue<string>();
        Assert.Contains(was, description, StringComparison.Ordinal);
        tolerance["description"] = description.Replace(was, isNow, StringComparison.Ordinal);
    }
}
