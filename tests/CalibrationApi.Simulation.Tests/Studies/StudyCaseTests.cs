using CalibrationApi.Simulation.Studies;
using CalibrationApi.Testing;

namespace CalibrationApi.Simulation.Tests.Studies;

public sealed class StudyCaseTests
{
    private static readonly StudyCase Third = new("a third", [1, 2], (_, random) => random.NextDouble() < 1 / 3.0)
    {
        AtLeast = 0.3,
        AtMost = 0.36,
    };

    // However the trials are shared out, each has its own stream.
    [Fact]
    public void Run_AnyNumberOfThreads_CountsWhatOneAfterTheOtherCounts()
    {
        const int Trials = 12_345;
        var seed = SeededRandom.SeedFor(5, "a third/2");

        var expected = Enumerable.Range(0, Trials).Count(trial => Third.Happens(2, SeededRandom.Of(seed, trial)));

        Assert.Equal(expected, Third.Run(5, Trials, 2).Hits);
        Assert.Equal(Trials, Third.Run(5, Trials, 2).Trials);
    }

    [Fact]
    public void Run_OtherSeedOrCatches_CountsOtherTests()
    {
        var hits = Third.Run(5, 10_000, 2).Hits;

        Assert.NotEqual(hits, Third.Run(6, 10_000, 2).Hits);
        Assert.NotEqual(hits, Third.Run(5, 10_000, 1).Hits);
    }

    [Theory]
    [InlineData(9500, true)]
    [InlineData(9413, true)]
    [InlineData(9412, false)]
    [InlineData(10000, true)]
    public void Holds_ShareBelowItsBound_MayMissItByFourStandardErrors(long hits, bool expected) =>
        Assert.Equal(expected, new Rate(hits, 10_000, AtLeast: 0.95).Holds);

    [Theory]
    [InlineData(587, true)]
    [InlineData(588, false)]
    public void Holds_ShareAboveItsBound_MayMissItByFourStandardErrors(long hits, bool expected) =>
        Assert.Equal(expected, new Rate(hits, 10_000, AtMost: 0.05).Holds);

    [Fact]
    public void Holds_NeverPermitted_IsBrokenByASingleOne()
    {
        Assert.True(new Rate(0, 10_000, AtMost: 0).Holds);
        Assert.False(new Rate(1, 10_000, AtMost: 0).Holds);
    }

    [Fact]
    public void All_Cases_HaveNamesOfTheirOwn() => Assert.Distinct(Study.All.SelectMany(study => study.Cases).Select(one => one.Name));

    [Fact]
    public void Into_DocumentWithTables_ReplacesThem()
    {
        var document = $"before\n{StudyTables.Begin}\nold\n{StudyTables.End}\nafter\n";

        Assert.Equal($"before\n{StudyTables.Begin}\nnew\n{StudyTables.End}\nafter\n", StudyTables.Into(document, "new\n"));
    }

    [Fact]
    public void Into_DocumentWithoutPlaceForTables_IsRefused() =>
        Assert.Throws<InvalidDataException>(() => StudyTables.Into("nothing", "new\n"));

    // A case that was added or renamed and whose figures were not written.
    [Fact]
    public void Readme_Tables_HoldEveryCaseAndNoBrokenFigure()
    {
        var document = File.ReadAllText(Repository.PathOf(StudyTables.Document));
        var tables = document[
            document.IndexOf(StudyTables.Begin, StringComparison.Ordinal)..document.IndexOf(StudyTables.End, StringComparison.Ordinal)
        ];

        Assert.All(Study.All.SelectMany(study => study.Cases), one =>
            Assert.Contains($"| {one.Name} | {one.Bound} |", tables, StringComparison.Ordinal)
        );
        Assert.Contains($"### {NumberInUseStudy.Title}", tables, StringComparison.Ordinal);
        Assert.DoesNotContain("(!)", tables, StringComparison.Ordinal);
    }
}
