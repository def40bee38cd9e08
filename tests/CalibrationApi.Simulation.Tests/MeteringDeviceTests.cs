using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Simulation.Tests;

public sealed class MeteringDeviceTests
{
    [Fact]
    public void MassPerRevolutionAt_DisplacementDensityFill_IsTheirProduct() =>
        Assert.Equal(0.001 * 600 * 0.6, Given.Device.MassPerRevolutionAt(new RotationalSpeed(1)).KilogramsPerRevolution, 1e-15);

    [Fact]
    public void MassPerRevolutionAt_HalvingSpeed_IsHalf()
    {
        var device = Given.Device with { Fill = new FillEfficiency(0.6, new RotationalSpeed(4)) };

        Assert.Equal(0.18, device.MassPerRevolutionAt(new RotationalSpeed(4)).KilogramsPerRevolution, 1e-15);
        Assert.Equal(0.36, device.MassPerRevolutionAt(new RotationalSpeed(0)).KilogramsPerRevolution, 1e-15);
    }

    [Fact]
    public void Run_CatchScatter_IsTheVarianceBetweenCatches()
    {
        var setup = Given.Setup with { Device = Given.Device with { CatchScatter = 0.02 } };
        var samples = Samples.Of(random => setup.Run(random).Catches[1].Value() / Given.PerRevolution - 1);

        samples.AssertMean(0);
        samples.AssertVariance(0.0004);
    }

    [Fact]
    public void Run_CatchScatter_IsIndependentFromCatchToCatch()
    {
        var setup = Given.Setup with { Device = Given.Device with { CatchScatter = 0.02 } };

        Samples
            .Of(random =>
            {
                var catches = setup.Run(random).Catches;
                return (catches[0].Value() / Given.PerRevolution - 1) * (catches[1].Value() / Given.PerRevolution - 1);
            })
            .AssertMean(0);
    }

    [Fact]
    public void Run_DayToDay_IsOneDrawForAllCatches()
    {
        var setup = Given.Setup with { Device = Given.Device with { DayToDay = 0.015 } };
        var samples = Samples.Of(random =>
        {
            var test = setup.Run(random);
            Assert.Equal(test.Catches[0].Value(), test.Catches[2].Value(), 1e-9);
            Assert.Equal(test.OfTheDay.KilogramsPerRevolution, test.Catches[0].Value(), 1e-9);
            return test.OfTheDay.KilogramsPerRevolution / test.LongRun.KilogramsPerRevolution - 1;
        });

        samples.AssertMean(0);
        samples.AssertVariance(0.015 * 0.015);
    }

    // A half-normal of scale s has mean s sqrt(2 / pi).
    [Fact]
    public void Run_PrimingDeficit_OnlyLowersTheFirstCatch()
    {
        var setup = Given.Setup with { Device = Given.Device with { PrimingDeficit = new Mass(0.3) } };
        var samples = Samples.Of(random =>
        {
            var test = setup.Run(random);
            Assert.Equal(Given.PerRevolution, test.Catches[1].Value(), 1e-9);
            return Given.PerRevolution * test.Catches[0].Turns - test.Catches[0].Caught;
        });

        Assert.All(samples.Values, missing => Assert.True(missing >= 0));
        samples.AssertMean(0.3 * Math.Sqrt(2 / Math.PI));
    }

    // Start and stop lie anywhere within a pocket: variance (1/p)^2 / 6.
    [Fact]
    public void Run_Pockets_DischargeWholeOnesWithTheVarianceOfTwoFreeEnds()
    {
        var setup = Given.Setup with { Device = Given.Device with { Pockets = 6 } };
        var samples = Samples.Of(random =>
        {
            var one = setup.Run(random).Catches[0];
            var pockets = one.Caught / (Given.PerRevolution / 6);
            Assert.Equal(Math.Round(pockets), pockets, 1e-9);
            return pockets / 6 - one.Turns;
        });

        samples.AssertMean(0);
        samples.AssertVariance(1.0 / 36 / 6);
    }
}
