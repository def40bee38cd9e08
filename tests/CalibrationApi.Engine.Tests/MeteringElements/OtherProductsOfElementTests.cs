using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeteringElements;

/// <summary>ln k = ln rho + mean(ln k_i - ln rho_i), against the formula by hand.</summary>
public sealed class OtherProductsOfElementTests
{
    [Fact]
    public void Expected_TwoOthers_IsTheirGeometricMeanPerDensity()
    {
        var (median, spread) = new OtherProductsOfElement(
            new(new BulkDensity(600), 0.01),
            [
                new KnownDelivery(null, new(new MassPerRevolution(0.40), 0.02), new(new BulkDensity(800), 0.03)),
                new KnownDelivery("peas", new(new MassPerRevolution(0.45), 0), new(new BulkDensity(750), 0)),
            ]
        ).Expected;

        NearlyEqual.Assert(600 * Math.Sqrt(0.40 / 800 * 0.45 / 750), median.KilogramsPerRevolution, 1e-12);
        NearlyEqual.Assert(Math.Sqrt(0.01 * 0.01 + 0.05 * 0.05 * 1.5 + (0.03 * 0.03 + 0.02 * 0.02) / 2 / 2), spread, 1e-12);
    }

    // One other, nothing stated: 3 % each density, 2 % its value, 5 % from product to product twice.
    [Theory]
    [InlineData(1.20, true)]
    [InlineData(1.17, false)]
    [InlineData(0.85, false)]
    [InlineData(0.82, true)]
    public void FindingOf_ValueBesideTheExpectedOne_BeginsAtTwoStandardDeviations(double ratio, bool found)
    {
        var others = new OtherProductsOfElement(
            new(new BulkDensity(600)),
            [new KnownDelivery("wheat", new(new MassPerRevolution(0.4)), new(new BulkDensity(800)))]
        );
        NearlyEqual.Assert(Math.Sqrt(2 * 0.03 * 0.03 + 0.02 * 0.02 + 2 * 0.05 * 0.05), others.Expected.Spread, 1e-12);

        Assert.Equal(found, others.FindingOf(new MassPerRevolution(0.3 * ratio), 0) is not null);
    }
}
