using System.Globalization;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Counts the requests that were turned away, in memory, and stores the counts about once a minute.</summary>
/// <remarks>
/// Being turned away costs whoever tries more than it costs the service: no write, and one number for each key, code and day.
/// </remarks>
internal sealed partial class RefusalCounts(SingleWriter writer, TimeProvider clock, ILogger<RefusalCounts> log) : IAsyncDisposable
{
    private static readonly TimeSpan Grain = TimeSpan.FromMinutes(1);

    private readonly Lock counting = new();
    private Dictionary<(string Workspace, string Day, string Key, string Code), (long Count, DateTimeOffset Last)> counts = [];
    private DateTimeOffset stored = DateTimeOffset.MinValue;
    private Task storing = Task.CompletedTask;

    public void Add(AccessRefusal refusal, HttpContext context)
    {
        var now = clock.GetUtcNow();
        // A key that is good as such but lacks a scope was authenticated; of any other the refusal says whose it was, if that is known.
        var caller = context.User.Identity?.IsAuthenticated == true ? Caller.Of(context) : null;
        var workspace = caller is { Key: not null } ? caller.Workspace : refusal.Workspace ?? RefusalStore.NoWorkspace;
        var entry = (
            workspace,
            now.UtcDateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            caller?.Key ?? refusal.Key ?? "",
            refusal.Code.Word
        );
        bool isDue;
        lock (counting)
        {
            counts[entry] = (counts.GetValueOrDefault(entry).Count + 1, now);
            isDue = now - stored >= Grain;
            if (isDue)
                stored = now;
        }

        if (isDue)
            _ = StoreAsync();
    }

    /// <summary>Stores what was counted so far.</summary>
    /// <returns>Done when everything that was counted before is stored, whoever began to store it.</returns>
    public Task StoreAsync()
    {
        lock (counting)
        {
            if (counts.Count > 0)
            {
                storing = WriteAsync(counts, storing);
                counts = [];
            }

            return storing;
        }
    }

    private async Task WriteAsync(
        Dictionary<(string Workspace, string Day, string Key, string Code), (long Count, DateTimeOffset Last)> taken,
        Task before
    )
    {
        await before;
        try
        {
            await writer.WriteAsync(connection =>
            {
                foreach (var ((workspace, day, key, code), (count, last)) in taken)
                    RefusalStore.Add(connection, workspace, new RefusalCount(day, key, code, count, last));
                return true;
            });
        }
        catch (Exception failure)
        {
            LogFailure(failure, taken.Values.Sum(one => one.Count));
        }
    }

    public async ValueTask DisposeAsync() => await StoreAsync();

    [LoggerMessage(Level = LogLevel.Warning, Message = "{Count} refused requests could not be counted.")]
    private partial void LogFailure(Exception failure, long count);
}
