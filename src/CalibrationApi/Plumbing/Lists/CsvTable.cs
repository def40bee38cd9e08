using System.Buffers;
using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Writes the rows of tables (RFC 4180).</summary>
/// <remarks>Text that a spreadsheet would take for a formula is led by an apostrophe.</remarks>
internal static class CsvTable
{
    // The library alone would leave a single carriage return or line feed unquoted, which ends the row for a reader.
    private static readonly CsvConfiguration Rfc4180 = Separated(',');
    private static readonly CsvConfiguration Rfc4180WithSemicolons = Separated(';');
    private static readonly CsvConfiguration WithTabs = Separated('\t');

    // The list of OWASP's page on CSV injection; the last four are the wide forms of the first.
    private static readonly SearchValues<char> FormulaStarts = SearchValues.Create("=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20");

    /// <summary>Writes one row.</summary>
    public static void WriteRow(IBufferWriter<byte> output, IEnumerable<string> cells, char separator)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, Configuration(separator), leaveOpen: true))
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

    private static CsvConfiguration Configuration(char separator) =>
        separator switch
        {
            ';' => Rfc4180WithSemicolons,
            '\t' => WithTabs,
            _ => Rfc4180,
        };

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
