using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation.Tests;

public sealed class SimulatedScaleTests
{
    private const double Division = 0.05;

    private static readonly SimulatedScale Coarse = new(new Scale { Division = new Mass(Division), AccuracyClass = AccuracyClass.III });

    [Theory]
    [InlineData(TareReading.Each)]
    [InlineData(TareReading.Shared)]
    [InlineData(TareReading.Zeroed)]
    public void Run_AnyTaring_ShowsWholeDivisions(TareReading taring)
    {
        var setup = Given.Setup with { Scale = Coarse, Taring = taring };
        for (var trial = 0; trial < 1000; trial++)
        {
            foreach (var one in setup.Run(SeededRandom.Of(5, trial)).Catches)
            {
                Assert.Equal(Math.Round(one.Gross / Division), one.Gross / Division, 1e-9);
                Assert.Equal(Math.Round((one.Tare ?? 0) / Division), (one.Tare ?? 0) / Division, 1e-9);
            }
        }
    }

    // Two roundings, d^2 / 12 each; the container is anywhere within a division, else its rounding would always be the same.
    [Fact]
    public void Run_TareEach_HasTheVarianceOfTwoRoundings()
    {
        var samples = Samples.Of(random => Error(Coarse, TareReading.Each, random));

        samples.AssertMean(0);
        samples.AssertVariance(Division * Division / 6);
    }

    // A rounding and a zero kept to a quarter of a division: d^2 (1/12 + 1/48).
    [Fact]
    public void Run_Zeroed_HasTheVarianceOfARoundingAndAZero()
    {
        var samples = Samples.Of(random => Error(Coarse, TareReading.Zeroed, random));

        samples.AssertMean(0);
        samples.AssertVariance(Division * Division * (1.0 / 12 + 1.0 / 48));
    }

    [Fact]
    public void Run_SharedTare_IsOneReadingForAllCatches()
    {
        var setup = Given.Setup with
        {
            Scale = Coarse with { Stated = Coarse.Stated with { ReadingScatter = new Mass(0.1) } },
            Taring = TareReading.Shared,
        };

        var tares = Enumerable
            .Range(0, 50)
            .Select(trial => setup.Run(SeededRandom.Of(6, trial)).Catches.Select(one => one.Tare).Distinct().ToArray())
            .ToArray();

        Assert.All(tares, ofOneTest => Assert.Single(ofOneTest));
        Assert.True(tares.Select(ofOneTest => ofOneTest[0]).Distinct().Count() > 1);
    }

    [Fact]
    public void Run_ReadingScatter_IsInBothReadings()
    {
        var scale = Coarse with { Stated = Coarse.Stated with { ReadingScatter = new Mass(0.08) } };
        var samples = Samples.Of(random => Error(scale, TareReading.Each, random));

        samples.AssertVariance(2 * 0.08 * 0.08 + Division * Division / 6);
    }

    [Theory]
    [InlineData(0.01, 0.0, 0.01)]
    [InlineData(0.0, 0.4, 0.0)]
    [InlineData(-0.004, 0.2, -0.004)]
    public void Run_SpanAndZeroError_SpanIsInTheNetMassAndZeroCancels(double span, double zero, double expected)
    {
        var setup = Given.Setup with { Scale = Given.PerfectScale with { SpanError = span, ZeroError = new Mass(zero) } };

        var one = setup.Run(SeededRandom.Of(8, 0)).Catches[0];

        Assert.Equal(expected, one.Net / one.Caught - 1, 1e-9);
        Assert.Equal(zero + one.Container * (1 + span), one.Tare!.Value, 1e-8);
    }

    // A rectangular distribution of half width a has variance a^2 / 3.
    [Fact]
    public void WithinItsLimitAt_ManyDraws_AreRectangularWithinTheLimit()
    {
        var net = new Mass(8.5);
        var limit = Coarse.Stated.LimitAt(net).Limit.Kilograms / net.Kilograms;
        var samples = Samples.Of(random => Coarse.WithinItsLimitAt(net, random).SpanError);

        samples.AssertMean(0);
        samples.AssertVariance(limit * limit / 3);
        Assert.All(samples.Values, error => Assert.InRange(error, -limit, limit));
    }

    private static double Error(SimulatedScale scale, TareReading taring, SeededRandom random)
    {
        var setup = Given.Setup with { Scale = scale, Taring = taring, Container = new Mass(1.5 + random.NextDouble()) };
        var one = setup.Run(random).Catches[0];
        return one.Net - one.Caught;
    }
}
