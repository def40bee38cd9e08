using CalibrationApi.Storage.OneWriter;
using SQLitePCL;

namespace CalibrationApi.Storage.Tests.OneWriter;

/// <summary>Counts the commits of a writer by SQLite's own hook.</summary>
internal sealed class CommitCount
{
    private int commits;

    private CommitCount() { }

    /// <summary>Commits after the one of the request that set the hook.</summary>
    public int Value => Volatile.Read(ref commits);

    public static async Task<CommitCount> StartAsync(SingleWriter writer)
    {
        var count = new CommitCount();
        await writer.WriteAsync(connection =>
        {
            raw.sqlite3_commit_hook(connection.Handle, _ => Interlocked.Increment(ref count.commits) * 0, null);
            return true;
        });
        // A transaction that wrote nothing commits without the hook being asked.
        Interlocked.Exchange(ref count.commits, 0);
        return count;
    }
}
