using System.Text.Json.Nodes;
using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Tests.Hosting.Health;

public sealed class HealthTests
{
    [Fact]
    public async Task Live_OfARunningService_Passes()
    {
        await using var host = new ArrangedHost();

        var health = await AskAsync(host, "live", 200);

        Assert.Equal("pass", health["status"]!.GetValue<string>());
        Assert.Null(health["checks"]);
    }

    [Fact]
    public async Task Ready_OfAServiceThatCanWork_PassesEveryCheck()
    {
        await using var host = new ArrangedHost();

        var health = await AskAsync(host, "ready", 200);

        Assert.Equal("pass", health["status"]!.GetValue<string>());
        Assert.Equal(["storage", "schema", "disk"], health["checks"]!.AsObject().Select(check => check.Key));
        Assert.Empty(Failed(health));
    }

    [Fact]
    public async Task Ready_WithLessRoomThanWanted_SaysSo()
    {
        await using var host = new ArrangedHost(("Calibration:LeastFreeDiskMiB", "1000000"));

        var health = await AskAsync(host, "ready", 503);

        Assert.Equal(["disk"], Failed(health));
        Assert.EndsWith(
            "at least 1000000 MiB are wanted (Calibration__LeastFreeDiskMiB).",
            Output(health, "disk"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Ready_WithTheSchemaOfAnotherVersion_SaysSo()
    {
        await using var host = new ArrangedHost();
        using (var connection = host.Services.GetRequiredService<CalibrationDatabase>().Open())
            connection.Execute("pragma user_version = 9999");

        var health = await AskAsync(host, "ready", 503);

        Assert.Equal(["schema"], Failed(health));
    }

    [Fact]
    public async Task Ready_WithADatabaseThatCannotBeWritten_SaysSoAndNothingOfItsInside()
    {
        await using var host = new ArrangedHost();
        await host.Services.GetRequiredService<SingleWriter>().DisposeAsync();

        var health = await AskAsync(host, "ready", 503);

        Assert.Equal(["storage"], Failed(health));
        Assert.Equal("The database cannot be written.", Output(health, "storage"));
        Assert.Equal("pass", (await AskAsync(host, "live", 200))["status"]!.GetValue<string>());
    }

    private static async Task<JsonObject> AskAsync(ArrangedHost host, string which, int status)
    {
        using var response = await host.GetAsync($"/healthz/{which}");
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(status == (int)response.StatusCode, text);
        Assert.Equal("application/health+json", response.Content.Headers.ContentType?.MediaType);
        Assert.True(response.Headers.CacheControl!.NoStore);
        Assert.DoesNotContain(Path.GetTempPath(), text, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
        return JsonNode.Parse(text)!.AsObject();
    }

    private static IEnumerable<string> Failed(JsonObject health) =>
        health["checks"]!.AsObject().Where(check => check.Value![0]!["status"]!.GetValue<string>() != "pass").Select(check => check.Key);

    private static string Output(JsonObject health, string check) => health["checks"]![check]![0]!["output"]!.GetValue<string>();
}
