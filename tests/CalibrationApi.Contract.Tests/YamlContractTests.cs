using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The contract is served as YAML too, and says a version of the specification that generators know.</summary>
public sealed class YamlContractTests
{
    [Fact]
    public async Task ServedDocument_AsYaml_ReadsAsTheSameContract()
    {
        var contract = await ServedContract.GetAsync();
        using var answer = await contract.Client.GetAsync(new Uri("/openapi/v1.yaml", UriKind.Relative));
        Assert.Equal("application/yaml", answer.Content.Headers.ContentType?.MediaType);
        var folder = Directory.CreateTempSubdirectory("calibration-yaml-");
        try
        {
            var fromYaml = await BundledAsync(folder.FullName, "contract.yaml", await answer.Content.ReadAsStringAsync());
            var fromJson = await BundledAsync(folder.FullName, "contract.json", contract.Text);

            Assert.True(
                JsonNode.DeepEquals(fromJson, fromYaml),
                string.Join(Environment.NewLine, Differences("#", fromJson, fromYaml).Take(20))
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task ServedDocument_InBothForms_SaysAVersionThatGeneratorsKnow()
    {
        var contract = await ServedContract.GetAsync();

        Assert.StartsWith("{\n  \"openapi\": \"3.1.1\",\n", contract.Text, StringComparison.Ordinal);
        Assert.StartsWith(
            "openapi: '3.1.1'\n",
            await contract.Client.GetStringAsync(new Uri("/openapi/v1.yaml", UriKind.Relative)),
            StringComparison.Ordinal
        );
    }

    // A tool of the trade reads both, so that its reading of YAML counts and not one of ours.
    private static async Task<JsonNode> BundledAsync(string folder, string name, string text)
    {
        var (given, read) = (Path.Combine(folder, name), Path.Combine(folder, $"read-{name}.json"));
        await File.WriteAllTextAsync(given, text);
        var run = await NodeTools.RunAsync("redocly", "bundle", given, "--output", read);
        Assert.True(run.ExitCode == 0, run.Everything);
        return JsonNode.Parse(await File.ReadAllTextAsync(read))!;
    }

    private static IEnumerable<string> Differences(string at, JsonNode? one, JsonNode? other) =>
        (one, other) switch
        {
            (JsonObject first, JsonObject second) => first
                .Select(member => member.Key)
                .Union(second.Select(member => member.Key))
                .SelectMany(name => Differences($"{at}/{name}", first[name], second[name])),
            (JsonArray first, JsonArray second) when first.Count == second.Count => first
                .Zip(second)
                .SelectMany((pair, i) => Differences($"{at}/{i}", pair.First, pair.Second)),
            _ when JsonNode.DeepEquals(one, other) => [],
            _ => [$"{at}: {one?.ToJsonString()} and {other?.ToJsonString()}"],
        };
}
