using System.Buffers;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>The rows of one test, collected until the next begins, and the question they make.</summary>
internal sealed class TableTest(string? name, TableHeader header, TableFormat format)
{
    // What helps to put a table right; a whole wrong column would repeat itself in every row.
    private const int MostErrors = 50;

    // What a decoder leaves where bytes are no UTF-8.
    private const char Undecodable = '\uFFFD';

    private readonly List<(long Number, string[] Cells)> rows = [];
    private readonly List<ProblemError> errors = [];

    public string? Name => name;

    public long LastRow { get; private set; }

    public void Add(long number, string[] cells)
    {
        LastRow = number;
        // One too many says that there are too many.
        if (rows.Count <= header.Table.MostItems)
            rows.Add((number, cells));
        for (var at = header.Width; at < cells.Length; at++)
        {
            if (!string.IsNullOrWhiteSpace(cells[at]))
            {
                Fail(
                    number,
                    null,
                    ErrorCodes.TooMany,
                    "This row has more cells than the header. Look for a decimal comma where commas separate the cells, and put texts that hold the separator in double quotes."
                );
                break;
            }
        }

        foreach (var cell in cells)
        {
            if (cell.Contains(Undecodable, StringComparison.Ordinal))
            {
                Fail(number, null, ErrorCodes.TextWrong, "A text in this row is not valid UTF-8. Save the table as CSV in UTF-8.");
                break;
            }
        }
    }

    public void Fail(long row, string? column, ErrorCode code, string detail)
    {
        if (errors.Count < MostErrors)
            errors.Add(
                new ProblemError
                {
                    Row = row,
                    Column = column,
                    Code = code,
                    Detail = detail,
                }
            );
    }

    /// <summary>Puts the question, or what is wrong with its cells, into a chunk.</summary>
    public void AddTo(LineChunk chunk)
    {
        var origin = new TableRows(name, header, [.. rows.Select(row => row.Number)], [.. header.Given.Select(column => Given(column.At))]);
        var question = new JsonObject();
        foreach (var entry in header.Entries.Where(entry => !entry.Column.IsOfItem))
            Set(question, entry, rows[0], "#");
        var items = new JsonArray();
        for (var i = 0; i < rows.Count; i++)
        {
            CheckRepeated(rows[i]);
            var item = new JsonObject();
            foreach (var entry in header.Entries.Where(entry => entry.Column.IsOfItem))
                Set(item, entry, rows[i], string.Create(CultureInfo.InvariantCulture, $"#/{header.Table.Items}/{i}"));
            items.Add(item);
        }

        question[header.Table.Items] = items;
        if (errors.Count > 0)
            chunk.Add(rows[0].Number, ProblemResult.Invalid(errors), origin);
        else
            chunk.Add(
                rows[0].Number,
                new ReadOnlySequence<byte>(JsonSerializer.SerializeToUtf8Bytes(question, JsonSettings.Writing)),
                origin
            );
    }

    // Each row may have its own remark; one that is repeated is given once.
    private string Given(int at) =>
        string.Join("; ", rows.Select(row => CsvTable.Entered(CellOf(row.Cells, at))).Where(cell => cell.Length > 0).Distinct());

    // What holds for the whole test stands in its first row.
    private void CheckRepeated((long Number, string[] Cells) row)
    {
        foreach (var entry in header.Entries.Where(entry => !entry.Column.IsOfItem))
        {
            foreach (var at in (int[])[entry.At, entry.UnitAt])
            {
                if (CellOf(row.Cells, at) is { Length: > 0 } cell && cell != CellOf(rows[0].Cells, at))
                    Fail(
                        row.Number,
                        entry.Text,
                        SharedCodes.SettingsAtOdds,
                        "This holds for the whole test but differs from its first row. Write it into the first row; leave it empty or repeat it in the others."
                    );
            }
        }
    }

    private void Set(JsonObject root, TableHeader.Entry entry, (long Number, string[] Cells) row, string pointer)
    {
        var cell = CellOf(row.Cells, entry.At);
        if (cell.Length == 0)
            return;
        var (value, fault) = Value(entry.Column.Dimension is null ? entry.Column.Type : typeof(double), cell);
        if (fault is var (code, detail))
        {
            if (errors.Count < MostErrors)
                errors.Add(
                    new ProblemError
                    {
                        Pointer = $"{pointer}/{string.Join('/', entry.Column.Path)}",
                        Row = row.Number,
                        Column = entry.Text,
                        Code = code,
                        Detail = detail,
                    }
                );
            return;
        }

        var parent = root;
        foreach (var step in entry.Column.Path.SkipLast(1))
            parent = (parent[step] ??= new JsonObject()).AsObject();
        if (entry.Column.Dimension is null)
        {
            parent[entry.Column.Path[^1]] = value;
            return;
        }

        // There may be an object already, made for a member within the quantity.
        var quantity = (parent[entry.Column.Path[^1]] ??= new JsonObject()).AsObject();
        quantity["value"] = value;
        if ((entry.Unit ?? CellOf(row.Cells, entry.UnitAt)) is { Length: > 0 } unit)
            quantity["unit"] = unit;
    }

    private (JsonNode? Value, (ErrorCode Code, string Detail)? Fault) Value(Type type, string cell)
    {
        if (type == typeof(string))
            return (CsvTable.Entered(cell), null);
        if (type == typeof(bool))
        {
            return cell is "true" or "false"
                ? (cell == "true", null)
                : (null, (ErrorCodes.TypeWrong, $"'{Excerpt.Of(cell, 40)}' is neither true nor false. Write one of the two."));
        }

        var (number, fault) = format.Read(cell);
        if (fault is null && type == typeof(int))
        {
            return number is >= int.MinValue and <= int.MaxValue && Math.Floor(number) == number
                ? ((int)number, null)
                : (null, (ErrorCodes.TypeWrong, $"'{Excerpt.Of(cell, 40)}' is not a whole number. Give one."));
        }

        if (fault is null && !double.IsFinite(number))
            return (null, (ErrorCodes.NumberOutOfRange, "This number is too large for any machine. Check it."));
        return (number, fault);
    }

    private static string CellOf(string[] cells, int at) => at >= 0 && at < cells.Length ? cells[at].Trim() : "";
}
