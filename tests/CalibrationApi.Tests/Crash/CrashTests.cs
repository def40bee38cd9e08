using System.Collections.Concurrent;
using CalibrationApi.Tests.Changes;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Tests.Crash;

/// <summary>
/// What was acknowledged is there after the process was killed, whole and once; what was not acknowledged is whole or absent.
/// </summary>
[Trait("Category", "Crash")]
public sealed class CrashTests : IDisposable
{
    private const int Rounds = 20;
    private const int Clients = 8;
    private const int Readers = 2;
    private readonly string folder = Directory.CreateTempSubdirectory("calibration-crash-").FullName;

    [Fact]
    public async Task Kill_WhileManyStoreTests_LosesNothingThatWasAcknowledgedAndHalvesNothing()
    {
        var file = Path.Combine(folder, "calibration.db");
        var random = new Random(20260418);
        var (acknowledged, unanswered) = (new List<string>(), new List<string>());
        CrashingService? now = null;
        // They wait for changes while the process is killed, and go on where they were.
        ChangeReader[] readers = [.. Enumerable.Range(0, Readers).Select(_ => new ChangeReader(path => now!.GetAsync(path)))];
        await using (var first = await CrashingService.StartAsync(file))
        {
            await first.DescribeAsync();
        }

        for (var round = 0; round < Rounds; round++)
        {
            await using var service = await CrashingService.StartAsync(file);
            now = service;
            await RecoverAsync(service, acknowledged, unanswered);
            Assert.Empty(CrashingService.Faults(file));

            var sent = new ConcurrentDictionary<string, bool>();
            var begun = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            var clients = Enumerable.Range(0, Clients).Select(_ => Task.Run(() => SendUntilKilledAsync(service, sent, begun))).ToArray();
            var reading = readers.Select(reader => Task.Run(() => ReadUntilKilledAsync(reader))).ToArray();
            await await Task.WhenAny(begun.Task, Task.WhenAll(clients));
            await Task.Delay(random.Next(250));
            await service.KillAsync();
            await Task.WhenAll(clients);
            await Task.WhenAll(reading);

            Assert.Empty(CrashingService.Faults(file));
            acknowledged.AddRange(sent.Where(test => test.Value).Select(test => test.Key));
            unanswered.AddRange(sent.Where(test => !test.Value).Select(test => test.Key));
        }

        await using var last = await CrashingService.StartAsync(file);
        var cut = unanswered.Count;
        await RecoverAsync(last, acknowledged, unanswered);
        now = last;
        foreach (var reader in readers)
            await AssertSawAllAsync(reader, acknowledged);
        Assert.True(acknowledged.Count > Rounds * Clients, $"Only {acknowledged.Count} tests were acknowledged.");
        Assert.True(cut > 0, "No request was under way when the process was killed for the last time.");
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    // What was acknowledged is there; what was not is sent again, as a client would, and then is there once as well.
    private static async Task RecoverAsync(CrashingService service, List<string> acknowledged, List<string> unanswered)
    {
        var history = await service.HistoryAsync();
        Assert.Equal(history.Count, history.Distinct().Count());
        Assert.Empty(acknowledged.Except(history));
        Assert.Empty(history.Except(acknowledged).Except(unanswered));
        // By its own address too; those of earlier rounds were read then.
        foreach (var id in acknowledged.TakeLast(50).Concat(unanswered.Where(history.Contains)))
            Assert.Equal(id, await service.ReadTestAsync(id));
        foreach (var id in unanswered.Except(history))
            Assert.Null(await service.ReadTestAsync(id));

        foreach (var id in unanswered)
            Assert.Equal(history.Contains(id) ? 200 : 201, await service.SendTestAsync(id));
        acknowledged.AddRange(unanswered);
        unanswered.Clear();
        Assert.Equal(acknowledged.Order(StringComparer.Ordinal), (await service.HistoryAsync()).Order(StringComparer.Ordinal));
    }

    private static async Task ReadUntilKilledAsync(ChangeReader reader)
    {
        try
        {
            while (true)
                await reader.ReadPageAsync(limit: 5, waitSeconds: 30);
        }
        catch (HttpRequestException) { }
    }

    // Every test once, behind the three records that they refer to, and no number twice or left out.
    private static async Task AssertSawAllAsync(ChangeReader reader, List<string> acknowledged)
    {
        Assert.NotEmpty(reader.Seen);
        await reader.ReadOnAsync();
        Assert.Equal(Enumerable.Range(1, acknowledged.Count + 3), reader.Numbers);
        Assert.Equal(acknowledged.Order(StringComparer.Ordinal), reader.Ids.Skip(3).Order(StringComparer.Ordinal));
    }

    private static async Task SendUntilKilledAsync(
        CrashingService service,
        ConcurrentDictionary<string, bool> sent,
        TaskCompletionSource begun
    )
    {
        while (true)
        {
            var id = Guid.CreateVersion7().ToString();
            sent[id] = false;
            try
            {
                Assert.Equal(201, await service.SendTestAsync(id));
            }
            catch (HttpRequestException)
            {
                return;
            }

            sent[id] = true;
            begun.TrySetResult();
        }
    }
}
