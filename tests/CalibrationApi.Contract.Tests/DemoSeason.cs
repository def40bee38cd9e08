using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The invented season of demo-data, as the requests that make it.</summary>
internal sealed class DemoSeason
{
    private readonly (string Path, JsonObject Body)[] requests =
    [
        .. JsonNode.Parse(File.ReadAllText(Repository.PathOf("demo-data", "season.json")))!["requests"]!
            .AsArray()
            .Select(request => (request!["path"]!.GetValue<string>(), request["body"]!.AsObject())),
    ];

    /// <summary>The day after the last thing that happened, so that nothing of the season lies in the future.</summary>
    public DateTimeOffset DayAfter =>
        requests
            .Select(request => request.Body["occurredAt"]?.GetValue<string>())
            .OfType<string>()
            .Append("2026-01-01T00:00:00Z")
            .Max(text => DateTimeOffset.Parse(text, System.Globalization.CultureInfo.InvariantCulture).ToUniversalTime())
            .AddDays(1);

    /// <summary>The id of the first record of a collection.</summary>
    public string FirstOf(string collection) => requests.First(request => request.Path == collection).Body["id"]!.GetValue<string>();

    /// <summary>Sends every request in order.</summary>
    public async Task LoadAsync(HttpClient client)
    {
        foreach (var (path, body) in requests)
        {
            using var content = new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json");
            using var response = await client.PostAsync(new Uri(path, UriKind.Relative), content);
            Assert.True(response.IsSuccessStatusCode, $"demo-data/season.json: {path} {await response.Content.ReadAsStringAsync()}");
        }
    }
}
