namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Every file of figures says where it comes from, in itself and in the README.</summary>
[Trait("Category", "Transcription")]
public sealed class ReferenceDataTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(ReferenceTable.Folder, "README.md"));

    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(ReferenceTable.Folder, "*.csv").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Fact]
    public void Folder_Files_AreFound() => Assert.True(Files.Count >= 15, $"Only {Files.Count} files were found.");

    [Theory]
    [MemberData(nameof(Files))]
    public void File_Header_SaysWhereTheFiguresComeFrom(string file)
    {
        var table = ReferenceTable.Read(file);

        Assert.True(table.Origin.Length > 40, $"{file} has no origin.");
        Assert.NotEmpty(table.Rows);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Readme_Table_NamesTheFileAndATestThatExists(string file)
    {
        var line = Assert.Single(Readme.Split('\n'), each => each.StartsWith($"| `{file}` |", StringComparison.Ordinal));

        var test = line.Split('`')[3];
        Assert.Contains(typeof(ReferenceDataTests).Assembly.GetTypes(), type => type.Name == test);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void File_Tags_AreAmongThoseThatTheReadmeExplains(string file) =>
        Assert.All(ReferenceTable.Read(file).Rows.Where(row => row.Has("tag")), row =>
            Assert.Contains(row["tag"], (string[])["V", "M", "D"])
        );
}
