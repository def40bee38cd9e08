using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Tests.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.PublishedSeedRowLimits;

/// <summary>Spread over row spacing; the printed figures have their own tests.</summary>
public sealed class SeedbedUtilisationTests
{
    [Fact]
    public void Of_SpreadAsWideAsTheRows_IsOne() => Assert.Equal(1, SeedbedUtilisation.Of(new Length(0.2), new Length(0.2)));

    [Fact]
    public void Of_SameWidthsInOtherUnits_IsNotWiderByRounding()
    {
        Assert.Equal(1, SeedbedUtilisation.Of(Sown.Inches(7.5), new Length(0.1905)), 1e-12);
        Assert.False(SeedbedUtilisation.IsWiderThanRow(Sown.Inches(7.5), new Length(0.1905)));
    }

    [Theory]
    [InlineData(0.21, 0.20)]
    [InlineData(0, 0.20)]
    [InlineData(0.05, 0)]
    public void Of_WidthsThatCannotBe_AreACallersMistake(double spread, double row) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SeedbedUtilisation.Of(new Length(spread), new Length(row)));

    [Theory]
    [InlineData(1, 6, 17)]
    [InlineData(1, 9, 11)]
    [InlineData(4, 12, 33)]
    public void Percent_OfAPrintedCell_IsInWholePerCents(double spread, double row, int percent)
    {
        var cell = new UtilisationCell(spread, row, new PrintedRate(15));

        Assert.Equal(percent, cell.Percent);
        NearlyEqual.Assert(SeedbedUtilisation.Of(Sown.Inches(spread), Sown.Inches(row)), cell.Utilisation);
    }
}
