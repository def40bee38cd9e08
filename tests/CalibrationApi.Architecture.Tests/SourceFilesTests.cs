using System.Text.RegularExpressions;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Storage;

namespace CalibrationApi.Architecture.Tests;

/// <summary>Names that say something, files that can be read.</summary>
public sealed partial class SourceFilesTests
{
    private const int LongestFile = 400;
    private const int LongestLine = 140;
    private const int LongestProgram = 70;

    [Fact]
    public void Types_NoName_SaysNothing()
    {
        string[] names =
        [
            .. new[] { typeof(Program).Assembly, typeof(CatchTestEvaluation).Assembly, typeof(CalibrationDatabase).Assembly }
                .SelectMany(assembly => assembly.GetTypes())
                .Select(type => type.Name.Split('`')[0])
                .Where(name => !name.Contains('<', StringComparison.Ordinal)),
        ];

        Assert.True(names.Length > 200);
        Assert.DoesNotContain(names, Meaningless().IsMatch);
    }

    [Fact]
    public void Program_IsShort()
    {
        var program = SourceFile.In("src", "CalibrationApi").Single(file => file.Name == "Program.cs");

        Assert.InRange(program.Lines, 1, LongestProgram - 1);
    }

    [Fact]
    public void Files_None_IsLong()
    {
        var files = SourceFile.In("src").Concat(SourceFile.In("tests")).ToArray();

        Assert.True(files.Length > 500);
        Assert.Empty(files.Where(file => file.Lines > LongestFile).Select(file => $"{file.Shown}: {file.Lines} lines"));
    }

    // A sentence stays whole, so that it can be searched for; what stands around it is short.
    [Fact]
    public void Lines_WithoutTheirTexts_FitIntoAWindow()
    {
        var files = SourceFile.In("src").Concat(SourceFile.In("tests")).ToArray();

        Assert.True(files.Length > 500);
        Assert.Empty(files.SelectMany(file => LongLines(file.Text).Select(line => $"{file.Shown}: {line}")));
    }

    [Fact]
    public void LongLines_OfACommentAndOfCode_AreFound()
    {
        var words = string.Concat(Enumerable.Repeat("word ", 40));

        Assert.Equal(2, LongLines($"// {words}\nCall({words});\nCall(\"{words}\");\nvar text = \"\"\"\n  {words}\n  \"\"\";\n").Count());
    }

    private static IEnumerable<string> LongLines(string text) =>
        RawText()
            .Replace(text, "")
            .Split('\n')
            .Select(line => Text().Replace(line, "\"\"").TrimEnd())
            .Where(line => line.Length > LongestLine);

    [Fact]
    public void Files_HoldOneNamespaceThatIsTheirFolder()
    {
        // A client is one namespace to its users, whatever its folders.
        var files = SourceFile
            .In("src")
            .Where(file => file.Name != "Program.cs" && !file.Shown.StartsWith("src/Clients/", StringComparison.Ordinal))
            .ToArray();

        Assert.True(files.Length > 100);
        Assert.All(files, file =>
        {
            var folder = Path.GetDirectoryName(file.Shown["src/".Length..])!.Replace('/', '.').Replace('\\', '.');
            var declared = Namespace().Match(file.Text).Groups[1].Value;
            Assert.True(declared == folder || declared.Length == 0, $"{file.Shown} declares {declared}.");
        });
    }

    [GeneratedRegex("(Manager|Helper|Util|Utils|Utility|Utilities|Common|Misc)$")]
    private static partial Regex Meaningless();

    [GeneratedRegex("\"{3,}(?!\").*?\"{3,}", RegexOptions.Singleline)]
    private static partial Regex RawText();

    [GeneratedRegex("\\$?@?\"([^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Text();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();
}
