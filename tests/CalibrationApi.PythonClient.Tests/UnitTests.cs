using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>
/// Runs the tests of the installed client that are written for Python's own test runner, against a small server of theirs.
/// </summary>
[Collection(OneInstallation.Name)]
public sealed class UnitTests(InstalledClient client)
{
    public static TheoryData<string> Modules =>
        [
            .. Directory
                .GetFiles(Repository.PathOf("tests", "CalibrationApi.PythonClient.Tests", "Python"), "*_test.py")
                .Select(path => Path.GetFileNameWithoutExtension(path))
                .Order(StringComparer.Ordinal),
        ];

    [PythonTheory]
    [MemberData(nameof(Modules))]
    public async Task Tests_InPython_Pass(string module)
    {
        var run = await client.RunAsync(
            "-W",
            "error",
            "-m",
            "run_module",
            module,
            Path.Combine(client.Folder, "certificate.pem"),
            Repository.PathOf("openapi", "v1.json")
        );

        Assert.True(run.ExitCode == 0, run.Everything);
        Assert.Matches("Ran [1-9]", run.Errors);
        Assert.Matches(@"^OK\s*$", run.Errors.TrimEnd().Split('\n')[^1]);
        // What is left open is no failure for that runner.
        Assert.DoesNotContain("Warning", run.Errors, StringComparison.Ordinal);
    }
}
