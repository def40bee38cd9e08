using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>The installed client waits for changes of the running service.</summary>
[Collection(OneInstallation.Name)]
public sealed class ChangesTests(InstalledClient client, RunningService service) : IClassFixture<RunningService>
{
    [PythonFact]
    public async Task Changes_OfARunningService_AreListedFollowedAndGoneOnWith()
    {
        var run = ClientSource.Succeeded("The script fails.", await client.RunAsync("changes.py", service.Address));

        Assert.Equal("""{"listed":[true,true,"created"],"followed":[true,true],"refused":"400 cursor-invalid"}""", run.Output.Trim());
    }
}
