using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.DistanceSensors;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

/// <summary>The decision table; invented cases, our own rules.</summary>
public sealed class DistanceSensorVerdictTests
{
    [Theory]
    // One run is never enough at the defaults, whatever the number in force says.
    [InlineData(new[] { 1300.0 }, 1300, Verdict.Repeat, "more-runs-needed")]
    [InlineData(new[] { 1300.0, 1302 }, 1301, Verdict.Keep, "no-practical-change")]
    [InlineData(new[] { 1300.0, 1302 }, 1314, Verdict.Keep, "within-tolerance")]
    [InlineData(new[] { 1300.0, 1302 }, 1335, Verdict.Adopt, "distance-changed")]
    [InlineData(new[] { 1300.0, 1302 }, 1270, Verdict.Adopt, "distance-changed")]
    [InlineData(new[] { 1300.0, 1302 }, 0, Verdict.Adopt, "no-value-in-force")]
    // A tenth off, and the two runs agree: the change is real.
    [InlineData(new[] { 1300.0, 1302 }, 1500, Verdict.Adopt, "distance-changed")]
    [InlineData(new[] { 1300.0, 1400, 1250 }, 1300, Verdict.Investigate, "runs-scatter-more-than-expected")]
    public void Runs_AgainstAValueInForce_AreDecided(double[] pulses, double inForce, Verdict verdict, string reason)
    {
        var question = Driven.Runs(pulses);
        var result = (inForce > 0 ? question.InForce(inForce) : question).Evaluated();

        Assert.Equal(verdict, result.Decision.Verdict);
        Assert.Equal(reason, Assert.Single(result.Reasons).Code.Word);
    }

    [Fact]
    public void Repeat_ForPrecision_SaysHowManyMoreAndTheseSuffice()
    {
        var question = Driven.Runs(1300).InForce(1300);
        var more = question.Evaluated().Decision.MoreRuns!.Value;

        var then = (question with { Runs = [.. Enumerable.Repeat(Driven.Run(1300), 1 + more)] }).Evaluated();

        Assert.Equal(1, more);
        Assert.NotEqual(Verdict.Repeat, then.Decision.Verdict);
    }

    [Fact]
    public void Repeat_WhereTheTapeIsTooCoarse_SaysThatRunsDoNotHelp()
    {
        var result = (Driven.Runs(1300, 1301, 1299).InForce(1300) with { TapeLimit = 0.02 }).Evaluated();

        Assert.Equal(DistanceSensorCodes.RunsOutOfReach, Assert.Single(result.Reasons).Code);
        Assert.Null(result.Decision.MoreRuns);
        Assert.Null(result.RunsForWantedPrecision);
        Assert.Contains("tape", result.Headline.InMetric(), StringComparison.Ordinal);
        Assert.Contains(result.Findings, finding => finding.Code == DistanceSensorCodes.TapeDominates);
    }

    [Fact]
    public void LargeChange_OfASingleRun_HasToBeConfirmed()
    {
        var result = (Driven.Runs(1300).InForce(1500) with { WantedPrecision = 0.02, Tolerance = 0.03 }).Evaluated();

        Assert.Equal(Verdict.Repeat, result.Decision.Verdict);
        Assert.Equal(DistanceSensorCodes.LargeChange, Assert.Single(result.Reasons).Code);
    }

    [Fact]
    public void Keep_OnAHugeUncertainty_NeverHappens()
    {
        var result = (Driven.Runs(1300).InForce(1300) with { Repeatability = 0.2, WantedPrecision = 0.4, Tolerance = 0.45 }).Evaluated();

        Assert.NotEqual(Verdict.Keep, result.Decision.Verdict);
    }

    [Fact]
    public void Change_NotDetectedButNotShownEither_IsAdopted()
    {
        // The wanted precision is reached, but hardly; the number in force lies near the edge of the tolerance.
        var result = (Driven.Runs(1300, 1300).InForce(1310) with { WantedPrecision = 0.011, Tolerance = 0.011 }).Evaluated();

        Assert.Equal(SharedCodes.WithinToleranceNotShown, Assert.Single(result.Reasons).Code);
        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
    }

    [Fact]
    public void PrecisionBeyondTheTolerance_IsRefused()
    {
        var outcome = DistanceSensorEvaluation.Evaluate(Driven.Runs(1300).InForce(1300) with { WantedPrecision = 0.03, Tolerance = 0.02 });

        Assert.False(outcome.IsAnswered);
        Assert.Equal((SharedCodes.SettingsAtOdds, "wantedPrecision"), (outcome.Refusals[0].Code, outcome.Refusals[0].Member));
    }

    [Fact]
    public void PrecisionBeyondTheTolerance_WithoutAValueInForce_IsNoQuarrel() =>
        Assert.True(DistanceSensorEvaluation.Evaluate(Driven.Runs(1300) with { WantedPrecision = 0.03, Tolerance = 0.02 }).IsAnswered);

    // The true value is normal about the estimate for many degrees of freedom: P(|x| <= 2 %) with x ~ N(1 %, 0.5 %).
    [Fact]
    public void Probability_OfBeingWithinTolerance_IsThatOfTheDistribution()
    {
        var question = Driven.Pure(1313).InForce(1300e6) with { RepeatabilityDegreesOfFreedom = 1000 };
        var probability = question.Evaluated().Change!.ProbabilityWithinTolerance;

        // u = 0.5 % of 1.01 = 0.505 %: upper tail z = 1.98, table value 0.0239 (normal distribution).
        Assert.Equal(1 - 0.0239, probability, 1e-3);
    }
}
