using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Two questions, kept apart: has the meter changed since, and is the number in force good enough.</summary>
public sealed class ChangeAgainstReferenceTests
{
    private const double DayToDay = 0.01;

    private static readonly CatchTestQuestion TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    [Fact]
    public void Delta_MoreThanTheValueInForce_IsPositive()
    {
        var change = Change(TwoCatches.InForce(0.342));

        NearlyEqual.Assert(TwoCatches.Evaluated().Estimate.Value.Value / 0.342 - 1, change.Delta.Value, 1e-12);
        Assert.True(change.Delta.Value > 0);
    }

    [Fact]
    public void Delta_LessThanTheValueInForce_IsNegative() => Assert.True(Change(TwoCatches.InForce(0.40)).Delta.Value < 0);

    // Same scale, same check: the span error is in both values and cancels.
    [Fact]
    public void Delta_SameScale_LeavesTheSpanOut()
    {
        var result = TwoCatches.InForce(0.342, 0).Evaluated();

        AssertDeltaVariance(result, result.Estimate.VarianceWithoutSpan + DayToDay * DayToDay);
    }

    [Fact]
    public void Delta_AnotherScale_TakesTheSpanIn()
    {
        var result = TwoCatches.InForce(0.342, 0, fromAnotherScale: true).Evaluated();

        AssertDeltaVariance(result, result.Estimate.RelativeVariance + DayToDay * DayToDay);
    }

    [Fact]
    public void Delta_UncertaintyOfTheOldValueKnown_TakesItIn()
    {
        var result = TwoCatches.InForce(0.342, 0.012).Evaluated();

        AssertDeltaVariance(result, result.Estimate.VarianceWithoutSpan + DayToDay * DayToDay + 0.012 * 0.012);
    }

    // An unstated uncertainty once was none in the change and 2 % in the search for mistakes and in the plan.
    [Fact]
    public void Delta_UncertaintyOfTheOldValueUnknown_TakesTheDefaultThatIsUsedEverywhere()
    {
        var result = TwoCatches.InForce(0.342).Evaluated();

        AssertDeltaVariance(result, result.Estimate.VarianceWithoutSpan + DayToDay * DayToDay + 0.02 * 0.02);
        Assert.Equal(0.02, Assert.Single(result.Assumptions, each => each.Name == "valueInForce/relativeUncertainty").Value!.Canonical);
    }

    [Fact]
    public void Delta_DayToDayStated_ReplacesTheDefault()
    {
        var result = (TwoCatches.InForce(0.342, 0) with { Limits = new CatchTestLimits { DayToDay = 0 } }).Evaluated();

        AssertDeltaVariance(result, result.Estimate.VarianceWithoutSpan);
    }

    // The number typed in is exact: the span enters whole, the old uncertainty not at all.
    [Theory]
    [InlineData(null, false)]
    [InlineData(0.05, false)]
    [InlineData(0.05, true)]
    public void ProbabilityWithinTolerance_WhateverIsKnownOfTheOldValue_IsTheSame(double? oldUncertainty, bool fromAnotherScale)
    {
        var result = TwoCatches.InForce(0.355, oldUncertainty, fromAnotherScale).Evaluated();

        var ratio = result.Estimate.Value.Value / 0.355;
        var variance = result.Estimate.RelativeVariance + DayToDay * DayToDay;
        var uncertainty = result.Estimate.UncertaintyOf(variance).Times(ratio);
        var expected = uncertainty.Cdf(1.05 - ratio) - uncertainty.Cdf(0.95 - ratio);
        NearlyEqual.Assert(expected, result.Change!.ProbabilityWithinTolerance, 1e-12);
    }

    [Fact]
    public void ProbabilityWithinTolerance_WiderTolerance_IsLarger()
    {
        var narrow = Change(TwoCatches.InForce(0.345) with { Limits = new CatchTestLimits { Tolerance = 0.05 } });
        var wide = Change(TwoCatches.InForce(0.345) with { Limits = new CatchTestLimits { Tolerance = 0.10 } });

        Assert.True(wide.ProbabilityWithinTolerance > narrow.ProbabilityWithinTolerance);
    }

    [Fact]
    public void IsDetected_IntervalLeavesZeroOut_IsTrue() => Assert.True(Change(TwoCatches.InForce(0.342)).IsDetected);

    [Fact]
    public void IsDetected_IntervalHoldsZero_IsFalse() => Assert.False(Change(TwoCatches.InForce(0.36)).IsDetected);

    [Fact]
    public void Change_NothingToCompareWith_IsAbsent() => Assert.Null(TwoCatches.Evaluated().Change);

    private static ChangeAgainstReference Change(CatchTestQuestion test)
    {
        var change = test.Evaluated().Change;
        Assert.NotNull(change);
        return change;
    }

    private static void AssertDeltaVariance(CatchTestResult result, double relativeVariance)
    {
        var change = result.Change!;
        NearlyEqual.Assert((1 + change.Delta.Value) * Math.Sqrt(relativeVariance), change.Delta.StandardUncertainty, 1e-12);
        NearlyEqual.Assert(result.Estimate.UncertaintyOf(relativeVariance).EffectiveDegreesOfFreedom, change.Delta.DegreesOfFreedom, 1e-12);
        NearlyEqual.Assert(result.Estimate.UncertaintyOf(relativeVariance).CoverageFactor(0.95), change.Delta.CoverageFactor, 1e-12);
    }
}
