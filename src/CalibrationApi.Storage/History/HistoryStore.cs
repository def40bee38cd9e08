using System.Text.Json.Nodes;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.History;

/// <summary>The line of everything that happened.</summary>
public static class HistoryStore
{
    private const string Lines = """
        select h.seq, h.kind, h.record, h.machine, h.meter, h.element, h.setting, h.product, h.lot, h.scale, h.plan, h.verdict, h.value, h.expanded,
               h.change, h.entered_unit as enteredUnit, h.recorded_by as recordedBy, h.occurred_at as occurredAt, h.offset_minutes as offsetMinutes,
               h.received_at as receivedAt, h.supersedes, h.reason, s.replacement as supersededBy,
               a.body -> '$.despite' as despite
        from history h left join supersessions s on s.workspace = h.workspace and s.kind = h.kind and s.superseded = h.record
        left join adoptions a on h.kind = 'adoption' and a.workspace = h.workspace and a.id = h.record
        where h.workspace = @workspace
        """;

    /// <summary>Adds a line, and tells of the record and of the one that it takes the place of.</summary>
    public static void Append(SqliteConnection connection, string workspace, HistoryEntry entry)
    {
        connection.Execute(
            """
            insert into history (workspace, kind, record, machine, meter, element, setting, product, lot, scale, plan, verdict, value, expanded, change,
                                 entered_unit, recorded_by, occurred_at, offset_minutes, received_at, supersedes, reason)
            values (@workspace, @Kind, @Record, @Machine, @Meter, @Element, @Setting, @Product, @Lot, @Scale, @Plan, @Verdict, @Value, @Expanded, @Change,
                    @EnteredUnit, @RecordedBy, @occurredAt, @offset, @receivedAt, @Supersedes, @Reason)
            """,
            new
            {
                workspace,
                entry.Kind,
                entry.Record,
                entry.Machine,
                entry.Meter,
                entry.Element,
                entry.Setting,
                entry.Product,
                entry.Lot,
                entry.Scale,
                entry.Plan,
                entry.Verdict,
                entry.Value,
                entry.Expanded,
                entry.Change,
                entry.EnteredUnit,
                entry.RecordedBy,
                occurredAt = Instants.Text(entry.OccurredAt),
                offset = (long)entry.OccurredAt.Offset.TotalMinutes,
                receivedAt = Instants.Text(entry.ReceivedAt),
                entry.Supersedes,
                entry.Reason,
            }
        );
        EvidenceChanges.Append(connection, workspace, entry);
    }

    /// <summary>The lines that follow a position, read one by one.</summary>
    /// <param name="connection">Stays open while the lines are read.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="filter">Which lines.</param>
    /// <param name="after">Where to go on; null for the beginning.</param>
    /// <param name="most">How many at the most.</param>
    public static IEnumerable<(HistoryEntry Entry, HistoryPosition Position)> List(
        SqliteConnection connection,
        string workspace,
        HistoryFilter filter,
        HistoryPosition? after,
        int most
    )
    {
        var rows = connection.Query<Row>(
            Sql(filter, after is not null),
            new
            {
                workspace,
                filter.Kind,
                filter.Machine,
                filter.Meter,
                filter.Element,
                filter.Product,
                filter.Lot,
                filter.Scale,
                filter.Plan,
                filter.Verdict,
                from = filter.From is { } from ? Instants.Text(from) : null,
                until = filter.Until is { } until ? Instants.Text(until) : null,
                lastTime = after?.OccurredAt,
                lastSequence = after?.Sequence,
                most,
            },
            buffered: false
        );
        return rows.Select(row => (row.ToEntry(), new HistoryPosition(row.OccurredAt, row.Seq)));
    }

    /// <summary>The number of the newest line of any workspace; 0 where there is none.</summary>
    public static long Newest(SqliteConnection connection) => connection.QuerySingle<long>("select coalesce(max(seq), 0) from history");

    /// <summary>
    /// A line was added after another that can change what is known about a test: any but a test that takes the place of none.
    /// </summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="after">The number of that other line; few follow it, so no index of a workspace is to be gone through instead.</param>
    public static bool IsMoreKnown(SqliteConnection connection, string workspace, long after) =>
        connection.QuerySingle<long>(
            """
            select exists (select 1 from history h
            where h.seq > @after and +h.workspace = @workspace and (h.kind <> @kind or h.supersedes is not null))
            """,
            new
            {
                workspace,
                after,
                kind = EvidenceKind.CatchTest,
            }
        ) == 1;

    /// <summary>The statement of a list.</summary>
    internal static string Sql(HistoryFilter filter, bool continues) =>
        new ListStatement(Lines)
            .Where(filter.Kind, "h.kind = @Kind")
            .Where(filter.Machine, "h.machine = @Machine")
            .Where(filter.Meter, "h.meter = @Meter")
            .Where(filter.Element, "h.element = @Element")
            .Where(filter.Product, "h.product = @Product")
            .Where(filter.Lot, "h.lot = @Lot")
            .Where(filter.Scale, "h.scale = @Scale")
            .Where(filter.Plan, "h.plan = @Plan")
            .Where(filter.Verdict, "h.verdict = @Verdict")
            .Where(filter.From, "h.occurred_at >= @from")
            .Where(filter.Until, "h.occurred_at < @until")
            .InOrderOf("h.occurred_at", "h.seq", filter.NewestFirst, continues);

    private sealed class Row
    {
        public long Seq { get; set; }

        public string Kind { get; set; } = "";

        public string Record { get; set; } = "";

        public string? Machine { get; set; }

        public string? Meter { get; set; }

        public string? Element { get; set; }

        public string? Setting { get; set; }

        public string? Product { get; set; }

        public string? Lot { get; set; }

        public string? Scale { get; set; }

        public string? Plan { get; set; }

        public string? Verdict { get; set; }

        public double? Value { get; set; }

        public double? Expanded { get; set; }

        public double? Change { get; set; }

        public string? EnteredUnit { get; set; }

        public string? RecordedBy { get; set; }

        public string OccurredAt { get; set; } = "";

        public long OffsetMinutes { get; set; }

        public string ReceivedAt { get; set; } = "";

        public string? Supersedes { get; set; }

        public string? Reason { get; set; }

        public string? SupersededBy { get; set; }

        public string? Despite { get; set; }

        public HistoryEntry ToEntry() =>
            new()
            {
                Kind = Kind,
                Record = Record,
                Machine = Machine,
                Meter = Meter,
                Element = Element,
                Setting = Setting,
                Product = Product,
                Lot = Lot,
                Scale = Scale,
                Plan = Plan,
                Verdict = Verdict,
                Value = Value,
                Expanded = Expanded,
                Change = Change,
                EnteredUnit = EnteredUnit,
                RecordedBy = RecordedBy,
                OccurredAt = Instants.Read(OccurredAt, OffsetMinutes),
                ReceivedAt = Instants.Read(ReceivedAt),
                Supersedes = Supersedes,
                Reason = Reason,
                Sequence = Seq,
                SupersededBy = SupersededBy,
                DespiteCode = InOneLine("code"),
                DespiteReason = InOneLine("reason"),
            };

        private string? InOneLine(string member) =>
            Despite is null
                ? null
                : string.Join("; ", JsonNode.Parse(Despite)!.AsArray().Select(answer => answer![member]!.GetValue<string>()));
    }
}
