using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>The installed client waits for changes of the running service.</summary>
[Collection(OnePackage.Name)]
public sealed class ChangesTests(InstalledPackage package, RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Changes_OfARunningService_AreListedFollowedAndGoneOnWith()
    {
        var run = ClientSource.Succeeded(
            "The script fails.",
            await Command.RunAsync(package.Folder, "node", "changes.mjs", service.Address)
        );

        Assert.Equal("""{"listed":[true,true,"created"],"followed":[true,true],"refused":"400 cursor-invalid"}""", run.Output.Trim());
    }
}
