using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>An earlier test beside the one at hand, by the formulas of the doc comment.</summary>
public sealed class SecondTestTests
{
    private const double S0 = 0.01;
    private const double Day = 0.01;

    // Pure catches: their only variance is their scatter, so that every figure can be written down by hand.
    private static readonly CatchTestQuestion Pure = Given.PureTest(0.36, 0.363, 0.366).InForce(0.32) with
    {
        Limits = new() { Repeatability = S0, RepeatabilityDegreesOfFreedom = 4 },
    };

    [Fact]
    public void LargestHonestDifference_PureCatches_IsThatOfThePooledScatterAndTwoDays()
    {
        var second = Of(Pure with { Earlier = Earlier(0.36, 0.008) });

        // Test at hand: three catches 1/121 apart about their mean; the earlier one: two catches, 0.008 sqrt(2) each.
        var ofThis = (4 * S0 * S0 + 2 * Math.Pow(0.003 / 0.363, 2)) / 6;
        var ofEarlier = 2 * 0.008 * 0.008;
        var pooled = (6 * ofThis + 5 * ofEarlier - 4 * S0 * S0) / 7;
        var expected = new TwoPartUncertainty(pooled / 3 + pooled / 2, 7, 2 * Day * Day).Expanded(0.95);
        NearlyEqual.Assert(expected, second.LargestHonestDifference, 1e-6);
        NearlyEqual.Assert(0.363 / 0.36 - 1, second.Difference, 1e-9);
    }

    [Fact]
    public void Combined_PureCatches_WeighsByScatterAndDay()
    {
        var second = Of(Pure with { Earlier = Earlier(0.36, 0.008) });

        var ofThis = (4 * S0 * S0 + 2 * Math.Pow(0.003 / 0.363, 2)) / 6;
        var pooled = (6 * ofThis + 5 * 2 * 0.008 * 0.008 - 4 * S0 * S0) / 7;
        var (a, b) = (1 / (pooled / 2 + Day * Day), 1 / (pooled / 3 + Day * Day));
        NearlyEqual.Assert(Math.Exp((a * Math.Log(0.36) + b * Math.Log(0.363)) / (a + b)), second.Combined.Value, 1e-9);
        NearlyEqual.Assert(second.Combined.Value / Math.Sqrt(a + b), second.Combined.StandardUncertainty, 1e-6);
    }

    [Fact]
    public void Enter_ChangeConfirmed_IsTheValueOfBoth()
    {
        var result = (
            Pure with
            {
                Earlier = Earlier(0.36, 0.008),
                ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 6),
            }
        ).Evaluated();

        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
        Assert.Equal(Math.Round(result.SecondTest!.Combined.Value, 6), result.Enter!.Typed);
        Assert.NotEqual(Math.Round(result.Estimate.Value.Value, 6), result.Enter.Typed);
    }

    // Under the limit of a second test too: whoever reads 0.363 and is told to type something else has to be told why.
    [Fact]
    public void Findings_SmallChangeWithAnEarlierTest_SayThatTheNumberIsThatOfBoth()
    {
        var result = (Pure with { Earlier = Earlier(0.36, 0.004) }).InForce(0.341).Evaluated();

        Assert.Equal((Verdict.Adopt, CatchTestVerdict.Rule.Changed), (result.Decision.Verdict, result.Decision.Rule));
        Assert.True(result.SecondTest!.Confirms);
        var confirmed = Assert.Single(result.Findings, finding => finding.Code == CatchTestCodes.ChangeConfirmed);
        Assert.EndsWith("only when it is later than the last adoption.", confirmed.Detail.InMetric(), StringComparison.Ordinal);
    }

    // The span error of one scale with one check is in both values, and cancels.
    [Fact]
    public void LargestHonestDifference_AnotherScale_IsWider()
    {
        var test = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.32);

        Assert.True(Of(test.After(0.36, fromAnotherScale: true)).LargestHonestDifference > Of(test.After(0.36)).LargestHonestDifference);
    }

    // A span that both share is no more certain for having been used twice.
    [Fact]
    public void Combined_OneScale_KeepsItsWholeSpan()
    {
        var test = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.32) with
        {
            Scale = Given.Platform with { StatedAccuracy = new Mass(0.2) },
        };

        var result = test.After(0.36).Evaluated();

        Assert.True(result.SecondTest!.Combined.StandardUncertainty / result.SecondTest.Combined.Value > result.Estimate.Span);
        Assert.True(
            Of(test.After(0.36, fromAnotherScale: true)).Combined.StandardUncertainty < result.SecondTest.Combined.StandardUncertainty
        );
    }

    [Theory]
    [InlineData(0.366, true)]
    [InlineData(0.3405, false)]
    public void Confirms_Earlier_NeedsAgreement(double earlier, bool confirms)
    {
        var second = Of(Pure with { Earlier = Earlier(earlier, 0.006) });

        Assert.True(second.BothShowAChange);
        Assert.Equal(confirms, second.Agrees);
        Assert.Equal(confirms, second.Confirms);
    }

    [Fact]
    public void Confirms_EarlierTestThatShowsNoChange_IsFalseHoweverWideItsInterval()
    {
        var second = Of(Pure with { Earlier = Earlier(0.34, 0.03) });

        Assert.True(second.Agrees);
        Assert.False(second.BothShowAChange);
        Assert.False(second.Confirms);
    }

    [Fact]
    public void Of_NothingToCompareWith_IsAbsent() =>
        Assert.Null((Pure with { Reference = null, Earlier = Earlier(0.36, 0.008) }).Evaluated().SecondTest);

    // What a stored test hands on is what the evaluation knew.
    [Fact]
    public void EarlierTestOf_AnEvaluation_GivesTheSameAsItsParts()
    {
        var first = Pure.Evaluated();

        var earlier = first.AsEarlierTest();

        Assert.Equal(3, earlier.Catches);
        Assert.Equal(6, earlier.DegreesOfFreedom);
        NearlyEqual.Assert(first.Estimate.Catches, earlier.Scatter!.Value, 1e-9);
        Assert.True(Of(Pure with { Earlier = earlier }).Confirms);
    }

    private static EarlierTest Earlier(double value, double scatter) =>
        new()
        {
            Value = new MassPerRevolution(value),
            Catches = 2,
            Scatter = scatter,
            DegreesOfFreedom = 5,
            FromAnotherScale = false,
        };

    private static SecondTest Of(CatchTestQuestion test)
    {
        var second = test.Evaluated().SecondTest;
        Assert.NotNull(second);
        return second;
    }
}
