using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Tolerance and wanted precision that cannot both be met are refused, with the reason.</summary>
public sealed class SettingsAtOddsTests
{
    private static readonly CatchTestQuestion TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

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

        Assert.Equal(SharedCodes.SettingsAtOdds, refusal.Code);
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
        Assert.True(
            Outcome(
                new CatchTestLimits
                {
                    Tolerance = both,
                    WantedPrecision = both,
                    DayToDay = 0,
                }
            ).IsAnswered
        );

    [Fact]
    public void Evaluate_LargerDayToDayComponent_PutsTheSettingsAtOdds()
    {
        Assert.True(Outcome(new CatchTestLimits { DayToDay = 0.01 }).IsAnswered);
        Assert.False(Outcome(new CatchTestLimits { DayToDay = 0.03 }).IsAnswered);
    }

    // sqrt((0.05 / 1.96)^2 - (0.03 / 1.96)^2): what the default tolerance leaves beside the default precision.
    [Fact]
    public void LargestDayToDay_Defaults_IsWhatTheToleranceLeaves() =>
        NearlyEqual.Assert(0.04 / 1.959963984540054, CatchTestSettings.LargestDayToDay(new CatchTestLimits()), 1e-9);

    [Theory]
    [InlineData(0.05, 0.03, 0.95)]
    [InlineData(0.04, 0.02, 0.99)]
    [InlineData(0.03, 0.03, 0.95)]
    public void LargestDayToDay_CountedInATest_IsJustNotAtOdds(double tolerance, double precision, double coverage)
    {
        var limits = new CatchTestLimits
        {
            Tolerance = tolerance,
            WantedPrecision = precision,
            CoverageProbability = coverage,
        };
        var most = CatchTestSettings.LargestDayToDay(limits);

        Assert.True(Outcome(limits with { DayToDay = most }).IsAnswered);
        Assert.False(Outcome(limits with { DayToDay = most + 0.001 }).IsAnswered);
    }

    [Fact]
    public void LargestDayToDay_ToleranceThatNotEvenAConstantMeterCouldShow_IsZero() =>
        Assert.Equal(0, CatchTestSettings.LargestDayToDay(new CatchTestLimits { Tolerance = 0.02, WantedPrecision = 0.04 }));

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
