using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>The installed client converts units as the running service lists them.</summary>
[Collection(OnePackage.Name)]
public sealed class UnitsTests(InstalledPackage package, RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task NumberIn_EveryUnitOfTheSameDimension_IsByTheFactorsOfTheService()
    {
        var run = ClientSource.Succeeded("The script fails.", await Command.RunAsync(package.Folder, "node", "units.mjs", service.Address));

        Assert.Equal(
            """{"apart":[],"manyCompared":true,"refused":"RangeError: 'kg' cannot be converted to 'm'.","pounds":1}""",
            run.Output.Trim()
        );
    }
}
