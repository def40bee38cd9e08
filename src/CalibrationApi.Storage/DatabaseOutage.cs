using System.Threading.Channels;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage;

/// <summary>Tells what keeps a database from being used, and passes or is mended by an operator, from mistakes in what we ask of it.</summary>
public static class DatabaseOutage
{
    // Of the primary result codes of SQLite: busy, locked, no memory, read-only, interrupted, input or output failed, damaged, full,
    // cannot be opened, locking failed, file too large for the system, no database.
    private static readonly int[] Codes = [5, 6, 7, 8, 9, 10, 11, 13, 14, 15, 22, 26];

    /// <summary>Whether the database is what failed. A broken constraint or a wrong statement is our mistake and not this.</summary>
    public static bool Is(Exception? failure) =>
        failure is ChannelClosedException || (failure is SqliteException { SqliteErrorCode: var code } && Array.IndexOf(Codes, code) >= 0);
}
