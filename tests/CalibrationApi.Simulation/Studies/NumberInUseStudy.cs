using System.Globalization;
using System.Text;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How far off the number in use is after a test, by what is done with its answer.</summary>
public static class NumberInUseStudy
{
    /// <summary>Its heading.</summary>
    public const string Title = "Number in use";

    /// <summary>Tests for each figure of its table.</summary>
    public const int Trials = 10_000;

    /// <summary>Standard deviations of ln of the old number over the truth, and the numbers of catches.</summary>
    public static readonly IReadOnlyList<double> Deviations = [0.005, 0.01, 0.02, 0.03, 0.05];

    /// <inheritdoc cref="Deviations"/>
    public static readonly IReadOnlyList<int> Catches = [1, 2, 3, 5];

    private const double MostWhereRight = 0.01;
    private const double MostAnywhere = 0.02;
    private const int TrialsAtOnce = 500;

    /// <summary>Root mean square error of ln of the number in use.</summary>
    /// <param name="Left">The old number always stays.</param>
    /// <param name="Followed">The old number stays with the verdict keep, the number to use takes its place with adopt.</param>
    /// <param name="Adopted">The measured value always takes its place.</param>
    public sealed record Errors(double Left, double Followed, double Adopted);

    /// <summary>What following may cost at most over leaving, where the old number was right to 1 %.</summary>
    public static double MostOverLeaving(int catches) => catches == 1 ? 1.25 : 1.15;

    /// <summary>Whether an answer that is followed pays.</summary>
    public static bool Holds(double deviation, int catches, Errors errors) =>
        errors.Followed <= MostAnywhere && (deviation != MostWhereRight || errors.Followed <= MostOverLeaving(catches) * errors.Left);

    /// <summary>Simulates tests of the bulk scene that reach the wanted precision and end in keep or adopt.</summary>
    public static Errors Run(double deviation, int catches, int trials)
    {
        var seed = SeededRandom.SeedFor(Study.Seed, string.Create(CultureInfo.InvariantCulture, $"{Title}/{deviation}/{catches}"));
        var blocks = new (double Left, double Followed, double Adopted, int Count)[(trials + TrialsAtOnce - 1) / TrialsAtOnce];
        Parallel.For(0, blocks.Length, block =>
        {
            for (var trial = block * TrialsAtOnce; trial < Math.Min(trials, (block + 1) * TrialsAtOnce); trial++)
            {
                if (One(deviation, catches, SeededRandom.Of(seed, trial)) is not { } errors)
                    continue;
                blocks[block].Left += errors.Left * errors.Left;
                blocks[block].Followed += errors.Followed * errors.Followed;
                blocks[block].Adopted += errors.Adopted * errors.Adopted;
                blocks[block].Count++;
            }
        });
        var count = blocks.Sum(block => block.Count);
        return new Errors(
            Math.Sqrt(blocks.Sum(block => block.Left) / count),
            Math.Sqrt(blocks.Sum(block => block.Followed) / count),
            Math.Sqrt(blocks.Sum(block => block.Adopted) / count)
        );
    }

    /// <summary>The table, and how many of its figures are outside what is asked.</summary>
    public static (string Table, int Broken) Table(int trials)
    {
        var text = new StringBuilder();
        var broken = 0;
        text.Append(
            CultureInfo.InvariantCulture,
            $"### {Title}\n\nRoot mean square error of the number in use, in per cent, over tests of the bulk scene that end in keep or adopt; the old number is off by a normal deviate and known to 1 %, 1 % from day to day, repeatability from its prior. "
        );
        text.Append(
            "\"Left\": the old number stays whatever is found; \"followed\": it stays with keep and gives way to valueToUse with adopt; \"measured\": the measured value always takes its place. "
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"Asked: followed at most 2 %, and where the old number is right to 1 % at most {MostOverLeaving(1)} times left with one catch, {MostOverLeaving(2)} with more.\nSeed {Study.Seed}, {trials} tests for each figure.\n\n"
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"| per cent, by number of catches | {string.Join(" | ", Catches)} |\n|---|{string.Concat(Catches.Select(_ => "---:|"))}\n"
        );
        foreach (var deviation in Deviations)
        {
            var errors = Catches.ToDictionary(catches => catches, catches => Run(deviation, catches, trials));
            broken += errors.Count(each => !Holds(deviation, each.Key, each.Value));
            Row("left", each => each.Left);
            Row("followed", each => each.Followed, mark: true);
            Row("measured", each => each.Adopted);

            void Row(string what, Func<Errors, double> figure, bool mark = false) =>
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| old number off by {100 * deviation:0.#} %, {what} | {string.Join(" | ", errors.Select(each => string.Create(CultureInfo.InvariantCulture, $"{100 * figure(each.Value):0.00}{(mark && !Holds(deviation, each.Key, each.Value) ? " (!)" : "")}")))} |\n"
                );
        }

        return (text.ToString(), broken);
    }

    private static Errors? One(double deviation, int catches, SeededRandom random)
    {
        const double Known = 0.01;
        var off = random.Normal(deviation);
        var scene = Scene.Usual with { DayToDay = CatchTestLimits.DefaultDayToDay };
        var result = scene.Draw(catches, random).InForce(scene.PerRevolution * Math.Exp(off), Known).Run(random).Evaluated();
        if (result.Decision.Verdict is not (Verdict.Keep or Verdict.Adopt))
            return null;
        var followed = result.ToUse is { } used ? Math.Log(used.Value.KilogramsPerRevolution / scene.PerRevolution) : off;
        return new Errors(off, followed, Math.Log(result.Estimate.Value.Value / scene.PerRevolution));
    }
}
