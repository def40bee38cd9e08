using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Tests.Hosting.Demo;

/// <summary>The service started twice with --demo over one database; the second start still runs.</summary>
public sealed class LoadedSeason : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-demo-");
    private ServiceProcess? service;
    private HttpClient? client;

    /// <summary>Every list of the service after the first start.</summary>
    public IReadOnlyDictionary<string, string> First { get; private set; } = new Dictionary<string, string>();

    /// <summary>Every list of the service after the second start.</summary>
    public IReadOnlyDictionary<string, string> Second { get; private set; } = new Dictionary<string, string>();

    public async Task InitializeAsync()
    {
        await StartAsync();
        First = await ListsAsync();
        await StopAsync();
        await StartAsync();
        Second = await ListsAsync();
    }

    public async Task DisposeAsync()
    {
        await StopAsync();
        folder.Delete(recursive: true);
    }

    internal async Task<Answer> GetAsync(string path)
    {
        using var response = await client!.GetAsync(new Uri(path, UriKind.Relative));
        return await Answer.ReadAsync(response);
    }

    internal Task<Answer> CatchTestAsync(int number) => GetAsync(Path("catch-tests", 9, number));

    internal async Task<Answer> RecomputeAsync(string id)
    {
        using var response = await client!.PostAsync(new Uri($"/v1/catch-tests/{id}/recomputations", UriKind.Relative), null);
        return await Answer.ReadAsync(response);
    }

    internal static string Path(string plural, int kind, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"/v1/{plural}/019d0000-000{kind}-7000-8000-{number:D12}");

    private async Task StartAsync()
    {
        // The switch stands first: what follows it still counts.
        service = ServiceProcess.Start(
            "--demo",
            "--urls",
            "http://127.0.0.1:0",
            "--Calibration:Database",
            System.IO.Path.Combine(folder.FullName, "season.db")
        );
        var address = await service.ListeningAsync();
        client = await CheckedClientAsync(address);

        // Loading goes on after the service listens; it is done when the last record is there.
        var (path, last) = SeasonFile.Requests[^1];
        using var patience = new CancellationTokenSource(Patience);
        while (!(await client.GetAsync(new Uri($"{path}/{SeasonFile.Id(last)}", UriKind.Relative), patience.Token)).IsSuccessStatusCode)
            await Task.Delay(50, patience.Token);
    }

    private static async Task<HttpClient> CheckedClientAsync(Uri address)
    {
        using var plain = new HttpClient { BaseAddress = address };
        var contract = ContractDocument.Parse(await plain.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
        return CheckedClient.Of(address, contract);
    }

    private async Task StopAsync()
    {
        client?.Dispose();
        if (service is not null)
            await service.DisposeAsync();
    }

    private async Task<Dictionary<string, string>> ListsAsync()
    {
        var lists = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in SeasonFile.Requests.Select(request => request.Path).Append("/v1/history").Distinct())
        {
            var more = path is "/v1/history" or "/v1/catch-tests" or "/v1/adoptions" or "/v1/scale-checks" ? "" : "&includeRetired=true";
            lists[path] = await client!.GetStringAsync(new Uri($"{path}?limit=1000{more}", UriKind.Relative));
        }

        return lists;
    }

    /// <summary>The items of a list after the second start.</summary>
    internal JsonArray Items(string path) => JsonNode.Parse(Second[path])!["items"]!.AsArray();
}
