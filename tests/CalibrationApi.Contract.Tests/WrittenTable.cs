using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>A table of a page that the service itself tells: compared with it, or rewritten with the contract.</summary>
internal static class WrittenTable
{
    /// <summary>Holds the table below a head to the rows that it should have.</summary>
    public static void HoldTo(string page, string head, IEnumerable<string> rows)
    {
        var text = Page.At(page).Text;
        var top = text.IndexOf($"{head}\n|---|", StringComparison.Ordinal);
        Assert.True(top >= 0, $"{page} has no table with the head {head}");
        // Below the head and the line under it, up to the next line that is empty.
        var from = text.IndexOf('\n', top + head.Length + 1) + 1;
        var to = text.IndexOf("\n\n", from - 1, StringComparison.Ordinal) + 1;
        var expected = string.Concat(rows.Select(row => $"{row}\n"));

        if (ContractUpdate.IsAsked)
            File.WriteAllText(Repository.PathOf(page), text[..from] + expected + text[to..]);
        else
            Assert.True(
                expected == text[from..to],
                $"{page} shows another table than{Environment.NewLine}{expected}{ContractUpdate.Advice}"
            );
    }
}
