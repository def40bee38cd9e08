using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CsvHelper;
using CsvHelper.Configuration;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Lays records out as a table (RFC 4180): one row each, one column for each value, units in the header.</summary>
/// <remarks>
/// A member within a member becomes <c>outer.inner</c>, the items of a list <c>list.0</c>, <c>list.1</c>. A quantity becomes one
/// column with its unit in brackets; where records of one page use different units, each unit has its own column, so that no
/// column ever mixes units. Text that a spreadsheet would take for a formula is led by an apostrophe.
/// </remarks>
internal static class CsvTable
{
    // The library alone would leave a single carriage return or line feed unquoted, which ends the row for a reader.
    private static readonly CsvConfiguration Rfc4180 = Separated(',');
    private static readonly CsvConfiguration Rfc4180WithSemicolons = Separated(';');

    // The list of OWASP's page on CSV injection; the last four are the wide forms of the first.
    private static readonly SearchValues<char> FormulaStarts = SearchValues.Create("=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20");

    /// <summary>Writes a table.</summary>
    /// <param name="records">The rows.</param>
    /// <param name="leading">Columns that come first and are there whether any record has them or not, so that pages of one list fit
    /// together.</param>
    public static byte[] Write(IReadOnlyList<JsonObject> records, params IReadOnlyList<string> leading)
    {
        var rows = new List<Dictionary<string, string>>(records.Count);
        var columns = new List<string>(leading);
        var known = new HashSet<string>(leading, StringComparer.Ordinal);
        foreach (var record in records)
        {
            var row = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var (column, cell) in Cells("", record))
            {
                row[column] = cell;
                if (known.Add(column))
                    columns.Add(column);
            }

            rows.Add(row);
        }

        using var stream = new MemoryStream();
        using (var text = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)))
        using (var csv = new CsvWriter(text, Rfc4180))
        {
            foreach (var column in columns)
                csv.WriteField(column);
            csv.NextRecord();
            foreach (var row in rows)
            {
                foreach (var column in columns)
                    csv.WriteField(row.GetValueOrDefault(column, ""));
                csv.NextRecord();
            }
        }

        return stream.ToArray();
    }

    /// <summary>Writes one row of a table that is put together elsewhere.</summary>
    public static void WriteRow(IBufferWriter<byte> output, IReadOnlyList<string> cells, char separator)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, separator == ';' ? Rfc4180WithSemicolons : Rfc4180, leaveOpen: true))
        {
            foreach (var cell in cells)
                csv.WriteField(cell);
            csv.NextRecord();
        }

        Encoding.UTF8.GetBytes(text.GetStringBuilder().ToString(), output);
    }

    /// <summary>The text behind a cell that <see cref="Harmless"/> may have written.</summary>
    public static string Entered(string cell) => cell.Length > 1 && cell[0] == '\'' && FormulaStarts.Contains(cell[1]) ? cell[1..] : cell;

    /// <summary>A text that no spreadsheet takes for a formula.</summary>
    public static string Harmless(string text) => text.Length > 0 && FormulaStarts.Contains(text[0]) ? "'" + text : text;

    /// <summary>The cells of a record, column by column.</summary>
    public static IEnumerable<(string Column, string Cell)> Cells(string path, JsonNode? node)
    {
        switch (node)
        {
            case JsonObject members when members["unit"] is JsonValue unit && members["value"] is JsonValue value:
                var symbol = unit.GetValue<string>();
                yield return ($"{path} [{symbol}]", Cell(value));
                foreach (var (name, member) in members.Where(member => member.Key is not ("unit" or "value")))
                {
                    var inTheSameUnit = name == "expandedUncertainty" ? $" [{symbol}]" : "";
                    foreach (var (column, cell) in Cells($"{path}.{name}", member))
                        yield return (column + inTheSameUnit, cell);
                }

                break;
            case JsonObject members:
                foreach (var (name, member) in members)
                {
                    foreach (var cell in Cells(path.Length == 0 ? name : $"{path}.{name}", member))
                        yield return cell;
                }

                break;
            case JsonArray items:
                for (var i = 0; i < items.Count; i++)
                {
                    foreach (var cell in Cells(string.Create(CultureInfo.InvariantCulture, $"{path}.{i}"), items[i]))
                        yield return cell;
                }

                break;
            case JsonValue value:
                yield return (path, Cell(value));
                break;
        }
    }

    private static string Cell(JsonValue value) =>
        value.GetValueKind() == System.Text.Json.JsonValueKind.String ? Harmless(value.GetValue<string>()) : value.ToJsonString();

    private static CsvConfiguration Separated(char separator) =>
        new(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            NewLine = "\r\n",
            InjectionOptions = InjectionOptions.None,
            ShouldQuote = cell =>
                cell.Field is { Length: > 0 } field
                && (
                    field.Contains(separator, StringComparison.Ordinal)
                    || field.AsSpan().IndexOfAny("\"\r\n") >= 0
                    || field[0] == ' '
                    || field[^1] == ' '
                ),
        };
}
