using CalibrationApi.Engine.BulkDensities;

namespace CalibrationApi.Engine.Tests.BulkDensities;

public sealed class ReferenceDensitiesTests
{
    public static TheoryData<ReferenceMaterial> Materials => [.. Enum.GetValues<ReferenceMaterial>()];

    [Theory]
    [MemberData(nameof(Materials))]
    public void Of_EveryMaterial_HasPublishedValuesWithASource(ReferenceMaterial material)
    {
        var published = ReferenceDensities.Of(material);

        Assert.NotEmpty(published);
        Assert.All(published, one =>
        {
            Assert.True(one.Low <= one.High);
            Assert.True(one.Source.Length > 10);
        });
        Assert.Distinct(published.Select(one => (one.Unit.Symbol, one.Source)));
    }

    [Theory]
    [MemberData(nameof(Materials))]
    public void NameOf_EveryMaterial_IsInLowerCaseWords(ReferenceMaterial material) =>
        Assert.Matches("^[a-z]+([ -][a-z]+)*$", ReferenceDensities.NameOf(material));

    [Theory]
    [InlineData(ReferenceMaterial.UreaGranular, "granular urea")]
    [InlineData(ReferenceMaterial.FabaBean, "faba bean")]
    [InlineData(ReferenceMaterial.Wheat, "wheat")]
    public void NameOf_Material_IsWhatPeopleSay(ReferenceMaterial material, string expected) =>
        Assert.Equal(expected, ReferenceDensities.NameOf(material));

    // A law's weight of a bushel is no measured density: 60 lb are 772.3 kg/m3, and sound wheat of 70 or 82 kg/hL is nothing unusual.
    [Theory]
    [InlineData(ReferenceMaterial.Wheat, 700, 820)]
    [InlineData(ReferenceMaterial.Soybean, 690, 770)]
    [InlineData(ReferenceMaterial.Barley, 580, 680)]
    [InlineData(ReferenceMaterial.Clover, 720, 830)]
    public void RangeOf_UsualLots_HoldsThem(ReferenceMaterial material, double light, double dense)
    {
        Assert.Equal(0, ReferenceComparison.Of(material, light).Beyond);
        Assert.Equal(0, ReferenceComparison.Of(material, dense).Beyond);
    }

    [Fact]
    public void RangeOf_PublishedRanges_AreNotWidened()
    {
        var (lightest, densest) = ReferenceDensities.RangeOf(ReferenceMaterial.UreaGranular);
        var printed = Assert.Single(ReferenceDensities.Of(ReferenceMaterial.UreaGranular));

        Assert.Equal((printed.Lowest, printed.Highest), (lightest, densest));
    }

    [Fact]
    public void RangeOf_SeveralSources_SpansAllOfThem()
    {
        var (lightest, densest) = ReferenceDensities.RangeOf(ReferenceMaterial.Canola);

        // 0.67 t/m3 is a single figure and counts with a tenth to either side; the legal weight counts as printed beside the study.
        NearlyEqual.Assert(0.9 * 670, lightest.KilogramsPerCubicMetre);
        Assert.Equal(772.3, densest.KilogramsPerCubicMetre, 0.05);
        Assert.Equal(3, ReferenceDensities.Of(ReferenceMaterial.Canola).Count);
    }

    [Fact]
    public void Beyond_OfADensity_IsHowFarItLiesOutsideTheNearerEnd()
    {
        var (lightest, densest) = ReferenceDensities.RangeOf(ReferenceMaterial.UreaGranular);

        NearlyEqual.Assert(0.1, ReferenceComparison.Of(ReferenceMaterial.UreaGranular, 1.1 * densest.KilogramsPerCubicMetre).Beyond);
        NearlyEqual.Assert(-0.2, ReferenceComparison.Of(ReferenceMaterial.UreaGranular, 0.8 * lightest.KilogramsPerCubicMetre).Beyond);
        Assert.Equal(0, ReferenceComparison.Of(ReferenceMaterial.UreaGranular, densest.KilogramsPerCubicMetre).Beyond);
        Assert.Equal(0, ReferenceComparison.Of(ReferenceMaterial.UreaGranular, lightest.KilogramsPerCubicMetre).Beyond);
    }
}
