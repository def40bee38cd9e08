using CalibrationApi.Storage.Changes;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.History;

/// <summary>What a line of the history changes: a record is there, and then the one that it takes the place of stands no more.</summary>
internal static class EvidenceChanges
{
    public static void Append(SqliteConnection connection, string workspace, HistoryEntry entry)
    {
        ChangeStore.Append(connection, workspace, Recorded(entry));
        if (entry.Supersedes is { } superseded)
            ChangeStore.Append(connection, workspace, Superseded(connection, workspace, entry, superseded));
    }

    private static Change Recorded(HistoryEntry entry) =>
        new()
        {
            Kind = entry.Kind,
            Record = entry.Record,
            Revision = 1,
            What = ChangeWords.Recorded,
            ReceivedAt = entry.ReceivedAt,
            OccurredAt = entry.OccurredAt,
            Machine = entry.Machine,
        };

    // A record is superseded at most once, so that this is always the second thing that happens to it.
    private static Change Superseded(SqliteConnection connection, string workspace, HistoryEntry entry, string superseded)
    {
        var (table, machine) = entry.Kind switch
        {
            EvidenceKind.CatchTest => ("catch_tests", "machine"),
            EvidenceKind.Adoption => ("adoptions", "machine"),
            EvidenceKind.ScaleCheck => ("scale_checks", "null"),
            _ => throw new ArgumentOutOfRangeException(nameof(entry)),
        };
        var (ofMachine, occurredAt, offsetMinutes) = connection.QuerySingleOrDefault<(string?, string?, long)>(
            $"select {machine}, occurred_at, offset_minutes from {table} where workspace = @workspace and id = @superseded",
            new { workspace, superseded }
        );
        return new Change
        {
            Kind = entry.Kind,
            Record = superseded,
            Revision = 2,
            What = ChangeWords.Superseded,
            ReceivedAt = entry.ReceivedAt,
            OccurredAt = occurredAt is null ? null : Instants.Read(occurredAt, offsetMinutes),
            Machine = ofMachine,
            SupersededBy = entry.Record,
        };
    }
}
