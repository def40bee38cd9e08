using System.Collections.Concurrent;
using System.Diagnostics;
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
    private const string EveryOpen =
        "pragma busy_timeout = 5000; pragma synchronous = full; pragma foreign_keys = on; pragma temp_store = memory; pragma wal_autocheckpoint = 4000;";

    private const int MostKept = 32;

    private static readonly TimeSpan LongestLook = TimeSpan.FromSeconds(1);

    private readonly string connectionString;
    private readonly ConcurrentStack<PreparingConnection> kept = [];
    private int keptCount;
    private byte[]? cursorSecret;
    private FileWatch? watch;

    /// <summary>Names the file; <see cref="Prepare"/> creates and migrates it.</summary>
    public CalibrationDatabase(string path)
    {
        Path = System.IO.Path.GetFullPath(path);
        // A file that is missing is never made anew under a running service.
        connectionString = ConnectionString(SqliteOpenMode.ReadWrite, isPooled: true);
    }

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>Secret with which this database signs the cursors of its lists.</summary>
    public byte[] CursorSecret => cursorSecret ?? throw new InvalidOperationException("The database has not been prepared.");

    /// <summary>
    /// Told a sentence when the file cannot be used any more because it is not what was prepared, and null when it can be again.
    /// </summary>
    public Action<string?> Tell { get; init; } = _ => { };

    /// <summary>
    /// Creates the file and its folder if need be, looks whether it is sound and applies the migrations that are missing.
    /// </summary>
    /// <exception cref="UnusableDatabaseException">The file cannot be used.</exception>
    public void Prepare()
    {
        if (Directory.Exists(Path))
            throw new UnusableDatabaseException("It is a folder. Name a file.");
        try
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Path)!);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new UnusableDatabaseException(
                "Its folder does not exist and cannot be made. Make it, and let the service write there.",
                failure
            );
        }

        try
        {
            PrepareFile();
            watch ??= new FileWatch(Path, CursorSecret, Tell);
        }
        catch (SqliteException failure) when (DatabaseOutage.Is(failure))
        {
            throw DatabaseOutage.Told(failure);
        }
    }

    private void PrepareFile()
    {
        // The last connection that closes leaves everything in the file itself and nothing in its log.
        using var connection = new SqliteConnection(ConnectionString(SqliteOpenMode.ReadWriteCreate, isPooled: false));
        SetUp(connection);
        // Before anything is written: a file of a newer version, or of another program, stays as it is.
        Migrator.KnownVersion(connection);
        LookForDamage(connection);
        connection.Execute("pragma journal_mode = wal");
        Migrator.Apply(connection);
        connection.Execute(
            "insert into secrets (name, value) values ('cursor', @value) on conflict do nothing",
            new { value = RandomNumberGenerator.GetBytes(32) }
        );
        cursorSecret = connection.QuerySingle<byte[]>("select value from secrets where name = 'cursor'");
    }

    // The larger the file, the longer it takes; a start does not wait for all of a large one.
    private static void LookForDamage(SqliteConnection connection)
    {
        var start = Stopwatch.GetTimestamp();
        raw.sqlite3_progress_handler(connection.Handle, 10_000, _ => Stopwatch.GetElapsedTime(start) > LongestLook ? 1 : 0, null);
        try
        {
            if (connection.QueryFirst<string>("pragma quick_check(1)") != "ok")
                throw new SqliteException("The file is damaged.", raw.SQLITE_CORRUPT);
        }
        catch (SqliteException failure) when (failure.SqliteErrorCode == raw.SQLITE_INTERRUPT) { }
        finally
        {
            raw.sqlite3_progress_handler(connection.Handle, 0, null, null);
        }
    }

    /// <summary>An open connection; dispose it after one unit of work.</summary>
    public SqliteConnection Open()
    {
        watch?.ConfirmPlace();
        var connection = new SqliteConnection(connectionString);
        SetUp(connection);
        return connection;
    }

    /// <summary>Reads through a connection that is kept open, with its statements prepared, for the next call.</summary>
    /// <param name="read">Reads everything before it returns; the connection is another's then.</param>
    public T Read<T>(Func<SqliteConnection, T> read)
    {
        watch?.ConfirmPlace();
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
        SetUp(connection);
        return connection;
    }

    /// <summary>Confirms before and after what the writer does that it goes into the file that was prepared.</summary>
    /// <exception cref="UnusableDatabaseException">It does not.</exception>
    internal void ConfirmFile(bool isLogNeeded) => watch?.ConfirmFile(isLogNeeded);

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
                """
            ) == 1;
    }

    /// <summary>Closes the handles that nobody uses, so that the file can be moved or deleted.</summary>
    public void Dispose()
    {
        while (TakeKept() is { } connection)
            connection.Dispose();
        watch?.Dispose();
        watch = null;
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

    private string ConnectionString(SqliteOpenMode mode, bool isPooled) =>
        new SqliteConnectionStringBuilder
        {
            DataSource = Path,
            ForeignKeys = true,
            Mode = mode,
            Pooling = isPooled,
        }.ToString();

    private static void SetUp(SqliteConnection connection)
    {
        connection.Open();
        // Plans do not hang on the values asked for: they are the ones that the tests look at, and a kept statement stays prepared.
        raw.sqlite3_db_config(connection.Handle, raw.SQLITE_DBCONFIG_ENABLE_QPSG, 1, out _);
        using var command = connection.CreateCommand();
        command.CommandText = EveryOpen;
        command.ExecuteNonQuery();
    }
}
