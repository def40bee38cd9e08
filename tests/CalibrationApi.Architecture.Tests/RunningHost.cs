using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The service over a database file of its own.</summary>
public sealed class RunningHost : WebApplicationFactory<Program>
{
    private readonly string folder = Directory.CreateTempSubdirectory("calibration-tests-").FullName;

    protected override void ConfigureWebHost(IWebHostBuilder builder) => builder
        .UseEnvironment("Production")
        .UseSetting("Calibration:Database", Path.Combine(folder, "calibration.db"));

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}
