using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.Tests.Plumbing.Access;

public sealed class SecretsInLogsTests
{
    [Fact]
    public async Task Log_OfEverything_HoldsNoKey()
    {
        using var log = new LogEntries();
        using var host = new LoggingHost(log);
        var (text, made) = KeyText.Make("019d0000-000b-7000-8000-000000000001");
        using (var connection = host.Services.GetRequiredService<CalibrationDatabase>().Open())
            KeyStore.Insert(
                connection,
                "local",
                new KeyRecord
                {
                    Id = made.Id,
                    Name = "test",
                    Scopes = [Scope.Admin],
                    SecretHash = made.SecretHash,
                    Fingerprint = "",
                    CreatedAt = DateTimeOffset.UnixEpoch,
                }
            );
        using var client = host.CreateCheckedClient();
        client.DefaultRequestHeaders.Authorization = new("Bearer", text);
        using var body = new StringContent("""{ "name": "x", "scopes": ["read"] }""", System.Text.Encoding.UTF8, "application/json");

        using var created = await client.PostAsync(new Uri("/v1/keys", UriKind.Relative), body);
        var other = System.Text.Json.Nodes.JsonNode.Parse(await created.Content.ReadAsStringAsync())!["key"]!.GetValue<string>();
        using var refused = await client.GetAsync(new Uri("/v1/machines", UriKind.Relative));
        client.DefaultRequestHeaders.Authorization = new("Bearer", text[..^1]);
        using var cut = await client.GetAsync(new Uri("/v1/machines", UriKind.Relative));

        Assert.Equal((201, 403, 401), ((int)created.StatusCode, (int)refused.StatusCode, (int)cut.StatusCode));
        Assert.Contains(log.All, entry => entry.Level <= LogLevel.Debug);
        foreach (var key in new[] { text, other })
        {
            var secret = key[(KeyText.Start(made.Id).Length + 1)..][..20];
            Assert.DoesNotContain(log.All, entry =>
                entry.Text.Contains(secret, StringComparison.Ordinal)
                || entry.Exception?.ToString().Contains(secret, StringComparison.Ordinal) == true
            );
        }
    }

    private sealed class LoggingHost(LogEntries log) : ApiHost
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureLogging(logging => logging.AddProvider(log).SetMinimumLevel(LogLevel.Trace));
            builder.UseSetting("Logging:LogLevel:Default", "Trace");
            builder.UseSetting("Logging:LogLevel:Microsoft.AspNetCore", "Trace");
            builder.UseSetting($"Logging:LogLevel:{typeof(KeyScheme).FullName}", "Trace");
        }
    }
}
