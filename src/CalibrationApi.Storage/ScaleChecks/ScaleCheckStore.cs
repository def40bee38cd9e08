using CalibrationApi.Storage.History;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.ScaleChecks;

/// <summary>Keeps scale checks. Rows are only ever added.</summary>
public static class ScaleCheckStore
{
    private const string Columns =
        "id, scale, error, uncertainty, passed, occurred_at as occurredAt, offset_minutes as offsetMinutes, received_at as receivedAt, body, answer, fingerprint";

    private static readonly string Standing = OneSeries.Standing("c", EvidenceKind.ScaleCheck);

    /// <summary>One check; null when this workspace has none with that id.</summary>
    public static ScaleCheckRecord? Find(SqliteConnection connection, string workspace, string id) =>
        connection
            .QuerySingleOrDefault<Row>(
                $"select {Columns} from scale_checks where workspace = @workspace and id = @id",
                new { workspace, id }
            )
            ?.ToRecord();

    /// <summary>The last check of a scale at or before an instant; null when there was none.</summary>
    public static ScaleCheckRecord? LastBefore(SqliteConnection connection, string workspace, string scale, DateTimeOffset at) =>
        FirstOf(connection, workspace, scale, at, "c.occurred_at <= @at", "order by c.occurred_at desc, c.seq desc");

    /// <summary>The first check of a scale after an instant; null when there was none.</summary>
    public static ScaleCheckRecord? FirstAfter(SqliteConnection connection, string workspace, string scale, DateTimeOffset at) =>
        FirstOf(connection, workspace, scale, at, "c.occurred_at > @at", "order by c.occurred_at, c.seq");

    /// <summary>Adds a check.</summary>
    public static void Insert(SqliteConnection connection, string workspace, ScaleCheckRecord check) =>
        connection.Execute(
            """
            insert into scale_checks (workspace, id, scale, error, uncertainty, passed, occurred_at, offset_minutes, received_at, body, answer, fingerprint)
            values (@workspace, @Id, @Scale, @Error, @Uncertainty, @passed, @occurredAt, @offset, @receivedAt, @Body, @Answer, @Fingerprint)
            """,
            new
            {
                workspace,
                check.Id,
                check.Scale,
                check.Error,
                check.Uncertainty,
                passed = check.Passed ? 1 : 0,
                occurredAt = Instants.Text(check.OccurredAt),
                offset = (long)check.OccurredAt.Offset.TotalMinutes,
                receivedAt = Instants.Text(check.ReceivedAt),
                check.Body,
                check.Answer,
                check.Fingerprint,
            }
        );

    private static ScaleCheckRecord? FirstOf(
        SqliteConnection connection,
        string workspace,
        string scale,
        DateTimeOffset at,
        string when,
        string order
    ) =>
        connection
            .QueryFirstOrDefault<Row>(
                $"""
                select {Columns} from scale_checks c
                where c.workspace = @workspace and c.scale = @scale and {when} and {Standing}
                {order} limit 1
                """,
                new
                {
                    workspace,
                    scale,
                    at = Instants.Text(at),
                }
            )
            ?.ToRecord();

    private sealed class Row : EvidenceRow
    {
        public string Scale { get; set; } = "";

        public double Error { get; set; }

        public double Uncertainty { get; set; }

        public long Passed { get; set; }

        public string ReceivedAt { get; set; } = "";

        public string Body { get; set; } = "";

        public string Answer { get; set; } = "";

        public string Fingerprint { get; set; } = "";

        public ScaleCheckRecord ToRecord() =>
            new()
            {
                Id = Id,
                Scale = Scale,
                Error = Error,
                Uncertainty = Uncertainty,
                Passed = Passed == 1,
                OccurredAt = Happened,
                ReceivedAt = Instants.Read(ReceivedAt),
                Body = Body,
                Answer = Answer,
                Fingerprint = Fingerprint,
            };
    }
}
