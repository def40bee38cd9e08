using System.Runtime.InteropServices;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CalibrationApi.Storage;

/// <summary>Notices when the file of a database is deleted, moved or replaced while connections still write to what it was.</summary>
/// <remarks>
/// A file that is open lives on without its name: what is written to it then is lost with the process. And what somebody
/// copies over it is mixed with what is still to go into it. SQLite itself looks at neither while it works with a log.
/// </remarks>
internal sealed class FileWatch : IDisposable
{
    private const string Moved =
        "Its file was deleted, moved or replaced while the service ran, so nothing can be stored. "
        + "Put the same file back, or restart the service to work with the file that is there then.";

    private const string Overwritten =
        "Its file was overwritten while the service ran, so nothing can be stored. "
        + "Stop the service, remove the files beside it that end in -wal and -shm, restore the last backup in its place, and start.";

    private const string WithoutLog =
        "The file beside it that ends in -wal was deleted while the service ran, so nothing can be stored. "
        + "Stop the service in the usual way, which saves what was stored before, and start it again.";

    private const int HasMovedOperation = 20;

    // A look at a file is not free, and reading acknowledges nothing.
    private const long ReadersLookAgainAfterMilliseconds = 100;

    private const int MostLooks = 10;

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(20);

    private readonly string path;
    private readonly byte[] identity;
    private readonly Action<string?> tell;
    private readonly SqliteConnection opened;
    private readonly Lock looking = new();
    private (long Length, DateTime ChangedAt) known;
    private long newestEntry;
    private volatile string? fault;
    private string? told;
    private long lookedAt = long.MinValue / 2;

    /// <summary>Watches a file from now on.</summary>
    /// <param name="path">The file, whole.</param>
    /// <param name="identity">What no other database has.</param>
    /// <param name="tell">Takes a sentence when the file cannot be used any more, and null when it can be again.</param>
    public FileWatch(string path, byte[] identity, Action<string?> tell)
    {
        (this.path, this.identity, this.tell) = (path, identity, tell);
        opened = Unpooled(path, SqliteOpenMode.ReadWrite);
        opened.Open();
        known = Look();
        // Another process may hold the file open, so that all of a new database still stands in the log.
        newestEntry = NewestEntryInFile() ?? 0;
    }

    /// <summary>Confirms that the file stood where it stood a moment ago. For readers.</summary>
    /// <exception cref="UnusableDatabaseException">It does not, or was found overwritten.</exception>
    public void ConfirmPlace()
    {
        if (Volatile.Read(ref told) is null && Environment.TickCount64 - Volatile.Read(ref lookedAt) < ReadersLookAgainAfterMilliseconds)
            return;
        var isMoved = HasMoved();
        // While it is at fault nobody writes, so that whoever comes may look whether it is mended.
        if (!isMoved && fault is not null)
            LookAtFile(isLogNeeded: false);
        Judge(isMoved);
    }

    /// <summary>Confirms also that nobody but SQLite changed the file.</summary>
    /// <remarks>For the writer alone and outside of a transaction, because its own work changes the file too.</remarks>
    /// <param name="isLogNeeded">A transaction has just ended, so that a log is there.</param>
    /// <exception cref="UnusableDatabaseException">The file is not what it was.</exception>
    public void ConfirmFile(bool isLogNeeded)
    {
        var isMoved = HasMoved();
        if (!isMoved)
            LookAtFile(isLogNeeded);
        Judge(isMoved);
    }

    /// <inheritdoc/>
    public void Dispose() => opened.Dispose();

    private void Judge(bool isMoved)
    {
        var now = isMoved ? Moved : fault;
        Volatile.Write(ref lookedAt, Environment.TickCount64);
        if (!ReferenceEquals(now, Volatile.Read(ref told)) && !ReferenceEquals(now, Interlocked.Exchange(ref told, now)))
            tell(now);
        if (now is not null)
            throw new UnusableDatabaseException(now);
    }

    private void LookAtFile(bool isLogNeeded)
    {
        lock (looking)
        {
            var now = Look();
            if (now != known)
                (fault, known) = HoldsWhatItHeld() ? (null, now) : (Overwritten, known);
            else if (isLogNeeded && !File.Exists(path + "-wal"))
                fault = WithoutLog;
            else if (fault is Overwritten)
                fault = null;
        }
    }

    private (long Length, DateTime ChangedAt) Look()
    {
        var file = new FileInfo(path);
        return file.Exists ? (file.Length, file.LastWriteTimeUtc) : default;
    }

    // The file itself changes only when SQLite moves into it what stands in the log. That never makes entries of the audit fewer.
    // While it is being moved, by whichever connection, pages of two states stand side by side and cannot be read together: that
    // passes. What stays unreadable is somebody else's when it does not even begin like a database.
    private bool HoldsWhatItHeld()
    {
        for (var look = 1; ; look++)
        {
            var found = TryReadFile(out var newest);
            if (found is true && newest >= newestEntry)
            {
                newestEntry = newest;
                return true;
            }

            if (look == MostLooks)
                return found is null && BeginsLikeADatabase();
            Thread.Sleep(BetweenLooks);
        }
    }

    /// <summary>
    /// Number of the newest entry of the audit in the file itself, whatever stands in the log; null where it is not this database.
    /// </summary>
    private long? NewestEntryInFile() => TryReadFile(out var newest) is true ? newest : null;

    // True for this database, false for another one, null where it could not be read.
    private bool? TryReadFile(out long newest)
    {
        newest = 0;
        var address = $"file:{Uri.EscapeDataString(path)}?immutable=1";
        using var direct = Unpooled(address, SqliteOpenMode.ReadOnly);
        try
        {
            direct.Open();
            if (!direct.QuerySingle<byte[]>("select value from secrets where name = 'cursor'").AsSpan().SequenceEqual(identity))
                return false;
            newest = direct.QuerySingle<long>("select coalesce(max(seq), 0) from audit");
            return true;
        }
        catch (SqliteException failure) when (failure.SqliteErrorCode is raw.SQLITE_CORRUPT)
        {
            return null;
        }
        catch (Exception failure) when (failure is SqliteException or InvalidOperationException)
        {
            return false;
        }
    }

    private bool BeginsLikeADatabase()
    {
        Span<byte> beginning = stackalloc byte[16];
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return file.ReadAtLeast(beginning, beginning.Length, throwOnEndOfStream: false) == beginning.Length
            && beginning.SequenceEqual("SQLite format 3\0"u8);
    }

    private static SqliteConnection Unpooled(string source, SqliteOpenMode mode) =>
        new(
            new SqliteConnectionStringBuilder
            {
                DataSource = source,
                Mode = mode,
                Pooling = false,
            }.ToString()
        );

    // Where a system lets nobody move an open file, SQLite does not know the question, and the answer stays no.
    private bool HasMoved()
    {
        var answer = 0;
        _ = Ask(opened.Handle!, IntPtr.Zero, HasMovedOperation, ref answer);
        return answer != 0;
    }

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_file_control")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.AssemblyDirectory)]
    private static extern int Ask(sqlite3 database, IntPtr schema, int operation, ref int answer);
}
