using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Field capacity. Sources: University of Kentucky AEN-73 and Iowa State PM 696 for the rule acres per hour = miles per hour x feet /
/// 8.25; the worked examples stand in trade-catch-distance.csv and CatchDistanceTradeTests.
/// </summary>
[Trait("Category", "Reference")]
public sealed class FieldCapacityReferenceTests
{
    // 8.25 = 43 560 / 5280, so the rule is exact.
    [Theory]
    [InlineData(30, 5)]
    [InlineData(55, 4.5)]
    [InlineData(12.5, 6)]
    public void PerHour_MilesPerHourAndFeet_IsTheirProductOverEightAndAQuarter(double feet, double milesPerHour)
    {
        var capacity = FieldCapacity.PerHour(
            new Length(UnitTable.Get("ft").Canonical(feet)),
            new Speed(UnitTable.Get("mi/h").Canonical(milesPerHour))
        );

        NearlyEqual.Assert(feet * milesPerHour / 8.25, UnitTable.Get("ac").FromCanonical(capacity.SquareMetres));
    }

    // Indian university lecture on field capacity: hectares per hour = metres x kilometres per hour / 10, exact.
    [Theory]
    [InlineData(1.1, 3)]
    [InlineData(9, 9)]
    public void PerHour_KilometresPerHourAndMetres_IsATenthOfTheirProduct(double metres, double kilometresPerHour)
    {
        var capacity = FieldCapacity.PerHour(new Length(metres), new Speed(UnitTable.Get("km/h").Canonical(kilometresPerHour)));

        NearlyEqual.Assert(metres * kilometresPerHour / 10, UnitTable.Get("ha").FromCanonical(capacity.SquareMetres));
    }

    [Fact]
    public void PerHour_FieldEfficiency_IsTheShareOfTheTheoreticalCapacity()
    {
        var whole = FieldCapacity.PerHour(new Length(9), new Speed(2.5)).SquareMetres;

        NearlyEqual.Assert(0.7 * whole, FieldCapacity.PerHour(new Length(9), new Speed(2.5), 0.7).SquareMetres);
    }
}
