using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Simulation.Mistakes;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often each verdict is given, and how often it is wrong.</summary>
public static class DecisionStudy
{
    private static readonly int[] OneToSix = [1, 2, 3, 4, 5, 6];
    private static readonly Scene Usual = Scene.Usual with { DayToDay = CatchTestLimits.DefaultDayToDay };
    private static readonly Scene Coarse = Scene.Coarse with { DayToDay = CatchTestLimits.DefaultDayToDay };

    /// <summary>The study.</summary>
    public static Study Study { get; } =
        new(
            "Decisions",
            "Share of tests, in per cent, that end in the verdict named. Tolerance 5 %, 1 % from day to day, repeatability from its prior, scale anywhere within its limit; \"off\" is the number in force against the true long-run value.",
            [
                Says("keep: number off by exactly the tolerance, 850 divisions", Usual, Verdict.Keep, random => Sign(random) * 0.05) with
                {
                    AtMost = 0.05,
                },
                Says("keep: number off by exactly the tolerance, 170 divisions", Coarse, Verdict.Keep, random => Sign(random) * 0.05) with
                {
                    AtMost = 0.05,
                },
                .. Scene
                    .Four.Skip(1)
                    .Select(each =>
                        Says(
                            $"keep: number off by exactly the tolerance: {each.Name}",
                            each.Scene with
                            {
                                DayToDay = CatchTestLimits.DefaultDayToDay,
                            },
                            Verdict.Keep,
                            random => Sign(random) * 0.05
                        ) with
                        {
                            AtMost = 0.05,
                        }
                    ),
                Says("keep: number off by 5 to 10 %, 850 divisions", Usual, Verdict.Keep, random =>
                    Sign(random) * random.Between(0.05, 0.10)
                ) with
                {
                    AtMost = 0.05,
                },
                Says("keep: number right, 850 divisions", Usual, Verdict.Keep, _ => 0) with
                {
                    AtLeast = 0.80,
                },
                Says("repeat: number right, 850 divisions", Usual, Verdict.Repeat, _ => 0) with
                {
                    AtMost = 0.05,
                },
                Says("adopt: number right, 850 divisions", Usual, Verdict.Adopt, _ => 0) with
                {
                    AtMost = 0.20,
                },
                Says("investigate: number right, 850 divisions", Usual, Verdict.Investigate, _ => 0) with
                {
                    AtMost = 0.02,
                },
                Says("adopt: number off by 8 %, 850 divisions", Usual, Verdict.Adopt, random => Sign(random) * 0.08) with
                {
                    AtLeast = 0.85,
                },
                new StudyCase(
                    "adopt: number right, of two catches the one that is 8 % off kept, the good one left out",
                    [2],
                    KeepsTheBadOne
                )
                {
                    AtMost = 0.03,
                },
                .. Scene.Four.Select(each => new StudyCase(
                    $"moreCatches are enough for 1.5 % (dusty 3 %), after so many catches: {each.Name}",
                    [1, 2, 3],
                    (catches, random) => MoreCatchesAreEnough(each.Scene, catches, random)
                )
                {
                    AtLeast = 0.80,
                }),
                Says("keep: number right, scale known to 5 %, so that no interval is narrow enough", Scene.Useless, Verdict.Keep, _ =>
                    0
                ) with
                {
                    AtMost = 0,
                },
            ]
        )
        {
            // The promise of more catches makes fifty catches a test.
            Trials = 20_000,
        };

    // The number in force is off, so the true value over it is 1 / (1 + off); the sign convention of engine and tolerance is
    // that of the truth against the number typed in.
    private static StudyCase Says(string name, Scene scene, Verdict verdict, Func<SeededRandom, double> off) =>
        new(name, OneToSix, (catches, random) =>
        {
            var inForce = scene.PerRevolution / (1 + off(random));
            return scene.Draw(catches, random).InForce(inForce).Run(random).Evaluated().Decision.Verdict == verdict;
        });

    // Fifty catches are made; of those the answer sees the first few, and then as many more as it asked for.
    private static bool MoreCatchesAreEnough(Scene scene, int catches, SeededRandom random)
    {
        while (true)
        {
            var wanted = scene == Scene.Dusty ? 0.03 : 0.015;
            var question = scene.Draw(CatchCount.Most, random).Run(random).Question;
            question = question with { Limits = new CatchTestLimits { WantedPrecision = wanted } };
            CatchTestResult After(int made) =>
                CatchTestEvaluation.Evaluate(question with { Catches = [.. question.Catches.Take(made)] }).Result!;
            if (After(catches).Decision is { Rule: CatchTestVerdict.Rule.PrecisionNotReached, MoreCatches: { } more })
                return After(catches + more).Estimate.RelativeExpanded <= wanted;
        }
    }

    private static bool KeepsTheBadOne(int catches, SeededRandom random)
    {
        var factor = 1 + Sign(random) * 0.08;
        var setup = Usual.Draw(catches, random).InForce(Usual.PerRevolution) with
        {
            Mistakes = [new AnotherElement(factor) { OnlyIn = 0 }],
        };
        var test = setup.Run(random);
        var left = test.Question.Catches[1];
        var question = test.Question with
        {
            Catches = [test.Question.Catches[0], Catch.Net(left.IndicatedNet, left.Revolutions, "It looked odd.")],
        };
        return CatchTestEvaluation.Evaluate(question).Result!.Decision.Verdict == Verdict.Adopt;
    }

    private static double Sign(SeededRandom random) => random.NextDouble() < 0.5 ? -1 : 1;
}
