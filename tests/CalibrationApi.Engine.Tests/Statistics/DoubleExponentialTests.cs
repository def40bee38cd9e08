using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Statistics;

/// <summary>Integrals with a known value, among them such as an ordinary rule gets wrong at the ends.</summary>
public sealed class DoubleExponentialTests
{
    [Fact]
    public void Integrate_NormalDensityOverSixteenDeviations_IsOne() =>
        Assert.Equal(1, DoubleExponential.Integrate(-8, 8, z => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI)), 1e-9);

    [Theory]
    [InlineData(-0.5)]
    [InlineData(-0.2)]
    [InlineData(0.1)]
    [InlineData(1.5)]
    [InlineData(7)]
    public void Integrate_PowerFromTheEnd_IsItsClosedForm(double power) =>
        Assert.Equal(
            Math.Pow(3, power + 1) / (power + 1),
            DoubleExponential.Integrate(0, 3, x => Math.Pow(x, power)),
            1e-7 * Math.Pow(3, power + 1)
        );

    [Fact]
    public void Integrate_LogarithmAtTheEnd_IsItsClosedForm() =>
        Assert.Equal(-1, DoubleExponential.Integrate(0, 1, x => Math.Log(x)), 1e-9);

    [Fact]
    public void Integrate_EmptyInterval_IsZero() => Assert.Equal(0, DoubleExponential.Integrate(2, 2, x => x));
}
