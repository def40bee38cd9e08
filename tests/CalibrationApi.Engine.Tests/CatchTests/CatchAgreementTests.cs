using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Do the catches agree: Q against known variances, and how the family-wise error is shared out.</summary>
public sealed class CatchAgreementTests
{
    [Fact]
    public void Evaluate_OneCatch_SaysNothingAgainstItself()
    {
        var agreement = Given.Test(Given.Net(17, 47)).Evaluated().Agreement;

        Assert.Equal(0, agreement.Q);
        Assert.Equal(1, agreement.QProbability);
        Assert.Equal(0, agreement.Spread);
        Assert.True(agreement.Agree);
    }

    // By hand for two catches with v = 0: both weigh the same, so Q = (d/2)^2 * 2 / s0^2 with d the relative difference.
    [Fact]
    public void Q_TwoCatchesThatDifferByTwoPercent_IsTwiceTheHalfDifferenceSquaredOverThePrior()
    {
        var agreement = Given.PureTest(0.99, 1.01).Evaluated().Agreement;

        Assert.Equal(2, agreement.Q, 1e-6);
        Assert.Equal(ChiSquared.UpperTail(agreement.Q, 1), agreement.QProbability);
        Assert.Equal(0.01 * Math.Sqrt(2), agreement.Spread, 1e-9);
    }

    [Fact]
    public void Q_KnownVariances_WeighTheCatches()
    {
        var test = Given.Test(Given.Net(18, 50), Given.Net(3.5, 10));
        var agreement = test.Evaluated().Agreement;

        // Under 5 kg and 20 revolutions the prior is 2 %.
        double[] k = [0.36, 0.35];
        double[] v = [4e-4 + 0.0004 / 6 / (18 * 18) + 0.01 / 6 / 2500, 4e-4 + 0.0004 / 6 / (3.5 * 3.5) + 0.01 / 6 / 100];
        var mean = (k[0] / v[0] + k[1] / v[1]) / (1 / v[0] + 1 / v[1]);
        NearlyEqual.Assert(Math.Pow(k[0] / mean - 1, 2) / v[0] + Math.Pow(k[1] / mean - 1, 2) / v[1], agreement.Q, 1e-10);
    }

    [Fact]
    public void ScatterTooMuch_CatchesFarBeyondTheirRepeatability_IsSeen()
    {
        var agreement = Given.PureTest(0.97, 1.03).Evaluated().Agreement;

        Assert.True(agreement.ScatterTooMuch);
        Assert.False(agreement.Agree);
    }

    [Fact]
    public void ScatterTooMuch_OrdinaryScatter_IsNotSeen()
    {
        var agreement = Given.PureTest(0.995, 1.005, 1.0).Evaluated().Agreement;

        Assert.False(agreement.ScatterTooMuch);
        Assert.True(agreement.Agree);
    }

    // 5 % over all tests that apply; the stray-catch test takes 1 % of it, the others an equal part of the rest.
    [Theory]
    [InlineData(2, false, 0.05)]
    [InlineData(2, true, 0.025)]
    [InlineData(3, false, 0.02)]
    [InlineData(3, true, 0.04 / 3)]
    [InlineData(4, false, 0.02)]
    [InlineData(5, false, 0.04 / 3)]
    [InlineData(5, true, 0.01)]
    public void ErrorEach_TestsThatApply_ShareTheFamilyError(int catches, bool unequal, double expected)
    {
        var made = Enumerable.Range(0, catches).Select(i => Given.Delivering(0.36, unequal && i == 0 ? 90 : 45)).ToArray();

        Assert.Equal(expected, Given.Test(made).Evaluated().Agreement.ErrorEach, 1e-15);
    }

    [Fact]
    public void Grubbs_UnderSixCatches_IsNotReported() =>
        Assert.Null(Given.PureTest(0.36, 0.36, 0.36, 0.36, 0.40).Evaluated().Agreement.Grubbs);

    [Fact]
    public void Grubbs_SixCatches_IsReportedForInformationOnly()
    {
        var agreement = Given.PureTest(0.36, 0.361, 0.359, 0.36, 0.3605, 0.3595).Evaluated().Agreement;

        Assert.NotNull(agreement.Grubbs);
        Assert.True(agreement.Agree);
    }

    [Fact]
    public void Grubbs_SixEqualCatches_IsZero() =>
        Assert.Equal(0, Given.PureTest(0.36, 0.36, 0.36, 0.36, 0.36, 0.36).Evaluated().Agreement.Grubbs);

