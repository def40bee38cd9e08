using System.Collections.Concurrent;
using System.Security.Cryptography;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CalibrationApi.Storage;

/// <summary>One SQLite file: opens connections with the settings that every one of them needs.</summary>
/// <remarks>
/// Connection settings other than foreign keys live in the connection and survive in the pool, so all of them are set at
/// every open and none is relied on from before.
/// </remarks>
public sealed class CalibrationDatabase : IDisposable
{
    // Pages that many tests share, those of the indexes, go into the file once for some hundred commits and not for twenty.
    private const string EveryOpen = "pragma busy_timeout = 5000; pragma synchronous = full; pragma foreign_keys = on; pragma temp_store = memory; pragma wal_autocheckpoint = 4000;";

    private const int MostKept = 32;

    private readonly string connectionString;
    private readonly ConcurrentStack<PreparingConnection> kept = [];
    private int keptCount;
    private byte[]? cursorSecret;

    /// <summary>Names the file; <see cref="Prepare"/> creates and migrates it.</summary>
    public CalibrationDatabase(string path)
    {
        Path = System.IO.Path.GetFullPath(path);
        connectionString = new SqliteConnectionStringBuilder { DataSource = Path, ForeignKeys = true }.ToString();
    }

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>Secret with which this database signs the cursors of its lists.</summary>
    public byte[] CursorSecret => cursorSecret ?? throw new InvalidOperationException("The database has not been prepared.");

    /// <summary>Creates the file and its folder if need be and applies the migrations that are missing.</summary>
    /// <exception cref="NewerSchemaException">The file was written by a newer version of the service.</exception>
    public void Prepare()
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Path)!);
        using var connection = Open();
        // Before anything is written: a file of a newer version stays as it is.
        Migrator.KnownVersion(connection);
        connection.Execute("pragma journal_mode = wal");
        Migrator.Apply(connection);
        connection.Execute("insert into secrets (name, value) values ('cursor', @value) on conflict do nothing", new { value = RandomNumberGenerator.GetBytes(32) });
        cursorSecret = connection.QuerySingle<byte[]>("select value from secrets where name = 'cursor'");
    }

    /// <summary>An open connection; dispose it after one unit of work.</summary>
    public SqliteConnection Open()
    {
        var connection = new SqliteConnection(connectionString);
        Open(connection);
        return connection;
    }

    /// <summary>Reads through a connection that is kept open, with its statements prepared, for the next call.</summary>
    /// <param name="read">Reads everything before it returns; the connection is another's then.</param>
    public T Read<T>(Func<SqliteConnection, T> read)
    {
        var connection = TakeKept() ?? OpenPreparing();
        try
        {
            return read(connection);
        }
        finally
        {
            Keep(connection);
        }
    }

    /// <summary>A connection that prepares each statement once, for one user who keeps it for long.</summary>
    internal PreparingConnection OpenPreparing()
    {
        var connection = new PreparingConnection(connectionString);
        Open(connection);
        return connection;
    }

    /// <summary>Whether the file has the schema that this version of the service knows.</summary>
    public bool IsCurrent()
    {
        using var connection = Open();
        return connection.QuerySingle<int>("pragma user_version") == Migrator.Newest;
    }

    /// <summary>True when nothing was ever stored in any workspace.</summary>
    public bool IsEmpty()
    {
        using var connection = Open();
        return connection.QuerySingle<long>(
            """
            select not exists (select 1 from machines) and not exists (select 1 from products) and not exists (select 1 from lots)
               and not exists (select 1 from scales) and not exists (select 1 from containers) and not exists (select 1 from plans)
               and not exists (select 1 from history)
            """) == 1;
    }

    /// <summary>Closes the handles that nobody uses, so that the file can be moved or deleted.</summary>
    public void Dispose()
    {
        while (TakeKept() is { } connection)
            connection.Dispose();
        SqliteConnection.ClearPool(new SqliteConnection(connectionString));
    }

    private PreparingConnection? TakeKept()
    {
        if (!kept.TryPop(out var connection))
            return null;
        Interlocked.Decrement(ref keptCount);
        return connection;
    }

    private void Keep(PreparingConnection connection)
    {
        if (!connection.IsIdle)
        {
            connection.Dispose();
        }
        else if (Interlocked.Increment(ref keptCount) <= MostKept)
        {
            kept.Push(connection);
        }
        else
        {
            Interlocked.Decrement(ref keptCount);
            connection.Dispose();
        }
    }

    private static void Open(SqliteConnection connection)
    {
        connection.Open();
        // Plans do not hang on the values asked for: they are the ones that the tests look at, and a kept statement stays prepared.
        raw.sqlite3_db_config(connection.Handle, raw.SQLITE_DBCONFIG_ENABLE_QPSG, 1, out _);
        using var command = connection.CreateCommand();
        command.CommandText = EveryOpen;
        command.ExecuteNonQuery();
    }
}
