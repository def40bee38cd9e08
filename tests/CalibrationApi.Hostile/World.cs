using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Hostile;

/// <summary>What requests are made of: two workspaces with the same season under different ids, keys of all sorts, cursors.</summary>
/// <remarks>
/// Ids are the same in every run, so that a request can be made again. Only keys and cursors hold what is made anew each time.
/// </remarks>
public sealed class World
{
    /// <summary>The collection of keys that requests may end.</summary>
    public const string Keys = "/v1/keys";

    /// <summary>The collection of workspaces.</summary>
    public const string Workspaces = "/v1/workspaces";

    private const string Start = "019d0000-";
    private const string ForeignStart = "019d7777-";
    private const string Foreign = "019d0000-000c-7000-8000-000000000001";
    private const string Spare = "019d0000-000c-7000-8000-000000000002";
    private const int SpareKeys = 40;

    private World(string key) => Key = key;

    /// <summary>A key with every scope, of the workspace that requests are meant for.</summary>
    public string Key { get; }

    /// <summary>A key that may only read.</summary>
    public string ReadingKey { get; private set; } = "";

    /// <summary>A key with every scope but that of the operator, of the other workspace.</summary>
    public string ForeignKey { get; private set; } = "";

    /// <summary>A key that was revoked.</summary>
    public string RevokedKey { get; private set; } = "";

    /// <summary>Ids of records by their collection.</summary>
    public IReadOnlyDictionary<string, string[]> Ids { get; private set; } = new Dictionary<string, string[]>();

    /// <summary>Ids of records of the other workspace.</summary>
    public IReadOnlyList<string> ForeignIds { get; private set; } = [];

    /// <summary>Cursors that the service gave out, by the list that they belong to; the last are those of the other workspace.</summary>
    public IReadOnlyList<string> Cursors { get; private set; } = [];

    /// <summary>Fills a service that holds the demo season.</summary>
    public static async Task<World> MakeAsync(RunningService service)
    {
        var world = new World(
            await service.CommandAsync("keys", "create", "--name", "hostile", "--scopes", "calculate,read,write,admin,operator")
        );
        using var client = CheckedClient.Of(new Uri(service.Address));
        async Task<JsonNode> SendAsync(string key, HttpMethod method, string path, JsonObject? body)
        {
            using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative));
            request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
            if (body is not null)
                request.Content = new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json");
            using var response = await client.SendAsync(request);
            return response.IsSuccessStatusCode
                ? (await response.Content.ReadFromJsonAsync<JsonNode>())!
                : throw new InvalidOperationException(
                    $"{path} answered {(int)response.StatusCode}: {await response.Content.ReadAsStringAsync()}"
                );
        }

        async Task<string> KeyAsync(string path, string? id, params string[] scopes)
        {
            var body = new JsonObject { ["name"] = "hostile", ["scopes"] = new JsonArray([.. scopes.Select(scope => (JsonNode)scope)]) };
            if (id is not null)
                body["id"] = id;
            return (await SendAsync(world.Key, HttpMethod.Post, path, body))["key"]!.GetValue<string>();
        }

        foreach (var id in new[] { Foreign, Spare })
            await SendAsync(world.Key, HttpMethod.Post, Workspaces, new JsonObject { ["id"] = id, ["name"] = $"farm {id}" });
        world.ReadingKey = await KeyAsync(Keys, null, "read");
        world.ForeignKey = await KeyAsync($"{Workspaces}/{Foreign}/keys", null, "calculate", "read", "write", "admin");
        var spares = Enumerable.Range(0, SpareKeys).Select(number => $"019d0000-000d-7000-8000-{number:000000000000}").ToArray();
        foreach (var id in spares)
            world.RevokedKey = await KeyAsync(Keys, id, "read");
        await SendAsync(world.Key, HttpMethod.Post, $"{Keys}/{spares[^1]}/revocations", new JsonObject { ["reason"] = "lost" });

        var season = JsonNode.Parse(await File.ReadAllTextAsync(Repository.PathOf("demo-data", "season.json")))!["requests"]!
            .AsArray()
            .Select(request => (Path: request!["path"]!.GetValue<string>(), Body: request["body"]!.AsObject()))
            .ToArray();
        foreach (var (path, body) in season)
            await SendAsync(
                world.ForeignKey,
                HttpMethod.Post,
                path,
                JsonNode.Parse(body.ToJsonString().Replace(Start, ForeignStart, StringComparison.Ordinal))!.AsObject()
            );
        world.Ids = season
            .GroupBy(request => request.Path, request => request.Body["id"]!.GetValue<string>())
            .Append(spares.GroupBy(_ => Keys).Single())
            .Append(new[] { Spare }.GroupBy(_ => Workspaces).Single())
            .ToDictionary(group => group.Key, group => group.ToArray());
        world.ForeignIds =
        [
            .. season.Select(request => request.Body["id"]!.GetValue<string>().Replace(Start, ForeignStart, StringComparison.Ordinal)),
        ];

        var cursors = new List<string>();
        foreach (
            var (key, path) in new[]
            {
                (world.Key, "/v1/history"),
                (world.Key, "/v1/products"),
                (world.Key, Keys),
                (world.Key, "/v1/catch-tests"),
                (world.ForeignKey, "/v1/history"),
                (world.ForeignKey, "/v1/products"),
            }
        )
            cursors.Add(
                (await SendAsync(key, HttpMethod.Get, $"{path}?limit=1", null))["next"]!.GetValue<string>().Split("cursor=")[1].Split('&')[
                    0
                ]
            );
        world.Cursors = cursors;
        return world;
    }
}
