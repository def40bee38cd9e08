using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Changes;

/// <summary>Reads the changes of a service on and on, and keeps what it saw and where it is.</summary>
internal sealed class ChangeReader(Func<string, Task<JsonNode>> get, string filter = "")
{
    /// <summary>The cursor to go on from; null for the beginning.</summary>
    public string? After { get; private set; }

    /// <summary>All changes so far.</summary>
    public List<JsonNode> Seen { get; } = [];

    /// <summary>Numbers of all changes so far.</summary>
    public IEnumerable<int> Numbers => Seen.Select(change => change["sequence"]!.GetValue<int>());

    /// <summary>Ids of the records of all changes so far.</summary>
    public IEnumerable<string> Ids => Seen.Select(change => change["id"]!.GetValue<string>());

    public static ChangeReader Of(RecordService service, string filter = "") =>
        new(async path => (await service.GetAsync(path)).Expect(200).Json, filter);

    /// <summary>Reads a page from where it is.</summary>
    public async Task<int> ReadPageAsync(int limit = 100, int waitSeconds = 0)
    {
        var from = After is null ? "" : $"&after={After}";
        var page = await get($"/v1/changes?limit={limit}&wait={waitSeconds}s{filter}{from}");
        var items = page["items"]!.AsArray();
        Seen.AddRange(items.Select(item => item!));
        After = page["after"]!.GetValue<string>();
        return items.Count;
    }

    /// <summary>Reads until there is nothing more, and gives what came by it.</summary>
    public async Task<IReadOnlyList<JsonNode>> ReadOnAsync(int limit = 100)
    {
        var before = Seen.Count;
        while (await ReadPageAsync(limit) > 0) { }
        return Seen[before..];
    }
}
