using CalibrationApi.Storage.History;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CalibrationApi.Storage.CatchTests;

/// <summary>Keeps catch tests. Rows are only ever added.</summary>
public static class CatchTestStore
{
    private const string Columns =
        "t.id, t.machine, t.meter, t.element, t.setting, t.product, t.lot, t.scale, t.plan, t.verdict, t.value, t.random, t.occurred_at as occurredAt, t.offset_minutes as offsetMinutes, t.received_at as receivedAt, t.entered, t.resolved, t.answer, t.context, t.engine_version as engineVersion, t.fingerprint";

    private const string NewestFirst = "order by t.occurred_at desc, t.seq desc limit @Most";

    // Those that can be gone by: not superseded, nor with the verdict to investigate.
    private static readonly string FromStanding =
        $"from catch_tests t where {OneSeries.Condition("t")} and t.occurred_at < @At and t.verdict <> 'investigate' and {OneSeries.Standing("t", EvidenceKind.CatchTest)}";

    /// <summary>One test; null when this workspace has none with that id.</summary>
    public static CatchTestRecord? Find(SqliteConnection connection, string workspace, string id) =>
        connection
            .QuerySingleOrDefault<Row>(
                $"select {Columns} from catch_tests t where t.workspace = @workspace and t.id = @id",
                new { workspace, id }
            )
            ?.ToRecord();

    /// <summary>What an adopted value needs of the test behind it; null when this workspace has none with that id.</summary>
    /// <remarks>
    /// A stored test is long, and a machine may have one behind each of its values; the parts are cut out where they lie.
    /// </remarks>
    public static BasisRecord? FindBasis(SqliteConnection connection, string workspace, string id) =>
        connection
            .QuerySingleOrDefault<BasisRow>(
                """
                select id, machine, meter, element, setting, product, scale, verdict, occurred_at as occurredAt, offset_minutes as offsetMinutes,
                       answer -> '$.massPerRevolution' as measured, answer -> '$.enter' as enter, entered -> '$.conditions' as conditions
                from catch_tests where workspace = @workspace and id = @id
                """,
                new { workspace, id }
            )
            ?.ToRecord();

    /// <summary>Adds a test with its catches.</summary>
    public static void Insert(SqliteConnection connection, string workspace, CatchTestRecord test)
    {
        connection.Execute(
            """
            insert into catch_tests (workspace, id, machine, meter, element, setting, product, lot, scale, plan, verdict, value, random,
                                     occurred_at, offset_minutes, received_at, entered, resolved, answer, context, engine_version, fingerprint)
            values (@workspace, @Id, @Machine, @Meter, @Element, @Setting, @Product, @Lot, @Scale, @Plan, @Verdict, @Value, @Random,
                    @occurredAt, @offset, @receivedAt, @Entered, @Resolved, @Answer, @Context, @EngineVersion, @Fingerprint)
            """,
            new
            {
                workspace,
                test.Id,
                test.Series.Machine,
                test.Series.Meter,
                test.Series.Element,
                test.Series.Setting,
                test.Series.Product,
                test.Lot,
                test.Scale,
                test.Plan,
                test.Verdict,
                test.Value,
                test.Random,
                occurredAt = Instants.Text(test.OccurredAt),
                offset = (long)test.OccurredAt.Offset.TotalMinutes,
                receivedAt = Instants.Text(test.ReceivedAt),
                test.Entered,
                test.Resolved,
                test.Answer,
                test.Context,
                test.EngineVersion,
                test.Fingerprint,
            }
        );
        // Not "returning": with it the statement also looks for rows that refer to the new one.
        var seq = raw.sqlite3_last_insert_rowid(connection.Handle);
        for (var position = 0; position < test.Catches.Count; position++)
        {
            var one = test.Catches[position];
            connection.Execute(
                """
                insert into catches (workspace, test, position, counted, net_entered, net_unit, net_kilograms, revolutions, value, variance)
                values (@workspace, @seq, @position, @counted, @NetEntered, @NetUnit, @NetKilograms, @Revolutions, @Value, @Variance)
                """,
                new
                {
                    workspace,
                    seq,
                    position,
                    counted = one.Counted ? 1 : 0,
                    one.NetEntered,
                    one.NetUnit,
                    one.NetKilograms,
                    one.Revolutions,
                    one.Value,
                    one.Variance,
                }
            );
        }
    }

