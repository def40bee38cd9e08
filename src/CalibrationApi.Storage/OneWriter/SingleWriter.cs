using System.Diagnostics;
using System.Runtime.ExceptionServices;
using System.Threading.Channels;
using CalibrationApi.Storage.Changes;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CalibrationApi.Storage.OneWriter;

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

    private readonly Channel<Job> queue = Channel.CreateBounded<Job>(
        new BoundedChannelOptions(MostQueued) { SingleReader = true, FullMode = BoundedChannelFullMode.Wait }
    );

    private readonly CalibrationDatabase database;
    private readonly PreparingConnection connection;
    private readonly WriterMetrics metrics;
    private readonly Task loop;

    /// <summary>Starts the writer of a prepared database.</summary>
    public SingleWriter(CalibrationDatabase database)
    {
        this.database = database;
        connection = database.OpenPreparing();
        metrics = new WriterMetrics(this, () => Waiting);
        // The thread serves everybody; it keeps nothing of whoever happened to be the first.
        using (ExecutionContext.SuppressFlow())
            loop = Task.Factory.StartNew(Run, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    /// <summary>How many requests wait for their turn.</summary>
    public int Waiting => queue.Reader.Count;

    /// <summary>Tells of what became durable here.</summary>
    public ChangeSignal Changes { get; } = new();

    /// <summary>Runs <paramref name="work"/> in a transaction and returns its result once it is durable.</summary>
    /// <param name="work">
    /// Reads and writes through the connection it is given; throwing undoes what it wrote and nothing else. It sees what is ambient
    /// where this method is called, such as the trace of the request, whichever thread runs it.
    /// </param>
    /// <param name="keep">Says of the result whether what was written stands; null keeps every result.</param>
    /// <param name="timeIsUp">Gives the work up while it waits for its turn: it is never begun then. Once begun it is finished, so that
    /// whoever asked hears what became of it.</param>
    /// <exception cref="OperationCanceledException">The time was up before the turn came; nothing was written.</exception>
    public async Task<T> WriteAsync<T>(Func<SqliteConnection, T> work, Func<T, bool>? keep = null, CancellationToken timeIsUp = default)
    {
        var start = Stopwatch.GetTimestamp();
        var job = new Job<T>(work, keep);
        await queue.Writer.WriteAsync(job, timeIsUp);
        T result;
        using (timeIsUp.UnsafeRegister(static (job, token) => ((Job)job!).GiveUp(token), job))
            result = await job.Done;
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
            connection.ChangedWorkspaces.Clear();
        }
    }

    private void Commit(List<Job> batch)
    {
        var start = Stopwatch.GetTimestamp();
        database.ConfirmFile(isLogNeeded: false);
        using var transaction = connection.BeginTransaction();
        foreach (var job in batch)
        {
            if (!job.TryBegin())
                continue;
            connection.Execute("savepoint request");
            var stands = job.Try(connection);
            // After some failures, such as a full disk, SQLite has given up the whole transaction and not only the statement.
            if (raw.sqlite3_get_autocommit(connection.Handle) != 0)
                ExceptionDispatchInfo.Throw(
                    job.Failure ?? new InvalidOperationException("A request ended the transaction that it shares with others.")
                );
            if (!stands)
                connection.Execute("rollback to request");
            connection.Execute("release request");
        }

        transaction.Commit();
        database.ConfirmFile(isLogNeeded: true);
        metrics.Committed(batch.Count, start);
        foreach (var job in batch)
            job.Acknowledge();
        foreach (var workspace in connection.ChangedWorkspaces)
            Changes.Tell(workspace);
    }

    private abstract class Job
    {
        private const int Waiting = 0;
        private const int Begun = 1;
        private const int GivenUp = 2;

        private int state = Waiting;

        public Exception? Failure { get; protected set; }

        /// <summary>False when it was given up; it must not run then.</summary>
        public bool TryBegin() => Interlocked.CompareExchange(ref state, Begun, Waiting) == Waiting;

        public void GiveUp(CancellationToken token)
        {
            if (Interlocked.CompareExchange(ref state, GivenUp, Waiting) == Waiting)
                Cancel(token);
        }

        public abstract bool Try(SqliteConnection connection);

        public abstract void Acknowledge();

        public abstract void Fail(Exception failure);

        protected abstract void Cancel(CancellationToken token);
    }

    private sealed class Job<T>(Func<SqliteConnection, T> work, Func<T, bool>? keep) : Job
    {
        // Continuations run elsewhere: the writer thread goes on with the next batch.
        private readonly TaskCompletionSource<T> completion = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly ExecutionContext? ambient = ExecutionContext.Capture();
        private T result = default!;

        public Task<T> Done => completion.Task;

        public override bool Try(SqliteConnection connection)
        {
            try
            {
                if (ambient is null)
                    result = work(connection);
                else
                    ExecutionContext.Run(ambient, _ => result = work(connection), null);
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
                completion.TrySetResult(result);
            else
                completion.TrySetException(Failure);
        }

        public override void Fail(Exception exception) => completion.TrySetException(exception);

        protected override void Cancel(CancellationToken token) => completion.TrySetCanceled(token);
    }
}
