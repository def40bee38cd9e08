using System.Net.Http.Headers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using CalibrationApi.Testing;
using Dapper;

namespace CalibrationApi.Tests.Hosting.Starting;

/// <summary>The command that makes the first key, as a person meets it: processes on one database.</summary>
public sealed class KeysCommandTests
{
    [Fact]
    public async Task Create_BesideARunningService_ClosesItToEverybodyElseAtOnce()
    {
        await using var service = ServiceProcess.Start("--urls", "http://127.0.0.1:0");
        using var client = CheckedClient.Of(await service.ListeningAsync());
        Assert.True((await GetAsync(client)).IsSuccessStatusCode);

        var (exitCode, output, said) = await service.CommandAsync(
            "keys",
            "create",
            "--name",
            "office",
            "--scopes",
            "read,admin",
            "--expires",
            "2099-01-01"
        );

        Assert.Equal(0, exitCode);
        var key = output.Trim();
        Assert.Matches(KeyText.Pattern, key);
        Assert.DoesNotContain(key[^20..], said, StringComparison.Ordinal);
        Assert.Contains("shown this once", said, StringComparison.Ordinal);
        Assert.Equal(401, (int)(await GetAsync(client)).StatusCode);
        Assert.True((await GetAsync(client, key)).IsSuccessStatusCode);

        var id = KeyText.Read(key)!.Id;
        Assert.Contains(id, (await service.CommandAsync("keys", "list")).Output, StringComparison.Ordinal);
        Assert.Equal(0, (await service.CommandAsync("keys", "revoke", "--id", id, "--reason", "test")).ExitCode);
        Assert.Equal(401, (int)(await GetAsync(client, key)).StatusCode);
        Assert.Contains("revoked", (await service.CommandAsync("keys", "list")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_WhileTheServiceIsStopped_LetsItListenToOtherMachines()
    {
        await using var refused = ServiceProcess.Start("--urls", "http://0.0.0.0:0");
        Assert.Contains("keys create", (await refused.EndAsync()).Errors, StringComparison.Ordinal);

        var (_, output, _) = await refused.CommandAsync("keys", "create", "--name", "office", "--scopes", "admin,read");

        await using var service = refused.Again("--urls", "http://0.0.0.0:0");
        using var client = CheckedClient.Of(new UriBuilder(await service.ListeningAsync()) { Host = "127.0.0.1" }.Uri);
        Assert.Equal(401, (int)(await GetAsync(client)).StatusCode);
        Assert.True((await GetAsync(client, output.Trim())).IsSuccessStatusCode);
    }

    [Theory]
    [InlineData("read", null)]
    [InlineData("admin", "2026-01-01")]
    public async Task Start_OnAnAddressThatOthersReach_TakesAnAdministratorThatIsLive(string scope, string? expired)
    {
        await using var service = ServiceProcess.Start("keys", "create", "--name", "x", "--scopes", scope);
        await service.EndAsync();
        using (var database = new CalibrationDatabase(service.Database))
        using (var connection = database.Open())
            connection.Execute("update keys set expires_at = @expired", new { expired });

        await using var open = service.Again("--urls", "http://0.0.0.0:0");

        Assert.StartsWith("Refusing to start", (await open.EndAsync()).Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Say what to do.")]
    [InlineData("--name is missing.", "create", "--scopes", "read")]
    [InlineData("--scopes is missing.", "create", "--name", "x")]
    [InlineData("--scopes takes calculate", "create", "--name", "x", "--scopes", "root")]
    [InlineData("--name needs a value.", "create", "--name", "--scopes")]
    [InlineData("'--nmae' is not known here.", "create", "--nmae", "x")]
    [InlineData("--name is given twice.", "create", "--name", "x", "--name", "y")]
    [InlineData("There is no workspace 'barn'", "create", "--name", "x", "--scopes", "read", "--workspace", "barn")]
    [InlineData("--expires lies in the past.", "create", "--name", "x", "--scopes", "read", "--expires", "2020-01-01")]
    [InlineData("--expires takes a date", "create", "--name", "x", "--scopes", "read", "--expires", "soon")]
    [InlineData("has no key with the id", "revoke", "--id", "nope")]
    public async Task Command_ThatIsWrong_SaysWhatAndMakesNothing(string said, params string[] arguments)
    {
        await using var service = ServiceProcess.Start(["keys", .. arguments]);

        var (exitCode, errors) = await service.EndAsync();

        Assert.Equal(1, exitCode);
        Assert.Contains(said, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
        if (!File.Exists(service.Database))
            return;
        using var database = new CalibrationDatabase(service.Database);
        Assert.False(database.Read(KeyStore.AnyExists));
    }

    private static async Task<HttpResponseMessage> GetAsync(HttpClient client, string? key = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/machines", UriKind.Relative));
        if (key is not null)
            request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return await client.SendAsync(request);
    }
}
