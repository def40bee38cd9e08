using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Catches;

/// <summary>What another element or product is expected to deliver.</summary>
public sealed class OtherDeliveryTests
{
    private static readonly MassPerRevolution Delivered = new(0.36);

    // Half the volume at the same fill is half the mass.
    [Theory]
    [InlineData(0.5, 0.25, 0.18)]
    [InlineData(0.5, 0.5, 0.36)]
    [InlineData(0.5, 0.75, 0.54)]
    public void OfElement_OtherDisplacement_IsTheMassOfItsVolume(double ownLitres, double otherLitres, double expected) =>
        NearlyEqual.Assert(
            expected,
            OtherDelivery.OfElement(Delivered, new Volume(ownLitres / 1000), new Volume(otherLitres / 1000)).KilogramsPerRevolution
        );

    [Theory]
    [InlineData(800, 600, 0.27)]
    [InlineData(800, 800, 0.36)]
    [InlineData(800, 1000, 0.45)]
    public void OfProduct_OtherDensity_IsTheMassOfTheSameVolume(double own, double other, double expected) =>
        NearlyEqual.Assert(
            expected,
            OtherDelivery.OfProduct(Delivered, new BulkDensity(own), new BulkDensity(other)).KilogramsPerRevolution
        );
}
