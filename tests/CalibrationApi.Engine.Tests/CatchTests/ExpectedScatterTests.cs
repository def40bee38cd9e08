using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Statistics;
using FisherSnedecor = MathNet.Numerics.Distributions.FisherSnedecor;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>How probable it is that so many catches reach a precision.</summary>
public sealed class ExpectedScatterTests
{
    // Nothing known: U = t sqrt(x / c), x = s0^2 (nu0 + (c - 1) F) / (nu0 + c - 1), F with c - 1 and nu0 degrees of freedom.
    [Theory]
    [InlineData(2, 0.025)]
    [InlineData(3, 0.02)]
    [InlineData(5, 0.012)]
    public void ProbabilityOf_OnlyScatter_IsThatOfTheFDistribution(int catches, double wanted)
    {
        var scatter = new ExpectedScatter(1e-4, 4, 0, 0, 0);

        var t = StudentT.CoverageFactor(0.95, 4 + catches - 1);
        var largest = catches * wanted * wanted / (t * t);
        var f = ((4 + catches - 1) * largest / 1e-4 - 4) / (catches - 1);
        Assert.Equal(f <= 0 ? 0 : FisherSnedecor.CDF(catches - 1, 4, f), scatter.ProbabilityOf(wanted, catches, 0.95), 1e-5);
    }

    [Theory]
    [InlineData(0.0277, 0)]
    [InlineData(0.0278, 1)]
    public void ProbabilityOf_OneCatchBeforeAny_IsCertainEitherWay(double wanted, double expected) =>
        Assert.Equal(expected, new ExpectedScatter(1e-4, 4, 0, 0, 0).ProbabilityOf(wanted, 1, 0.95));

    [Fact]
    public void ProbabilityOf_CommonPartTooWide_IsNone() =>
        Assert.Equal(0, new ExpectedScatter(1e-4, 4, 0, 1e-5, 0.02).ProbabilityOf(0.03, 20, 0.95));

    [Theory]
    [InlineData(0.8)]
    [InlineData(0.95)]
    public void Promised_Probability_IsJustReached(double probability)
    {
        var scatter = new ExpectedScatter(4e-4, 4, 0, 2e-5, 0.001);

        var catches = CatchCount.Promised(0.03, 1, scatter, 0.95, probability)!.Value;

        Assert.True(scatter.ProbabilityOf(0.03, catches, 0.95) >= probability);
        Assert.True(scatter.ProbabilityOf(0.03, catches - 1, 0.95) < probability);
    }

    [Fact]
    public void Promised_HigherProbability_TakesMoreCatches()
    {
        var scatter = new ExpectedScatter(4e-4, 4, 0, 0, 0);

        Assert.True(CatchCount.Promised(0.03, 1, scatter, 0.95, 0.95) > CatchCount.Promised(0.03, 1, scatter, 0.95, 0.5));
    }

    [Fact]
    public void Promised_OutOfReach_IsNone()
    {
        Assert.Null(CatchCount.Promised(0.03, 1, new ExpectedScatter(1e-4, 4, 0, 0, 0.016), 0.95, 0.8));
        Assert.Null(CatchCount.Promised(0.001, 1, new ExpectedScatter(1e-4, 4, 0, 0, 0), 0.95, 0.8));
    }
}
