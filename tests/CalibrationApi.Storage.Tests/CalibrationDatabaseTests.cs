using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests;

public sealed class CalibrationDatabaseTests
{
    private const int Full = 2;

    [Fact]
    public void Open_FreshHandle_HasEverySetting()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();

        AssertSettings(connection);
    }

    [Fact]
    public void Open_PooledHandleLeftInDisorder_HasEverySettingAgain()
    {
        using var database = TestDatabase.Empty();
        using (var earlier = database.Open())
        {
            earlier.Execute("pragma busy_timeout = 0; pragma synchronous = off; pragma foreign_keys = off; create temp table trace (x);");
        }

        using var connection = database.Open();

        // The temporary table shows that it is the same handle.
        Assert.Equal("trace", connection.QuerySingle<string>("select name from sqlite_temp_schema"));
        AssertSettings(connection);
    }

    [Fact]
    public void Open_HandleBesideOthers_HasEverySetting()
    {
        using var database = TestDatabase.Empty();
        using var first = database.Open();
        using var second = database.Open();

        Assert.All([first, second], AssertSettings);
    }

    [Fact]
    public void Prepare_InAFolderThatDoesNotExist_CreatesIt()
    {
        using var database = TestDatabase.Unprepared();
        using var nested = new CalibrationDatabase(Path.Combine(Path.GetDirectoryName(database.Path)!, "new", "folder", "calibration.db"));

        nested.Prepare();

        Assert.True(File.Exists(nested.Path));
    }

    [Fact]
    public void CursorSecret_IsRandomAndStaysWithTheFile()
    {
        using var database = TestDatabase.Empty();
        using var other = TestDatabase.Empty();
        using var again = new CalibrationDatabase(database.Path);

        again.Prepare();

        Assert.Equal(32, database.Database.CursorSecret.Length);
        Assert.Equal(database.Database.CursorSecret, again.CursorSecret);
        Assert.NotEqual(database.Database.CursorSecret, other.Database.CursorSecret);
    }

    [Fact]
    public void CursorSecret_BeforePrepare_Throws()
    {
        using var database = TestDatabase.Unprepared();

        Assert.Throws<InvalidOperationException>(() => database.Database.CursorSecret);
    }

    [Theory]
    [InlineData("machines")]
    [InlineData("products")]
    [InlineData("lots")]
    [InlineData("scales")]
    [InlineData("containers")]
    [InlineData("plans")]
    [InlineData("history")]
    public void IsEmpty_WithOneRowInAnyWorkspace_IsFalse(string table)
    {
        using var database = TestDatabase.Empty();
        Assert.True(database.Database.IsEmpty());
        using var connection = database.Open();
        connection.Execute(
            table == "history"
                ? "insert into history (workspace, kind, record, occurred_at, offset_minutes, received_at) values ('any', 'adoption', 'x', 't', 0, 't')"
                : $$"""insert into {{table}} values ('any', '{{Given.Id(1)}}', 1, 'x', 0, '{}', 'f', 't', 't')"""
        );

        Assert.False(database.Database.IsEmpty());
    }

    [Fact]
    public void Dispose_ReleasesTheFile()
    {
        using var database = TestDatabase.Empty();
        using (database.Open()) { }

        database.Database.Dispose();

        // The last handle takes the log with it when it closes.
        Assert.False(File.Exists(database.Path + "-wal"));
    }

    private static void AssertSettings(SqliteConnection connection)
    {
        Assert.Equal(5000, connection.QuerySingle<int>("pragma busy_timeout"));
        Assert.Equal(Full, connection.QuerySingle<int>("pragma synchronous"));
        Assert.Equal(1, connection.QuerySingle<int>("pragma foreign_keys"));
        Assert.Equal("wal", connection.QuerySingle<string>("pragma journal_mode"));
    }
}
