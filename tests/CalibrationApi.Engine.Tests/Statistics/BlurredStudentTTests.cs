using CalibrationApi.Engine.Statistics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using StudentT = MathNet.Numerics.Distributions.StudentT;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>
/// The fixed mixture against the general-purpose library's densities, by brute-force convolution (library: MathNet.Numerics).
/// </summary>
[Trait("Category", "Reference")]
public sealed class BlurredStudentTTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(3)]
    [InlineData(30)]
    [InlineData(1000)]
    public void LogDensity_WithoutNormalPart_IsThatOfTheLibrary(double scales)
    {
        var x = 0.04 * scales;

        Assert.Equal(StudentT.PDFLn(0, 0.04, 3, x), new BlurredStudentT(0.04, 0).LogDensity(x), 0.001);
    }

    [Theory]
    [InlineData(0.02, 0)]
    [InlineData(0.02, 0.1)]
    [InlineData(0.02, 0.8)]
    [InlineData(0.15, 0.2)]
    [InlineData(0.15, 0.8)]
    [InlineData(0.15, 2.3)]
    public void LogDensity_WithNormalPart_IsTheirConvolution(double deviation, double x)
    {
        var convolved = Convolved(deviation, t => StudentT.PDF(0, 0.04, 3, x - t));

        Assert.Equal(Math.Log(convolved), new BlurredStudentT(0.04, deviation).LogDensity(x), 0.001);
    }

    [Theory]
    [InlineData(0.02, -0.1, 0.05)]
    [InlineData(0.02, 0.3, 0.9)]
    [InlineData(0.02, -4, -2)]
    [InlineData(0.15, -0.7, -0.1)]
    [InlineData(0.15, 1, 3)]
    public void LogProbabilityBetween_TwoPoints_IsTheIntegralOfTheConvolution(double deviation, double lower, double upper)
    {
        var expected = Convolved(deviation, t => StudentT.CDF(0, 0.04, 3, upper - t) - StudentT.CDF(0, 0.04, 3, lower - t));

        Assert.Equal(Math.Log(expected), new BlurredStudentT(0.04, deviation).LogProbabilityBetween(lower, upper), 0.001);
    }

    [Fact]
    public void LogDensity_AnyFiniteArgument_IsFiniteAndFalls()
    {
        var law = new BlurredStudentT(0.04, 0.01);
        var last = double.PositiveInfinity;
        for (var x = 1e-3; x < 1e6; x *= 1.5)
        {
            var density = law.LogDensity(x);
            Assert.True(double.IsFinite(density) && density < last, $"{density} at {x}");
            Assert.Equal(density, law.LogDensity(-x));
            Assert.True(double.IsFinite(law.LogProbabilityBetween(x, 2 * x)));
            last = density;
        }
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 1)]
    [InlineData(1, -1)]
    [InlineData(double.NaN, 1)]
    [InlineData(1, double.PositiveInfinity)]
    public void New_ArgumentOutsideItsRange_Throws(double scale, double deviation) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BlurredStudentT(scale, deviation));

    private static double Convolved(double deviation, Func<double, double> density)
    {
        // Ten standard deviations in short pieces: the density of the t part is narrower than the normal one.
        var sum = 0.0;
        for (var i = -100; i < 100; i++)
            sum += GaussLegendreRule.Integrate(
                t => Normal.PDF(0, deviation, t) * density(t),
                i * deviation / 10,
                (i + 1) * deviation / 10,
                20
            );
        return sum;
    }
}
