using System.Diagnostics;
using System.Runtime.ExceptionServices;
using System.Threading.Channels;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CalibrationApi.Storage.Writing;

/// <summary>The one place that writes: requests queue up and share commits.</summary>
/// <remarks>
/// SQLite has one writer at a time whatever one does; letting several contend only makes them wait badly. A transaction takes
/// whatever has queued up, each request inside its own savepoint, and every request is acknowledged only after the commit
/// that made it durable. With one caller a commit follows at once; with many, one fsync serves them all.
/// </remarks>
public sealed class SingleWriter : IAsyncDisposable
{
    private const int MostPerCommit = 256;
    private const int MostQueued = 10_000;

    private readonly Channel<Job> queue = Channel.CreateBounded<Job>(new BoundedChannelOptions(MostQueued)
    {
        SingleReader = true,
        FullMode = BoundedChannelFullMode.Wait,
    });

    private readonly PreparingConnection connection;
    private readonly WriterMetrics metrics;
    private readonly Task loop;

    /// <summary>Starts the writer of a prepared database.</summary>
    public SingleWriter(CalibrationDatabase database)
    {
        connection = database.OpenPreparing();
        metrics = new WriterMetrics(this, () => queue.Reader.Count);
        loop = Task.Factory.StartNew(Run, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    /// <summary>Runs <paramref name="work"/> in a transaction and returns its result once it is durable.</summary>
    /// <param name="work">Reads and writes through the connection it is given; throwing undoes what it wrote and nothing else.</param>
    /// <param name="keep">Says of the result whether what was written stands; null keeps every result.</param>
    public async Task<T> WriteAsync<T>(Func<SqliteConnection, T> work, Func<T, bool>? keep = null)
    {
        var start = Stopwatch.GetTimestamp();
        var job = new Job<T>(work, keep);
        await queue.Writer.WriteAsync(job);
        var result = await job.Done;
        metrics.Written(start);
        return result;
    }

    /// <summary>Finishes what is queued, then stops.</summary>
    public async ValueTask DisposeAsync()
    {
        queue.Writer.TryComplete();
        await loop;
        metrics.Dispose();
    }

    private void Run()
    {
        using var owned = connection;
        var batch = new List<Job>(MostPerCommit);
        while (queue.Reader.WaitToReadAsync().AsTask().GetAwaiter().GetResult())
        {
            while (batch.Count < MostPerCommit && queue.Reader.TryRead(out var job))
                batch.Add(job);
            try
            {
                Commit(batch);
            }
            catch (Exception failure)
            {
                // Whatever it was, nothing of this batch is durable, every caller hears of it, and the next batch is tried.
                foreach (var job in batch)
                    job.Fail(failure);
            }

            batch.Clear();
        }
    }

    private void Commit(List<Job> batch)
    {
        var start = Stopwatch.GetTimestamp();
        using var transaction = connection.BeginTransaction();
        foreach (var job in batch)
        {
            connection.Execute("savepoint request");
            var stands = job.Try(connection);
            // After some failures, such as a full disk, SQLite has given up the whole transaction and not only the statement.
            if (raw.sqlite3_get_autocommit(connection.Handle) != 0)
                ExceptionDispatchInfo.Throw(job.Failure ?? new InvalidOperationException("A request ended the transaction that it shares with others."));
            if (!stands)
                connection.Execute("rollback to request");
            connection.Execute("release request");
        }

        transaction.Commit();
        metrics.Committed(batch.Count, start);
        foreach (var job in batch)
            job.Acknowledge();
    }

    private abstract class Job
    {
        public Exception? Failure { get; protected set; }

        public abstract bool Try(SqliteConnection connection);

        public abstract void Acknowledge();

        public abstract void Fail(Exception failure);
    }

    private sealed class Job<T>(Func<SqliteConnection, T> work, Func<T, bool>? keep) : Job
    {
        // Continuations run elsewhere: the writer thread goes on with the next batch.
        private readonly TaskCompletionSource<T> completion = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private T result = default!;

        public Task<T> Done => completion.Task;

        public override bool Try(SqliteConnection connection)
        {
            try
            {
                result = work(connection);
                return keep?.Invoke(result) ?? true;
            }
            catch (Exception exception)
            {
                Failure = exception;
                return false;
            }
        }

        public override void Acknowledge()
        {
            if (Failure is null)
                completion.SetResult(result);
            else
                completion.SetException(Failure);
        }

        public override void Fail(Exception exception) => completion.TrySetException(exception);
    }
}
