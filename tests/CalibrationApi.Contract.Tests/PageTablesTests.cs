using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The tables of the pages are what the service serves.</summary>
public sealed class PageTablesTests
{
    private const string Calculations = "/v1/calculations/";

    private const string LittleStated = """
        {
          "scale": { "division": { "value": 0.02, "unit": "kg" } },
          "valueInForce": { "value": 0.36, "unit": "kg/rev" },
          "catches": [ { "net": { "value": 14.5, "unit": "kg" }, "revolutions": { "value": 40, "unit": "rev" } } ]
        }
        """;

    private static readonly string[] Kinds = ["common practice", "judgement"];

    private static readonly string[][] Assumptions =
    [
        .. Page.At("src/CalibrationApi.Engine/README.md")
            .Text.Split('\n')
            .SkipWhile(line => !line.StartsWith("| assumed", StringComparison.Ordinal))
            .Skip(2)
            .TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Split('|')),
    ];

    [Fact]
    public async Task CalculationsTable_OfTheReadme_HasEachWithItsSummary()
    {
        var contract = await ServedContract.GetAsync();

        var calculations = contract
            .Document.Operations.Where(operation => operation.Path.StartsWith(Calculations, StringComparison.Ordinal))
            .Where(operation => !operation.Path.EndsWith("/batch", StringComparison.Ordinal))
            .Select(operation => $"| `{operation.Method} {operation.Path}` | {operation.Json["summary"]} |");

        WrittenTable.HoldTo("README.md", "| calculation; stores nothing | what it does |", calculations);
    }

    [Fact]
    public void MethodsTable_OfTheTypeScriptClient_HasEachWithItsSummary()
    {
        var summaries = ContractDocument.Committed.Operations.ToDictionary(
            operation => operation.OperationId,
            operation => operation.Json["summary"]
        );
        var methods = File.ReadLines(Repository.PathOf("src", "Clients", "TypeScript", "src", "operations.ts"))
            .Where(line => line.Contains(": { method: ", StringComparison.Ordinal))
            .Select(line => line.Split(':')[0].Trim())
            .ToArray();

        Assert.True(methods.Length > 60);
        WrittenTable.HoldTo(
            "src/Clients/TypeScript/README.md",
            "| method | what it does |",
            methods.Where(summaries.ContainsKey).Select(method => $"| `{method}` | {summaries[method]} |")
        );
    }

    [Fact]
    public void Requests_OfTheReadme_LeadToEveryOperation()
    {
        var readme = Page.At("README.md").Text;

        // A collection stands for its records too.
        var without = ContractDocument
            .Committed.Operations.Select(operation => operation.Path)
            .Where(path => !path.EndsWith("/batch", StringComparison.Ordinal))
            .Where(path => !readme.Contains($"{path}`", StringComparison.Ordinal))
            .Where(path => !readme.Contains($"`/v1/{path.Split('/')[2]}`", StringComparison.Ordinal));

        Assert.Empty(without);
    }

    [Fact]
    public async Task UnitsTable_OfTheEngine_IsTheListThatTheServiceServes()
    {
        var contract = await ServedContract.GetAsync();
        using var served = JsonDocument.Parse(await contract.Client.GetStringAsync(new Uri("/v1/units", UriKind.Relative)));

        var dimensions = served
            .RootElement.GetProperty("units")
            .EnumerateArray()
            .GroupBy(unit => unit.GetProperty("dimension").GetString(), unit => unit.GetProperty("symbol").GetString())
            .Select(dimension => $"| {dimension.Key} | {string.Join(", ", dimension)} |");

        WrittenTable.HoldTo("src/CalibrationApi.Engine/README.md", "| what | units |", dimensions);
    }

    [Theory]
    [InlineData("catch-plan", "demo-data/catch-plan.json")]
    [InlineData("catch-test", "demo-data/catch-test.json")]
    [InlineData("catch-test", LittleStated)]
    public async Task AssumptionsTable_OfTheEngine_HasWhatAnAnswerAssumesWithItsValueAndOrigin(string calculation, string question)
    {
        var contract = await ServedContract.GetAsync();
        var body = question.StartsWith('{') ? question : await File.ReadAllTextAsync(Repository.PathOf(question));

        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await contract.Client.PostAsync(new Uri(Calculations + calculation, UriKind.Relative), content);
        var assumed = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!["assumptions"]!
            .AsArray()
            .Where(assumption => assumption!["value"] is not null)
            .ToArray();

        Assert.True(assumed.Length >= 5);
        Assert.All(assumed, assumption =>
        {
            var (name, origin) = ((string)assumption!["name"]!, (string)assumption["origin"]!);
            var kind = Kinds.FirstOrDefault(word => origin.Contains(word, StringComparison.Ordinal)) ?? "published";
            var (number, unit) = (Math.Round((double)assumption["value"]!["value"]!, 1), (string)assumption["value"]!["unit"]!);
            // These follow from the size of a catch and from the scale.
            var value = name is "repeatability" or "scaleLimit" or "leastCatch"
                ? ""
                : string.Create(CultureInfo.InvariantCulture, $"{number} {unit}");
            Assert.Contains(Assumptions, row =>
                row[1].Contains($"`{name}`", StringComparison.Ordinal)
                && row[2].Contains(value, StringComparison.Ordinal)
                && row[3].StartsWith($" {kind}", StringComparison.Ordinal)
            );
        });
    }
}
