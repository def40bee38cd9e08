using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often the 95 % interval holds the truth.</summary>
public static class CoverageStudy
{
    private static readonly int[] OneToSix = [1, 2, 3, 4, 5, 6];

    /// <summary>The study.</summary>
    public static Study Study { get; } =
        new(
            "Coverage of the 95 % interval",
            "Share of tests, in per cent, whose interval holds the true mass per revolution. s0 is the repeatability that the engine takes, nu0 = 4 its degrees of freedom; \"from its prior\" draws nu0 s0^2 / chi^2(nu0).",
            [
                Covers("(a) repeatability from its prior, scale and counter perfect", Scene.Perfect) with
                {
                    AtLeast = 0.94,
                    AtMost = 0.96,
                },
                Covers("(b) repeatability 0.4 s0", Scene.Perfect with { FixedScatter = 0.4 }) with
                {
                    AtLeast = 0.95,
                },
                Covers("(b) repeatability 0.7 s0", Scene.Perfect with { FixedScatter = 0.7 }) with
                {
                    AtLeast = 0.95,
                },
                Covers("(b) repeatability s0", Scene.Perfect with { FixedScatter = 1 }) with
                {
                    AtLeast = 0.95,
                },
                Covers("(c) repeatability twice s0", Scene.Perfect with { FixedScatter = 2 }) with
                {
                    AtLeast = 0.80,
                },
                Covers("(d) scale within its limit, 850 divisions, repeatability from its prior", Scene.Usual) with
                {
                    AtLeast = 0.95,
                },
                Covers("(d) scale within its limit, 170 divisions, repeatability from its prior", Scene.Coarse) with
                {
                    AtLeast = 0.95,
                },
                Covers("(d) the same, repeatability s0", Scene.Coarse with { FixedScatter = 1 }) with
                {
                    AtLeast = 0.95,
                },
                Covers("(d) the same from its prior, one tare for all catches", Scene.Coarse with { Taring = TareReading.Shared }) with
                {
                    AtLeast = 0.95,
                },
                Covers("(d) the same from its prior, scale zeroed", Scene.Coarse with { Taring = TareReading.Zeroed }) with
                {
                    AtLeast = 0.95,
                },
                Covers("(d) small seed, 200 divisions, repeatability from its prior", Scene.SmallSeed) with
                {
                    AtLeast = 0.95,
                },
                .. Scene
                    .Four.Skip(1)
                    .Select(each =>
                        Covers($"(d) scale within its limit, repeatability from its prior: {each.Name}", each.Scene) with
                        {
                            AtLeast = 0.95,
                        }
                    ),
                Covers("(d) scale of unknown accuracy, repeatability from its prior", Scene.Unverified) with
                {
                    AtLeast = 0.95,
                },
                Covers("(d) scale known to 2 %, repeatability from its prior", Scene.Poor) with
                {
                    AtLeast = 0.95,
                },
                new StudyCase("interval of the change, same scale, 1 % from day to day", OneToSix, CoversChangeOnTheSameScale)
                {
                    AtLeast = 0.95,
                },
                new StudyCase(
                    "interval of the change, another scale, old value known to 1 %, 1 % from day to day",
                    OneToSix,
                    CoversChangeFromAnotherScale
                )
                {
                    AtLeast = 0.95,
                },
            ]
        );

    private static StudyCase Covers(string name, Scene scene) => new(name, OneToSix, (catches, random) =>
        {
            var test = scene.Draw(catches, random).Run(random);
            var value = test.Evaluated().Estimate.Value;
            return Math.Abs(value.Value - test.OfTheDay.KilogramsPerRevolution) <= value.ExpandedUncertainty;
        });

    // The old value carries the error of the same scale, and nothing else.
    private static bool CoversChangeOnTheSameScale(int catches, SeededRandom random)
    {
        var scene = Scene.Coarse with { DayToDay = CatchTestLimits.DefaultDayToDay };
        var setup = scene.Draw(catches, random);
        var change = random.Between(-0.1, 0.1);
        var before = scene.PerRevolution / (1 + change);
        return Holds(setup.InForce(before * (1 + setup.Scale.SpanError), relativeUncertainty: 0, fromAnotherScale: false), change, random);
    }

    private static bool CoversChangeFromAnotherScale(int catches, SeededRandom random)
    {
        const double OldUncertainty = 0.01;
        var scene = Scene.Coarse with { DayToDay = CatchTestLimits.DefaultDayToDay };
        var change = random.Between(-0.1, 0.1);
        var before = scene.PerRevolution / (1 + change) * (1 + random.Normal(OldUncertainty));
        return Holds(scene.Draw(catches, random).InForce(before, OldUncertainty), change, random);
    }

    private static bool Holds(CatchTestSetup setup, double change, SeededRandom random)
    {
        var found = setup.Run(random).Evaluated().Change!.Delta;
        return Math.Abs(found.Value - change) <= found.ExpandedUncertainty;
    }
}
