using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>Runs the tests of the installed client that are written for Node's own test runner, against a small server of theirs.</summary>
[Collection(OnePackage.Name)]
public sealed class NodeTests(InstalledPackage package)
{
    public static TheoryData<string> Files =>
        [
            .. Directory
                .GetFiles(Repository.PathOf("tests", "CalibrationApi.TypeScriptClient.Tests", "Node"), "*.test.mjs")
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Tests_InNode_Pass(string file)
    {
        var run = await Command.RunAsync(package.Folder, "node", "--test", "--test-reporter", "tap", file);

        Assert.True(run.ExitCode == 0, run.Everything);
        Assert.Matches("# pass [1-9]", run.Output);
        Assert.Contains("# skipped 0", run.Output, StringComparison.Ordinal);
    }
}
