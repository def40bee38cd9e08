using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Simulation.Tests;

public sealed class SimulatedCounterTests
{
    [Theory]
    [InlineData(CountStart.Free, 6)]
    [InlineData(CountStart.OnEdge, 12)]
    public void Run_Counter_ShowsWholeStepsWithTheVarianceOfItsFreeEnds(CountStart start, double divisor)
    {
        // Eight of these steps are the range in which the turns lie, so that each place within a step is equally likely.
        const double Resolution = 47 * 0.04 / 8;
        var setup = Given.Setup with { Counter = new SimulatedCounter(Resolution, start) };
        var samples = Samples.Of(random =>
        {
            var one = setup.Run(random).Catches[0];
            Assert.Equal(Math.Round(one.Counted / Resolution), one.Counted / Resolution, 1e-9);
            return one.Counted - one.Turns;
        });

        samples.AssertMean(0);
        samples.AssertVariance(Resolution * Resolution / divisor);
    }

    [Fact]
    public void Run_NoResolution_CountsExactly()
    {
        var one = Given.Setup.Run(SeededRandom.Of(1, 1)).Catches[0];

        Assert.Equal(one.Turns, one.Counted);
    }
}
