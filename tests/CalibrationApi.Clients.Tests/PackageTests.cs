using System.IO.Compression;
using System.Xml.Linq;
using CalibrationApi.Testing;

namespace CalibrationApi.Clients.Tests;

/// <summary>The client as its users get it: packed, restored from a feed, and run against the running service.</summary>
public sealed class PackageTests(PackedClient packed, RunningService service) : IClassFixture<PackedClient>, IClassFixture<RunningService>
{
    [Fact]
    public async Task Quickstart_OfTheReadme_PrintsWhatIsPrintedBelowIt()
    {
        var built = await packed.BuildAsync("quickstart", Quickstart.ProgramFor(service.Address));
        Assert.True(built.ExitCode == 0, built.Everything);

        var run = await packed.RunAsync("quickstart");

        Assert.True(run.ExitCode == 0, run.Everything);
        Assert.True(
            Quickstart.Output == run.Output,
            $"The README shows{Environment.NewLine}{Quickstart.Output}but the program prints{Environment.NewLine}{run.Output}"
        );
    }

    [Fact]
    public void Quickstart_OfTheReadme_ShowsTheWholeJob()
    {
        Assert.Subset(
            Quickstart.Headings.ToHashSet(),
            new HashSet<string>
            {
                "Describe what there is",
                "Plan",
                "Test",
                "Adopt",
                "Look back",
                "Change a record",
                "Make a mistake",
                "Ask many questions at once",
            }
        );
    }

    [Fact]
    public async Task WrongDimension_InAProgram_DoesNotCompile()
    {
        const string program = """
            using CalibrationApi.Client;
            using CalibrationApi.Client.Models;

            Console.WriteLine(new CatchOfTest { Gross = Mass.Kilograms(18.7) }.Gross);
            Console.WriteLine(new CatchOfTest { Gross = Length.Metres(18.7) }.Gross);
            """;

        var built = await packed.BuildAsync("wrong-dimension", program);

        Assert.NotEqual(0, built.ExitCode);
        Assert.Contains("Program.cs(5,", built.Output, StringComparison.Ordinal);
        Assert.Contains("CS0029", built.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Program.cs(4,", built.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Program_ForTheOlderFramework_CompilesAgainstThePackage()
    {
        const string program = """
            using CalibrationApi.Client;

            using var calibration = new CalibrationClient(new Uri("http://localhost:5000"));
            Console.WriteLine(Mass.Kilograms(1).In("lb"));
            """;

        var built = await packed.BuildAsync("older", program, "net8.0");

        Assert.True(built.ExitCode == 0, built.Everything);
    }

    [Fact]
    public void Package_Opened_HoldsTheLibraryItsCommentsAndItsReadmeAndNeedsTheGeneratorsLibrariesOnly()
    {
        using var package = ZipFile.OpenRead(packed.PackageFile);
        var files = package.Entries.Select(entry => entry.FullName).ToHashSet();
        using var nuspec = package.GetEntry("CalibrationApi.Client.nuspec")!.Open();
        var metadata = XDocument.Load(nuspec).Root!.Elements().Single();

        foreach (var framework in (string[])["net8.0", "net10.0"])
        {
            Assert.Contains($"lib/{framework}/CalibrationApi.Client.dll", files);
            Assert.Contains($"lib/{framework}/CalibrationApi.Client.xml", files);
        }

        Assert.Contains("README.md", files);
        Assert.Equal("README.md", Text(metadata, "readme"));
        Assert.NotEmpty(Text(metadata, "description")!);
        Assert.Null(Text(metadata, "license"));
        Assert.All(metadata.Descendants().Where(element => element.Name.LocalName == "dependency"), dependency =>
            Assert.StartsWith("Microsoft.Kiota.", dependency.Attribute("id")!.Value, StringComparison.Ordinal)
        );
    }

    private static string? Text(XElement metadata, string name) =>
        metadata.Elements().FirstOrDefault(element => element.Name.LocalName == name)?.Value;
}
