using System.Net.Http.Headers;
using System.Reflection;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Described;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace CalibrationApi.Hosting.Demo;

/// <summary>Serves with an invented season loaded: the same requests that a client would send, in order, with ids of their own.</summary>
/// <remarks>Every request carries its own id, so that loading twice changes nothing.</remarks>
internal static class DemoSeason
{
    public const string Switch = "--demo";

    /// <summary>The arguments that set something. A switch without a value would take the argument after it for its value.</summary>
    public static string[] OtherArguments(string[] arguments) => [.. arguments.Where(argument => argument != Switch)];

    /// <summary>Loads the season and serves until stopped; false when the database holds other data.</summary>
    public static async Task<bool> RunAsync(WebApplication app)
    {
        var requests = Requests();
        var database = app.Services.GetRequiredService<CalibrationDatabase>();
        if (HoldsOtherData(database, requests))
        {
            await Console.Error.WriteLineAsync(
                $"Refusing to start: {Switch} would mix invented data into a database that holds other data ({database.Path}). Set Calibration__Database to another file, or start without {Switch}."
            );
            return false;
        }

        await app.StartAsync();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        bool isLoaded;
        using (var client = new HttpClient { BaseAddress = new Uri(address) })
        using (LoadingKey.Lend(database, client))
            isLoaded = await LoadAsync(client, requests);
        if (!isLoaded)
        {
            await app.StopAsync();
            await Console.Error.WriteLineAsync(
                $"Refusing to start: the database {database.Path} holds the invented season of another version. Delete that file and start again."
            );
            return false;
        }

        DemoGreeting.Print(address);
        await app.WaitForShutdownAsync();
        return true;
    }

    private static JsonObject[] Requests()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("demo-data/season.json")!;
        return [.. JsonNode.Parse(stream)!["requests"]!.AsArray().Select(request => request!.AsObject())];
    }

    private static bool HoldsOtherData(CalibrationDatabase database, JsonObject[] requests)
    {
        if (database.IsEmpty())
            return false;
        var machine = requests.First(request => request["path"]!.GetValue<string>() == "/v1/machines")["body"]!["id"]!.GetValue<string>();
        using var connection = database.Open();
        return new DescribedRecordStore(RecordKind.Machines).Find(connection, Workspace.Local, machine) is null;
    }

    // False when a record of the season is there already, but was created by another body.
    private static async Task<bool> LoadAsync(HttpClient client, JsonObject[] requests)
    {
        foreach (var request in requests)
        {
            using var body = new StringContent(
                request["body"]!.ToJsonString(JsonSettings.Writing),
                Encoding.UTF8,
                new MediaTypeHeaderValue("application/json")
            );
            using var response = await client.PostAsync(new Uri(request["path"]!.GetValue<string>(), UriKind.Relative), body);
            if (response.IsSuccessStatusCode)
                continue;
            var problem = await response.Content.ReadAsStringAsync();
            return problem.Contains($"\"{ErrorCodes.IdTaken}\"", StringComparison.Ordinal)
                ? false
                : throw new InvalidOperationException($"The demo data does not fit this service: {request["path"]} {problem}");
        }

        return true;
    }
}
