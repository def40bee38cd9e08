using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation.Tests;

public sealed class CatchTestSetupTests
{
    private static readonly CatchTestSetup Real = Given.Setup with
    {
        Device = Given.Device with { CatchScatter = 0.01, DayToDay = 0.01, Pockets = 8 },
        Scale = new SimulatedScale(new Scale { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III }),
        Counter = new SimulatedCounter(0.1),
    };

    [Fact]
    public void Run_SameSeed_IsTheSameTest() =>
        Assert.Equal(Real.Run(SeededRandom.Of(3, 9)).Question.Catches, Real.Run(SeededRandom.Of(3, 9)).Question.Catches);

    [Fact]
    public void Run_OtherStream_IsAnotherTest() =>
        Assert.NotEqual(Real.Run(SeededRandom.Of(3, 9)).Question.Catches, Real.Run(SeededRandom.Of(3, 10)).Question.Catches);

    [Fact]
    public void Run_Question_HoldsTheReadingsWrittenDown()
    {
        var test = Real.Run(SeededRandom.Of(3, 9));

        Assert.Equal(test.Catches.Select(one => one.Net), test.Question.Catches.Select(one => one.IndicatedNet.Kilograms));
        Assert.Equal(test.Catches.Select(one => one.Counted), test.Question.Catches.Select(one => one.Revolutions.Count));
        Assert.All(test.Question.Catches, one => Assert.Equal(0.1, one.Revolutions.Resolution));
        Assert.Equal(8, test.Question.PocketsPerRevolution);
    }

    [Fact]
    public void Run_HonestTest_IsAnsweredNearTheTruth()
    {
        var test = Real.Run(SeededRandom.Of(3, 9));

        var outcome = CatchTestEvaluation.Evaluate(test.Question);

        Assert.NotNull(outcome.Result);
        Assert.Equal(1, outcome.Result.Estimate.Value.Value / test.OfTheDay.KilogramsPerRevolution, 0.05);
    }

    [Fact]
    public void Run_SomePointsCaught_CatchesTheirShareAndSaysSo()
    {
        var test = (Given.Setup with { Points = 24, PointsToCatch = 6 }).Run(SeededRandom.Of(3, 9));

        Assert.All(test.Catches, one => Assert.Equal(Given.PerRevolution / 4, one.Value(), 1e-9));
        Assert.Equal(4, test.Question.CaughtPoints!.Scale);
    }

    // A scatter of two is wilder than anything; half of its catches would weigh less than nothing.
    [Fact]
    public void Run_ScatterBeyondMeasure_StillWritesDownSomeProduct()
    {
        var wild = Real with { Device = Real.Device with { CatchScatter = 2 } };
        for (var trial = 0; trial < 200; trial++)
            Assert.All(wild.Run(SeededRandom.Of(3, trial)).Catches, one => Assert.True(one.Net > 0.01));
    }

    [Fact]
    public void Run_NetMassesOnly_HidesTheTare()
    {
        var both = Real.Run(SeededRandom.Of(3, 9)).Question.Catches;
        var net = (Real with { WritesNetOnly = true }).Run(SeededRandom.Of(3, 9)).Question.Catches;

        Assert.All(both, one => Assert.NotNull(one.Tare));
        Assert.All(net, one => Assert.Null(one.Tare));
        Assert.Equal(both.Select(one => one.IndicatedNet), net.Select(one => one.IndicatedNet));
    }

    [Fact]
    public void ExpectedCatch_PlannedTurns_IsWhatFallsInTheLongRun() =>
        Samples.Of(random => Real.Run(random).Catches[0].Caught).AssertMean(Real.ExpectedCatch().Kilograms);
}
