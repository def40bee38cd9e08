using CalibrationApi.Engine.CatchTests;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.Decisions;

/// <summary>
/// The decision table, case by case. The cases are invented; what they must lead to follows from the rules of the table,
/// which are this project's own (no published source).
/// </summary>
[Trait("Category", "Decisions")]
public sealed class CatchTestDecisionTests
{
    private static readonly DecisionCase[] Table =
    [
        .. ComparedTestCases.All,
        .. SecondTestCases.All,
        .. DoubtfulTestCases.All,
        .. ImpossibleTestCases.All,
        .. SingleCatchCases.All,
    ];

    public static TheoryData<string> Names => [.. Table.Select(each => each.Name)];

    [Fact]
    public void Table_Cases_AreAtLeastThirtyWithNamesOfTheirOwn()
    {
        Assert.True(Table.Length >= 30, $"Only {Table.Length} cases.");
        Assert.Distinct(Table.Select(each => each.Name));
    }

    [Fact]
    public void Table_Cases_ReachEveryRuleAndTheRefusal()
    {
        Assert.Equal(Enum.GetValues<Rule>().Order(), Table.Select(each => each.Rule).OfType<Rule>().Distinct().Order());
        Assert.Contains(Table, each => each.Verdict == DecisionCase.Refused);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Evaluate_CaseOfTheTable_GivesItsVerdictByItsRule(string name)
    {
        var expected = Table.Single(each => each.Name == name);

        var outcome = CatchTestEvaluation.Evaluate(expected.Test);

        var verdict = outcome.IsAnswered ? outcome.Result.Decision.Verdict.ToString() : DecisionCase.Refused;
        var rule = outcome.IsAnswered ? outcome.Result.Decision.Rule : (Rule?)null;
        Assert.True(
            (verdict, rule) == (expected.Verdict, expected.Rule),
            $"{name}: expected {expected.Verdict} by {expected.Rule} because {expected.Why}, but got {verdict} by {rule}."
        );
    }

    // Whatever else is asked, an interval wider than wanted never ends in keep.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(5)]
    public void Evaluate_GrowingCounterResolution_NeverTurnsDoubtIntoKeep(double resolution)
    {
        var outcome = CatchTestEvaluation.Evaluate(Given.Test(Given.Net(3.6, 10, resolution)).InForce(0.36));

        Assert.NotNull(outcome.Result);
        Assert.True(outcome.Result.Estimate.RelativeExpanded > 0.03);
        Assert.Equal(Verdict.Repeat, outcome.Result.Decision.Verdict);
    }
}
