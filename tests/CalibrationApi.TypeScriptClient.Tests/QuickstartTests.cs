using System.Text;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>The quickstart of the client's README compiles, runs in Node, and prints what is shown.</summary>
[Collection(OnePackage.Name)]
public sealed partial class QuickstartTests(InstalledPackage package, RunningService service) : IClassFixture<RunningService>
{
    private const string Address = "http://localhost:5000";
    private const string EndOfPiece = "---- end of piece ----";

    [Fact]
    public async Task Quickstart_CompiledAndRun_PrintsWhatIsShownBelowEachPiece()
    {
        var pieces = Pieces();
        var program = new StringBuilder();
        foreach (var (code, _) in pieces)
            program.Append(code).Append($"console.log(\"{EndOfPiece}\");\n");
        await File.WriteAllTextAsync(Path.Combine(package.Folder, "quickstart.ts"), program.Replace(Address, service.Address).ToString());

        ClientSource.Succeeded("The quickstart does not compile.", await package.CompileAsync("quickstart.ts"));
        var run = ClientSource.Succeeded("The quickstart fails.", await Command.RunAsync(package.Folder, "node", "quickstart.js"));

        Assert.True(pieces.Count(piece => piece.Shown.Length > 0) >= 7, "The pieces of the quickstart are missing.");
        var printed = run.Output.Split($"{EndOfPiece}\n")[..^1];
        Assert.Equal(pieces.Length, printed.Length);
        Assert.All(pieces.Zip(printed), piece =>
            Assert.True(
                piece.First.Shown == piece.Second,
                $"The README shows{Environment.NewLine}{piece.First.Shown}below{Environment.NewLine}{piece.First.Code}but it prints{Environment.NewLine}{piece.Second}"
            )
        );
    }

    private static (string Code, string Shown)[] Pieces()
    {
        var quickstart = ClientSource.Readme.Split("<!-- quickstart -->")[1].Split("<!-- /quickstart -->")[0];
        return [.. Piece().Matches(quickstart).Select(piece => (piece.Groups["code"].Value, piece.Groups["shown"].Value))];
    }

    // A fenced piece of the program and, if it prints, what it prints.
    [GeneratedRegex("""```ts\n(?<code>(?:(?!```).)*)```(?:\s*```text\n(?<shown>(?:(?!```).)*)```)?""", RegexOptions.Singleline)]
    private static partial Regex Piece();
}
