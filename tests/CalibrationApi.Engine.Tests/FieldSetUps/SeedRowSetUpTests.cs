using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.FieldSetUps;

/// <summary>What a field gets with the seed, and what has to be known for it.</summary>
public sealed class SeedRowSetUpTests
{
    private static readonly MeterToSetUp Beside = Planted.Rear with { WithSeed = true };

    private static FieldSetUpQuestion Field(params MeterToSetUp[] meters) =>
        (Planted.Field([Planted.Front, .. meters]) with { SeedRow = Planted.Wheat }).Wanting(5);

    // 46 kg/ha of nitrogen are 41 lb/ac, and 15 lb/ac are printed.
    [Theory]
    [InlineData(5, LimitVerdict.Within)]
    [InlineData(46, LimitVerdict.Above)]
    public void SeedRow_FertilizerWithTheSeed_IsComparedWithPublishedLimits(double nitrogen, LimitVerdict verdict)
    {
        var setUp = Field(Beside).Wanting(nitrogen).SetUp();

        Assert.Equal(verdict, setUp.SeedRow!.Verdict);
        Assert.Equal(verdict == LimitVerdict.Within ? SetUpVerdict.Ready : SetUpVerdict.Blocked, setUp.Verdict);
        Assert.Equal(["rear"], setUp.InSeedRow.Select(rate => rate.Meter.Position));
    }

    [Fact]
    public void SeedRow_SeedSaidToBeWithTheSeed_NeedsNoAnalysis()
    {
        var setUp = Planted.Field(Planted.Front with { WithSeed = true }, Beside) with { SeedRow = Planted.Wheat };

        Assert.Equal(SetUpVerdict.Ready, setUp.Wanting(5).SetUp().Verdict);
    }

    [Fact]
    public void SeedRow_ProductOfUnknownAnalysisWithTheSeed_IsOpenAndGivesNoSum()
    {
        var grey = Planted.Front with { WithSeed = true, Lot = null, Product = new ProductToMeter("grey", "grey granules") };

        var setUp = Field(Beside, grey with { Position = "side" }).SetUp();

        Assert.Null(setUp.SeedRow);
        Assert.Empty(setUp.InSeedRow);
        Assert.Equal("meters/2/product", Assert.Single(setUp.Missing).Member);
    }

    [Theory]
    [InlineData("seedRow")]
    [InlineData("machine")]
    public void SeedRow_WhatItNeedsIsNotKnown_IsOpen(string member)
    {
        var field = Field(Beside);

        var setUp = (member == "machine" ? field with { RowSpacing = null } : field with { SeedRow = null }).SetUp();

        Assert.Null(setUp.SeedRow);
        Assert.Equal((OpenKind.MissingValue, member), (setUp.Missing[0].Kind, setUp.Missing[0].Member));
    }

    [Fact]
    public void SeedRow_WithoutARegion_IsAnsweredAndOpen()
    {
        var setUp = (Field(Beside) with { SeedRow = Planted.Wheat with { Region = null } }).SetUp();

        Assert.NotNull(setUp.SeedRow);
        Assert.Equal("seedRow/region", setUp.Missing[0].Member);
    }

    // Nothing is printed for barley elsewhere: that forbids nothing, but somebody has to be asked.
    [Fact]
    public void SeedRow_NoPublishedLimit_IsOpenInTheUnitsOfTheSeedRowAndBlocksNothing()
    {
        var setUp = (Field(Beside) with { SeedRow = Planted.Wheat with { Crop = Crop.Barley, Region = Region.Elsewhere } }).SetUp();

        Assert.Empty(setUp.Obstacles);
        var open = Assert.Single(setUp.Missing);
        Assert.Equal((OpenKind.NoPublishedNumber, "seedRow/localLimits"), (open.Kind, open.Member));
        Assert.Equal(new SetUpPart(SetUpPartKind.SeedRow), setUp.HeadlineAbout);
        Assert.EndsWith("Add what they allow as localLimits.", setUp.Headline.InMetric(), StringComparison.Ordinal);
    }

    // Side by side they never lie in one row; over the same width they add up.
    [Theory]
    [InlineData(4.5, 20)]
    [InlineData(9, 40)]
    public void SeedRow_TwoMetersThatShareAProduct_AddUpInOneRowOnly(double coveredWidth, double rate)
    {
        var meter = Beside with { CoveredWidth = new Length(coveredWidth), TargetRate = Planted.PerHectare(20) };

        var setUp = (Planted.Field(meter, meter with { Position = "side" }) with { SeedRow = Planted.Wheat }).SetUp();

        NearlyEqual.Assert(rate * 0.46, ((MassPerArea?)setUp.SeedRow!.Loads[0].Rate).InPerHectare(), 1e-9);
    }
}
