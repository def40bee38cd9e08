using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The change log of the contract knows the released version, and what changed since.</summary>
public sealed partial class ChangelogTests
{
    private static readonly string Log = File.ReadAllText(Repository.PathOf("openapi", "CHANGELOG.md"));
    private static readonly string Released = File.ReadAllText(Repository.PathOf("openapi", "released", "v1.json"));
    private static readonly string Committed = File.ReadAllText(Repository.PathOf("openapi", "v1.json"));

    [Fact]
    public void Changelog_OfThisRepository_LacksNothing() => Assert.Empty(Missing(Log, Released, Committed));

    [Fact]
    public void Missing_ReleasedVersionWithoutAnEntry_IsTold() =>
        Assert.Contains(Missing(Log, WithVersion(Released, "1.7.0"), Committed), missing =>
            missing.Contains("1.7.0", StringComparison.Ordinal)
        );

    [Fact]
    public void Missing_ChangeWithoutAWord_IsTold()
    {
        var silent = "# Changes of the contract\n\n## Unreleased\n\n## 1.0.0\n\n- The first contract.\n";

        Assert.Contains(Missing(silent, WithVersion(Released, "1.0.0"), Committed + " "), missing =>
            missing.Contains("Unreleased", StringComparison.Ordinal)
        );
        Assert.Empty(
            Missing(
                silent.Replace("## Unreleased\n", "## Unreleased\n\n- A new operation.\n", StringComparison.Ordinal),
                WithVersion(Released, "1.0.0"),
                Committed + " "
            )
        );
    }

    [Fact]
    public void Missing_EntryWithoutContent_IsTold() =>
        Assert.NotEmpty(Missing("## Unreleased\n\n- Something.\n\n## 1.0.0\n\n", WithVersion(Released, "1.0.0"), Committed));

    private static IEnumerable<string> Missing(string log, string released, string committed)
    {
        var entries = Entry().Matches(log).ToDictionary(entry => entry.Groups["version"].Value, entry => entry.Groups["text"].Value);
        var version = JsonNode.Parse(released)!["info"]!["version"]!.GetValue<string>();
        if (!Said(version))
            yield return $"openapi/CHANGELOG.md has no entry '## {version}' that says anything, and that is the version in openapi/released/v1.json.";
        if (released != committed && !Said("Unreleased"))
            yield return "The contract differs from the released one. Say under '## Unreleased' in openapi/CHANGELOG.md what changes for clients.";

        bool Said(string heading) => entries.TryGetValue(heading, out var text) && Item().IsMatch(text);
    }

    private static string WithVersion(string contract, string version)
    {
        var changed = JsonNode.Parse(contract)!;
        changed["info"]!["version"] = version;
        return changed.ToJsonString();
    }

    [GeneratedRegex(@"^## (?<version>\S+)[^\n]*\n(?<text>(?:(?!## ).*\n?)*)", RegexOptions.Multiline)]
    private static partial Regex Entry();

    [GeneratedRegex(@"^- \S", RegexOptions.Multiline)]
    private static partial Regex Item();
}
