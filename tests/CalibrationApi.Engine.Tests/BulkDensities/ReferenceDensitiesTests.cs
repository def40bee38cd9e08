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
    public void NameOf_EveryMaterial_IsInLowerCaseWords(ReferenceMaterial material) => Assert.Matches("^[a-z]+([ -][a-z]+)*$", ReferenceDensities.NameOf(material));

    [Theory]
    [InlineData(ReferenceMaterial.UreaGranular, "granular urea")]
    [InlineData(ReferenceMaterial.FabaBean, "faba bean")]
    [InlineData(ReferenceMaterial.Wheat, "wheat")]
    public void NameOf_Material_IsWhatPeopleSay(ReferenceMaterial material, string expected) => Assert.Equal(expected, ReferenceDensities.NameOf(material));

    [Fact]
    public void RangeOf_SeveralSources_SpansAllOfThem()
    {
        var (lightest, densest) = ReferenceDensities.RangeOf(ReferenceMaterial.Canola);

        NearlyEqual.Assert(666.06, lightest.KilogramsPerCubicMetre);
        Assert.Equal(772.3, densest.KilogramsPerCubicMetre, 0.05);
        Assert.Equal(3, ReferenceDensities.Of(ReferenceMaterial.Canola).Count);
    }
}
