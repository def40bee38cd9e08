using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Contract.Tests;

/// <summary>The real service in memory, over a database of its own.</summary>
internal sealed class Service(Action<IServiceCollection>? change = null) : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-contract-");

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("Calibration:Database", Path.Combine(folder.FullName, "contract.db"));
        if (change is not null)
            builder.ConfigureTestServices(change);
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && folder.Exists)
            folder.Delete(recursive: true);
    }
}
