using CalibrationApi.Storage.Described;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CalibrationApi.Storage.Tests;

public sealed class PreparingConnectionTests : IDisposable
{
    private const string Insert = "insert into rows (id, name, size) values (@id, @name, @size)";
    private const string Select = "select name from rows where id > @id order by id";
    private readonly TestDatabase database = TestDatabase.Empty();
    private readonly PreparingConnection connection;

    public PreparingConnectionTests()
    {
        connection = database.Database.OpenPreparing();
        connection.Execute("create table rows (id integer primary key, name text unique, size real check (size > 0)) strict");
    }

    [Fact]
    public void Execute_SameTextAgain_KeepsOnePreparedStatement()
    {
        var before = PreparedBytes();
        connection.Execute(
            Insert,
            new
            {
                id = 1,
                name = "n1",
                size = 1.5,
            }
        );
        var once = PreparedBytes();

        for (var id = 2; id <= 20; id++)
            connection.Execute(
                Insert,
                new
                {
                    id,
                    name = $"n{id}",
                    size = 1.5,
                }
            );

        Assert.True(once > before);
        Assert.Equal(once, PreparedBytes());
        Assert.Equal(20, database.Count("rows"));
    }

    [Fact]
    public void Execute_ParametersOfOtherTypesAndNull_BindsEachTime()
    {
        connection.Execute(
            Insert,
            new
            {
                id = 1,
                name = "n1",
                size = 1.5,
            }
        );
        connection.Execute(
            Insert,
            new
            {
                id = 2L,
                name = (string?)null,
                size = 2.5,
            }
        );
        connection.Execute(
            Insert,
            new
            {
                id = 3,
                name = "n3",
                size = (double?)null,
            }
        );

        Assert.Equal(
            [(1, "n1", 1.5), (2, null, 2.5), (3, "n3", null)],
            connection.Query<(long Id, string? Name, double? Size)>("select id, name, size from rows order by id")
        );
    }

    [Fact]
    public void Query_SameTextWithOtherParameters_GivesOtherRows()
    {
        Fill();

        Assert.Equal(["n2", "n3"], connection.Query<string>(Select, new { id = 1 }));
        Assert.Equal(["n3"], connection.Query<string>(Select, new { id = 2 }));
    }

    [Fact]
    public void Query_WithinAReadingOfTheSameText_LeavesItAlone()
    {
        Fill();

        var pairs = connection
            .Query<string>(Select, new { id = 0 }, buffered: false)
            .Select(outer => outer + ":" + string.Join(',', connection.Query<string>(Select, new { id = 1 })));

        Assert.Equal(["n1:n2,n3", "n2:n2,n3", "n3:n2,n3"], pairs);
    }

    [Fact]
    public void Query_AbandonedHalfway_StartsFromTheBeginningNextTime()
    {
        Fill();

        Assert.Equal("n1", connection.Query<string>(Select, new { id = 0 }, buffered: false).First());

        Assert.Equal(["n1", "n2", "n3"], connection.Query<string>(Select, new { id = 0 }));
        Assert.True(connection.IsIdle);
    }

    [Fact]
    public void Execute_AfterItBrokeAConstraint_Works()
    {
        connection.Execute(
            Insert,
            new
            {
                id = 1,
                name = "n1",
                size = 1.5,
            }
        );

        Assert.Throws<SqliteException>(() =>
            connection.Execute(
                Insert,
                new
                {
                    id = 2,
                    name = "n1",
                    size = 1.5,
                }
            )
        );
        Assert.Throws<SqliteException>(() =>
            connection.Execute(
                Insert,
                new
                {
                    id = 2,
                    name = "n2",
                    size = -1.5,
                }
            )
        );
        connection.Execute(
            Insert,
            new
            {
                id = 2,
                name = "n2",
                size = 1.5,
            }
        );

        Assert.Equal(["n1", "n2"], connection.Query<string>(Select, new { id = 0 }));
    }

