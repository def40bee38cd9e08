using System.Text.RegularExpressions;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>No numbered published case is missing: each stands in a file of its topic, with what became of it.</summary>
[Trait("Category", "Transcription")]
public sealed partial class TradeCaseListTests
{
    private static readonly string[] Ids =
    [
        "BD-01",
        "BD-02",
        "BD-03",
        "BD-04",
        "BD-05",
        "CD-02",
        "CD-03",
        "CD-04",
        "CD-05",
        "CD-07",
        "CD-09",
        "CD-10",
        "CD-11",
        "CD-12",
        "CD-13",
        "EF-01",
        "EF-02",
        "EF-03",
        "EF-04",
        "EF-05",
        "EF-06",
        "EF-07",
        "EF-08",
        "EF-09",
        "EF-10",
        "FC-02",
        "FC-03",
        "FC-04",
        "FC-05",
        "NP-01",
        "NP-02",
        "NP-03",
        "NP-04",
        "NP-05",
        "NP-06",
        "NP-07",
        "RC-01",
        "RC-02",
        "RC-03",
        "RC-04",
        "RC-06",
        "RC-07",
        "RC-08",
        "RC-09",
        "RC-10",
        "RC-11",
        "RF-03",
        "RF-04",
        "RF-05",
        "SF-01",
        "SF-02",
        "SF-03",
        "SF-04",
        "SF-05",
        "SF-06",
        "SF-07",
        "SF-08",
        "SF-09",
        "SF-10",
        "SF-11",
        "SF-12",
        "SF-13",
        "SP-01",
        "SP-02",
        "SP-03",
        "SP-06",
        "SR-01",
        "SR-02",
        "SR-03",
        "SR-04",
        "SR-05",
        "SR-07",
        "SR-09",
        "SR-11",
        "SR-12",
        "SR-13",
        "SR-14",
        "UN-03",
        "UN-04",
    ];

    private static readonly ReferenceTable[] Files =
    [
        .. Directory.GetFiles(ReferenceTable.Folder, "trade-*.csv").Select(path => ReferenceTable.Read(Path.GetFileName(path))),
    ];

    [Fact]
    public void Files_EveryNumberedCase_StandsInOneOfThem()
    {
        var found = Files.SelectMany(file => file.Rows).Select(row => row["id"]).ToHashSet(StringComparer.Ordinal);

        Assert.Empty(Ids.Except(found));
        // And none under such a number that is not one of them.
        Assert.Empty(found.Where(id => Numbered().IsMatch(id)).Except(Ids));
    }

    // A file that no test class reads would say nothing.
    [Fact]
    public void Files_EachOfThem_IsReadByATopic()
    {
        var read = typeof(TradeCaseListTests)
            .Assembly.GetTypes()
            .Where(type => typeof(ITradeTopic).IsAssignableFrom(type) && type.IsClass)
            .Select(type => (string)type.GetProperty(nameof(ITradeTopic.File))!.GetValue(null)!);

        Assert.Equal(Files.Select(file => file.File).Order(StringComparer.Ordinal), read.Order(StringComparer.Ordinal));
    }

    [GeneratedRegex("^(BD|CD|EF|FC|NP|RC|RF|SF|SP|SR|UN)-[0-9]+$")]
    private static partial Regex Numbered();
}
