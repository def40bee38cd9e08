using System.Globalization;

namespace CalibrationApi.Engine.Tests;

/// <summary>
/// A table of published figures from <c>ReferenceData/</c>: lines that start with # say where it comes from, the first
/// other line names the columns, separated by semicolons.
/// </summary>
public sealed class ReferenceTable
{
    private ReferenceTable(string file, string origin, IReadOnlyList<Row> rows)
    {
        File = file;
        Origin = origin;
        Rows = rows;
    }

    public string File { get; }

    /// <summary>The lines that say where the figures come from.</summary>
    public string Origin { get; }

    public IReadOnlyList<Row> Rows { get; }

    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "ReferenceData");

    public static ReferenceTable Read(string file)
    {
        var lines = System.IO.File.ReadAllLines(Path.Combine(Folder, file));
        var origin = string.Join('\n', lines.TakeWhile(line => line.StartsWith('#')).Select(line => line[1..].Trim()));
        var table = lines.Where(line => line.Length > 0 && !line.StartsWith('#')).Select(line => line.Split(';')).ToArray();
        var columns = table[0];
        var rows = table
            .Skip(1)
            .Select(cells =>
                cells.Length == columns.Length
                    ? new Row(
                        columns.Zip(cells).ToDictionary(pair => pair.First.Trim(), pair => pair.Second.Trim(), StringComparer.Ordinal)
                    )
                    : throw new InvalidDataException(
                        $"{file}: a line has {cells.Length} cells instead of {columns.Length}: {string.Join(';', cells)}"
                    )
            )
            .ToArray();
        return new ReferenceTable(file, origin, rows);
    }

    /// <summary>The only row whose <paramref name="column"/> holds <paramref name="value"/>.</summary>
    public Row Only(string column, string value) => Rows.Single(row => row[column] == value);

    public sealed class Row(IReadOnlyDictionary<string, string> cells)
    {
        public string this[string column] => cells[column];

        public bool Has(string column) => cells.ContainsKey(column);

        public double Number(string column) => Parse(cells[column]);

        public PrintedNumber Printed(string column) => new(cells[column]);

        /// <summary>Several numbers in one cell, separated by spaces.</summary>
        public double[] Numbers(string column) => [.. cells[column].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Parse)];

        private static double Parse(string text) =>
            text == "inf" ? double.PositiveInfinity : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
    }
}
