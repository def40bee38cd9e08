using System.Net.Http.Headers;
using System.Text;
using CalibrationApi.Testing;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>What callers and operator meet when the file of the database goes away under the running service.</summary>
public sealed class LostFileTests
{
    private const string Products = "/v1/products";

    [Fact]
    public async Task Requests_WhileTheFileIsAway_SayWhatGoesAndWhatDoesNot()
    {
        await using var service = ServiceProcess.Start("--urls", "http://127.0.0.1:0");
        using var client = CheckedClient.Of(await service.ListeningAsync());
        Assert.Equal(201, await StoreAsync(client));
        Assert.Equal(200, await AskAsync(client));
        var away = service.Database + ".away";
        File.Move(service.Database, away);

        using (var refused = await client.PostAsync(new Uri(Products, UriKind.Relative), Body()))
        {
            Assert.Equal("storage-unavailable", (await ProblemBody.ReadAsync(refused, 503)).Only().Code);
            Assert.Equal("60", Assert.Single(refused.Headers.GetValues("Retry-After")));
        }

        Assert.Equal(503, await GetAsync(client, Products));
        Assert.Equal(200, await GetAsync(client, "/healthz/live"));
        Assert.Equal(200, await GetAsync(client, "/v1/units"));
        // A calculation reads and stores nothing, and there were no keys.
        Assert.Equal(200, await AskAsync(client));
        using (var ready = await client.GetAsync(new Uri("/healthz/ready", UriKind.Relative)))
        {
            var said = new Answer(System.Text.Json.Nodes.JsonNode.Parse(await ready.Content.ReadAsStringAsync())!);
            Assert.Equal(503, (int)ready.StatusCode);
            Assert.Equal(
                ("fail", "fail", "pass"),
                (said.Word("/checks/storage/0/status"), said.Word("/checks/schema/0/status"), said.Word("/checks/disk/0/status"))
            );
            Assert.StartsWith(
                "Its file was deleted, moved or replaced while the service ran",
                said.Word("/checks/storage/0/output"),
                StringComparison.Ordinal
            );
        }

        Assert.Contains(
            "Its file was deleted, moved or replaced",
            await service.LoggedAsync("The database cannot be used."),
            StringComparison.Ordinal
        );

        File.Move(away, service.Database);
        Assert.Equal(201, await StoreAsync(client));
        Assert.Equal(200, await GetAsync(client, "/healthz/ready"));
        await service.LoggedAsync("The database can be used again.");
    }

    [Fact]
    public async Task Requests_WithAKeyWhileTheFileIsAway_CannotBeLetIn()
    {
        await using var service = ServiceProcess.Start("--urls", "http://127.0.0.1:0");
        using var client = CheckedClient.Of(await service.ListeningAsync());
        var (_, key, _) = await service.CommandAsync("keys", "create", "--name", "office", "--scopes", "calculate,read");
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key.Trim());
        Assert.Equal(200, await AskAsync(client));
        File.Delete(service.Database);
        // Those who only read look at the file ten times a second.
        await Task.Delay(TimeSpan.FromMilliseconds(200));

        Assert.Equal(503, await AskAsync(client));
        client.DefaultRequestHeaders.Authorization = null;
        Assert.Equal(401, await AskAsync(client));
    }

    private static StringContent Body() => new(Farm.ProductDraft.Text, Encoding.UTF8, "application/json");

    private static async Task<int> StoreAsync(HttpClient client)
    {
        using var response = await client.PostAsync(new Uri(Products, UriKind.Relative), Body());
        return (int)response.StatusCode;
    }

    private static async Task<int> AskAsync(HttpClient client)
    {
        using var response = await Question.Of(Question.CatchTest).AskAsync(client);
        return (int)response.StatusCode;
    }

    private static async Task<int> GetAsync(HttpClient client, string path)
    {
        using var response = await client.GetAsync(new Uri(path, UriKind.Relative));
        return (int)response.StatusCode;
    }
}
