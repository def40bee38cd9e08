using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Tolerance and wanted precision that cannot both be met are refused, with the reason.</summary>
public sealed class SettingsAtOddsTests
{
    private static readonly CatchTest TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    // Best case: change zero, u = U_wanted / 1.96 with 1 % from day to day; 1.96 sqrt(0.0153^2 + 0.01^2) = 3.58 %.
    [Theory]
    [InlineData(0.035, true)]
    [InlineData(0.0360, false)]
    [InlineData(0.05, false)]
    public void Evaluate_ToleranceThatTheWantedPrecisionCannotShow_IsRefused(double tolerance, bool refused) =>
        Assert.Equal(refused, !Outcome(new CatchTestLimits { Tolerance = tolerance }).IsAnswered);

    [Fact]
    public void Evaluate_Refusal_NamesTheMemberAndBothSettings()
    {
        var refusal = Assert.Single(Outcome(new CatchTestLimits { Tolerance = 0.02, WantedPrecision = 0.04 }).Refusals);

        Assert.Equal(RefusalCode.SettingsAtOdds, refusal.Code);
        Assert.Equal("wantedPrecision", refusal.Member);
        var sentence = refusal.Detail.InMetric();
        Assert.Contains("2 %", sentence, StringComparison.Ordinal);
        Assert.Contains("4 %", sentence, StringComparison.Ordinal);
    }

    // Equal to the last bit on paper, a rounding apart in binary: exactly met is met.
    [Theory]
    [InlineData(0.03)]
    [InlineData(0.02)]
    [InlineData(0.07)]
    public void Evaluate_ToleranceEqualToThePrecisionWithoutDayToDay_IsAccepted(double both) =>
        Assert.True(Outcome(new CatchTestLimits { Tolerance = both, WantedPrecision = both, DayToDay = 0 }).IsAnswered);

    [Fact]
    public void Evaluate_LargerDayToDayComponent_PutsTheSettingsAtOdds()
    {
        Assert.True(Outcome(new CatchTestLimits { DayToDay = 0.01 }).IsAnswered);
        Assert.False(Outcome(new CatchTestLimits { DayToDay = 0.03 }).IsAnswered);
    }

    [Fact]
    public void Evaluate_NothingInForce_AsksForNoTolerance()
    {
        var limits = new CatchTestLimits { Tolerance = 0.001 };

        Assert.True(CatchTestEvaluation.Evaluate(TwoCatches with { Limits = limits }).IsAnswered);
        Assert.True(CatchTestEvaluation.Evaluate(TwoCatches.StartingFrom(0.35) with { Limits = limits }).IsAnswered);
    }

    [Fact]
    public void Evaluate_Defaults_AreNotAtOdds() => Assert.True(Outcome(new CatchTestLimits()).IsAnswered);

    private static Outcome<CatchTestResult> Outcome(CatchTestLimits limits) =>
        CatchTestEvaluation.Evaluate(TwoCatches.InForce(0.342) with { Limits = limits });
}
