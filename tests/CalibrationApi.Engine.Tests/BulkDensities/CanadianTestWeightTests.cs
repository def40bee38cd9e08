using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.BulkDensities;

/// <summary>The equations of the Canadian Grain Commission: kg/hL = a + b grams in half a litre.</summary>
public sealed class CanadianTestWeightTests
{
    // Recomputed by hand from the printed coefficients for 400 g in half a litre.
    [Theory]
    [InlineData(ReferenceMaterial.Wheat, 1.4767 + 0.2012 * 400)]
    [InlineData(ReferenceMaterial.Barley, -0.3063 + 0.2089 * 400)]
    [InlineData(ReferenceMaterial.Canola, 1.9922 + 0.1957 * 400)]
    public void Loose_OfATestWeight_FollowsThePrintedEquation(ReferenceMaterial grain, double testWeight) =>
        NearlyEqual.Assert(800, CanadianTestWeight.Loose(grain, new BulkDensity(10 * testWeight)).KilogramsPerCubicMetre, 1e-12);

    // The coefficients as the commission prints them for its calculators (grainscanada.gc.ca, test-weight-calculator.html), for 360 g.
    [Theory]
    [Trait("Category", "Transcription")]
    [InlineData(ReferenceMaterial.Soybean, 2.3696, 0.1896)]
    [InlineData(ReferenceMaterial.Corn, 2.1025, 0.192)]
    [InlineData(ReferenceMaterial.Oat, 4.3122, 0.1986)]
    [InlineData(ReferenceMaterial.Rye, 2.2266, 0.1995)]
    [InlineData(ReferenceMaterial.Flax, 6.3164, 0.192)]
    [InlineData(ReferenceMaterial.Sunflower, 2.2156, 0.194)]
    public void Loose_PrintedCoefficients_AreThoseHeld(ReferenceMaterial grain, double a, double b) =>
        NearlyEqual.Assert(720, CanadianTestWeight.Loose(grain, new BulkDensity(10 * (a + b * 360))).KilogramsPerCubicMetre, 1e-12);
}
