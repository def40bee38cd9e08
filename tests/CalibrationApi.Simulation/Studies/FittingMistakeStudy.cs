using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Simulation.Mistakes;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often a change too small for a second test carries the note that a mistake fits it, with and without one.</summary>
public static class FittingMistakeStudy
{
    // A line that nobody needed may stand in few answers.
    private const double Few = 0.10;
    private const double Mostly = 0.50;

    // A tare of this share of the load stays under the limit of a second test.
    private const double UnderTheLimit = 0.09;

    private static readonly int[] SomeCatches = [1, 2, 3, 5];

    /// <summary>The study.</summary>
    public static Study Study { get; } =
        new(
            "Changes that a mistake fits",
            "Share of tests, in per cent. Honest tests and ordinary changes as under likely mistakes, with containers, elements and products on record: how often a change too small for a second test is given a note that a mistake fits it, without any alarm. "
                + "Planted mistakes come without another change and move the test by 8 to 10 %: how often the answer lists the one that was made. "
                + "Listed is what explains the change at least 3.5 times as well as an ordinary one, with a probability of at least 0.1 %: with 3 times honest tests get the note in 10 to 15 %, with 5 times a planted mistake of 8 % is listed in two fifths only. A new lot changes a meter so much by itself that next to nothing is listed.",
            [
                .. Scene.Four.SelectMany(each => Honest(each.Name, Around(each.Scene))),
                .. Scene.Four.SelectMany(each => Planted(each.Name, Around(each.Scene))),
            ]
        )
        {
            Trials = 5_000,
        };

    private static IEnumerable<StudyCase> Honest(string name, MistakeScene scene)
    {
        yield return Noted($"honest: a note, same lot, twelve points: {name}", scene);
        yield return Noted($"honest: a note, same lot, six points: {name}", scene with { Points = 6 });
        yield return Noted($"honest: a note, new lot: {name}", scene with { NewLot = true });
    }

    private static IEnumerable<StudyCase> Planted(string name, MistakeScene scene)
    {
        var load = scene.Scene.PerRevolution * scene.Scene.Turns;
        var light = 0.03 * load;
        yield return Listed(
            $"one point of ten missed: {name}",
            scene with
            {
                Points = 10,
            },
            MistakeCodes.CatchPointMissed,
            new CatchPointMissed()
        );
        yield return Listed($"one point of twelve missed: {name}", scene, MistakeCodes.CatchPointMissed, new CatchPointMissed());
        yield return Listed($"small tare taken off twice: {name}", scene, MistakeCodes.TareTakenOffTwice, new TareTakenOffTwice());
        yield return Listed(
            $"small tare not taken off: {name}",
            scene with
            {
                NetOnly = true,
            },
            MistakeCodes.TareNotTakenOff,
            new TareNotTakenOff()
        );
        yield return Listed(
            $"tare of another container: {name}",
            scene with
            {
                Container = light + UnderTheLimit * load,
                OtherContainer = light,
            },
            MistakeCodes.TareOfAnotherContainer,
            new AnotherContainersTare(light)
        );
    }

    private static MistakeScene Around(Scene scene) =>
        MistakeScene.Usual with
        {
            Scene = scene,
            Container = UnderTheLimit * scene.PerRevolution * scene.Turns,
            ContainerSpread = scene.Scale.Division.Kilograms / 2,
            OtherContainer = 2 * UnderTheLimit * scene.PerRevolution * scene.Turns,
            Capacity = 40,
        };

    private static StudyCase Noted(string name, MistakeScene scene) => new(name, SomeCatches, (catches, random) =>
        {
            var result = scene.Draw(catches, random).Run(random).Evaluated();
            return !result.FromExpected!.IsLarge && result.LikelyMistakes.AlsoPossible.Count > 0;
        }) { AtMost = Few };

    private static StudyCase Listed(string name, MistakeScene scene, MistakeCode code, Mistake mistake) =>
        new($"{name}: listed", SomeCatches, (catches, random) =>
        {
            var found = (scene with { OtherChange = false, Mistake = mistake })
                .Draw(catches, random)
                .Run(random)
                .Evaluated()
                .LikelyMistakes;
            return found.Shown.Concat(found.AlsoPossible).Any(one => one.Code == code);
        }) { AtLeast = Mostly };
}
