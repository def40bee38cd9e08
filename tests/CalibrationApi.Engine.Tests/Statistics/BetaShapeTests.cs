using CalibrationApi.Engine.Statistics;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>Shapes from mean and spread, against the library's beta distribution.</summary>
public sealed class BetaShapeTests
{
    public static TheoryData<double, double> Moments =>
        new()
        {
            { 0.5, 0.2 },
            { 0.8, 0.08 },
            { 0.03, 0.02 },
            { 0.99, 0.0994 },
            { 0.5, 0.4999 },
            { 0.7, 1e-4 },
        };

    [Theory]
    [MemberData(nameof(Moments))]
    public void Of_MeanAndSpread_IsTheLibrarysDistributionWithBoth(double mean, double spread)
    {
        var shape = BetaShape.Of(mean, spread);
        var library = new Beta(shape.Alpha, shape.Beta);

        NearlyEqual.Assert(mean, library.Mean);
        NearlyEqual.Assert(spread, library.StdDev);
        NearlyEqual.Assert(shape.Size, BetaShape.SizeOf(mean, spread));
    }

    // The density of the logit is that of the share times e (1 - e); the constant drops out of a difference.
    [Theory]
    [InlineData(2.5, 1.3)]
    [InlineData(0.4, 7)]
    [InlineData(60, 25)]
    public void LogDensityOfLogit_OfTwoLogits_DiffersAsTheLibrarysDoes(double alpha, double beta)
    {
        var shape = new BetaShape(alpha, beta);
        double Library(double y)
        {
            var share = 1 / (1 + Math.Exp(-y));
            return Beta.PDFLn(alpha, beta, share) + Math.Log(share * (1 - share));
        }

        foreach (var logit in (double[])[-3, -0.4, 1, 2.5])
            Assert.Equal(Library(logit) - Library(0), shape.LogDensityOfLogit(logit) - shape.LogDensityOfLogit(0), 1e-12 * shape.Size);
    }

    // Next to 1 the logarithm of e is -exp(-y), next to 0 it is y: there the plain formula has lost every digit.
    [Theory]
    [InlineData(0, -0.6931471805599453)]
    [InlineData(40, -4.248354255291589e-18)]
    [InlineData(-40, -40)]
    [InlineData(-800, -800)]
    public void LogShare_NextToNoneAndAll_KeepsItsDigits(double logit, double expected) =>
        Assert.Equal(expected, BetaShape.LogShare(logit), 1e-15 * Math.Max(1, Math.Abs(expected)));

    [Theory]
    [InlineData(0.5, 0.5, false)]
    [InlineData(0.5, 0.4999, true)]
    [InlineData(0, 0.1, false)]
    [InlineData(0.5, 0, false)]
    [InlineData(0.99, 0.11, false)]
    [InlineData(double.NaN, 0.1, false)]
    public void IsPossible_OnlyBelowTheSpreadOfAllOrNothing_IsTrue(double mean, double spread, bool possible)
    {
        Assert.Equal(possible, BetaShape.IsPossible(mean, spread));
        if (!possible)
            Assert.Throws<ArgumentOutOfRangeException>(() => BetaShape.Of(mean, spread));
    }
}
