using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Catches;

/// <summary>Inputs of a machine that shows no revolution count.</summary>
public sealed class CountedRevolutionsTests
{
    [Fact]
    public void FromCounter_Reading_IsTakenAsItIs() =>
        Assert.Equal(new CountedRevolutions(47, 0.1), CountedRevolutions.FromCounter(new Revolutions(47), new Revolutions(0.1)));

    [Fact]
    public void FromPulses_CountAndPulsesPerRevolution_ResolvesOnePulse()
    {
        var turned = CountedRevolutions.FromPulses(16920, new PulsesPerRevolution(360));

        Assert.Equal(47, turned.Count);
        NearlyEqual.Assert(1.0 / 360, turned.Resolution);
    }

    // N = m_ind / k_set; the value typed in is exact.
    [Fact]
    public void FromIndicatedMass_ValueTypedIn_TurnsTheMassBackIntoRevolutions()
    {
        var turned = CountedRevolutions.FromIndicatedMass(new Mass(16.074), new MassPerRevolution(0.342), new Mass(0.01));

        NearlyEqual.Assert(47, turned.Count);
        NearlyEqual.Assert(0.01 / 0.342, turned.Resolution);
    }

    [Fact]
    public void FromTurns_CrankWithARatio_CountsMeterRevolutions()
    {
        var turned = CountedRevolutions.FromTurns(50, 0.94, 0.25);

        NearlyEqual.Assert(47, turned.Count);
        NearlyEqual.Assert(0.235, turned.Resolution);
    }

    [Fact]
    public void FromTime_SteadyMeterSpeed_IsTimeTimesSpeed()
    {
        var turned = CountedRevolutions.FromTime(new Duration(80), new RotationalSpeed(35.25 / 60), new Duration(1));

        NearlyEqual.Assert(47, turned.Count);
        NearlyEqual.Assert(35.25 / 60, turned.Resolution);
    }

    [Fact]
    public void Evaluate_IndicatedMassOfAnUnchangedMeter_GivesTheValueTypedIn()
    {
        var turned = CountedRevolutions.FromIndicatedMass(new Mass(17.1), new MassPerRevolution(0.342), new Mass(0.01));
        var result = Given.Test(Catch.Net(new Mass(17.1), turned)).InForce(0.342).Evaluated();

        Assert.Equal(0, result.Change!.Delta.Value, 1e-12);
    }

    [Fact]
    public void Evaluate_CoarserCount_GivesAWiderInterval()
    {
        var fine = Given.Test(Given.Net(17.08, 47, 0.01)).Evaluated().Estimate;
        var coarse = Given.Test(Given.Net(17.08, 47, 1)).Evaluated().Estimate;

        Assert.True(coarse.RelativeExpanded > fine.RelativeExpanded);
        Assert.Equal(fine.Value.Value, coarse.Value.Value);
    }
}
