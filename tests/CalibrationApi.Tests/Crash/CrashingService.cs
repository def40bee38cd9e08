using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Tests.Crash;

/// <summary>The built service as a process on a file that outlives it.</summary>
internal sealed class CrashingService : IAsyncDisposable
{
    private const string Machine = "01968f00-0000-7000-8000-000000000001";
    private const string Product = "01968f00-0000-7000-8000-000000000002";
    private const string Scale = "01968f00-0000-7000-8000-000000000003";
    private readonly ServiceProcess process;
    private readonly HttpClient client;
    private bool isKilled;

    private CrashingService(ServiceProcess process, HttpClient client) => (this.process, this.client) = (process, client);

    public static async Task<CrashingService> StartAsync(string file)
    {
        var process = ServiceProcess.Start("--urls", "http://127.0.0.1:0", "--Calibration:Database", file);
        return new CrashingService(process, CheckedClient.Of(await process.ListeningAsync()));
    }

    /// <summary>Creates what the tests refer to.</summary>
    public async Task DescribeAsync()
    {
        foreach (
            var (path, id, draft) in new[]
            {
                ("machines", Machine, Farm.MachineDraft),
                ("products", Product, Farm.ProductDraft),
                ("scales", Scale, Farm.ScaleDraft),
            }
        )
            Assert.Equal(201, await PostAsync($"/v1/{path}", draft.With("/id", id)));
    }

    /// <summary>Sends a test and gives the status; throws when the service dies before it answers.</summary>
    public Task<int> SendTestAsync(string id) =>
        PostAsync(
            "/v1/catch-tests",
            new Draft(
                new JsonObject
                {
                    ["id"] = id,
                    ["machine"] = Machine,
                    ["meter"] = "front",
                    ["element"] = "coarse",
                    ["product"] = Product,
                    ["scale"] = Scale,
                    ["occurredAt"] = "2026-04-18T06:40:00+02:00",
                    ["recordedBy"] = "A. Operator",
                    ["catches"] = new JsonArray(Farm.Catch(18.70, 47), Farm.Catch(18.56, 46.8)),
                }
            )
        );

    /// <summary>The id that the service says a test has; null when it has none.</summary>
    public async Task<string?> ReadTestAsync(string id)
    {
        using var response = await client.GetAsync(new Uri($"/v1/catch-tests/{id}", UriKind.Relative));
        return response.IsSuccessStatusCode ? JsonNode.Parse(await response.Content.ReadAsStringAsync())!["id"]!.GetValue<string>() : null;
    }

    /// <summary>The ids of all tests in the history.</summary>
    public async Task<IReadOnlyList<string>> HistoryAsync()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/history?limit=all", UriKind.Relative));
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("application/x-ndjson"));
        using var response = await client.SendAsync(request);
        var lines = (await response.EnsureSuccessStatusCode().Content.ReadAsStringAsync()).Split(
            '\n',
            StringSplitOptions.RemoveEmptyEntries
        );
        return [.. lines.Select(line => JsonNode.Parse(line)!["id"]!.GetValue<string>())];
    }

    /// <summary>A page of a list; throws when the service dies before it answers.</summary>
    public async Task<JsonNode> GetAsync(string path)
    {
        using var response = await client.GetAsync(new Uri(path, UriKind.Relative));
        return JsonNode.Parse(await response.EnsureSuccessStatusCode().Content.ReadAsStringAsync())!;
    }

    /// <summary>
    /// What is wrong with a file: its pages, its references, and tests, catches and lines of the history that do not belong together.
    /// </summary>
    public static IReadOnlyList<string> Faults(string file)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        connection.Open();
        return
        [
            .. connection.Query<string>("pragma integrity_check").Where(line => line != "ok"),
            .. connection
                .Query<string>("select \"table\" from pragma_foreign_key_check")
                .Select(table => $"a row of {table} refers to nothing"),
            .. connection
                .Query<string>("select id from catch_tests t where (select count(*) from catches c where c.test = t.seq) <> 2")
                .Select(id => $"{id} lacks catches"),
            .. connection
                .Query<string>("select id from catch_tests t where (select count(*) from history h where h.record = t.id) <> 1")
                .Select(id => $"{id} is not once in the history"),
            .. connection
                .Query<string>("select record from history h where not exists (select 1 from catch_tests t where t.id = h.record)")
                .Select(id => $"{id} is only in the history"),
        ];
    }

    /// <summary>Ends the process at once (SIGKILL): nothing of it runs any more.</summary>
    public async Task KillAsync()
    {
        if (isKilled)
            return;
        isKilled = true;
        await process.DisposeAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        client.Dispose();
    }

    private async Task<int> PostAsync(string path, Draft body)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(body.Text))
        {
            Headers = { ContentType = new MediaTypeHeaderValue("application/json") },
        };
        using var response = await client.PostAsync(new Uri(path, UriKind.Relative), content);
        var answer = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, answer);
        return (int)response.StatusCode;
    }
}