    [Fact]
    public void Query_AfterTheSchemaChanged_ReadsTheNewOne()
    {
        Fill();
        Assert.Equal(["n1", "n2", "n3"], connection.Query<string>(Select, new { id = 0 }));
        using (var other = database.Open())
        {
            other.Execute(
                "alter table rows rename column name to old; alter table rows add column name text; update rows set name = 'new ' || id"
            );
        }

        Assert.Equal(["new 1", "new 2", "new 3"], connection.Query<string>(Select, new { id = 0 }));
    }

    [Fact]
    public void BeginTransaction_AgainAndAgain_CommitsAndRollsBack()
    {
        for (var id = 1; id <= 4; id++)
        {
            using var transaction = connection.BeginTransaction();
            connection.Execute(
                Insert,
                new
                {
                    id,
                    name = $"n{id}",
                    size = 1.5,
                }
            );
            Assert.False(connection.IsIdle);
            if (id % 2 == 0)
                transaction.Commit();
        }

        Assert.Equal(["n2", "n4"], connection.Query<string>(Select, new { id = 0 }));
        Assert.True(connection.IsIdle);
    }

    [Fact]
    public void Query_MoreTextsThanAreKept_StillAnswersEach()
    {
        for (var i = 100; i < 300; i++)
            Assert.Equal(i, connection.QuerySingle<long>($"select {i}"));
        var enough = PreparedBytes();
        for (var i = 100; i < 600; i++)
            Assert.Equal(i, connection.QuerySingle<long>($"select {i}"));

        Assert.Equal(enough, PreparedBytes());
    }

    [Fact]
    public void Read_AgainAndAgain_UsesOneConnection()
    {
        var first = database.Database.Read(one => one);

        Assert.Same(first, database.Database.Read(one => one));
        Assert.IsType<PreparingConnection>(first);
    }

    [Fact]
    public void Read_WithinRead_UsesAnother()
    {
        var (outer, inner) = database.Database.Read(one => (one, database.Database.Read(two => two)));

        Assert.NotSame(outer, inner);
    }

    [Fact]
    public void Read_SeesWhatWasCommittedSince()
    {
        var store = new DescribedRecordStore(RecordKind.Products);
        Assert.Null(database.Database.Read(one => store.Find(one, TestDatabase.Local, Given.Id(1))));
        using (var other = database.Open())
        {
            store.Insert(other, TestDatabase.Local, Given.Described(Given.Id(1)));
        }

        Assert.NotNull(database.Database.Read(one => store.Find(one, TestDatabase.Local, Given.Id(1))));
    }

    [Fact]
    public void Read_LeavingATransactionOpen_IsNotUsedAgain()
    {
        var left = database.Database.Read(one =>
        {
            one.BeginTransaction(deferred: true);
            return one;
        });

        Assert.NotSame(left, database.Database.Read(one => one));
        Assert.Equal(System.Data.ConnectionState.Closed, left.State);
    }

    [Fact]
    public void Read_LeavingAReaderOpen_IsNotUsedAgain()
    {
        var left = database.Database.Read(one =>
        {
            one.ExecuteReader("select 1 union select 2").Read();
            return one;
        });

        Assert.NotSame(left, database.Database.Read(one => one));
    }

    [Fact]
    public void Read_Throwing_PassesItOnAndGoesOn()
    {
        Assert.Throws<SqliteException>(() => database.Database.Read(one => one.QuerySingle<long>("select nothing")));

        Assert.Equal(1, database.Database.Read(one => one.QuerySingle<long>("select 1")));
    }

    [Fact]
    public void Read_ByMany_GivesEachItsOwn()
    {
        Parallel.For(0, 500, i => Assert.Equal(i, database.Database.Read(one => one.QuerySingle<long>("select @i", new { i }))));
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    private void Fill()
    {
        for (var id = 1; id <= 3; id++)
            connection.Execute(
                Insert,
                new
                {
                    id,
                    name = $"n{id}",
                    size = 1.5,
                }
            );
    }

    // What SQLite itself says that the prepared statements of this connection take.
    private int PreparedBytes()
    {
        Assert.Equal(raw.SQLITE_OK, raw.sqlite3_db_status(connection.Handle, raw.SQLITE_DBSTATUS_STMT_USED, out var bytes, out _, 0));
        return bytes;
    }
}
