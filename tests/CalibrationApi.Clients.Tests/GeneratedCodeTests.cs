using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>The code of the client is made while building, from the contract as it is.</summary>
public sealed class GeneratedCodeTests : IDisposable
{
    private const string Project = "src/Clients/CSharp";
    private const string Making = "making the code of the client";

    private static readonly string[] Needed =
    [
        $"{Project}/CalibrationApi.Client.csproj",
        $"{Project}/Generation.targets",
        $"{Project}/Generation/CalculationMethods.cs",
        "src/Directory.Build.props",
        "src/Directory.Packages.props",
        "openapi/v1.json",
        ".config/dotnet-tools.json",
    ];

    private readonly DirectoryInfo clone = Directory.CreateTempSubdirectory("calibration-generated-");

    public GeneratedCodeTests()
    {
        foreach (var file in Needed)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(In(file))!);
            File.Copy(Repository.PathOf(file), In(file));
        }
    }

    [Fact]
    public async Task Build_OfAFreshClone_MakesTheCodeOnceAndAgainWhenTheContractChanges()
    {
        var first = await MakeAsync();
        var second = await MakeAsync();

        Assert.True(first.ExitCode == 0, first.Everything);
        Assert.Contains(Making, first.Output, StringComparison.Ordinal);
        Assert.Equal(0, second.ExitCode);
        Assert.DoesNotContain(Making, second.Output, StringComparison.Ordinal);
        Assert.Contains("Models/CatchTestRequest.cs", Made());
        Assert.DoesNotContain("Models/CatchTestQuestion.cs", Made());

        await File.WriteAllTextAsync(
            In("openapi/v1.json"),
            (await File.ReadAllTextAsync(In("openapi/v1.json"))).Replace("CatchTestRequest", "CatchTestQuestion", StringComparison.Ordinal)
        );
        var third = await MakeAsync();

        Assert.True(third.ExitCode == 0, third.Everything);
        Assert.Contains(Making, third.Output, StringComparison.Ordinal);
        Assert.Contains("Models/CatchTestQuestion.cs", Made());
        // What is no longer in the contract is not compiled any more.
        Assert.DoesNotContain("Models/CatchTestRequest.cs", Made());
        Assert.Contains(
            "EvaluateCatchTestAsync(CatchTestQuestion question",
            await File.ReadAllTextAsync(In($"{Project}/obj/Generated/Debug/Calculations.Methods.cs")),
            StringComparison.Ordinal
        );
        Assert.Single(Directory.GetDirectories(In($"{Project}/obj/Generated")));
    }

    [Fact]
    public async Task Build_WhereTheToolCannotBeRestored_SaysWhatToDo()
    {
        // A version that no cache has, and no source to ask.
        await File.WriteAllTextAsync(
            In(".config/dotnet-tools.json"),
            """
            { "version": 1, "isRoot": true, "tools": { "microsoft.openapi.kiota": { "version": "0.0.0-none", "commands": ["kiota"] } } }
            """
        );
        clone.CreateSubdirectory("none");
        await File.WriteAllTextAsync(
            In("nuget.config"),
            """<configuration><packageSources><clear /><add key="none" value="none" /></packageSources></configuration>"""
        );

        var build = await MakeAsync();

        Assert.NotEqual(0, build.ExitCode);
        Assert.Contains("error CLIENT001", build.Output, StringComparison.Ordinal);
        Assert.Contains("dotnet tool restore", build.Output, StringComparison.Ordinal);
        Assert.Contains("microsoft.openapi.kiota", build.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Build_FromAContractThatIsNone_SaysWhatToDo()
    {
        await File.WriteAllTextAsync(In("openapi/v1.json"), "{");

        var build = await MakeAsync();

        Assert.NotEqual(0, build.ExitCode);
        Assert.Contains("error CLIENT002", build.Output, StringComparison.Ordinal);
        Assert.Contains("npm run lint", build.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task DesignTimeBuild_OfAFreshClone_MakesNothingAndDoesNotFail()
    {
        var build = await MakeAsync("-p:DesignTimeBuild=true");

        Assert.True(build.ExitCode == 0, build.Everything);
        Assert.False(Directory.Exists(In($"{Project}/obj/Generated")));
    }

    public void Dispose() => clone.Delete(recursive: true);

    private string In(string file) => Path.Combine(clone.FullName, file);

    // Without a server that outlives the build and would hold its output open.
    private Task<Command> MakeAsync(params IEnumerable<string> properties) =>
        Command.RunAsync(
            clone.FullName,
            "dotnet",
            ["msbuild", $"{Project}/CalibrationApi.Client.csproj", "-t:IncludeGeneratedClient", "-nodeReuse:false", .. properties]
        );

    private HashSet<string> Made()
    {
        var folder = In($"{Project}/obj/Generated/Debug");
        return
        [
            .. Directory
                .EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')),
        ];
    }
}
