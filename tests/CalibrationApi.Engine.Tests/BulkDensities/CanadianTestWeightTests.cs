using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.BulkDensities;

/// <summary>The equations of the Canadian Grain Commission: kg/hL = a + b grams in half a litre.</summary>
public sealed class CanadianTestWeightTests
{
    public static TheoryData<ReferenceMaterial> Grains => [.. CanadianTestWeight.Grains];

    // Recomputed by hand from the printed coefficients for 400 g in half a litre.
    [Theory]
    [InlineData(ReferenceMaterial.Wheat, 1.4767 + 0.2012 * 400)]
    [InlineData(ReferenceMaterial.Barley, -0.3063 + 0.2089 * 400)]
    [InlineData(ReferenceMaterial.Canola, 1.9922 + 0.1957 * 400)]
    public void Settled_GramsInHalfALitre_FollowThePrintedEquation(ReferenceMaterial grain, double expected) =>
        NearlyEqual.Assert(expected, CanadianTestWeight.Settled(grain, new BulkDensity(800)).KilogramsPerCubicMetre / 10);

    [Theory]
    [MemberData(nameof(Grains))]
    public void Loose_AfterSettled_GivesTheDensityBack(ReferenceMaterial grain)
    {
        foreach (var density in (double[])[350, 520, 612.5, 780])
            NearlyEqual.Assert(density, CanadianTestWeight.Loose(grain, CanadianTestWeight.Settled(grain, new BulkDensity(density))).KilogramsPerCubicMetre, 1e-12);
    }
}
