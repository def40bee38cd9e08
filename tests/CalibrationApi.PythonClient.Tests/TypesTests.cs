using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>What a strict type checker finds in the client, in its quickstart, and in right and wrong uses. It needs no Python.</summary>
public sealed class TypesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-types-");

    [Fact]
    public async Task Client_Checked_HasNoFault() => Assert.Empty(await CheckAsync(ClientSource.Folder));

    [Fact]
    public async Task Uses_ThatFitTheContract_HaveNoFault()
    {
        await PlaceAsync("right_uses.py");
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "quickstart.py"), QuickstartTests.Program);

        Assert.Empty(await CheckAsync(folder.FullName));
    }

    [Fact]
    public async Task Uses_ThatDoNotFitTheContract_AreFaultsWhereTheyStand()
    {
        var lines = await PlaceAsync("wrong_uses.py");
        // Each line that has to fail says so at its end, with the rule of the checker.
        var expected = lines
            .Index()
            .Where(line => line.Item.Contains("# wrong: ", StringComparison.Ordinal))
            .Select(line => (Line: line.Index + 1, Rule: line.Item.Split("# wrong: ")[1].Trim()))
            .ToArray();

        var found = await CheckAsync(folder.FullName);

        Assert.True(expected.Length >= 15, "The wrong uses are missing.");
        Assert.Equal(expected.Select(fault => fault.Line), found.Select(fault => fault.Line).Distinct());
        Assert.Subset(found.ToHashSet(), expected.ToHashSet());
    }

    public void Dispose() => folder.Delete(recursive: true);

    private async Task<string[]> PlaceAsync(string name)
    {
        var file = Repository.PathOf("tests", "CalibrationApi.PythonClient.Tests", "Uses", name);
        File.Copy(file, Path.Combine(folder.FullName, name));
        var settings = new JsonObject
        {
            ["include"] = new JsonArray("."),
            ["extraPaths"] = new JsonArray(Path.GetRelativePath(folder.FullName, ClientSource.Folder)),
            ["typeCheckingMode"] = "strict",
            ["pythonVersion"] = "3.10",
        };
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "pyrightconfig.json"), settings.ToJsonString());
        return await File.ReadAllLinesAsync(file);
    }

    private static async Task<(int Line, string Rule)[]> CheckAsync(string project)
    {
        var run = await NodeTools.RunAtAsync(project, "pyright", "--outputjson", "--project", project);
        var told = JsonDocument.Parse(run.Output).RootElement;
        Assert.True(told.GetProperty("summary").GetProperty("filesAnalyzed").GetInt32() > 0, run.Everything);
        return
        [
            .. told.GetProperty("generalDiagnostics")
                .EnumerateArray()
                .Select(fault =>
                    (
                        fault.GetProperty("range").GetProperty("start").GetProperty("line").GetInt32() + 1,
                        fault.TryGetProperty("rule", out var rule) ? rule.GetString()! : fault.GetProperty("message").GetString()!
                    )
                ),
        ];
    }
}
