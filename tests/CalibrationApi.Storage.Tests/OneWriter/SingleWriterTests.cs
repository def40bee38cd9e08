using System.Threading.Channels;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.OneWriter;

public sealed class SingleWriterTests
{
    private const int MostPerCommit = 256;

    [Fact]
    public async Task WriteAsync_ReturnsTheResultOfTheWork()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);

        Assert.Equal(42, await writer.WriteAsync(_ => 42));
    }

    [Fact]
    public async Task WriteAsync_OnceItReturns_OtherConnectionsSeeTheRow()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);

        await writer.WriteAsync(connection => Insert(connection, 1));

        Assert.Equal(1, database.Count("products"));
    }

    [Fact]
    public async Task WriteAsync_OneAfterTheOther_CommitsEach()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var commits = await CommitCount.StartAsync(writer);

        for (var i = 0; i < 5; i++)
            await writer.WriteAsync(connection => Insert(connection, i));

        Assert.Equal(5, commits.Value);
    }

    [Fact]
    public async Task WriteAsync_ManyWaiting_ShareCommits()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var commits = await CommitCount.StartAsync(writer);
        var hold = await Hold.StartAsync(writer);
        var requests = Enumerable
            .Range(0, (2 * MostPerCommit) + 1)
            .Select(i => writer.WriteAsync(connection => Insert(connection, i)))
            .ToArray();

        hold.Release();
        await Task.WhenAll(requests);

        Assert.Equal(requests.Length, database.Count("products"));
        // One for what held the writer up, then two full batches and the one request that is left.
        Assert.Equal(1 + 2 + 1, commits.Value);
    }

    [Fact]
    public async Task WriteAsync_InASharedBatch_IsAcknowledgedOnlyAfterTheCommit()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var first = writer.WriteAsync(connection => Insert(connection, 1));
        var second = writer.WriteAsync(_ => (IsAcknowledged: first.IsCompleted, Seen: database.Count("products")));

        hold.Release();

        // The second ran after the first had written, and before anybody was told or could see it.
        Assert.Equal((false, 0), await second);
        Assert.True(await first);
        Assert.Equal(1, database.Count("products"));
    }

    [Fact]
    public async Task WriteAsync_Throwing_UndoesOnlyItself()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var before = writer.WriteAsync(connection => Insert(connection, 1));
        var throwing = writer.WriteAsync<bool>(connection =>
        {
            Insert(connection, 2);
            throw new InvalidDataException("of no use");
        });
        var after = writer.WriteAsync(connection => Insert(connection, 3));

        hold.Release();

        Assert.Equal("of no use", (await Assert.ThrowsAsync<InvalidDataException>(() => throwing)).Message);
        Assert.True(await before && await after);
        Assert.Equal([Given.Id(1), Given.Id(3)], Ids(database));
    }

    [Fact]
    public async Task WriteAsync_BreakingAConstraint_UndoesOnlyItself()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var before = writer.WriteAsync(connection => Insert(connection, 1));
        var twice = writer.WriteAsync(connection => Insert(connection, 2) && Insert(connection, 1));
        var after = writer.WriteAsync(connection => Insert(connection, 3));

        hold.Release();

        await Assert.ThrowsAsync<SqliteException>(() => twice);
        Assert.True(await before && await after);
        Assert.Equal([Given.Id(1), Given.Id(3)], Ids(database));
    }

    [Fact]
    public async Task WriteAsync_NotToBeKept_UndoesOnlyItselfAndGivesItsResult()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var kept = writer.WriteAsync(connection => (Insert(connection, 1), "kept").Item2, result => result == "kept");
        var refused = writer.WriteAsync(connection => (Insert(connection, 2), "refused").Item2, result => result == "kept");

        hold.Release();

        Assert.Equal(["kept", "refused"], [await kept, await refused]);
        Assert.Equal([Given.Id(1)], Ids(database));
    }

    [Fact]
    public async Task WriteAsync_LaterInABatch_SeesWhatEarlierOnesWroteAndNotWhatWasUndone()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        _ = writer.WriteAsync(connection => Insert(connection, 1));
        _ = writer.WriteAsync(connection => Insert(connection, 2), _ => false);
        var count = writer.WriteAsync(connection => connection.QuerySingle<long>("select count(*) from products"));

        hold.Release();

        Assert.Equal(1, await count);
    }

    [Fact]
    public async Task WriteAsync_WhenTheCommitFails_FailsEveryRequestOfTheBatchAndOnlyThat()
    {
        using var database = TestDatabase.WithDescribedRecords();
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var fine = writer.WriteAsync(connection => Insert(connection, 1));
        // A constraint that is checked at the commit only.
        var breaking = writer.WriteAsync(connection =>
        {
            connection.Execute("pragma defer_foreign_keys = on");
            return connection.Execute($"delete from products where id = '{Given.Id(RecordKind.Products)}'")
                + connection.Execute("insert into catches values ('local', 1, 0, 1, 1, 'kg', 1, 1, 1, 0)");
        });
        var alsoFine = writer.WriteAsync(connection => Insert(connection, 2));

        hold.Release();

        await Assert.ThrowsAsync<SqliteException>(() => fine);
        await Assert.ThrowsAsync<SqliteException>(() => breaking);
        await Assert.ThrowsAsync<SqliteException>(() => alsoFine);
        Assert.Equal([Given.Id(RecordKind.Products)], Ids(database));
        Assert.True(await writer.WriteAsync(connection => Insert(connection, 3)));
        Assert.Equal([Given.Id(3), Given.Id(RecordKind.Products)], Ids(database));
    }

    [Fact]
    public async Task WriteAsync_WhenTheFileIsFull_FailsAndGoesOnOnceThereIsRoom()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var pages = await writer.WriteAsync(connection => connection.QuerySingle<long>("pragma page_count"));
        await writer.WriteAsync(connection => connection.Execute($"pragma max_page_count = {pages}"));
        var hold = await Hold.StartAsync(writer);
        var small = writer.WriteAsync(connection => Insert(connection, 1));
        var large = writer.WriteAsync(connection => Insert(connection, 2, new string('x', 1_000_000)));

        hold.Release();

        // SQLite gives the whole transaction up when the file is full; nobody is told otherwise.
        await Assert.ThrowsAsync<SqliteException>(() => large);
        await Assert.ThrowsAsync<SqliteException>(() => small);
        Assert.Empty(Ids(database));
        await writer.WriteAsync(connection => connection.Execute("pragma max_page_count = 1000000"));
        Assert.True(await writer.WriteAsync(connection => Insert(connection, 3)));
    }

    [Fact]
    public async Task WriteAsync_EndingTheTransactionItself_FailsAndTheWriterGoesOn()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);

        await Assert.ThrowsAnyAsync<Exception>(() => writer.WriteAsync(connection => connection.Execute("rollback")));

        Assert.True(await writer.WriteAsync(connection => Insert(connection, 1)));
        Assert.Equal([Given.Id(1)], Ids(database));
    }

    [Fact]
    public async Task WriteAsync_OfManyAtOnce_SeesWhatIsAmbientWhereItWasAsked()
    {
        using var database = TestDatabase.Empty();
        var ambient = new AsyncLocal<int> { Value = -1 };
        await using var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var requests = Enumerable
            .Range(0, 10)
            .Select(i =>
            {
                ambient.Value = i;
                return writer.WriteAsync(_ => ambient.Value);
            })
            .ToArray();

        hold.Release();

        Assert.Equal(Enumerable.Range(0, 10), await Task.WhenAll(requests));
    }

    [Fact]
    public async Task WriteAsync_WhoseTimeIsUpWhileItWaits_IsNeverBegun()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        using var time = new CancellationTokenSource();
        var hold = await Hold.StartAsync(writer);
        var late = writer.WriteAsync(connection => Insert(connection, 1), timeIsUp: time.Token);
        var other = writer.WriteAsync(connection => Insert(connection, 2));

        time.Cancel();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => late);
        hold.Release();

        Assert.True(await other);
        Assert.Equal([Given.Id(2)], Ids(database));
    }

    [Fact]
    public async Task WriteAsync_WhoseTimeIsUpOnceItHasBegun_IsFinishedAndTold()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        using var time = new CancellationTokenSource();

        var stored = await writer.WriteAsync(
            connection =>
            {
                time.Cancel();
                return Insert(connection, 1);
            },
            timeIsUp: time.Token
        );

        Assert.True(stored);
        Assert.Equal([Given.Id(1)], Ids(database));
    }

    // Another program holds the lock that every write needs, for longer than anybody waits.
    [Fact]
    public async Task WriteAsync_WhoseTimeIsUpWhileAnotherProgramWrites_IsNeverBegun()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        using var time = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
        using var program = database.Open();
        using (program.BeginTransaction())
        {
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
                writer.WriteAsync(connection => Insert(connection, 1), timeIsUp: time.Token)
            );
        }

        Assert.True(await writer.WriteAsync(connection => Insert(connection, 2)));
        Assert.Equal([Given.Id(2)], Ids(database));
    }

    [Fact]
    public async Task DisposeAsync_WithAQueue_FinishesItAndTakesNoMore()
    {
        using var database = TestDatabase.Empty();
        var writer = new SingleWriter(database.Database);
        var hold = await Hold.StartAsync(writer);
        var requests = Enumerable
            .Range(0, MostPerCommit + 10)
            .Select(i => writer.WriteAsync(connection => Insert(connection, i)))
            .ToArray();

        var disposal = writer.DisposeAsync().AsTask();
        Assert.False(disposal.IsCompleted);
        await Assert.ThrowsAsync<ChannelClosedException>(() => writer.WriteAsync(_ => 1));
        hold.Release();
        await disposal;

        Assert.All(await Task.WhenAll(requests), Assert.True);
        Assert.Equal(requests.Length, database.Count("products"));
    }

    [Fact]
    public void Constructor_WhenTheFileCannotBeOpened_Throws()
    {
        using var database = TestDatabase.Unprepared();
        Directory.CreateDirectory(database.Path);

        Assert.Throws<SqliteException>(() => new SingleWriter(database.Database));
    }

    [Fact]
    public async Task WriteAsync_FromManyThreads_StoresEveryRequestOnce()
    {
        using var database = TestDatabase.Empty();
        await using var writer = new SingleWriter(database.Database);
        var commits = await CommitCount.StartAsync(writer);

        await Parallel.ForAsync(0, 2000, new ParallelOptions { MaxDegreeOfParallelism = 32 }, async (i, stop) =>
            await writer.WriteAsync(connection => Insert(connection, i), timeIsUp: stop)
        );

        Assert.Equal(Enumerable.Range(0, 2000).Select(Given.Id), Ids(database));
        Assert.InRange(commits.Value, 1, 2000);
    }

    private static bool Insert(SqliteConnection connection, int number, string fingerprint = "f1")
    {
        new DescribedRecordStore(RecordKind.Products).Insert(
            connection,
            TestDatabase.Local,
            Given.Described(Given.Id(number)) with
            {
                Fingerprint = fingerprint,
            }
        );
        return true;
    }

    private static string[] Ids(TestDatabase database)
    {
        using var connection = database.Open();
        return [.. connection.Query<string>("select id from products order by id")];
    }
}
