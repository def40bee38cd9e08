using System.Globalization;
using System.Numerics;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Quantities;

public sealed class ExactRatioTests
{
    [Fact]
    public void Constructor_CommonDivisor_IsReduced()
    {
        var ratio = new ExactRatio(1000, 3600);

        Assert.Equal(5, ratio.Numerator);
        Assert.Equal(18, ratio.Denominator);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 2)]
    [InlineData(1, 0)]
    [InlineData(1, -2)]
    public void Constructor_PartThatIsNotPositive_IsRefused(int numerator, int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ExactRatio(numerator, denominator));

    [Fact]
    public void Constructor_PartsBeyondSixtyFourBits_ReduceBeforeTheyAreStored()
    {
        var huge = BigInteger.Pow(10, 40);

        Assert.Equal(new ExactRatio(3, 7), new ExactRatio(3 * huge, 7 * huge));
    }

    [Fact]
    public void Multiply_TwoRatios_IsExactAndReduced() => Assert.Equal(new ExactRatio(1, 6), new ExactRatio(2, 9) * new ExactRatio(3, 4));

    [Fact]
    public void Divide_ByItself_IsOne()
    {
        var pound = new ExactRatio(45_359_237, 100_000_000);

        Assert.Equal(new ExactRatio(1, 1), pound / pound);
    }

    [Fact]
    public void Divide_ThenMultiply_GivesTheSameRatioBack()
    {
        var pound = new ExactRatio(45_359_237, 100_000_000);
        var acre = new ExactRatio(316_160_658, 78_125);

        Assert.Equal(pound, pound / acre * acre);
    }

    [Fact]
    public void Conversion_WholeNumber_HasDenominatorOne()
    {
        ExactRatio sixty = 60;

        Assert.Equal(new ExactRatio(60, 1), sixty);
    }

    [Fact]
    public void Value_OfAThird_IsTheNearestDouble() => Assert.Equal(1.0 / 3, new ExactRatio(2, 6).Value);

    [Fact]
    public void ToString_AnyRatio_ShowsBothParts() =>
        Assert.Equal("5/18", string.Create(CultureInfo.InvariantCulture, $"{new ExactRatio(1000, 3600)}"));
}
