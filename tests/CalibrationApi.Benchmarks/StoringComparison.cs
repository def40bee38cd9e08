using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// Catch tests stored over HTTP (checked, joined with their records and history, evaluated, written, answered) against rows of
/// the same bytes inserted through the driver as one would without thinking: a connection and a durable transaction for each.
/// </summary>
internal sealed class StoringComparison : IComparison
{
    private const int Clients = 32;
    private const int RoundCount = 7;

    // Where the disk of the machine has a cache of its own or none, an fsync costs nothing, and what a commit shares is not seen.
    private static readonly bool IsSlowed = SlowSync.IsOn;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(8);
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(2);

    public string Name => "storing";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        await using var host = new BenchmarkHost();
        using var client = new HttpClient { BaseAddress = host.Address };
        var body = Encoding.UTF8.GetBytes((await StoredSeason.CatchTestAsync(client)).ToJsonString());
        var answer = await StoredSeason.PostAsync(client, "/v1/catch-tests", JsonNode.Parse(body)!);
        var stored = Encoding.UTF8.GetBytes(answer.ToJsonString());
        using var rows = new PlainRows(stored);
        using var load = await ExchangeLoad.PostingAsync(host.EndPoint, "/v1/catch-tests", body, Clients);
        await load.RunAsync(WarmUp);
        await rows.RateAsync(Round, Clients);

        var tails = new List<double>();
        var (our, plain) = await Rounds.CostsAsync(
            RoundCount,
            async () =>
            {
                var start = Stopwatch.GetTimestamp();
                var took = await load.RunAsync(Round);
                tails.Add(took[took.Length * 99 / 100] / took[took.Length / 2]);
                return took.Length / Stopwatch.GetElapsedTime(start).TotalSeconds;
            },
            () => rows.RateAsync(Round, Clients)
        );
        var where = IsSlowed ? FormattableString.Invariant($", where an fsync takes {SlowSync.Milliseconds} ms") : "";
        return
        [
            new MeasuredRatio(
                $"catch tests stored per second over HTTP / durable inserts of as many bytes through the driver, a connection for each{where}",
                our.Rate / plain.Rate,
                Aim.AtLeast(IsSlowed ? 5 : 1),
                FormattableString.Invariant(
                    $"{our.Rate:0}/s against {plain.Rate:0}/s, {Clients} clients, {body.Length} bytes in, {stored.Length} bytes kept"
                )
            ),
            new MeasuredRatio(
                $"time of all cores for such an insert / for a stored catch test{where}",
                plain.Microseconds / our.Microseconds,
                Aim.AtLeast(1),
                FormattableString.Invariant($"{plain.Microseconds:0} µs against {our.Microseconds:0} µs, client included")
            ),
            new MeasuredRatio(
                $"99th percentile / median of the time of a stored catch test{where}",
                Rounds.Median(tails),
                Aim.AtMost(10),
                FormattableString.Invariant($"medians of {RoundCount} rounds")
            ),
        ];
    }

    /// <summary>A table with one column of bytes, written by many without a queue.</summary>
    private sealed class PlainRows : IDisposable
    {
        private readonly string folder = Directory.CreateTempSubdirectory("calibration-benchmarks-").FullName;
        private readonly string connectionString;
        private readonly byte[] row;

        public PlainRows(byte[] row)
        {
            this.row = row;
            connectionString = new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "plain.db") }.ToString();
            using var connection = Open();
            Execute(connection, "pragma journal_mode = wal; create table rows (id text primary key, body blob not null) strict");
        }

        public async Task<double> RateAsync(TimeSpan time, int threads)
        {
            var start = Stopwatch.GetTimestamp();
            var counts = await Task.WhenAll(
                Enumerable
                    .Range(0, threads)
                    .Select(_ =>
                        Task.Factory.StartNew(
                            () =>
                            {
                                var count = 0;
                                for (; Stopwatch.GetElapsedTime(start) < time; count++)
                                    Insert();
                                return count;
                            },
                            CancellationToken.None,
                            TaskCreationOptions.LongRunning,
                            TaskScheduler.Default
                        )
                    )
            );
            return counts.Sum() / Stopwatch.GetElapsedTime(start).TotalSeconds;
        }

        public void Dispose()
        {
            using (var connection = new SqliteConnection(connectionString))
                SqliteConnection.ClearPool(connection);
            Directory.Delete(folder, recursive: true);
        }

        private void Insert()
        {
            using var connection = Open();
            using var command = connection.CreateCommand();
            command.CommandText = "insert into rows (id, body) values (@id, @body)";
            command.Parameters.AddWithValue("@id", Guid.CreateVersion7().ToString());
            command.Parameters.AddWithValue("@body", row);
            command.ExecuteNonQuery();
        }

        private SqliteConnection Open()
        {
            var connection = new SqliteConnection(connectionString);
            connection.Open();
            Execute(connection, "pragma busy_timeout = 5000; pragma synchronous = full");
            return connection;
        }

        private static void Execute(SqliteConnection connection, string sql)
        {
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }
    }
}
