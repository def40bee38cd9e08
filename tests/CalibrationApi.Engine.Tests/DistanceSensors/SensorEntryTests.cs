using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

public sealed class SensorEntryTests
{
    private static readonly SensorCounts Pulses = new(true, 40);

    [Theory]
    [InlineData(SensorForm.PulsesPerDistance)]
    [InlineData(SensorForm.DistancePerPulse)]
    [InlineData(SensorForm.WheelCircumference)]
    public void Convert_ThereAndBack_IsTheSameNumber(SensorForm form) =>
        NearlyEqual.Assert(12.7631, Pulses.Convert(form, Pulses.Convert(form, 12.7631)), 1e-15);

    [Fact]
    public void Convert_ToAFormThatTheCountsCannotTell_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => SensorCounts.Of(CountedThing.Pulses, null).Convert(SensorForm.WheelCircumference, 13));
        Assert.Throws<ArgumentException>(() => SensorCounts.Of(CountedThing.Turns, null).Convert(SensorForm.PulsesPerDistance, 0.3));
    }

    [Fact]
    public void PulsesOverAHundredMetres_AreRoundedToTheDecimals()
    {
        var number = SensorEntry.PulsesOver(100, UnitTable.Get("m"), 0).For(12.7633, Pulses);

        Assert.Equal(1276, number.Typed);
        NearlyEqual.Assert(1276 / 1276.33 - 1, number.RoundingError, 1e-9);
        Assert.Equal("1276 pulses per 100 m", number.InWords);
    }

    [Fact]
    public void PulsesOverADistanceInFeet_CountOverThatDistance()
    {
        var number = SensorEntry.PulsesOver(250, UnitTable.Get("ft"), 0).For(12.7633, Pulses);

        Assert.Equal(Math.Round(12.7633 * 250 * 0.3048), number.Typed);
        Assert.Equal("973 pulses per 250 ft", number.InWords);
    }

    // A length that is rounded up stands for fewer pulses in a metre, so that the controller counts too much distance.
    [Fact]
    public void DistancePerPulse_RoundedUp_CountsTooMuchDistance()
    {
        var number = SensorEntry.LengthOf(SensorForm.DistancePerPulse, UnitTable.Get("cm"), 1).For(1 / 0.07836, Pulses);

        Assert.Equal(7.8, number.Typed);
        Assert.True(number.RoundingError > 0);
        Assert.True(SensorEntry.LengthOf(SensorForm.DistancePerPulse, UnitTable.Get("cm"), 1).For(1 / 0.07877, Pulses).RoundingError < 0);
    }

    [Fact]
    public void WheelCircumference_IsThatOfATurn()
    {
        var number = SensorEntry.LengthOf(SensorForm.WheelCircumference, UnitTable.Get("in"), 1).For(40 / 3.1339, Pulses);

        Assert.Equal(123.4, number.Typed);
        Assert.Equal("123.4 in per turn of the wheel", number.InWords);
    }

    [Fact]
    public void Number_ThatCouldOnlyBeZero_IsAllError() =>
        Assert.Equal(-1, SensorEntry.LengthOf(SensorForm.DistancePerPulse, UnitTable.Get("m"), 0).For(13, Pulses).RoundingError);

    [Fact]
    public void PulsesOver_ADistance_ArePulsesPerMetre() =>
        Assert.Equal(new SensorValue(SensorForm.PulsesPerDistance, 1556 / 121.92), SensorValue.PulsesOver(1556, new Length(121.92)));
}
