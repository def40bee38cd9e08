using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.DriveWheelTurns;

public sealed class DriveWheelTests
{
    private static readonly DriveWheel Wheel = new(new Length(2.315), new Length(3));

    [Fact]
    public void TurnsFor_AnArea_CoverIt() => NearlyEqual.Assert(1000, Wheel.TurnsFor(new Area(1000)) * Wheel.AreaPerTurn.SquareMetres);

    [Theory]
    [InlineData(0)]
    [InlineData(0.0453)]
    [InlineData(-0.05)]
    public void MassPerTurn_OfARate_GivesThatRateBack(double skid)
    {
        var wheel = Wheel with { Skid = skid };

        NearlyEqual.Assert(0.016, wheel.Rate(wheel.MassPerTurn(new MassPerArea(0.016))).KilogramsPerSquareMetre, 1e-15);
    }

    // Ten hectares driven with a wheel that lacks 4 % of its turns, step by step.
    [Fact]
    public void Rate_OfAWheelThatSkids_IsAsMuchLess()
    {
        var turnsInTheField = 100_000 / (Wheel.Circumference.Metres * Wheel.Width.Metres) * 0.96;
        var perTurn = new MassPerRevolution(0.11);

        NearlyEqual.Assert(turnsInTheField * 0.11 / 100_000, (Wheel with { Skid = 0.04 }).Rate(perTurn).KilogramsPerSquareMetre);
        NearlyEqual.Assert(
            0.96,
            (Wheel with { Skid = 0.04 }).Rate(perTurn).KilogramsPerSquareMetre / Wheel.Rate(perTurn).KilogramsPerSquareMetre
        );
        NearlyEqual.Assert(turnsInTheField, (Wheel with { Skid = 0.04 }).TurnsFor(new Area(100_000)));
    }

    [Fact]
    public void Rate_OfAGearedMeter_IsProportionalToItsGearing() =>
        NearlyEqual.Assert(
            Wheel.Rate(new MassPerRevolution(0.11)).KilogramsPerSquareMetre,
            Wheel.Rate(new MassPerRevolution(0.22), 0.5).KilogramsPerSquareMetre
        );

    [Fact]
    public void MeterRevolutionsPerTurn_OfARate_IsTheGearingThatGivesIt()
    {
        var rate = new MassPerArea(0.016);
        var gearing = Wheel.MeterRevolutionsPerTurn(rate, new MassPerRevolution(0.22));

        NearlyEqual.Assert(0.016, Wheel.Rate(new MassPerRevolution(0.22), gearing).KilogramsPerSquareMetre, 1e-15);
    }
}
