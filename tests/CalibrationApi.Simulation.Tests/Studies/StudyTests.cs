using CalibrationApi.Simulation.Studies;

namespace CalibrationApi.Simulation.Tests.Studies;

/// <summary>
/// The studies with few trials. The bounds are those of the tables, widened by four standard errors of the smaller count
/// (<see cref="Rate.StandardErrors"/>); the seed is fixed, so that a test does not fail by chance.
/// </summary>
public abstract class StudyTests
{
    // Some ten seconds for each kind of study.
    private const int Trials = 10_000;

    protected static TheoryData<string, int> Cells(params ReadOnlySpan<Study> studies)
    {
        var cells = new TheoryData<string, int>();
        foreach (var study in studies)
        {
            foreach (var one in study.Cases)
            {
                foreach (var catches in one.Catches)
                    cells.Add(one.Name, catches);
            }
        }

        return cells;
    }

    protected static void AssertWithinBounds(string name, int catches, int trials = Trials)
    {
        var one = Study.All.SelectMany(study => study.Cases).Single(one => one.Name == name);
        Assert.True(one.AtLeast is not null || one.AtMost is not null, "A case without bounds cannot fail.");

        var rate = one.Run(Study.Seed, trials, catches);

        Assert.True(rate.Holds, $"{name}, {catches} catches: {rate} % of {trials} tests; {one.Bound} % asked.");
    }
}

[Trait("Category", "Coverage")]
public sealed class CoverageTests : StudyTests
{
    public static TheoryData<string, int> All => Cells(CoverageStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches);
}

[Trait("Category", "Coverage")]
public sealed class StrayTests : StudyTests
{
    public static TheoryData<string, int> All => Cells(StrayStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches);
}

[Trait("Category", "Coverage")]
public sealed class AgreementTests : StudyTests
{
    // Up to twenty catches a test.
    private const int Trials = 2_000;

    public static TheoryData<string, int> All => Cells(AgreementStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches, Trials);
}

[Trait("Category", "Decisions")]
public sealed class SimulatedSecondTestTests : StudyTests
{
    // Each trial draws tests until one is precise enough, and most weigh mistakes as well.
    private const int Trials = 500;

    public static TheoryData<string, int> All => Cells(SecondTestStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches, Trials);
}

[Trait("Category", "Decisions")]
public sealed class SimulatedDecisionTests : StudyTests
{
    // The promise of more catches makes fifty catches a test.
    private const int Trials = 5_000;

    public static TheoryData<string, int> All => Cells(DecisionStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches, Trials);
}

[Trait("Category", "Decisions")]
public sealed class NumberInUseTests
{
    // The errors are root mean squares of some thousand tests: known to 2 %.
    private const double Allowance = 1.04;

    public static TheoryData<double, int> All
    {
        get
        {
            var cells = new TheoryData<double, int>();
            foreach (var deviation in NumberInUseStudy.Deviations)
            {
                foreach (var catches in NumberInUseStudy.Catches)
                    cells.Add(deviation, catches);
            }

            return cells;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_FollowingPays(double deviation, int catches)
    {
        var errors = NumberInUseStudy.Run(deviation, catches, 2_000);

        Assert.True(
            NumberInUseStudy.Holds(deviation, catches, errors with { Followed = errors.Followed / Allowance }),
            $"Old number off by {deviation}, {catches} catches: {errors}."
        );
    }
}

[Trait("Category", "Mistakes")]
public sealed class LikelyMistakeTests : StudyTests
{
    // The search weighs some forty explanations of each test.
    private const int Trials = 1_000;

    public static TheoryData<string, int> All => Cells(MistakeStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches, Trials);
}

[Trait("Category", "Mistakes")]
public sealed class FittingMistakeTests : StudyTests
{
    private const int Trials = 500;

    public static TheoryData<string, int> All => Cells(FittingMistakeStudy.Study);

    [Theory]
    [MemberData(nameof(All))]
    public void Run_FewTrials_StaysWithinItsBounds(string name, int catches) => AssertWithinBounds(name, catches, Trials);
}