    [Fact]
    public void Spread_TwoCatches_IsTheirRelativeStandardDeviation() => NearlyEqual.Assert(
        Math.Sqrt(2) * 0.01, Given.PureTest(0.99, 1.01).Evaluated().Agreement.Spread, 1e-9);
}

/// <summary>One catch that stands apart, judged by its deleted residual.</summary>
public sealed class StrayCatchTests
{
    // The two others are equal, so tau^2 = nu0 s0^2 / (nu0 + 1) and u^2 = tau^2 / 2; nu0 + c - 2 = 5 degrees of freedom.
    [Fact]
    public void FarthestProbability_ThreeCatches_IsTheBonferroniCorrectedDeletedResidual()
    {
        var agreement = Given.PureTest(0.36, 0.36, 0.378).Evaluated().Agreement;

        var t = 0.05 / Math.Sqrt(4e-4 / 5 * 1.5);
        Assert.Equal(2, agreement.FarthestCatch);
        Assert.Equal(0.05, agreement.FarthestDeviation, 1e-12);
        NearlyEqual.Assert(3 * StudentT.TwoSided(t, 5), agreement.FarthestProbability, 1e-6);
    }

    [Fact]
    public void HasStray_OneCatchTenPercentOff_IsSeen()
    {
        var agreement = Given.PureTest(0.36, 0.361, 0.396, 0.359).Evaluated().Agreement;

        Assert.True(agreement.HasStray);
        Assert.Equal(2, agreement.FarthestCatch);
    }

    // At three catches Grubbs' statistic reaches its bound as soon as two readings are equal; the prior keeps its head.
    [Theory]
    [InlineData(0.36, 0.36, 0.3636)]
    [InlineData(0.36, 0.36, 0.3645)]
    [InlineData(0.36, 0.36, 0.3555)]
    public void HasStray_TwoEqualReadingsAndAnHonestThird_IsNotSeen(double first, double second, double third) =>
        Assert.False(Given.PureTest(first, second, third).Evaluated().Agreement.HasStray);

    [Fact]
    public void FarthestCatch_TwoCatches_CannotBeTold()
    {
        var agreement = Given.PureTest(0.36, 0.40).Evaluated().Agreement;

        Assert.Null(agreement.FarthestCatch);
        Assert.False(agreement.HasStray);
    }

    [Fact]
    public void FarthestCatch_AfterAnExcludedOne_IsCountedAmongAllCatches()
    {
        var agreement = Given.Test(
            Given.Delivering(0.36, excludedBecause: "spilled"),
            Given.Delivering(0.36), Given.Delivering(0.36), Given.Delivering(0.40)).Evaluated().Agreement;

        Assert.Equal(3, agreement.FarthestCatch);
    }

    [Fact]
    public void FarthestProbability_ManyOrdinaryCatches_NeverExceedsOne() =>
        Assert.InRange(Given.PureTest([.. Enumerable.Repeat(0.36, 20)]).Evaluated().Agreement.FarthestProbability, 0, 1);
}

/// <summary>A first catch that is low, as when the meter was not primed; one-sided.</summary>
public sealed class FirstCatchLowTests
{
    [Fact]
    public void FirstIsLow_FirstCatchFourPercentUnderTheOthers_IsSeen()
    {
        var agreement = Given.PureTest(0.3456, 0.36, 0.3605, 0.3598).Evaluated().Agreement;

        Assert.True(agreement.FirstIsLow);
        Assert.Equal(-0.04, agreement.FirstDeviation, 0.001);
    }

    [Fact]
    public void FirstIsLow_FirstCatchHigh_IsNeverSeen()
    {
        var agreement = Given.PureTest(0.40, 0.36, 0.3605, 0.3598).Evaluated().Agreement;

        Assert.Equal(1, agreement.FirstLowProbability);
        Assert.True(agreement.HasStray);
    }

    [Fact]
    public void FirstIsLow_AnotherCatchLow_IsNotSeen() =>
        Assert.False(Given.PureTest(0.36, 0.3456, 0.3605, 0.3598).Evaluated().Agreement.FirstIsLow);

    [Fact]
    public void FirstLowProbability_TwoCatches_CannotBeTold() =>
        Assert.Equal(1, Given.PureTest(0.34, 0.36).Evaluated().Agreement.FirstLowProbability);

    [Fact]
    public void FirstLowProbability_LowFirstCatch_IsHalfTheTwoSidedOne()
    {
        var agreement = Given.PureTest(0.342, 0.36, 0.36).Evaluated().Agreement;

        // The first catch is also the farthest, so the stray test holds the same t with c times two tails.
        NearlyEqual.Assert(agreement.FarthestProbability / 6, agreement.FirstLowProbability, 1e-9);
    }
}

