using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Repeatability;
using MathNet.Numerics.Distributions;

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
    // The scatter is only known with nu0 degrees of freedom, so that Q over its own is F, not chi-squared.
    [Fact]
    public void Q_TwoCatchesThatDifferByTwoPercent_IsTwiceTheHalfDifferenceSquaredOverThePrior()
    {
        var agreement = (Given.PureTest(0.99, 1.01) with { Limits = new() { Repeatability = 0.01 } }).Evaluated().Agreement;

        Assert.Equal(2, agreement.Q, 1e-6);
        NearlyEqual.Assert(1 - FisherSnedecor.CDF(1, 4, agreement.Q), agreement.QProbability, 1e-5);
        Assert.Equal(0.01 * Math.Sqrt(2), agreement.Spread, 1e-9);
    }

    [Fact]
    public void Q_KnownVariances_WeighTheCatches()
    {
        var test = Given.Test(Given.Net(18, 50), Given.Net(3.5, 10));
        var agreement = test.Evaluated().Agreement;

        // Each catch has the scatter of its own size; the rounding of the tare is common to both and no scatter.
        double[] k = [0.36, 0.35];
        double[] v = [S0(18, 50) + 0.0004 / 12 / (18 * 18) + 0.01 / 6 / 2500, S0(3.5, 10) + 0.0004 / 12 / (3.5 * 3.5) + 0.01 / 6 / 100];
        static double S0(double kilograms, double turns) => Math.Pow(RepeatabilityPrior.Default(null, kilograms, turns).Relative, 2);
        var mean = (k[0] / v[0] + k[1] / v[1]) / (1 / v[0] + 1 / v[1]);
        NearlyEqual.Assert(Math.Pow(k[0] / mean - 1, 2) / v[0] + Math.Pow(k[1] / mean - 1, 2) / v[1], agreement.Q, 1e-10);
    }

    // The more catches, the surer an honest test once was to be stopped: Q took the repeatability as known without doubt.
    [Theory]
    [InlineData(2)]
    [InlineData(20)]
    [InlineData(50)]
    public void QProbability_ScatterOfAnyNumberOfCatchesThatThePriorAllows_StaysOrdinary(int catches)
    {
        // Catches with exactly 1.6 times the repeatability believed: 1 in 7 of the priors with 4 degrees of freedom allows more.
        var spread = 0.016 * Math.Sqrt((catches - 1.0) / catches);
        var values = Enumerable.Range(0, catches).Select(i => 0.36 * (1 + (i % 2 == 0 ? spread : -spread))).ToArray();

        Assert.InRange(
            (Given.PureTest(values) with { Limits = new() { Repeatability = 0.01 } }).Evaluated().Agreement.QProbability,
            0.05,
            0.3
        );
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
    public void Spread_TwoCatches_IsTheirRelativeStandardDeviation() =>
        NearlyEqual.Assert(Math.Sqrt(2) * 0.01, Given.PureTest(0.99, 1.01).Evaluated().Agreement.Spread, 1e-9);

    [Theory]
    [InlineData(0.049, 0.051, true)]
    [InlineData(0.051, 0.051, false)]
    [InlineData(0.049, -0.051, true)]
    [InlineData(0.049, 0.049, false)]
    public void HasCatchApart_FarthestCatch_IsRareAndBeyondTheTolerance(double probability, double deviation, bool apart) =>
        Assert.Equal(apart, Agreement(1, 0, farthest: (2, deviation, probability)).HasCatchApart(0.05));

    // Two catches: half their difference is spread / sqrt(2), and nobody can say which of them is off.
    [Theory]
    [InlineData(0.049, 0.036, true)]
    [InlineData(0.051, 0.036, false)]
    [InlineData(0.049, 0.035, false)]
    public void HasCatchApart_TwoCatches_GoesByTheirDifference(double probability, double spread, bool apart) =>
        Assert.Equal(apart, Agreement(probability, spread, farthest: null).HasCatchApart(0.05));

    private static CatchAgreement Agreement(
        double probability,
        double spread,
        (int Catch, double Deviation, double Probability)? farthest
    ) =>
        new()
        {
            Spread = spread,
            Q = 0,
            QProbability = probability,
            ErrorEach = 0.05,
            FarthestCatch = farthest?.Catch,
            FarthestDeviation = farthest?.Deviation ?? 0,
            FarthestProbability = farthest?.Probability ?? 1,
        };
}
