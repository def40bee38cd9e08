using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>The program of the client's README and what it says that the program prints.</summary>
internal static partial class Quickstart
{
    private const string Address = "http://localhost:5000";

    private static readonly Block[] Blocks = Read();

    /// <summary>What the quickstart has to show.</summary>
    public static IEnumerable<string> Headings => Blocks.Select(block => block.Heading);

    public static string Output => string.Concat(Blocks.Select(block => block.Output));

    /// <summary>The program, for a service at another address.</summary>
    public static string ProgramFor(string address)
    {
        var program = string.Join("\n", Blocks.Select(block => block.Code));
        Assert.Contains(Address, program, StringComparison.Ordinal);
        return program.Replace(Address, address, StringComparison.Ordinal);
    }

    private static Block[] Read()
    {
        var text = File.ReadAllText(Repository.PathOf("src", "Clients", "CSharp", "README.md"))
            .Split("<!-- quickstart -->")[1]
            .Split("<!-- /quickstart -->")[0];
        return
        [
            .. CodeAndOutput()
                .Matches(text)
                .Select(match => new Block(
                    Heading().Matches(text[..match.Index]).LastOrDefault()?.Groups[1].Value ?? "",
                    match.Groups["code"].Value,
                    match.Groups["output"].Value
                )),
        ];
    }

    // A fenced block of C# and, if there is one, the fenced block of its output.
    [GeneratedRegex("""```csharp\n(?<code>(?:(?!```).)*)```(?:\s*```text\n(?<output>(?:(?!```).)*)```)?""", RegexOptions.Singleline)]
    private static partial Regex CodeAndOutput();

    [GeneratedRegex("^### (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    private sealed record Block(string Heading, string Code, string Output);
}
