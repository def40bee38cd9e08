using CalibrationApi.Storage.History;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Adoptions;

/// <summary>Keeps adoptions. Rows are only ever added; the value in force is the newest that nothing superseded.</summary>
public static class AdoptionStore
{
    private const string Columns =
        "id, machine, meter, element, setting, product, lot, test, entered_value as enteredValue, entered_unit as enteredUnit, value, occurred_at as occurredAt, offset_minutes as offsetMinutes, received_at as receivedAt, body, fingerprint";

    private const string NewestFirst = "order by a.occurred_at desc, a.seq desc";

    private static readonly string Standing = OneSeries.Standing("a", EvidenceKind.Adoption);

    private static readonly string FromStandingOfSeries =
        $"from adoptions a where {OneSeries.Condition("a")} and a.occurred_at <= @At and {Standing}";

    private static readonly string ColumnsOfValue =
        $"a.product, a.lot, a.entered_unit as enteredUnit, a.value, (select t.random from catch_tests t where t.workspace = a.workspace and t.id = a.test and {OneSeries.Standing("t", EvidenceKind.CatchTest)}) as random";

    /// <summary>One adoption; null when this workspace has none with that id.</summary>
    public static AdoptionRecord? Find(SqliteConnection connection, string workspace, string id) =>
        connection
            .QuerySingleOrDefault<Row>($"select {Columns} from adoptions where workspace = @workspace and id = @id", new { workspace, id })
            ?.ToRecord();

    /// <summary>The adoption in force for a series at an instant; null when none is.</summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="series">The series.</param>
    /// <param name="at">The instant.</param>
    /// <param name="except">Id of an adoption that is about to be superseded and no longer counts; null when none is.</param>
    public static AdoptionRecord? InForce(
        SqliteConnection connection,
        string workspace,
        Series series,
        DateTimeOffset at,
        string? except = null
    ) =>
        connection
            .QueryFirstOrDefault<Row>(
                $"select {Columns} {FromStandingOfSeries} and (@Except is null or a.id <> @Except) {NewestFirst} limit 1",
                new OneSeries(workspace, series, at) { Except = except }
            )
            ?.ToRecord();

    /// <summary>What calculations need of the adoption in force for a series at an instant; null when none is.</summary>
    public static AdoptedValue? ValueInForce(SqliteConnection connection, string workspace, Series series, DateTimeOffset at) =>
        connection
            .QueryFirstOrDefault<ValueRow>(
                $"select {ColumnsOfValue} {FromStandingOfSeries} {NewestFirst} limit 1",
                new OneSeries(workspace, series, at)
            )
            ?.ToValue();

    /// <summary>The adoptions in force on a machine at an instant, one for each series that has any, in the order of the series.</summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="machine">The machine.</param>
    /// <param name="at">The instant.</param>
    /// <param name="only">What the series have to be of; whatever they are of when null.</param>
    /// <param name="after">Only series after that of this adoption; from the first when null.</param>
    /// <param name="most">Most of them.</param>
    public static IReadOnlyList<AdoptionRecord> InForceOnMachine(
        SqliteConnection connection,
        string workspace,
        string machine,
        DateTimeOffset at,
        SeriesFilter? only = null,
        string? after = null,
        int most = int.MaxValue
    )
    {
        var rows = connection.Query<Row>(
            $"""
            select {Columns} from (
              select a.*, row_number() over (partition by meter, element, setting, product order by occurred_at desc, seq desc) as place
              from adoptions a
              where a.workspace = @workspace and a.machine = @machine and a.occurred_at <= @at
                and (@Meter is null or a.meter = @Meter) and (@Element is null or a.element = @Element)
                and (@Setting is null or a.setting = @Setting) and (@Product is null or a.product = @Product)
                and (@after is null or (a.meter, a.element, a.setting, a.product) >
                  (select b.meter, b.element, b.setting, b.product from adoptions b where b.workspace = @workspace and b.id = @after))
                and {Standing})
            where place = 1
            order by meter, element, setting, product
            limit @most
            """,
            new
            {
                workspace,
                machine,
                at = Instants.Text(at),
                only?.Meter,
                only?.Element,
                only?.Setting,
                only?.Product,
                after,
                most,
            }
        );
        return [.. rows.Select(row => row.ToRecord())];
    }

    /// <summary>What is in force at an instant for the other products of a meter, element and setting.</summary>
    public static IReadOnlyList<ValueOfProduct> OfOtherProducts(
        SqliteConnection connection,
        string workspace,
        Series series,
        DateTimeOffset at
    )
    {
        var rows = connection.Query<ValueRow>(
            $"""
            select {ColumnsOfValue} from adoptions a
            where {OneSeries.WhateverProduct("a")} and a.product <> @Product and a.occurred_at <= @At and {Standing}
            order by a.product, a.occurred_at, a.seq
            """,
            new OneSeries(workspace, series, at)
        );
        return [.. rows.GroupBy(row => row.Product).Select(product => new ValueOfProduct(product.Key, product.Last().ToValue()))];
    }

    /// <summary>Adds an adoption.</summary>
    public static void Insert(SqliteConnection connection, string workspace, AdoptionRecord adoption) =>
        connection.Execute(
            """
            insert into adoptions (workspace, id, machine, meter, element, setting, product, lot, test, entered_value, entered_unit, value, occurred_at, offset_minutes, received_at, body, fingerprint)
            values (@workspace, @Id, @Machine, @Meter, @Element, @Setting, @Product, @Lot, @Test, @EnteredValue, @EnteredUnit, @Value, @occurredAt, @offset, @receivedAt, @Body, @Fingerprint)
            """,
            new
            {
                workspace,
                adoption.Id,
                adoption.Series.Machine,
                adoption.Series.Meter,
                adoption.Series.Element,
                adoption.Series.Setting,
                adoption.Series.Product,
                adoption.Lot,
                adoption.Test,
                adoption.EnteredValue,
                adoption.EnteredUnit,
                adoption.Value,
                occurredAt = Instants.Text(adoption.OccurredAt),
                offset = (long)adoption.OccurredAt.Offset.TotalMinutes,
                receivedAt = Instants.Text(adoption.ReceivedAt),
                adoption.Body,
                adoption.Fingerprint,
            }
        );

    private sealed class ValueRow
    {
        public string Product { get; set; } = "";

        public string? Lot { get; set; }

        public string EnteredUnit { get; set; } = "";

        public double Value { get; set; }

        public double? Random { get; set; }

        public AdoptedValue ToValue() => new(Lot, EnteredUnit, Value, Random);
    }

    private sealed class Row : SeriesEvidenceRow
    {
        public string? Lot { get; set; }

        public string? Test { get; set; }

        public double EnteredValue { get; set; }

        public string EnteredUnit { get; set; } = "";

        public double Value { get; set; }

        public string ReceivedAt { get; set; } = "";

        public string Body { get; set; } = "";

        public string Fingerprint { get; set; } = "";

        public AdoptionRecord ToRecord() =>
            new()
            {
                Id = Id,
                Series = Series,
                Lot = Lot,
                Test = Test,
                EnteredValue = EnteredValue,
                EnteredUnit = EnteredUnit,
                Value = Value,
                OccurredAt = Happened,
                ReceivedAt = Instants.Read(ReceivedAt),
                Body = Body,
                Fingerprint = Fingerprint,
            };
    }
}
