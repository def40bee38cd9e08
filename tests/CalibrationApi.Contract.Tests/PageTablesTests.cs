using System.Text.Json;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The tables of the pages are what the service serves.</summary>
public sealed class PageTablesTests
{
    private const string Calculations = "/v1/calculations/";

    [Fact]
    public async Task CalculationsTable_OfTheReadme_HasEachWithItsSummary()
    {
        var contract = await ServedContract.GetAsync();

        var calculations = contract.Document.Operations
            .Where(operation => operation.Path.StartsWith(Calculations, StringComparison.Ordinal) && !operation.Path.EndsWith("/batch", StringComparison.Ordinal))
            .Select(operation => $"| `{operation.Method} {operation.Path}` | {operation.Json["summary"]} |");

        WrittenTable.HoldTo("README.md", "| calculation; stores nothing | what it does |", calculations);
    }

    [Fact]
    public void Requests_OfTheReadme_LeadToEveryOperation()
    {
        var readme = Page.At("README.md").Text;

        // A collection stands for its records too.
        var without = ContractDocument.Committed.Operations
            .Select(operation => operation.Path)
            .Where(path => !path.EndsWith("/batch", StringComparison.Ordinal))
            .Where(path => !readme.Contains($"{path}`", StringComparison.Ordinal) && !readme.Contains($"`/v1/{path.Split('/')[2]}`", StringComparison.Ordinal));

        Assert.Empty(without);
    }

    [Fact]
    public async Task UnitsTable_OfTheEngine_IsTheListThatTheServiceServes()
    {
        var contract = await ServedContract.GetAsync();
        using var served = JsonDocument.Parse(await contract.Client.GetStringAsync(new Uri("/v1/units", UriKind.Relative)));

        var dimensions = served.RootElement.GetProperty("units").EnumerateArray()
            .GroupBy(unit => unit.GetProperty("dimension").GetString(), unit => unit.GetProperty("symbol").GetString())
            .Select(dimension => $"| {dimension.Key} | {string.Join(", ", dimension)} |");

        WrittenTable.HoldTo("src/CalibrationApi.Engine/README.md", "| what | units |", dimensions);
    }
}
