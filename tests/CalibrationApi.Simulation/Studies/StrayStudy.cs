using CalibrationApi.Simulation.Mistakes;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often a catch is called stray.</summary>
public static class StrayStudy
{
    private static readonly int[] ThreeToSix = [3, 4, 5, 6];
    private static readonly int[] ThreeAndFive = [3, 5];

    /// <summary>The study.</summary>
    public static Study Study { get; } =
        new(
            "Stray catches",
            "Share of tests, in per cent, in which a catch is called stray; of tests with one catch off, in which it is that catch.",
            [
                Flags("honest, repeatability from its prior, scale and counter perfect", Scene.Perfect) with
                {
                    AtLeast = 0.007,
                    AtMost = 0.013,
                },
                Flags("honest, repeatability from its prior, 850 divisions", Scene.Usual) with
                {
                    AtLeast = 0.007,
                    AtMost = 0.013,
                },
                Flags("honest, repeatability from its prior, 170 divisions", Scene.Coarse) with
                {
                    AtMost = 0.013,
                },
                .. Scene
                    .Four.Skip(1)
                    .Select(each => Flags($"honest, repeatability from its prior: {each.Name}", each.Scene) with { AtMost = 0.013 }),
                Finds("one catch 10 % high, repeatability s0, 850 divisions", Scene.Usual with { FixedScatter = 1 }, 1.1) with
                {
                    AtLeast = 0.90,
                },
                Finds("one catch 10 % low, repeatability s0, 850 divisions", Scene.Usual with { FixedScatter = 1 }, 0.9) with
                {
                    AtLeast = 0.90,
                },
                Finds("one catch 10 % high, repeatability from its prior, 850 divisions", Scene.Usual, 1.1) with
                {
                    AtLeast = 0.90,
                },
                Finds("one catch 10 % low, repeatability from its prior, 850 divisions", Scene.Usual, 0.9) with
                {
                    AtLeast = 0.90,
                },
            ]
        );

    private static StudyCase Flags(string name, Scene scene) =>
        new(name, ThreeToSix, (catches, random) => scene.Draw(catches, random).Run(random).Evaluated().Agreement.HasStray);

    private static StudyCase Finds(string name, Scene scene, double factor) => new(name, ThreeAndFive, (catches, random) =>
        {
            var which = random.Next(catches);
            var setup = scene.Draw(catches, random) with { Mistakes = [new AnotherElement(factor) { OnlyIn = which }] };
            var agreement = setup.Run(random).Evaluated().Agreement;
            return agreement.HasStray && agreement.FarthestCatch == which;
        });
}
