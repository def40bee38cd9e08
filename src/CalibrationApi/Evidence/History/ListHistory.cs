using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.History;

/// <summary>Lists what happened: everything, or one kind of record.</summary>
internal sealed class ListHistory(string? kind)
{
    private static readonly ListTable Table = ListTable.Of<HistoryItem>();

    public IResult Handle(HistoryQuery query, HttpContext context, CalibrationDatabase database, Workspace workspace, Cursors cursors)
    {
        var (format, wrongFormat) = PageFormats.Choose(context.Request);
        var (most, wrongLimit) = query.ReadLimit(format);
        var (filter, wrongFilter) = query.Read(kind);
        var (table, wrongTable) = query.ReadTable(format, Table);
        if ((wrongFormat ?? wrongLimit ?? wrongFilter ?? wrongTable) is { } problem)
            return problem;
        var scope = $"{workspace} history {filter}";
        HistoryPosition? after = null;
        if (query.Cursor is { } cursor)
        {
            if (cursors.Read(scope, cursor)?.Split('|') is not [var time, var sequence])
                return Pages.WrongCursor();
            after = new HistoryPosition(time, long.Parse(sequence, CultureInfo.InvariantCulture));
        }

        var connection = database.Open();
        var zones = new Dictionary<string, string>(StringComparer.Ordinal);
        var items = HistoryStore
            .List(connection, workspace, filter, after, most + 1)
            .Select(line =>
                (
                    Item(line.Entry, query.Units, Zone(database, workspace, zones, line.Entry.Machine)),
                    $"{line.Position.OccurredAt}|{line.Position.Sequence}"
                )
            );
        return new PageResult(format, items, most, position => cursors.Make(scope, position), table, connection);
    }

    private static JsonObject Item(HistoryEntry entry, string? units, string timeZone)
    {
        var unit = QuantityConversion.For(units)?[Dimension.MassPerRevolution] ?? UsualUnits.PerRevolution(entry.EnteredUnit);
        var isScaleCheck = entry.Kind == EvidenceKind.ScaleCheck;
        var item = new HistoryItem
        {
            Kind = entry.Kind,
            Id = entry.Record,
            OccurredAt = EnteredInstant.Write(entry.OccurredAt),
            LocalDate = LocalDate.Of(entry.OccurredAt, timeZone),
            ReceivedAt = EnteredInstant.Write(entry.ReceivedAt),
            Machine = entry.Machine,
            Meter = entry.Meter,
            Element = entry.Element,
            Setting = entry.Setting,
            Product = entry.Product,
            Lot = entry.Lot,
            Scale = entry.Scale,
            Plan = entry.Plan,
            Verdict = entry.Verdict,
            MassPerRevolution =
                isScaleCheck || entry.Value is not { } value
                    ? null
                    : new HistoryValue
                    {
                        Value = AnswerUnits.Shown(unit.FromCanonical(value)),
                        Unit = unit.Symbol,
                        ExpandedUncertainty = entry.Expanded is { } expanded ? AnswerUnits.Shown(unit.FromCanonical(expanded)) : null,
                    },
            Change = entry.Change is { } change ? AnswerUnits.Percent(change) : null,
            ScaleError = isScaleCheck && entry.Value is { } error ? AnswerUnits.Percent(error) : null,
            RecordedBy = entry.RecordedBy,
            Supersedes = entry.Supersedes,
            Reason = entry.Reason,
            DespiteCode = entry.DespiteCode,
            DespiteReason = entry.DespiteReason,
            SupersededBy = entry.SupersededBy,
        };
        return KeptJson.Node(item);
    }

    private static string Zone(CalibrationDatabase database, Workspace workspace, Dictionary<string, string> known, string? machine)
    {
        if (machine is null)
            return LocalDate.Utc;
        if (known.TryGetValue(machine, out var zone))
            return zone;
        using var connection = database.Open();
        return known[machine] = new WorkspaceReader(connection, workspace).TimeZoneOf(machine);
    }
}
