using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>How much a catch should weigh, by the scale and the wanted precision.</summary>
public sealed class CatchSizeTests
{
    // At 1 % twice d / sqrt(6) is a tenth of the precision from 816.5 divisions on; at 3 % 500 divisions are more than that asks for.
    [Theory]
    [InlineData(0.02, 0.03, 10)]
    [InlineData(0.005, 0.03, 2.5)]
    [InlineData(0.02, 0.01, 16.3299316)]
    [InlineData(0.02, 0.005, 32.6598632)]
    public void Least_DivisionAndPrecision_IsFiveHundredDivisionsOrMore(double division, double precision, double least) =>
        Assert.Equal(least, CatchSize.Least(new Mass(division), precision).Kilograms, 1e-6);

    [Fact]
    public void Least_MadeWithTheRoundingOfTwoReadings_KeepsItUnderATenthOfThePrecision()
    {
        const double Division = 0.02;
        const double Precision = 0.004;
        // The standard uncertainty of a rounded reading is d / sqrt(12) (GUM, F.2.2.1); a net mass has two.
        var rounding = Math.Sqrt(2) * Division / Math.Sqrt(12);

        NearlyEqual.Assert(0.1 * Precision, 2 * rounding / CatchSize.Least(new Mass(Division), Precision).Kilograms);
    }

    // Common practice, no published source: practitioners catch 15 lb of a bulk product, often on a scale that shows half an ounce.
    [Fact]
    public void Least_OnAScaleOfHalfAnOunce_IsNearWhatPractitionersCatch()
    {
        var least = CatchSize.Least(new Mass(UnitTable.Get("oz").Canonical(0.5)), CatchTestLimits.DefaultWantedPrecision);

        Assert.InRange(UnitTable.Get("lb").FromCanonical(least.Kilograms), 0.9 * 15, 1.1 * 15);
    }

    // Common practice, no published source: practitioners ask for a second test at a change of 10 to 15 %.
    [Fact]
    public void SecondTest_AtTwiceThePublishedTolerance_IsWherePractitionersAskForOne()
    {
        Assert.InRange(CatchTestDefaults.SecondTestChange.Value!.Canonical, 0.10, 0.15);
        Assert.InRange(DistanceSensorDefaults.SecondRunChange.Value!.Canonical, 0.10, 0.15);
    }
}
