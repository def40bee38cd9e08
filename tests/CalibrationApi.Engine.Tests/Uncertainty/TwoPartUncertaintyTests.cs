using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Uncertainty;

public sealed class TwoPartUncertaintyTests
{
    private const double Infinite = double.PositiveInfinity;

    // t_0.975(4) = 2.776445, printed in every t table.
    [Fact]
    public void CoverageFactor_NothingKnown_IsTheTQuantile() =>
        Assert.Equal(2.776445, new TwoPartUncertainty(0.0004, 4, 0).CoverageFactor(0.95), 5e-7);

    [Fact]
    public void CoverageFactor_NothingEstimated_IsTheNormalQuantile() =>
        Assert.Equal(1.959964, new TwoPartUncertainty(0, 4, 0.0004).CoverageFactor(0.95), 5e-7);

    [Fact]
    public void CoverageFactor_InfiniteDegreesOfFreedom_IsTheNormalQuantile() =>
        Assert.Equal(1.959964, new TwoPartUncertainty(0.0003, Infinite, 0.0001).CoverageFactor(0.95), 5e-7);

    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(3)]
    public void Expanded_TwoParts_AddInQuadratureEachWithItsOwnFactor(double ratio)
    {
        var uncertainty = new TwoPartUncertainty(1, 4, ratio * ratio);

        NearlyEqual.Assert(
            Math.Sqrt(2.776445105197793 * 2.776445105197793 + Math.Pow(1.959963984540054 * ratio, 2)),
            uncertainty.Expanded(0.95),
            1e-11
        );
    }

    // A worse scale never gives a surer result. The formula of Welch and Satterthwaite fails here.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(15)]
    public void Expanded_GrowingKnownPart_Grows(double degreesOfFreedom)
    {
        var widths = Enumerable
            .Range(0, 60)
            .Select(step => new TwoPartUncertainty(1, degreesOfFreedom, step * step / 400.0).Expanded(0.95))
            .ToArray();

        Assert.All(widths.Zip(widths.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    // The sum of a t variable and a normal one is normal with variance s^2 / W + r^2, where nu W is chi-squared: integrated
    // over ln W by the trapezoidal rule. At 95 % the interval is never short and never long by more than 0.5 %.
    [Theory]
    [InlineData(4, 0.1)]
    [InlineData(4, 0.4)]
    [InlineData(4, 1)]
    [InlineData(4, 3)]
    [InlineData(5, 0.25)]
    [InlineData(9, 0.6)]
    [InlineData(15, 1)]
    public void Expanded_AgainstTheConvolution_CoversWhatItPromises(double degreesOfFreedom, double ratio)
    {
        var expanded = new TwoPartUncertainty(1, degreesOfFreedom, ratio * ratio).Expanded(0.95);

        Assert.InRange(CoverageByIntegration(degreesOfFreedom, ratio, expanded), 0.95, 0.955);
    }

    [Theory]
    [InlineData(4, 0.4)]
    [InlineData(9, 1)]
    public void Cdf_AgainstTheConvolution_IsCloseInTheTails(double degreesOfFreedom, double ratio)
    {
        var uncertainty = new TwoPartUncertainty(1, degreesOfFreedom, ratio * ratio);
        foreach (var error in (double[])[2.5, 3.5, 5])
        {
            var exact = (1 - CoverageByIntegration(degreesOfFreedom, ratio, error)) / 2;

            Assert.InRange(uncertainty.Cdf(-error), exact - 0.001, exact + 0.003);
        }
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.95)]
    [InlineData(0.9999)]
    public void Cdf_AtTheExpandedUncertainty_IsItsCoverage(double coverage)
    {
        var uncertainty = new TwoPartUncertainty(0.0002, 5, 0.0003);

        Assert.Equal((1 + coverage) / 2, uncertainty.Cdf(uncertainty.Expanded(coverage)), 1e-12);
        Assert.Equal((1 - coverage) / 2, uncertainty.Cdf(-uncertainty.Expanded(coverage)), 1e-12);
    }

    [Fact]
    public void Cdf_OnePartOnly_IsThatOfItsDistribution()
    {
        Assert.Equal(StudentT.Cdf(-1.7, 6), new TwoPartUncertainty(1, 6, 0).Cdf(-1.7), 1e-15);
        Assert.Equal(StudentT.Cdf(-1.7, Infinite), new TwoPartUncertainty(0, 6, 1).Cdf(-1.7), 1e-15);
    }

    [Fact]
    public void Cdf_FarOut_GoesToZeroAndOne()
    {
        var uncertainty = new TwoPartUncertainty(1, 4, 1);

        Assert.Equal(0.5, uncertainty.Cdf(0));
        Assert.Equal(0, uncertainty.Cdf(double.NegativeInfinity));
        Assert.Equal(1, uncertainty.Cdf(double.PositiveInfinity));
        Assert.InRange(uncertainty.Cdf(-1e6), 0, 1e-20);
        Assert.Equal(0, new TwoPartUncertainty(1, 1e6, 1).Cdf(-1000));
    }

    [Fact]
    public void Times_Factor_ScalesTheErrors()
    {
        var uncertainty = new TwoPartUncertainty(0.0002, 5, 0.0003);

        NearlyEqual.Assert(3 * uncertainty.Expanded(0.95), uncertainty.Times(3).Expanded(0.95));
        NearlyEqual.Assert(uncertainty.EffectiveDegreesOfFreedom, uncertainty.Times(3).EffectiveDegreesOfFreedom);
    }

    private static double CoverageByIntegration(double degreesOfFreedom, double ratio, double limit)
    {
        double sum = 0,
            weights = 0;
        for (var x = -40.0; x < 5; x += 0.005)
        {
            var weight = Math.Exp(degreesOfFreedom / 2 * (x - Math.Exp(x)));
            weights += weight;
            sum += weight * (1 - 2 * StudentT.Cdf(-limit / Math.Sqrt(Math.Exp(-x) + ratio * ratio), Infinite));
        }

        return sum / weights;
    }
}
