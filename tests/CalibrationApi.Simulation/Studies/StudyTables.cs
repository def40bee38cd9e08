using System.Globalization;
using System.Text;

namespace CalibrationApi.Simulation.Studies;

/// <summary>What the studies found, as Markdown, and its place in a document.</summary>
public static class StudyTables
{
    /// <summary>Where the tables stand, below the root of the repository.</summary>
    public const string Document = "tests/CalibrationApi.Simulation/README.md";

    /// <summary>The line before the tables.</summary>
    public const string Begin = "<!-- simulation tables: written by the command above -->";

    /// <summary>The line after them.</summary>
    public const string End = "<!-- /simulation tables -->";

    /// <summary>One study as a table: a row for each case, a column for each number of catches.</summary>
    public static string Of(Study study, IReadOnlyDictionary<(StudyCase Case, int Catches), Rate> rates)
    {
        int[] columns = [.. study.Cases.SelectMany(one => one.Catches).Distinct().Order()];
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"### {study.Title}\n\n{study.Text}\nSeed {Study.Seed}, {study.Trials} tests for each figure.\n\n"
        );
        text.Append(CultureInfo.InvariantCulture, $"| per cent of tests, by number of catches | asked | {string.Join(" | ", columns)} |\n");
        text.Append(CultureInfo.InvariantCulture, $"|---|---|{string.Concat(columns.Select(_ => "---:|"))}\n");
        foreach (var one in study.Cases)
        {
            var cells = columns.Select(catches => rates.TryGetValue((one, catches), out var rate) ? rate.ToString() : "");
            text.Append(CultureInfo.InvariantCulture, $"| {one.Name} | {one.Bound} | {string.Join(" | ", cells)} |\n");
        }

        return text.ToString();
    }

    /// <summary>A document with new tables between its two lines.</summary>
    /// <exception cref="InvalidDataException">The document has not got them.</exception>
    public static string Into(string document, string tables)
    {
        var begin = document.IndexOf(Begin, StringComparison.Ordinal);
        var end = document.IndexOf(End, StringComparison.Ordinal);
        if (begin < 0 || end < begin)
            throw new InvalidDataException("The document has no lines between which the tables belong.");
        return $"{document[..(begin + Begin.Length)]}\n{tables}{document[end..]}";
    }
}
