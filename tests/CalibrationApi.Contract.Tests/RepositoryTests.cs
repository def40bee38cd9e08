using System.Text;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>What the repository holds.</summary>
public sealed partial class RepositoryTests
{
    private static readonly string[] TopLevel =
    [
        "CalibrationApi.sln",
        "DEVELOPERS.md",
        "README.md",
        "demo-data",
        "http-examples",
        "openapi",
        "src",
        "tests",
    ];

    [Fact]
    public async Task TopLevel_OfTheRepository_IsTheAgreedOne()
    {
        var visible = (await TrackedFilesAsync())
            .Select(file => file.Split('/')[0])
            .Where(name => !name.StartsWith('.'))
            .Distinct()
            .Order(StringComparer.Ordinal);

        Assert.Equal(TopLevel, visible);
    }

    [Fact]
    public async Task Files_OfTheRepository_NameNoMachineAndNoRegistry()
    {
        var files = await TrackedFilesAsync();

        var named = new List<string>();
        foreach (var file in files)
        {
            var text = await File.ReadAllTextAsync(Repository.PathOf(file), Encoding.Latin1);
            named.AddRange(MachinePath().Matches(text).Concat(RegistryHost().Matches(text)).Select(match => $"{file}: {match.Value}"));
        }

        Assert.NotEmpty(files);
        Assert.Empty(named);
    }

    [Fact]
    public async Task LockFiles_OfTheRepository_AreThereForEveryProject()
    {
        var files = await TrackedFilesAsync();

        var without = files
            .Where(file => file.EndsWith(".csproj", StringComparison.Ordinal))
            .Where(project => !files.Contains($"{Path.GetDirectoryName(project)!.Replace('\\', '/')}/packages.lock.json"));

        Assert.Contains("openapi/package-lock.json", files);
        Assert.Empty(without);
    }

    private static async Task<IReadOnlyCollection<string>> TrackedFilesAsync()
    {
        // A checkout may belong to another user than the one who runs the tests; listing its files is harmless.
        var list = await Command.RunAsync(Repository.Root, "git", "-c", "safe.directory=*", "ls-files", "-z");
        Assert.True(list.ExitCode == 0, list.Everything);
        // A file that was removed but not yet committed is still listed.
        return list
            .Output.Split('\0', StringSplitOptions.RemoveEmptyEntries)
            .Where(file => File.Exists(Repository.PathOf(file)))
            .ToHashSet(StringComparer.Ordinal);
    }

    // A folder of one machine, or of whoever works there; the pattern itself must not be what it looks for.
    [GeneratedRegex("/wor[k]/|(?<![a-zA-Z0-9_.~})-])/(?:home|root|Users)/[a-z.]|share[d]/(?:design|reference)")]
    private static partial Regex MachinePath();

    // Addresses of package registries and of mirrors of them, by the parts their host names have.
    [GeneratedRegex(
        "https?://(?:[a-z0-9.-]*[.-])?(?:registr[y]|nuge[t]|npmj[s]|yarnpk[g]|artifactor[y]|nexu[s]|verdacci[o]|mirro[r])[a-z0-9.-]*[.:/][^\\s\"'<>)]*",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex RegistryHost();
}
