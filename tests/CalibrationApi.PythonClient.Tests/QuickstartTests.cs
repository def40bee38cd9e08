using System.Text;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>The quickstart of the client's README runs and prints what is shown.</summary>
[Collection(OneInstallation.Name)]
public sealed partial class QuickstartTests(InstalledClient client, RunningService service) : IClassFixture<RunningService>
{
    private const string Address = "http://localhost:5000";
    private const string EndOfPiece = "---- end of piece ----";

    [PythonFact]
    public async Task Quickstart_Run_PrintsWhatIsShownBelowEachPiece()
    {
        var pieces = Pieces();
        var program = new StringBuilder();
        foreach (var (code, _) in pieces)
            program.Append(code).Append($"print(\"{EndOfPiece}\")\n");
        await File.WriteAllTextAsync(Path.Combine(client.Folder, "quickstart.py"), program.Replace(Address, service.Address).ToString());

        var run = ClientSource.Succeeded("The quickstart fails.", await client.RunAsync("-X", "utf8", "quickstart.py"));

        Assert.True(pieces.Count(piece => piece.Shown.Length > 0) >= 7, "The pieces of the quickstart are missing.");
        var printed = run.Output.ReplaceLineEndings("\n").Split($"{EndOfPiece}\n")[..^1];
        Assert.Equal(pieces.Length, printed.Length);
        Assert.All(pieces.Zip(printed), piece =>
            Assert.True(
                piece.First.Shown == piece.Second,
                $"The README shows{Environment.NewLine}{piece.First.Shown}below{Environment.NewLine}{piece.First.Code}but it prints{Environment.NewLine}{piece.Second}"
            )
        );
    }

    /// <summary>The program of the README.</summary>
    internal static string Program => string.Concat(Pieces().Select(piece => piece.Code));

    private static (string Code, string Shown)[] Pieces()
    {
        var quickstart = ClientSource.Readme.Split("<!-- quickstart -->")[1].Split("<!-- /quickstart -->")[0];
        return [.. Piece().Matches(quickstart).Select(piece => (piece.Groups["code"].Value, piece.Groups["shown"].Value))];
    }

    // A fenced piece of the program and, if it prints, what it prints.
    [GeneratedRegex("""```python\n(?<code>(?:(?!```).)*)```(?:\s*```text\n(?<shown>(?:(?!```).)*)```)?""", RegexOptions.Singleline)]
    private static partial Regex Piece();
}
