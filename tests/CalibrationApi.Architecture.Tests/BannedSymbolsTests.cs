using System.Diagnostics;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The ban on clock, files, network and chance in the engine is enforced by its build.</summary>
public sealed partial class BannedSymbolsTests : IDisposable
{
    private static readonly string[] EngineFiles = ["CalibrationApi.Engine.csproj", "BannedSymbols.txt", "packages.lock.json"];
    private static readonly string[] SourceProperties = ["Directory.Build.props", "Directory.Packages.props"];

    private readonly string folder = Directory.CreateTempSubdirectory("banned-symbols-").FullName;

    [Fact]
    public async Task Build_OfTheEnginesProjectWithViolations_FailsAtEachOfThem()
    {
        // The engine's own project file with its settings, and one file of code that it must not take.
        var engine = Directory.CreateDirectory(Path.Combine(folder, "src", "CalibrationApi.Engine")).FullName;
        foreach (var file in EngineFiles)
            File.Copy(Repository.PathOf("src", "CalibrationApi.Engine", file), Path.Combine(engine, file));
        foreach (var file in SourceProperties)
            File.Copy(Repository.PathOf("src", file), Path.Combine(folder, "src", file));
        await File.WriteAllTextAsync(
            Path.Combine(engine, "Violations.cs"),
            """
            namespace CalibrationApi.Engine;

            /// <summary>Uses what is banned.</summary>
            internal static class Violations
            {
                public static object Clock() => System.DateTime.UtcNow;
                public static object Chance() => new System.Random(1);
                public static object Files(string path) => System.IO.File.ReadAllText(path);
                public static object Network(string address) => new System.Net.Http.HttpClient().GetAsync(address);
                public static object Machine() => System.Environment.ProcessorCount;
                public static object Allowed() => System.Math.Sqrt(2);
            }
            """
        );

        var (exitCode, output) = await BuildAsync(engine);

        var lines = BannedAtLine().Matches(output).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal);
        Assert.NotEqual(0, exitCode);
        Assert.True(lines.SequenceEqual(["10", "6", "7", "8", "9"]), output);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static async Task<(int ExitCode, string Output)> BuildAsync(string project)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = project,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // The packages are those that the engine was restored with; nothing is asked of a network.
        foreach (
            var argument in (string[])
                [
                    "build",
                    "-nodeReuse:false",
                    "-p:NuGetAudit=false",
                    "-p:UseSharedCompilation=false",
                    "-p:RestoreLockedMode=true",
                    "-v:minimal",
                ]
        )
            start.ArgumentList.Add(argument);
        // A test host sets these for its own process; a build of another project must not see them.
        foreach (
            var inherited in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToArray()
        )
            start.Environment.Remove(inherited);
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        using var build = Process.Start(start)!;
        var errors = build.StandardError.ReadToEndAsync();
        var output = await build.StandardOutput.ReadToEndAsync();
        await build.WaitForExitAsync();
        return (build.ExitCode, output + await errors);
    }

    [GeneratedRegex(@"Violations\.cs\((\d+),\d+\): error RS0030")]
    private static partial Regex BannedAtLine();
}
