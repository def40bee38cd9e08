using System.Globalization;
using System.Text;
using System.Text.Json;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The lines of http-examples/shell.md do in a real shell what is printed below them.</summary>
public sealed class ShellPageTests(ShellPageTests.PastedPage page) : IClassFixture<ShellPageTests.PastedPage>
{
    private static readonly PageBlock[] Blocks = [.. Page.At("http-examples/shell.md").Blocks.Where(block => block.Mark == "lines")];

    public static TheoryData<int> Printed =>
        [.. Blocks.Index().Where(block => block.Item.OutputKind.Length > 0).Select(block => block.Index)];

    [Fact]
    public void Page_FromTopToEnd_CoversTheJob()
    {
        var commands = string.Concat(Blocks.Select(block => block.Body));

        Assert.True(Blocks.Length >= 15, $"Only {Blocks.Length} blocks of lines were found.");
        Assert.All(
            [
                "/calculations/catch-plan",
                "/plans/",
                "/machines",
                "/scales",
                "/scale-checks",
                "/catch-tests",
                "\"supersedes\"",
                "/adoptions",
                "/values-in-force",
                "/history",
                "Idempotency-Key",
                "If-Match",
                "text/csv",
                "application/x-ndjson",
                "%header{link}",
            ],
            part => Assert.Contains(part, commands, StringComparison.Ordinal)
        );
    }

    [ShellTheory]
    [MemberData(nameof(Printed))]
    public void Block_Pasted_PrintsWhatIsShownBelowIt(int number)
    {
        var (command, kind, shown) = (Blocks[number].Body, Blocks[number].OutputKind, Blocks[number].Output);
        var output = page.Outputs[number];

        JsonElement[] nodes = [.. PrintedAnswer.Lines(output), .. ValuesIn(output).SelectMany(PrintedAnswer.Nodes)];
        Assert.All(kind == "json" ? PrintedAnswer.Values(shown) : [.. PrintedAnswer.Lines(shown)], value =>
            Assert.True(
                nodes.Any(node => PrintedAnswer.IsPart(value, node)),
                $"http-examples/shell.md shows\n{value}\nbelow\n{command}but it prints\n{output}"
            )
        );
    }

    private static JsonElement[] ValuesIn(string output)
    {
        try
        {
            return PrintedAnswer.Values(output);
        }
        catch (JsonException)
        {
            return [];
        }
    }

    /// <summary>All lines of the page in one shell, against a service with the demo season.</summary>
    public sealed class PastedPage : IAsyncLifetime
    {
        private const string Address = "http://localhost:5000";

        private static readonly string Jq = Repository.PathOf("tests", "CalibrationApi.Contract.Tests", "Shell", "jq.mjs");

        private readonly RunningService service = new();
        private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-shell-");

        /// <summary>What each block printed.</summary>
        public IReadOnlyList<string> Outputs { get; private set; } = [];

        public async Task InitializeAsync()
        {
            // Where the shell is missing every block is skipped, but fixtures are made all the same.
            if (Shell.Missing is not null)
                return;
            await NodeTools.ReadyAsync();
            await service.InitializeAsync();
            var demo = folder.CreateSubdirectory("demo-data").FullName;
            foreach (var data in Directory.GetFiles(Repository.PathOf("demo-data"), "*.json"))
                File.Copy(data, Path.Combine(demo, Path.GetFileName(data)));
            var script = new StringBuilder("set -euo pipefail\n").Append(
                CultureInfo.InvariantCulture,
                $"jq() {{ node '{Jq}' '{NodeTools.Folder}' \"$@\"; }}\n"
            );
            foreach (var (number, block) in Blocks.Index())
                script.Append($"{{\n{block.Body.Replace(Address, service.Address, StringComparison.Ordinal)}}} > out.{number}\n");
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "page.sh"), script.ToString());
            var run = await Command.RunAsync(folder.FullName, "bash", "page.sh");
            Assert.True(run.ExitCode == 0, $"The lines of http-examples/shell.md fail. {run.Everything}");
            Outputs = [.. Blocks.Select((_, number) => File.ReadAllText(Path.Combine(folder.FullName, $"out.{number}")))];
        }

        public async Task DisposeAsync()
        {
            await service.DisposeAsync();
            folder.Delete(recursive: true);
        }
    }
}