    /// <summary>
    /// The counted catches of the newest tests of a series that happened before an instant, newest test first:
    /// not those that were superseded, nor those whose verdict was to investigate.
    /// </summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="series">The series.</param>
    /// <param name="before">Only tests before this instant.</param>
    /// <param name="mostTests">How many tests at the most.</param>
    public static IReadOnlyList<SeriesTest> OfSeries(
        SqliteConnection connection,
        string workspace,
        Series series,
        DateTimeOffset before,
        int mostTests
    )
    {
        var rows = connection.Query<SeriesRow>(
            $"""
            with tests as (select t.seq, t.id, t.value, t.random, t.occurred_at, t.lot {FromStanding} {NewestFirst})
            select tests.id, tests.value as testValue, tests.random, tests.lot, c.value, c.variance
            from tests join catches c on c.test = tests.seq
            where c.workspace = @Workspace and c.counted = 1
            order by tests.occurred_at desc, tests.seq desc, c.position
            """,
            new OneSeries(workspace, series, before) { Most = mostTests }
        );
        return
        [
            .. rows.GroupBy(row => row.Id)
                .Select(test => new SeriesTest(
                    test.Key,
                    test.First().TestValue,
                    test.First().Random,
                    test.First().Lot,
                    [.. test.Select(one => one.Value)],
                    [.. test.Select(one => one.Variance)]
                )),
        ];
    }

    /// <summary>
    /// The tests of a series with one lot between two instants, newest first: not those that were superseded, nor those whose verdict
    /// was to investigate.
    /// </summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="series">The series.</param>
    /// <param name="lot">Id of the lot; null for tests that name none.</param>
    /// <param name="after">Only tests after this instant; null for no limit.</param>
    /// <param name="before">Only tests before this instant.</param>
    /// <param name="most">How many at the most.</param>
    public static IReadOnlyList<CatchTestRecord> Between(
        SqliteConnection connection,
        string workspace,
        Series series,
        string? lot,
        DateTimeOffset? after,
        DateTimeOffset before,
        int most
    )
    {
        var rows = connection.Query<Row>(
            $"select {Columns} {FromStanding} and t.lot is @Lot and t.occurred_at > @After {NewestFirst}",
            new OneSeries(workspace, series, before)
            {
                Lot = lot,
                After = after is { } from ? Instants.Text(from) : "",
                Most = most,
            }
        );
        return [.. rows.Select(row => row.ToRecord())];
    }

    /// <summary>
    /// The newest tests of a series before an instant, whatever their lot: not those that were superseded, nor those whose verdict was to
    /// investigate.
    /// </summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="series">The series.</param>
    /// <param name="before">Only tests before this instant.</param>
    /// <param name="most">How many at the most.</param>
    public static IReadOnlyList<CatchTestRecord> Newest(
        SqliteConnection connection,
        string workspace,
        Series series,
        DateTimeOffset before,
        int most
    )
    {
        var rows = connection.Query<Row>(
            $"select {Columns} {FromStanding} {NewestFirst}",
            new OneSeries(workspace, series, before) { Most = most }
        );
        return [.. rows.Select(row => row.ToRecord())];
    }

    private sealed class BasisRow : SeriesEvidenceRow
    {
        public string Scale { get; set; } = "";

        public string Verdict { get; set; } = "";

        public string Measured { get; set; } = "";

        public string? Enter { get; set; }

        public string? Conditions { get; set; }

        public BasisRecord ToRecord() => new(Id, Series, Scale, Verdict, Happened, Measured, Enter, Conditions);
    }

    private sealed class SeriesRow
    {
        public string Id { get; set; } = "";

        public double TestValue { get; set; }

        public double Random { get; set; }

        public string? Lot { get; set; }

        public double Value { get; set; }

        public double Variance { get; set; }
    }

    private sealed class Row : SeriesEvidenceRow
    {
        public string? Lot { get; set; }

        public string Scale { get; set; } = "";

        public string? Plan { get; set; }

        public string Verdict { get; set; } = "";

        public double Value { get; set; }

        public double Random { get; set; }

        public string ReceivedAt { get; set; } = "";

        public string Entered { get; set; } = "";

        public string Resolved { get; set; } = "";

        public string Answer { get; set; } = "";

        public string Context { get; set; } = "";

        public string EngineVersion { get; set; } = "";

        public string Fingerprint { get; set; } = "";

        public CatchTestRecord ToRecord() =>
            new()
            {
                Id = Id,
                Series = Series,
                Lot = Lot,
                Scale = Scale,
                Plan = Plan,
                Verdict = Verdict,
                Value = Value,
                Random = Random,
                OccurredAt = Happened,
                ReceivedAt = Instants.Read(ReceivedAt),
                Entered = Entered,
                Resolved = Resolved,
                Answer = Answer,
                Context = Context,
                EngineVersion = EngineVersion,
                Fingerprint = Fingerprint,
            };
    }
}
