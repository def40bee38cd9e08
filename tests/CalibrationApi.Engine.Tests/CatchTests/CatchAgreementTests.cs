using CalibrationApi.Engine.Statistics;

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

        // Under 5 kg and 20 revolutions the prior is 2 %; the rounding of the tare is common to both and no scatter.
        double[] k = [0.36, 0.35];
        double[] v = [4e-4 + 0.0004 / 12 / (18 * 18) + 0.01 / 6 / 2500, 4e-4 + 0.0004 / 12 / (3.5 * 3.5) + 0.01 / 6 / 100];
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
