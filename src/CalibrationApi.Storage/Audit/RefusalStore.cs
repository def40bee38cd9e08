using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Audit;

/// <summary>How often requests with a key were turned away on a day, and why.</summary>
/// <param name="Day">Day in UTC, <c>2026-04-18</c>.</param>
/// <param name="Key">Id of the key; empty where no key is known.</param>
/// <param name="Code">Why: the code of the problem.</param>
/// <param name="Count">How often.</param>
/// <param name="LastAt">The last time.</param>
public sealed record RefusalCount(string Day, string Key, string Code, long Count, DateTimeOffset LastAt);

/// <summary>Counts requests that were turned away. The rows are bounded by the keys, the codes and the days that are kept.</summary>
public static class RefusalStore
{
    /// <summary>The workspace of requests that showed no key that is known.</summary>
    public const string NoWorkspace = "";

    /// <summary>How many days are kept.</summary>
    public const int DaysKept = 400;

    /// <summary>Adds to a count, and forgets days that are too old.</summary>
    public static void Add(SqliteConnection connection, string workspace, RefusalCount refusal)
    {
        connection.Execute(
            """
            insert into refusals (workspace, day, key, code, count, last_at) values (@workspace, @Day, @Key, @Code, @Count, @lastAt)
            on conflict (workspace, day, key, code) do update set count = count + excluded.count, last_at = max(last_at, excluded.last_at)
            """,
            new
            {
                workspace,
                refusal.Day,
                refusal.Key,
                refusal.Code,
                refusal.Count,
                lastAt = Instants.Text(refusal.LastAt),
            }
        );
        connection.Execute(
            "delete from refusals where workspace = @workspace and day < @before",
            new { workspace, before = Instants.Text(refusal.LastAt.AddDays(-DaysKept))[..10] }
        );
    }

    /// <summary>The counts that follow a position, in the order of days, keys and codes.</summary>
    public static IEnumerable<RefusalCount> List(
        SqliteConnection connection,
        string workspace,
        (string Day, string Key, string Code) after,
        int most
    ) =>
        connection
            .Query<Row>(
                """
                select day, key, code, count, last_at as lastAt from refusals
                where workspace = @workspace and (day, key, code) > (@Day, @Key, @Code)
                order by day, key, code limit @most
                """,
                new
                {
                    workspace,
                    after.Day,
                    after.Key,
                    after.Code,
                    most,
                },
                buffered: false
            )
            .Select(row => new RefusalCount(row.Day, row.Key, row.Code, row.Count, Instants.Read(row.LastAt)));

    private sealed class Row
    {
        public string Day { get; set; } = "";

        public string Key { get; set; } = "";

        public string Code { get; set; } = "";

        public long Count { get; set; }

        public string LastAt { get; set; } = "";
    }
}
