using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Tests.LikelyMistakes;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Likelihoods and Bayes' rule against a general-purpose library (MathNet.Numerics): its densities, and brute-force
/// integration where the engine has a closed form.
/// </summary>
[Trait("Category", "Reference")]
public sealed class TestLikelihoodReferenceTests
{
    private const double Change = 0.04;
    private static readonly RepeatabilityPrior Prior = new(0.01, 4, "");

    // One catch: the ordinary change is a t density, blurred by 1 % of repeatability and 2 % in common.
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    [InlineData(2.2)]
    public void Ordinary_OneCatch_IsTheBlurredTDensity(double ratio)
    {
        var likelihood = Of(true, ratio);
        var deviation = Math.Sqrt(1e-4 + 4e-4);
        var expected = Pieces(-0.2, 0.2, t => Normal.PDF(0, deviation, t) * StudentT.PDF(0, Change, 3, Math.Log(ratio) - t));

        Assert.Equal(Math.Log(expected), likelihood.Ordinary, 0.002);
    }

    // Two catches without a value to compare with: only their difference is left, a t variable with four degrees of freedom.
    [Fact]
    public void Ordinary_TwoCatchesAlone_IsTheTDensityOfTheirDifference()
    {
        var likelihood = Of(false, 1, 1.03);

        Assert.Equal(StudentT.PDFLn(0, 0.01 * Math.Sqrt(2), 4, Math.Log(1.03)), likelihood.Ordinary, 1e-9);
    }

    // The scatter of three catches by integrating over the unknown common factor of their variances and over the level.
    [Fact]
    public void Ordinary_ThreeCatchesAlone_IsTheIntegralOverLevelAndScale()
    {
        double[] values = [0, 0.012, -0.02];
        var likelihood = Of(false, [.. values.Select(Math.Exp)]);

        // nu0 s0^2 / tau^2 is chi-squared with nu0 degrees of freedom; the level is flat.
        double Given(double precision)
        {
            var tau = 0.01 / Math.Sqrt(precision / 4);
            return ChiSquared.PDF(4, precision)
                * Pieces(-0.2, 0.2, level => values.Aggregate(1.0, (product, value) => product * Normal.PDF(level, tau, value)));
        }

        Assert.Equal(Math.Log(Pieces(1e-9, 60, Given)), likelihood.Ordinary, 1e-4);
    }

    [Theory]
    [InlineData(0.7)]
    [InlineData(0.99)]
    [InlineData(0.2)]
    public void WithRange_WholeTest_IsTheMeanOverItsRatios(double ratio)
    {
        var likelihood = Of(true, ratio, 1.004 * ratio);
        var (low, high) = (Math.Log(0.4), Math.Log(0.98));

        var expected = Pieces(low, high, shift => Math.Exp(likelihood.WithRatio(null, shift, false))) / (high - low);

        Assert.Equal(Math.Log(expected), likelihood.WithRange(null, low, high), 0.001);
    }

    // The other catches leave the level of one catch; the value in force adds next to nothing to that.
    [Theory]
    [InlineData(0.7)]
    [InlineData(0.9)]
    [InlineData(0.2)]
    public void WithRange_OneCatch_IsTheMeanOverItsRatios(double ratio)
    {
        var likelihood = Of(false, 1, ratio, 1.004);
        var (low, high) = (Math.Log(0.4), Math.Log(0.98));

        var expected = Pieces(low, high, shift => Math.Exp(likelihood.WithRatio(1, shift, false))) / (high - low);

        Assert.Equal(Math.Log(expected), likelihood.WithRange(1, low, high), 0.001);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(1)]
    public void WithAnyRatio_OfACauchyDistribution_IsTheMeanOverItsRatios(int? at)
    {
        var likelihood = Of(at is null, 1.7, at is null ? 1.7 : 2.6, 1.71);

        var expected = Pieces(-3, 3, shift => Cauchy.PDF(0, 0.7, shift) * Math.Exp(likelihood.WithRatio(at, shift, false)));

        // The ordinary change is taken as narrow beside it, which costs a little.
        Assert.Equal(Math.Log(expected), likelihood.WithAnyRatio(at, 0.7), 0.02);
    }

    // Change of variables: integrated over the masses that could have been entered, any density stays a density.
    [Fact]
    public void WithCorrectedMasses_OverAllMasses_IntegratesToOne()
    {
        const double Tare = 1.6,
            Revolutions = 50,
            Expected = 0.36;
        double Density(double log)
        {
            var mass = Math.Exp(log) * Expected * Revolutions;
            return Math.Exp(Of(Expected, mass / Revolutions).WithCorrectedMasses(null, _ => mass - Tare, 1));
        }

        Assert.Equal(1, Pieces(Math.Log(Tare / (Expected * Revolutions)) + 1e-9, 4, Density), 0.001);
    }

    [Fact]
    public void Posteriors_OfATest_AreBayesRule()
    {
        var posteriors = Suspected.Net(2.1, 2.11).Posteriors();

        var evidence = posteriors.Sum(each => Math.Exp(each.LogPrior + each.LogLikelihood));
        Assert.True(posteriors.Count > 20);
        Assert.All(posteriors, each => Assert.Equal(Math.Exp(each.LogPrior + each.LogLikelihood) / evidence, each.Probability, 1e-12));
        Assert.Equal(1, posteriors.Sum(each => each.Probability), 1e-12);
    }

    private static TestLikelihood Of(bool compared, params double[] ratios) =>
        Of(compared ? Suspected.InForce : null, [.. ratios.Select(ratio => ratio * Suspected.InForce)]);

    private static TestLikelihood Of(double? reference, params double[] values) =>
        new(CatchReadings.From(Given.PureTest(values)), reference, Change, 4e-4);

    private static double Pieces(double lower, double upper, Func<double, double> density)
    {
        const int Count = 400;
        var sum = 0.0;
        for (var i = 0; i < Count; i++)
            sum += GaussLegendreRule.Integrate(density, lower + (upper - lower) * i / Count, lower + (upper - lower) * (i + 1) / Count, 10);
        return sum;
    }
}