/// <summary>Catches that rise or fall one after the other.</summary>
public sealed class CatchTrendTests
{
    [Fact]
    public void HasTrend_FiveCatchesThatRiseSteadily_IsSeenWithItsSlope()
    {
        var agreement = Given.PureTest(0.96, 0.98, 1.00, 1.02, 1.04).Evaluated().Agreement;

        Assert.True(agreement.HasTrend);
        Assert.Equal(0.02, agreement.TrendPerCatch, 1e-9);
    }

    [Fact]
    public void TrendPerCatch_FallingCatches_IsNegative() =>
        Assert.Equal(-0.02, Given.PureTest(1.04, 1.02, 1.00, 0.98, 0.96).Evaluated().Agreement.TrendPerCatch, 1e-9);

    [Fact]
    public void TrendProbability_FourCatches_IsNotAsked()
    {
        var agreement = Given.PureTest(0.96, 0.98, 1.00, 1.02).Evaluated().Agreement;

        Assert.Equal(1, agreement.TrendProbability);
        Assert.False(agreement.HasTrend);
    }

    [Fact]
    public void HasTrend_OrdinaryScatter_IsNotSeen() =>
        Assert.False(Given.PureTest(1.00, 1.004, 0.997, 1.002, 0.999).Evaluated().Agreement.HasTrend);

    // Perfectly linear values leave no residuals: tau^2 = nu0 s0^2 / (nu0 + c - 2), slope variance tau^2 / Sxx with Sxx = 10.
    [Fact]
    public void TrendProbability_PerfectLine_IsThatOfTheSlopeOverThePrior()
    {
        var agreement = Given.PureTest(0.998, 0.999, 1.000, 1.001, 1.002).Evaluated().Agreement;

        var t = 0.001 / Math.Sqrt(4e-4 / 7 / 10);
        NearlyEqual.Assert(StudentT.TwoSided(t, 7), agreement.TrendProbability, 1e-6);
    }
}

/// <summary>Catches of unequal length: m = a + k N tells an additive mistake from a multiplicative one.</summary>
public sealed class AdditiveOffsetTests
{
    [Fact]
    public void Offset_TheSameMassMissingFromEveryCatch_IsFound()
    {
        var agreement = WithOffset(-0.5, 20, 40, 60).Evaluated().Agreement;

        Assert.True(agreement.HasOffset);
        Assert.Equal(-0.5, agreement.Offset, 1e-9);
    }

    [Fact]
    public void Offset_TheSameMassTooMuchInEveryCatch_IsPositive() =>
        Assert.Equal(0.8, WithOffset(0.8, 20, 40, 60).Evaluated().Agreement.Offset, 1e-9);

    [Fact]
    public void HasOffset_NoOffset_IsNotSeen()
    {
        var agreement = WithOffset(0, 20, 40, 60).Evaluated().Agreement;

        Assert.False(agreement.HasOffset);
        Assert.Equal(0, agreement.Offset, 1e-9);
    }

    // Equal catches cannot tell an offset from a value: 1.5 between the longest and the shortest is the least.
    [Theory]
    [InlineData(29.9, false)]
    [InlineData(30, true)]
    public void OffsetProbability_RatioOfTheLengths_DecidesWhetherItIsAsked(double longest, bool asked)
    {
        var agreement = WithOffset(1, 20, longest).Evaluated().Agreement;

        Assert.Equal(asked, agreement.OffsetProbability < 1);
    }

    [Fact]
    public void OffsetProbability_SharedTare_IsLargerBecauseItsRoundingIsAnOffsetItself()
    {
        var scale = Given.Platform with { Division = new Engine.Quantities.Mass(0.5), StatedAccuracy = new Engine.Quantities.Mass(0.5) };
        var each = (WithOffset(0.4, 20, 40, 60) with { Scale = scale, TareReading = TareReading.Zeroed }).Evaluated().Agreement;
        var shared = (WithOffset(0.4, 20, 40, 60) with { Scale = scale, TareReading = TareReading.Shared }).Evaluated().Agreement;

        Assert.True(shared.OffsetProbability > each.OffsetProbability);
    }

    private static CatchTest WithOffset(double offset, params double[] revolutions) => new()
    {
        Catches = [.. revolutions.Select(n => Given.Net(offset + 0.36 * n, n, Given.NoResolution))],
        Scale = Given.Perfect,
    };
}
