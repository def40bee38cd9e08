using System.Text.RegularExpressions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>The first row of a table: which column gives which member, in which unit.</summary>
internal sealed partial class TableHeader
{
    private const string UnitColumn = " unit";

    private readonly List<ProblemError> errors = [];
    private readonly List<Entry> entries = [];
    private readonly List<(string Name, int At)> given = [];
    private bool isListTold;

    private TableHeader(QuestionTable table) => Table = table;

    public QuestionTable Table { get; }

    public IReadOnlyList<Entry> Entries => entries;

    /// <summary>The columns that are given back as they are, in their order.</summary>
    public IReadOnlyList<(string Name, int At)> Given => given;

    /// <summary>Where the name of the test stands.</summary>
    public int TestAt { get; private set; } = -1;

    /// <summary>Cells up to the last one with a name.</summary>
    public int Width { get; private set; }

    /// <summary>Reads a header; every fault in it at once.</summary>
    public static (TableHeader Header, ProblemResult? Problem) Read(IReadOnlyList<string> cells, QuestionTable table)
    {
        var header = new TableHeader(table);
        for (var at = 0; at < cells.Count; at++)
            header.Add(cells[at].Trim(), at);
        header.CheckWhole();
        return (header, header.errors.Count == 0 ? null : ProblemResult.Invalid(header.errors));
    }

    /// <summary>
    /// The column that a member stands in, or the nearest above it, or the first below it; where there is none, the one that it would have.
    /// </summary>
    public string? ColumnOf(bool isOfItem, ReadOnlySpan<string> path)
    {
        for (var length = path.Length; length > 0; length--)
        {
            var name = string.Join('.', path[..length]!);
            if (entries.Find(entry => entry.Column.IsOfItem == isOfItem && entry.Column.Name == name) is { } entry)
                return entry.Text;
        }

        if (path.Length == 0)
            return null;
        var whole = string.Join('.', path!);
        return entries
            .Find(entry => entry.Column.IsOfItem == isOfItem && entry.Column.Name.StartsWith(whole + ".", StringComparison.Ordinal))
            ?.Text
            ?? (Table.ByName.TryGetValue(whole, out var column) && column.IsOfItem == isOfItem ? column.Name : null);
    }

    private void Add(string text, int at)
    {
        if (text.Length == 0)
            return;
        Width = at + 1;
        if (
            text is QuestionTable.NoteColumn or QuestionTable.MeterColumn
            || text.StartsWith(QuestionTable.OwnColumns, StringComparison.Ordinal)
        )
        {
            if (text != QuestionTable.MeterColumn && given.Exists(column => column.Name == text))
                Fail(text, ErrorCodes.MemberDuplicate, "This column is given twice. Give it once.");
            else
                given.Add((text, at));
            if (text != QuestionTable.MeterColumn)
                return;
        }

        if (text == QuestionTable.TestColumn)
        {
            if (TestAt >= 0)
                Fail(text, ErrorCodes.MemberDuplicate, "This column is given twice. Give it once.");
            TestAt = at;
            return;
        }

        if (WithUnit().Match(text) is { Success: true } match)
            AddColumn(match.Groups["name"].Value, text, at, match.Groups["unit"].Value.Trim());
        else if (
            text.EndsWith(UnitColumn, StringComparison.Ordinal)
            && Table.ByName.TryGetValue(text[..^UnitColumn.Length].Trim(), out var quantity)
            && quantity.Dimension is not null
        )
            AddUnits(quantity, text, at);
        else
            AddColumn(text, text, at, null);
    }

    private void AddColumn(string name, string text, int at, string? unit)
    {
        if (!Table.ByName.TryGetValue(name, out var column))
            Fail(text, ErrorCodes.MemberUnknown, Unknown(name));
        else if (unit is not null && column.Dimension is null)
            Fail(text, ErrorCodes.MemberUnknown, $"'{name}' has no unit. Write the name of the column alone.");
        else if (entries.Find(entry => entry.Column == column) is not { } entry)
            entries.Add(
                new Entry(column)
                {
                    Text = text,
                    At = at,
                    Unit = unit,
                }
            );
        else if (entry.At >= 0)
            Fail(text, ErrorCodes.MemberDuplicate, $"'{name}' is given twice. Give it once.");
        else
            (entry.Text, entry.At, entry.Unit) = (text, at, unit);
        if (unit is not null && column?.Dimension is { } dimension && Rules.UnitFault(unit, dimension) is var (code, detail))
            Fail(text, code, detail);
    }

