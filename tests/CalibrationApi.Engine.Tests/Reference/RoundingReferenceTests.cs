using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Standard uncertainty of rounded readings. Source: JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1.</summary>
[Trait("Category", "Reference")]
public sealed class RoundingReferenceTests
{
    private static readonly Scale OneDivision = new() { Division = new Mass(1) };

    [Theory]
    [InlineData("one rounding", TareReading.Shared)]
    [InlineData("two roundings", TareReading.Each)]
    public void RandomUncertainty_OfADivision_RoundsToThePrintedFigure(string quantity, TareReading tare) =>
        ReferenceTable
            .Read("rounding-uncertainties.csv")
            .Only("quantity", quantity)
            .Printed("printed")
            .AssertReproducedBy(OneDivision.RandomUncertainty(tare));

    // GUM 4.3.7: half width over sqrt(3). 0.5 e, 1.0 e and 1.5 e on an interval of 1 kg, doubled in service.
    [Theory]
    [InlineData(100, 1.0)]
    [InlineData(1000, 2.0)]
    [InlineData(5000, 3.0)]
    public void RelativeSpanUncertainty_LimitInService_IsTakenAsARectangle(double load, double limit)
    {
        var scale = OneDivision with { AccuracyClass = AccuracyClass.III };

        NearlyEqual.Assert(limit / Math.Sqrt(3) / load, scale.RelativeSpanUncertainty(new Mass(load)));
    }

    // A 5 kg catch on divisions of 20 g: 0.00816 kg, 0.16 % (derived from F.2.2.1).
    [Fact]
    public void RandomUncertainty_FiveKilogramsOnTwentyGrams_IsSixteenHundredthsOfAPercent()
    {
        var u = Given.Platform.RandomUncertainty(TareReading.Each);

        new PrintedNumber("0.00816").AssertReproducedBy(u);
        new PrintedNumber("0.16").AssertReproducedBy(u / 5 * 100);
    }
}
