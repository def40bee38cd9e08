using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.History;

/// <summary>Which record took the place of which, and why.</summary>
/// <param name="Superseded">Id of the record that was wrong.</param>
/// <param name="Replacement">Id of the record in its place.</param>
/// <param name="Reason">Why.</param>
/// <param name="ReceivedAt">When that was said.</param>
public sealed record Supersession(string Superseded, string Replacement, string Reason, DateTimeOffset ReceivedAt);

/// <summary>Keeps supersessions; a record is superseded at most once, which the key of the table sees to.</summary>
public static class SupersessionStore
{
    /// <summary>What took the place of a record of a kind; null when nothing did.</summary>
    public static Supersession? Find(SqliteConnection connection, string workspace, string kind, string superseded)
    {
        var row = connection.QuerySingleOrDefault<Row>(
            "select superseded, replacement, reason, received_at as receivedAt from supersessions where workspace = @workspace and kind = @kind and superseded = @superseded",
            new
            {
                workspace,
                kind,
                superseded,
            }
        );
        return row is null ? null : new Supersession(row.Superseded, row.Replacement, row.Reason, Instants.Read(row.ReceivedAt));
    }

    /// <summary>Says that a record is superseded; false when it already was.</summary>
    public static bool TryInsert(SqliteConnection connection, string workspace, string kind, Supersession supersession) =>
        connection.Execute(
            """
            insert into supersessions (workspace, superseded, kind, replacement, reason, received_at)
            values (@workspace, @superseded, @kind, @replacement, @reason, @receivedAt)
            on conflict do nothing
            """,
            new
            {
                workspace,
                superseded = supersession.Superseded,
                kind,
                replacement = supersession.Replacement,
                reason = supersession.Reason,
                receivedAt = Instants.Text(supersession.ReceivedAt),
            }
        ) == 1;

    private sealed class Row
    {
        public string Superseded { get; set; } = "";

        public string Replacement { get; set; } = "";

        public string Reason { get; set; } = "";

        public string ReceivedAt { get; set; } = "";
    }
}