    private void AddUnits(TableColumn quantity, string text, int at)
    {
        var entry = entries.Find(one => one.Column == quantity);
        if (entry is null)
            entries.Add(entry = new Entry(quantity) { Text = text });
        if (entry.UnitAt >= 0)
            Fail(text, ErrorCodes.MemberDuplicate, "This column is given twice. Give it once.");
        entry.UnitAt = at;
    }

    private void CheckWhole()
    {
        if (TestAt < 0)
            Fail(
                QuestionTable.TestColumn,
                ErrorCodes.MemberMissing,
                $"There is no column '{QuestionTable.TestColumn}'. Add one that names the test to which each row belongs."
            );
        foreach (var entry in entries)
        {
            var name = entry.Column.Name;
            if (entry.At < 0)
                Fail(entry.Text, ErrorCodes.MemberMissing, $"There are units of '{name}' but no numbers. Add a column '{name}'.");
            else if (entry.Unit is not null && entry.UnitAt >= 0)
                Fail(
                    entry.Text,
                    SharedCodes.SettingsAtOdds,
                    $"The unit of '{name}' stands in the header and in a column of its own. Keep one of the two."
                );
            else if (entry.Column.Dimension is { } dimension && entry.Unit is null && entry.UnitAt < 0)
                Fail(
                    entry.Text,
                    ErrorCodes.UnitMissing,
                    $"A number without a unit cannot be used. Write the unit into the header, as in '{name} [{Engine.Quantities.UnitTable.Of(dimension)[0].Symbol}]', or add a column '{name}{UnitColumn}'."
                );
        }
    }

    private string Unknown(string name)
    {
        if (
            InRoundBrackets().Match(name) is { Success: true } match
            && Table.ByName.TryGetValue(match.Groups["name"].Value, out var column)
            && column.Dimension is { } dimension
        )
        {
            var unit = match.Groups["unit"].Value.Trim();
            var symbol = Engine.Quantities.UnitTable.Find(unit)?.Symbol ?? Engine.Quantities.UnitTable.Of(dimension)[0].Symbol;
            return $"Write `{column.Name} [{symbol}]`: units stand in square brackets.";
        }

        var near = Table
            .ByName.Keys.Concat([QuestionTable.TestColumn, QuestionTable.NoteColumn])
            .FirstOrDefault(known => string.Equals(known, name, StringComparison.OrdinalIgnoreCase));
        return near is null
            ? $"There is no column '{Excerpt.Of(name, 60)}'. {Known()}"
            : $"There is no column '{Excerpt.Of(name, 60)}'. Write '{near}'; case counts.";
    }

    // They are many, so they are listed once.
    private string Known()
    {
        if (isListTold)
            return $"Leave it out, or begin its name with '{QuestionTable.OwnColumns}'.";
        isListTold = true;
        return $"Leave it out, begin its name with '{QuestionTable.OwnColumns}', or use one of: {string.Join(", ", Table.ByName.Keys)}.";
    }

    private void Fail(string column, ErrorCode code, string detail)
    {
        if (errors.Count < ProblemResult.MostErrors)
            errors.Add(
                new ProblemError
                {
                    Row = 1,
                    Column = Excerpt.Of(column, 100),
                    Code = code,
                    Detail = detail,
                }
            );
    }

    [GeneratedRegex(@"^(?<name>[^\[\]]*?)\s*\[(?<unit>[^\[\]]*)\]\z")]
    private static partial Regex WithUnit();

    [GeneratedRegex(@"^(?<name>[^()]*?)\s*\((?<unit>[^()]*)\)\z")]
    private static partial Regex InRoundBrackets();

    /// <summary>A member that the table gives.</summary>
    internal sealed class Entry(TableColumn column)
    {
        public TableColumn Column => column;

        /// <summary>The header as it is written.</summary>
        public required string Text { get; set; }

        /// <summary>Where its values stand.</summary>
        public int At { get; set; } = -1;

        /// <summary>The unit of all its values; null when each has its own.</summary>
        public string? Unit { get; set; }

        /// <summary>Where the units of its values stand.</summary>
        public int UnitAt { get; set; } = -1;
    }
}
