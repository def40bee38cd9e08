using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Statistics;

public sealed class ChiSquaredTests
{
    // Closed form for two degrees of freedom: exp(-x/2).
    [Theory]
    [InlineData(0.1)]
    [InlineData(3)]
    [InlineData(60)]
    [InlineData(600)]
    public void UpperTail_TwoDegreesOfFreedom_IsExponential(double x) =>
        NearlyEqual.Assert(Math.Exp(-x / 2), ChiSquared.UpperTail(x, 2), 1e-11);

    // Closed form for four degrees of freedom: (1 + x/2) exp(-x/2).
    [Theory]
    [InlineData(0.1)]
    [InlineData(9.48772903678116)]
    [InlineData(40)]
    public void UpperTail_FourDegreesOfFreedom_IsAlgebraic(double x) =>
        NearlyEqual.Assert((1 + x / 2) * Math.Exp(-x / 2), ChiSquared.UpperTail(x, 4), 1e-12);

    // The square of a standard normal deviate.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1.959963984540054)]
    [InlineData(5)]
    public void UpperTail_OneDegreeOfFreedom_IsTheTwoSidedNormal(double z) =>
        NearlyEqual.Assert(StudentT.TwoSided(z, double.PositiveInfinity), ChiSquared.UpperTail(z * z, 1), 1e-11);

    [Fact]
    public void UpperTail_Zero_IsOne() => Assert.Equal(1, ChiSquared.UpperTail(0, 3));

    [Fact]
    public void UpperTail_Infinity_IsZero() => Assert.Equal(0, ChiSquared.UpperTail(double.PositiveInfinity, 3));

    [Fact]
    public void UpperTail_LargerX_IsSmaller()
    {
        var tails = Enumerable.Range(0, 100).Select(i => ChiSquared.UpperTail(i * 0.5, 5)).ToArray();

        Assert.All(tails.Zip(tails.Skip(1)), pair => Assert.True(pair.First > pair.Second));
    }

    [Theory]
    [InlineData(-1, 3)]
    [InlineData(double.NaN, 3)]
    [InlineData(1, 0)]
    [InlineData(1, -2)]
    [InlineData(1, double.NaN)]
    public void UpperTail_ArgumentOutsideItsRange_IsRefused(double x, double nu) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChiSquared.UpperTail(x, nu));
}
