using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often honest catches are said not to agree, at any number of catches.</summary>
public static class AgreementStudy
{
    private static readonly int[] TwoToTwenty = [2, 3, 4, 5, 6, 10, 20];

    /// <summary>The study.</summary>
    public static Study Study { get; } =
        new(
            "Agreement of honest catches",
            "Share of honest tests, in per cent, in which a test of agreement speaks against the catches: any of them, with 5 % for all together, and the scatter at 1 %, from which it stops a test when it is wider than the tolerance. "
                + "Both shares are promised averaged over the prior of the repeatability; a meter that repeats just as believed is hit less often, one that repeats half as well more often, as it should be.",
            [
                .. Scene.Four.Select(each => Disagree($"not in agreement, from its prior: {each.Name}", each.Scene) with { AtMost = 0.05 }),
                Disagree("not in agreement, from its prior, scale and counter perfect", Scene.Perfect) with
                {
                    AtLeast = 0.03,
                    AtMost = 0.05,
                },
                .. Scene.Four.Select(each =>
                    ScattersAtOnePercent($"scatter below 1 %, from its prior: {each.Name}", each.Scene) with
                    {
                        AtMost = 0.011,
                    }
                ),
                ScattersAtOnePercent("scatter below 1 %, from its prior, scale and counter perfect", Scene.Perfect) with
                {
                    AtLeast = 0.009,
                    AtMost = 0.011,
                },
                .. Scene.Four.Select(each =>
                    Disagree($"not in agreement, repeatability s0: {each.Name}", each.Scene with { FixedScatter = 1 }) with
                    {
                        AtMost = 0.05,
                    }
                ),
                .. Scene.Four.Select(each =>
                    Disagree($"not in agreement, repeatability twice s0: {each.Name}", each.Scene with { FixedScatter = 2 }) with
                    {
                        AtMost = 0.30,
                    }
                ),
            ]
        )
        {
            Trials = 20_000,
        };

    private static StudyCase Disagree(string name, Scene scene) =>
        new(name, TwoToTwenty, (catches, random) => !scene.Draw(catches, random).Run(random).Evaluated().Agreement.Agree);

    private static StudyCase ScattersAtOnePercent(string name, Scene scene) =>
        new(name, TwoToTwenty, (catches, random) =>
            scene.Draw(catches, random).Run(random).Evaluated().Agreement.QProbability < CatchTestVerdict.InvestigateProbability
        );
}
