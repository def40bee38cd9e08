using System.Collections.Concurrent;
using CalibrationApi.Storage.Changes;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.OneWriter;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Changes;

/// <summary>Who waits hears of what became durable, and reads each change once.</summary>
public sealed class ChangeSignalTests
{
    private const string Local = TestDatabase.Local;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task Next_AfterACommit_IsThereOnceTheChangeCanBeRead()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var (here, elsewhere) = (writer.Changes.Next(Local), writer.Changes.Next("other"));
        Assert.Same(here, writer.Changes.Next(Local));

        await writer.WriteAsync(connection => Insert(connection, Local, 1));

        await here.WaitAsync(Patience);
        Assert.Equal(1, database.Database.Read(connection => ChangeStore.Newest(connection, Local).Sequence));
        Assert.False(elsewhere.IsCompleted);
        Assert.NotSame(here, writer.Changes.Next(Local));
    }

    [Fact]
    public async Task Next_AfterAWriteThatChangesNoRecord_StillWaits()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var next = writer.Changes.Next(Local);

        await writer.WriteAsync(_ => true);
        await Assert.ThrowsAsync<InvalidOperationException>(() =>
            writer.WriteAsync<bool>(connection =>
            {
                Insert(connection, "other", 1);
                throw new InvalidOperationException("It is undone.");
            })
        );

        Assert.False(next.IsCompleted);
    }

    [Fact]
    public async Task Readers_WhileManyWrite_SeeEachChangeOnceInOrderWithoutAGap()
    {
        const int Writers = 6;
        const int Readers = 4;
        const int OfEach = 60;
        const int Undone = 10_000;
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var stored = new ConcurrentDictionary<string, bool>();
        var readers = Enumerable
            .Range(0, Readers)
            .Select(_ => Task.Run(() => ReadAsync(database.Database, writer.Changes, Writers * OfEach)))
            .ToArray();

        await Task.WhenAll(
            Enumerable
                .Range(0, Writers)
                .Select(one =>
                    Task.Run(async () =>
                    {
                        for (var i = 0; i < OfEach; i++)
                        {
                            var number = (one * OfEach) + i;
                            await writer.WriteAsync(connection => Insert(connection, Local, number));
                            stored[Given.Id(number)] = true;
                            // What is undone between two others is told to nobody.
                            await writer.WriteAsync(connection => Insert(connection, Local, Undone + number), keep: _ => false);
                        }
                    })
                )
        );

        foreach (var seen in await Task.WhenAll(readers))
        {
            Assert.Equal(Enumerable.Range(1, Writers * OfEach), seen.Select(change => (int)change.Sequence));
            Assert.Equal(stored.Keys.Order(StringComparer.Ordinal), seen.Select(change => change.Record).Order(StringComparer.Ordinal));
        }
    }

    private static async Task<IReadOnlyList<Change>> ReadAsync(CalibrationDatabase database, ChangeSignal changes, int all)
    {
        var seen = new List<Change>();
        while (seen.Count < all)
        {
            var next = changes.Next(Local);
            var after = seen.Count == 0 ? 0 : seen[^1].Sequence;
            var more = database.Read(connection => ChangeStore.List(connection, Local, new ChangeFilter(), after, 7).ToArray());
            seen.AddRange(more);
            if (more.Length == 0)
                await next.WaitAsync(Patience);
        }

        return seen;
    }

    private static bool Insert(SqliteConnection connection, string workspace, int number)
    {
        new DescribedRecordStore(RecordKind.Products).Insert(connection, workspace, Given.Described(Given.Id(number)));
        return true;
    }
}
