using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The pages are short enough to be read, lead somewhere, and show nothing that no test runs.</summary>
public sealed partial class PagesTests
{
    private const int FirstScreen = 45;

    // What a test does with the blocks behind each mark is said in tests/README.md.
    private static readonly string[] RunMarks = ["tour", "lines", "keyed", "quickstart"];

    private static readonly string[] Programs = ["csharp", "ts", "python"];

    public static TheoryData<string> Pages => [.. Page.All.Select(page => page.Name)];

    [Theory]
    [InlineData("README.md", 18_000)]
    [InlineData("DEVELOPERS.md", 14_000)]
    public void Page_ThatEverybodyReads_KeepsItsSize(string name, int most) =>
        Assert.InRange(Encoding.UTF8.GetByteCount(Page.At(name).Text), most / 2, most);

    [Fact]
    public void Readme_FirstScreen_HasTheJobACommandAndARequestWithItsAnswer()
    {
        var readme = Page.At("README.md");
        var screen = string.Concat(readme.Text.Split('\n').Take(FirstScreen).Select(line => $"{line}\n"));
        var shown = readme.Blocks.Where(block => screen.Contains(block.Body, StringComparison.Ordinal)).ToArray();

        Assert.InRange(screen.Split("\n\n")[1].Length, 200, 1000);
        Assert.Contains(shown, block => block.Body == "dotnet run --project src/CalibrationApi -- --demo\n");
        var request = Assert.Single(shown, block => block.Body.StartsWith("curl ", StringComparison.Ordinal));
        Assert.NotEmpty(request.Output);
        Assert.Contains(request.Output, screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Readme_Commands_StartTheServiceAndRunEveryTest()
    {
        var commands = Page.At("README.md").Blocks.Where(block => block.Kind == "bash").Select(block => block.Body).ToArray();

        Assert.Contains("dotnet run --project src/CalibrationApi -- --demo\n", commands);
        Assert.Contains("dotnet test CalibrationApi.sln\n", commands);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Links_InsideTheRepository_LeadSomewhere(string name) => Assert.All(Page.At(name).Links, link =>
        {
            Assert.True(Path.Exists(Repository.PathOf(link.Path)), $"{name} links to {link.Path}, which does not exist.");
            if (link.Anchor.Length > 0)
                Assert.True(
                    Page.At(link.Path).Anchors.Contains(link.Anchor),
                    $"{name} links to #{link.Anchor} of {link.Path}, which has no such heading."
                );
        });

    [Fact]
    public void Pages_All_AreReachedFromTheReadme()
    {
        var reached = new HashSet<string>(StringComparer.Ordinal) { "README.md" };
        var ahead = new Queue<string>(reached);
        while (ahead.TryDequeue(out var name))
        {
            var linked = Page.At(name).Links.Select(link => link.Path).Where(path => path.EndsWith(".md", StringComparison.Ordinal));
            foreach (var path in linked.Where(reached.Add))
                ahead.Enqueue(path);
        }

        Assert.True(reached.Count > 10);
        Assert.Empty(Page.All.Select(page => page.Name).Except(reached));
    }

    [Fact]
    public void Blocks_ThatCallTheService_StandBehindTheMarkOfATest()
    {
        var calls = Page
            .All.SelectMany(page => page.Blocks.Select(block => (page.Name, Block: block)))
            .Where(one => Programs.Contains(one.Block.Kind) || one.Block.Kind == "json" || CallsTheService().IsMatch(one.Block.Body))
            // How a test project uses this one is no program of its own.
            .Where(one => one.Name != "tests/CalibrationApi.Testing/README.md")
            .ToArray();

        Assert.True(calls.Length > 60, $"Only {calls.Length} blocks were found.");
        Assert.Empty(calls.Where(one => !RunMarks.Contains(one.Block.Mark)).Select(one => $"{one.Name}: {one.Block.Body}"));
    }

    [Fact]
    public void Marks_OfPages_AreThoseOfTheTestsThatRunThem()
    {
        Assert.Equal(
            ["src/Clients/CSharp/README.md", "src/Clients/Python/README.md", "src/Clients/TypeScript/README.md"],
            PagesWith("quickstart").Order(StringComparer.Ordinal)
        );
        Assert.Equal(["http-examples/shell.md"], PagesWith("lines"));
        Assert.Equal(["README.md", "src/CalibrationApi/README.md"], PagesWith("keyed").Order(StringComparer.Ordinal));
        Assert.True(PagesWith("tour").Count() >= 6);
    }

    [Fact]
    public void Commands_OfAllPages_NameWhatExists()
    {
        var commands = Page.All.SelectMany(page =>
            page.Blocks.Where(block => block.Kind == "bash").Select(block => (page.Name, block.Body))
        );
        (string Name, string Path)[] paths =
        [
            .. commands.SelectMany(one => RepositoryPath().Matches(one.Body).Select(path => (one.Name, path.Value.TrimEnd('.', '/')))),
        ];
        (string Name, string Script)[] scripts =
        [
            .. commands.SelectMany(one => NpmScript().Matches(one.Body).Select(script => (one.Name, script.Groups[1].Value))),
        ];

        Assert.True(paths.Length > 30 && scripts.Length > 5, $"Only {paths.Length} paths and {scripts.Length} scripts were found.");
        Assert.All(paths, one =>
            Assert.True(Path.Exists(Repository.PathOf(one.Path)), $"{one.Name} has a command with {one.Path}, which does not exist.")
        );
        Assert.All(scripts, one =>
            Assert.True(NpmScripts(one.Name).Contains(one.Script), $"{one.Name} runs the npm script {one.Script}, which does not exist.")
        );
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Paths_NamedInText_Exist(string name) =>
        Assert.All(
            QuotedPath()
                .Matches(Page.At(name).Text)
                .Select(path => path.Groups[1].Value)
                // What the service makes when it runs.
                .Where(path => !path.Contains(".calibration", StringComparison.Ordinal)),
            path =>
                Assert.True(
                    Path.Exists(Repository.PathOf(path)) || Path.Exists(Repository.PathOf(Path.GetDirectoryName(name)!, path)),
                    $"{name} names {path}, which does not exist."
                )
        );

    private static IEnumerable<string> PagesWith(string mark) =>
        Page.All.Where(page => page.Blocks.Any(block => block.Mark == mark)).Select(page => page.Name);

    // A page outside the client's own folder means the tools of the contract.
    private static IEnumerable<string> NpmScripts(string page)
    {
        var folder = page.StartsWith("src/Clients/TypeScript/", StringComparison.Ordinal) ? "src/Clients/TypeScript" : "openapi";
        var package = JsonNode.Parse(File.ReadAllText(Repository.PathOf(folder, "package.json")))!;
        return package["scripts"]!.AsObject().Select(script => script.Key);
    }

    [GeneratedRegex(@"\bcurl\b|localhost:5000")]
    private static partial Regex CallsTheService();

    [GeneratedRegex(@"(?<![\w/.-])(?:src|tests|openapi|demo-data|http-examples|CalibrationApi\.sln)(?![\w-])[\w./-]*")]
    private static partial Regex RepositoryPath();

    [GeneratedRegex(@"npm run ([\w:]+)")]
    private static partial Regex NpmScript();

    [GeneratedRegex(@"`((?:src|tests|openapi|demo-data|http-examples|\.ci|\.config)/[\w./-]+)`")]
    private static partial Regex QuotedPath();
}
