using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.Wheels;

public sealed class WorkingWidthTests
{
    [Fact]
    public void OfOpeners_TimesSpacing_IsTheNominalWidth() => NearlyEqual.Assert(9, WorkingWidth.OfOpeners(60, new Length(0.15)).Metres);

    [Theory]
    [InlineData(9, false)]
    [InlineData(18, false)]
    [InlineData(18.1, true)]
    [InlineData(4.5, false)]
    [InlineData(4.4, true)]
    public void IsAtOdds_WidthBesideSixtyOpeners_BeginsBeyondTwiceAndHalf(double metres, bool isAtOdds) =>
        Assert.Equal(isAtOdds, WorkingWidth.IsAtOdds(metres, 60, 0.15));

    [Fact]
    public void Width_WithoutMeasurement_IsCoveredAndUsedAsBuilt()
    {
        var width = new WorkingWidth(new Length(9));

        Assert.Equal(
            (9, 9, 0, 0, 1),
            (width.Effective.Metres, width.Used.Metres, width.Overlap.Metres, width.OverlapShare, width.RateFactor)
        );
    }

    [Fact]
    public void Overlap_OfPassesThatMeet_IsPositiveAndGivesTooMuch()
    {
        var width = new WorkingWidth(new Length(9), new Length(8.7));

        NearlyEqual.Assert(0.3, width.Overlap.Metres);
        NearlyEqual.Assert(9 / 8.7, width.RateFactor);
        Assert.True(width.OverlapShare > 0);
    }

    [Fact]
    public void Overlap_OfPassesThatLeaveStrips_IsNegativeAndGivesTooLittle()
    {
        var width = new WorkingWidth(new Length(9), new Length(9.3));

        Assert.True(width.Overlap.Metres < 0);
        Assert.True(width.RateFactor < 1);
    }

    [Fact]
    public void RateFactor_OfANumberTypedInTooSmall_IsBelowOne() =>
        NearlyEqual.Assert(8.4 / 9, new WorkingWidth(new Length(9), null, new Length(8.4)).RateFactor);

    // Product metered for the nominal width over the area covered: what the field takes beyond its area is what lies double.
    [Fact]
    public void OverlapShare_OfAField_IsTheMassTakenBeyondItsArea()
    {
        var width = new WorkingWidth(new Length(9), new Length(8.5));

        NearlyEqual.Assert(width.RateFactor - 1, width.OverlapShare, 1e-12);
    }
}
