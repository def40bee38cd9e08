using System.Net.Http.Headers;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The service over a database file of its own.</summary>
public sealed class RunningHost : WebApplicationFactory<Program>
{
    private static readonly (string Text, KeyText Made) Key = KeyText.Make("019a0000-0000-7000-8000-000000000001");

    private readonly string folder = Directory.CreateTempSubdirectory("calibration-tests-").FullName;

    protected override void ConfigureWebHost(IWebHostBuilder builder) =>
        builder.UseEnvironment("Production").UseSetting("Calibration:Database", Path.Combine(folder, "calibration.db"));

    protected override IHost CreateHost(IHostBuilder builder)
    {
        var host = base.CreateHost(builder);
        using var connection = host.Services.GetRequiredService<CalibrationDatabase>().Open();
        KeyStore.Insert(
            connection,
            "local",
            new KeyRecord
            {
                Id = Key.Made.Id,
                Name = "tests",
                Scopes = Scope.All,
                SecretHash = Key.Made.SecretHash,
                Fingerprint = "",
                CreatedAt = DateTimeOffset.UnixEpoch,
            }
        );
        return host;
    }

    // Some operations need a key whatever happens, so every request shows one.
    protected override void ConfigureClient(HttpClient client)
    {
        base.ConfigureClient(client);
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", Key.Text);
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}
