using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Contract.Tests;

/// <summary>The real service in memory, over a database of its own, on the day after the demo season.</summary>
internal sealed partial class Service(Action<IServiceCollection>? change = null, params (string Name, string Value)[] settings)
    : WebApplicationFactory<Program>
{
    private static readonly DemoSeason Season = new();

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-contract-");

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("Calibration:Log", "text");
        // Tests of every bound of every member ask more of one key than anybody else does.
        builder.UseSetting("Calibration:Limits:RequestsPerMinutePerKey", "1000000");
        foreach (var (name, value) in settings)
            builder.UseSetting(name, value);
        builder.UseSetting("Calibration:Database", Path.Combine(folder.FullName, "contract.db"));
        builder.ConfigureTestServices(services =>
        {
            services.AddSingleton<TimeProvider>(new StoppedClock(Season.DayAfter));
            change?.Invoke(services);
        });
    }

    /// <summary>Starts it with the season loaded.</summary>
    public async Task<Service> LoadAsync()
    {
        using var client = CreateClient();
        await Season.LoadAsync(client);
        return this;
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && folder.Exists)
            folder.Delete(recursive: true);
    }

    /// <summary>Instants that the service adds are always the same, so that its answers are.</summary>
    private sealed class StoppedClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;

        // What counts seconds, such as the limits, stands still with it.
        public override long GetTimestamp() => 0;
    }
}
