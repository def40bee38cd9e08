using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The solution builds every project, in two configurations and no more.</summary>
public sealed partial class SolutionTests
{
    private static readonly string[] Folders = ["src", "tests"];

    private static readonly string Solution = File.ReadAllText(Repository.PathOf("CalibrationApi.sln"));

    [Fact]
    public void Solution_Projects_AreAllThatThereAre()
    {
        var projects = Folders
            .SelectMany(folder =>
                Directory.EnumerateFiles(
                    Repository.PathOf(folder),
                    "*.csproj",
                    new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 3 }
                )
            )
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('/', '\\'))
            .Where(file => !file.Contains("\\obj\\", StringComparison.Ordinal) && !file.Contains("\\bin\\", StringComparison.Ordinal));

        Assert.Equal(
            projects.Order(StringComparer.Ordinal),
            Project().Matches(Solution).Select(match => match.Groups[1].Value).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Solution_Configurations_AreDebugAndReleaseForAnyProcessor()
    {
        var platforms = Platform().Matches(Solution).Select(match => match.Value).Distinct().Order(StringComparer.Ordinal);

        // 'dotnet sln add' brings in others that nobody needs: take out their lines.
        Assert.Equal(["Debug|Any CPU", "Release|Any CPU"], platforms);
    }

    [GeneratedRegex("\"([^\"]+\\.csproj)\"")]
    private static partial Regex Project();

    [GeneratedRegex(@"(Debug|Release)\|(\w+ ?\w*)(?= =|\.|$)", RegexOptions.Multiline)]
    private static partial Regex Platform();
}
