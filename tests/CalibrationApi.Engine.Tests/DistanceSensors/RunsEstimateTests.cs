using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

public sealed class RunsEstimateTests
{
    [Fact]
    public void OneRun_HasTheDefaultScatterAndFourDegreesOfFreedom()
    {
        var estimate = Driven.Pure(1300).Evaluated().Estimate;

        NearlyEqual.Assert(1300e6 / 100, estimate.CountsPerMetre.Value);
        NearlyEqual.Assert(0.005, estimate.Runs, 1e-6);
        NearlyEqual.Assert(StudentT.CoverageFactor(0.95, 4), estimate.CountsPerMetre.CoverageFactor, 1e-6);
    }

    [Fact]
    public void EqualRuns_PoolToTheirMeanAndItsScatterShrinks()
    {
        var (one, four) = (Driven.Pure(1300).Evaluated().Estimate, Driven.Pure(1300, 1300, 1300, 1300).Evaluated().Estimate);

        NearlyEqual.Assert(one.CountsPerMetre.Value, four.CountsPerMetre.Value);
        Assert.True(four.Runs < one.Runs / 2);
        Assert.True(four.Pooled.DegreesOfFreedom > one.Pooled.DegreesOfFreedom);
    }

    // 1 count / sqrt(6) on 100 counts, by itself.
    [Fact]
    public void Counting_OfFewPulses_AddsOneRoundingForEachEnd()
    {
        var question = Driven.Runs(100) with { DistanceResolution = new Length(0), TapeLimit = 0 };

        NearlyEqual.Assert(1 / Math.Sqrt(6) / 100, Math.Sqrt(question.Evaluated().Estimate.Variances[0]), 1e-12);
    }

    [Fact]
    public void Marks_OfAStatedUncertainty_TakeThePlaceOfTheResolution()
    {
        var question = Driven.Pure(1300);
        var stated = question with
        {
            DistanceResolution = new Length(5),
            Runs = [question.Runs[0] with { DistanceUncertainty = new Length(0.02) }],
        };

        NearlyEqual.Assert(0.02 / 100, Math.Sqrt(stated.Evaluated().Estimate.Variances[0]), 1e-6);
    }

    [Fact]
    public void Tape_HoweverManyRuns_IsNotAveraged()
    {
        var many = Driven.Runs([.. Enumerable.Repeat(1300.0, 40)]) with { TapeLimit = 0.02 };
        var estimate = many.Evaluated().Estimate;

        NearlyEqual.Assert(0.02 / Math.Sqrt(3), estimate.Tape);
        Assert.True(estimate.RelativeExpanded > 1.9 * 0.02 / Math.Sqrt(3));
    }

    [Fact]
    public void LongRun_WeighsMoreWhereCountsAreFew()
    {
        var question = Driven.Runs() with
        {
            Runs = [Driven.Run(10, 10), Driven.Run(1100, 1000)],
            Repeatability = 0.0001,
            DistanceResolution = new Length(0),
        };
        var estimate = question.Evaluated().Estimate;

        Assert.InRange(estimate.CountsPerMetre.Value, 1.09, 1.1);
        NearlyEqual.Assert(1110.0 / 1010, estimate.TotalOverTotal);
    }

    [Fact]
    public void Turns_WithPulsesOfATurn_AreThePulsesTheyStandFor()
    {
        var byPulses = Driven.Runs(1280, 1284) with { PulsesPerTurn = new PulsesPerRevolution(40) };
        var byTurns = Driven.Runs(32, 32.1) with
        {
            PulsesPerTurn = new PulsesPerRevolution(40),
            Counted = CountedThing.Turns,
            TurnResolution = new Revolutions(1.0 / 40),
        };

        var (pulses, turns) = (byPulses.Evaluated(), byTurns.Evaluated());

        NearlyEqual.Assert(pulses.Estimate.CountsPerMetre.Value, turns.Estimate.CountsPerMetre.Value, 1e-9);
        NearlyEqual.Assert(pulses.Estimate.RelativeExpanded, turns.Estimate.RelativeExpanded, 1e-9);
        NearlyEqual.Assert(pulses.RollingCircumference!.Value, turns.RollingCircumference!.Value, 1e-9);
    }

    [Fact]
    public void Turns_WithoutPulsesOfATurn_TellTheCircumferenceOnly()
    {
        var result = (Driven.Runs(32) with { Counted = CountedThing.Turns }).Evaluated();

        Assert.False(result.Counts.IsPulses);
        NearlyEqual.Assert(100.0 / 32, result.RollingCircumference!.Value);
    }

    [Fact]
    public void Pulses_WithoutPulsesOfATurn_TellNoCircumference() => Assert.Null(Driven.Runs(1300).Evaluated().RollingCircumference);

    // Scatter drawn as the prior says (variance from a scaled inverse chi-squared), the tape within its limit, counts rounded at both ends.
    [Fact]
    public void Interval_OfSimulatedRuns_CoversTheTruthAsItPromises()
    {
        const int Trials = 4000;
        const double Truth = 13.07;
        var random = new Random(5065);
        var covered = 0;
        for (var trial = 0; trial < Trials; trial++)
        {
            var chi = Enumerable.Range(0, 4).Sum(_ => Math.Pow(Normal(random), 2));
            var scatter = 0.005 * Math.Sqrt(4 / chi);
            var tape = (2 * random.NextDouble() - 1) * 0.002;
            var runs = Enumerable
                .Range(0, 3)
                .Select(_ =>
                {
                    var start = random.NextDouble();
                    var driven = 100 * (1 + tape) * Truth * (1 + scatter * Normal(random));
                    return Driven.Run(Math.Floor(start + driven));
                });
            var value = (Driven.Runs() with { Runs = [.. runs], DistanceResolution = new Length(0) }).Evaluated().Estimate.CountsPerMetre;
            covered += Math.Abs(value.Value - Truth) <= value.ExpandedUncertainty ? 1 : 0;
        }

        // Three standard deviations of 4000 trials are 1 %.
        Assert.InRange(covered / (double)Trials, 0.94, 0.965);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
