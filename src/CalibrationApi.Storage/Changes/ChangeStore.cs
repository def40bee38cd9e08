using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Changes;

/// <summary>The line of every stored change. The stores of records write it, so that no change is without its line.</summary>
/// <remarks>
/// There is one writer, and it numbers the changes of each workspace inside the transaction that stores them: the order of the numbers
/// is the order of the commits, and what is undone leaves no gap. A reader who has seen a number has seen every one before it.
/// </remarks>
public static class ChangeStore
{
    /// <summary>The changes that follow a number, in their order, read one by one.</summary>
    /// <param name="connection">Stays open while the changes are read.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="filter">Which changes.</param>
    /// <param name="after">The number of the last change already seen; 0 for the beginning.</param>
    /// <param name="most">How many at the most.</param>
    public static IEnumerable<Change> List(SqliteConnection connection, string workspace, ChangeFilter filter, long after, int most) =>
        connection
            .Query<Row>(
                Sql(filter),
                new
                {
                    workspace,
                    filter.Kind,
                    filter.Machine,
                    after,
                    most,
                },
                buffered: false
            )
            .Select(row => row.ToChange());

    /// <summary>The position after the newest change.</summary>
    public static ChangePosition Newest(SqliteConnection connection, string workspace)
    {
        var row = connection.QueryFirstOrDefault<Row>(
            "select seq, mark from changes where workspace = @workspace order by seq desc limit 1",
            new { workspace }
        );
        return row is null ? ChangePosition.Beginning : new ChangePosition(row.Seq, row.Mark);
    }

    /// <summary>
    /// Whether everything up to a position is still what was read then; not so after a backup from before it took the place of the file.
    /// </summary>
    /// <remarks>Changes are only added, so that the file that holds a change holds all that stood before it.</remarks>
    public static bool Holds(SqliteConnection connection, string workspace, ChangePosition position) =>
        position == ChangePosition.Beginning
        || connection.QuerySingleOrDefault<long?>(
            "select mark from changes where workspace = @workspace and seq = @Sequence",
            new { workspace, position.Sequence }
        ) == position.Mark;

    /// <summary>Adds a change; call it in the transaction of what it tells.</summary>
    internal static void Append(SqliteConnection connection, string workspace, Change change)
    {
        connection.Execute(
            """
            insert into changes (workspace, seq, mark, kind, record, revision, what, received_at, occurred_at, offset_minutes, machine,
                                 machine_before, superseded_by)
            values (@workspace, coalesce((select max(seq) from changes where workspace = @workspace), 0) + 1, random(), @Kind, @Record, @Revision,
                    @What, @receivedAt, @occurredAt, @offset, @Machine, @MachineBefore, @SupersededBy)
            """,
            new
            {
                workspace,
                change.Kind,
                change.Record,
                change.Revision,
                change.What,
                receivedAt = Instants.Text(change.ReceivedAt),
                occurredAt = change.OccurredAt is { } occurredAt ? Instants.Text(occurredAt) : null,
                offset = (long?)change.OccurredAt?.Offset.TotalMinutes,
                change.Machine,
                change.MachineBefore,
                change.SupersededBy,
            }
        );
        (connection as PreparingConnection)?.ChangedWorkspaces.Add(workspace);
    }

    private static string Sql(ChangeFilter filter) => new ListStatement(
            """
            select seq, mark, kind, record, revision, what, received_at as receivedAt, occurred_at as occurredAt, offset_minutes as offsetMinutes,
                   machine, machine_before as machineBefore, superseded_by as supersededBy
            from changes where workspace = @workspace and seq > @after
            """
        ).Where(filter.Kind, "kind = @Kind").Where(filter.Machine, "(machine = @Machine or machine_before = @Machine)").InOrderOf("seq");

    private sealed class Row
    {
        public long Seq { get; set; }

        public long Mark { get; set; }

        public string Kind { get; set; } = "";

        public string Record { get; set; } = "";

        public long Revision { get; set; }

        public string What { get; set; } = "";

        public string ReceivedAt { get; set; } = "";

        public string? OccurredAt { get; set; }

        public long? OffsetMinutes { get; set; }

        public string? Machine { get; set; }

        public string? MachineBefore { get; set; }

        public string? SupersededBy { get; set; }

        public Change ToChange() =>
            new()
            {
                Sequence = Seq,
                Mark = Mark,
                Kind = Kind,
                Record = Record,
                Revision = Revision,
                What = What,
                ReceivedAt = Instants.Read(ReceivedAt),
                OccurredAt = OccurredAt is null ? null : Instants.Read(OccurredAt, OffsetMinutes!.Value),
                Machine = Machine,
                MachineBefore = MachineBefore,
                SupersededBy = SupersededBy,
            };
    }
}
