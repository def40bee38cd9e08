using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Nothing is dropped silently: only the caller leaves a catch out, with a reason, and it stays in the answer.</summary>
public sealed class ExcludedCatchTests
{
    private static readonly Catch Spilled = Given.Net(12, 47, excludedBecause: "bag slipped off");

    [Fact]
    public void Evaluate_ExcludedCatch_DoesNotTouchTheEstimate()
    {
        var without = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.342).Evaluated();
        var with = Given.Test(Given.Net(17.08, 47), Spilled, Given.Net(16.94, 46.8)).InForce(0.342).Evaluated();

        Assert.Equal(without.Estimate, with.Estimate);
        Assert.Equal(without.Change, with.Change);
        Assert.Equal(without.Decision, with.Decision);
        Assert.Equal(without.TotalMassOverTotalRevolutions, with.TotalMassOverTotalRevolutions);
        Assert.Equal(without.MeanOfRatios, with.MeanOfRatios);
    }

    [Fact]
    public void Evaluate_ExcludedCatch_StaysInTheAnswerWithItsReason()
    {
        var result = Given.Test(Given.Net(17.08, 47), Spilled, Given.Net(16.94, 46.8)).Evaluated();

        Assert.Equal(3, result.Catches.Count);
        Assert.Equal("bag slipped off", result.Catches[1].ExcludedBecause);
        NearlyEqual.Assert(12.0 / 47, result.Catches[1].MassPerRevolution.KilogramsPerRevolution);
    }

    [Fact]
    public void Evaluate_ExcludedCatch_IsNamedInAFindingByItsPlace()
    {
        var result = Given.Test(Given.Net(17.08, 47), Spilled).Evaluated();

        var finding = Assert.Single(result.Findings, each => each.Code == CatchTestCodes.CatchExcluded);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("Catch 2 was left out by the sender: bag slipped off", finding.Detail.InMetric());
    }

    [Fact]
    public void Evaluate_StrayCatchExcluded_IsJudgedWithoutIt()
    {
        Catch[] honest = [Given.Delivering(0.36), Given.Delivering(0.361)];

        Assert.Equal(Verdict.Investigate, Given.Test([.. honest, Given.Delivering(0.43)]).Evaluated().Decision.Verdict);
        Assert.Equal(
            Verdict.Adopt,
            Given.Test([.. honest, Given.Delivering(0.43, excludedBecause: "overflowed")]).Evaluated().Decision.Verdict
        );
    }

    [Fact]
    public void Evaluate_NoCatchCounts_IsRefusedAsACodingMistake() =>
        Assert.Throws<ArgumentException>(() => CatchTestEvaluation.Evaluate(Given.Test(Spilled)));

    [Fact]
    public void Counts_WithoutReason_IsTrue()
    {
        Assert.True(Given.Net(17, 47).Counts);
        Assert.False(Spilled.Counts);
    }

    [Theory]
    [InlineData(1, 1, true)]
    [InlineData(1, 2, false)]
    [InlineData(2, 3, true)]
    [InlineData(2, 4, false)]
    [InlineData(0, 1, false)]
    public void Decide_CatchesThatContradict_UnlessThoseThatCountOutweighThemTwoToOne(int contradicting, int counted, bool decide) =>
        Assert.Equal(decide, new ExcludedCatches([], [.. Enumerable.Range(0, contradicting)]).Decide(counted));
}
