using System.Threading.Channels;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage;

/// <summary>
/// Tells what keeps a database from being used, and passes or is mended by an operator, from mistakes in what we ask of it.
/// </summary>
public static class DatabaseOutage
{
    /// <summary>The primary result codes of SQLite that blame the file, the disk or the system, with what to do about each.</summary>
    private static readonly Dictionary<int, string> Remedies = new()
    {
        [5] = "Another program holds it. End that program, or wait until it is done.",
        [6] = "Another program holds it. End that program, or wait until it is done.",
        [7] = "There is not enough memory to open it. End other programs.",
        [8] =
            "It cannot be written: the file, its folder or its disk is read-only for the service. Let the service write the file and its folder.",
        [9] = "What was asked of it was broken off. Try again.",
        [10] = "Reading or writing it failed. Check its disk, and whether the service has too many files open.",
        [11] = "It is damaged. Stop the service and restore the last backup.",
        [13] = "Its disk is full. Make room.",
        [14] =
            "It cannot be opened. Check that the service may read and write the file and its folder, which also takes files ending in -wal and -shm.",
        [15] = "It cannot be locked. Put it on a disk of this machine.",
        [22] = "It is larger than its disk can take. Move it to another disk.",
        [26] = "The file is no database. It was left as it is. Name another file, or restore the last backup.",
    };

    /// <summary>Whether the database is what failed. A broken constraint or a wrong statement is our mistake and not this.</summary>
    public static bool Is(Exception? failure) =>
        failure is UnusableDatabaseException or ChannelClosedException
        || (failure is SqliteException { SqliteErrorCode: var code } && Remedies.ContainsKey(code));

    /// <summary>The same failure with a sentence that says what to do about it.</summary>
    internal static UnusableDatabaseException Told(SqliteException failure) => new(Remedies[failure.SqliteErrorCode], failure);
}
