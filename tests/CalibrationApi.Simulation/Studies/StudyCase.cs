using System.Globalization;

namespace CalibrationApi.Simulation.Studies;

/// <summary>One question of a study: does it happen in a trial, and how often may it?</summary>
/// <param name="Name">What is simulated and what is counted.</param>
/// <param name="Catches">Numbers of catches for which it is asked.</param>
/// <param name="Happens">Makes one trial with so many catches.</param>
public sealed record StudyCase(string Name, IReadOnlyList<int> Catches, Func<int, SeededRandom, bool> Happens)
{
    // Trials handed to a core at once: enough that handing out costs nothing.
    private const int TrialsAtOnce = 500;

    /// <summary>Smallest permitted share; null for none.</summary>
    public double? AtLeast { get; init; }

    /// <summary>Largest permitted share; null for none.</summary>
    public double? AtMost { get; init; }

    /// <summary>The bounds in words.</summary>
    public string Bound =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(AtLeast, AtMost) switch
    {
        (null, null) => "",
        ({ } least, null) => $">= {100 * least:0.##}",
        (null, { } most) => $"<= {100 * most:0.##}",
        ({ } least, { } most) => $"{100 * least:0.##} to {100 * most:0.##}",
    }}"
        );

    /// <summary>Counts over many trials, each with a stream of its own, so that the count does not depend on who runs which.</summary>
    public Rate Run(ulong seed, int trials, int catches)
    {
        var ofThis = SeededRandom.SeedFor(seed, string.Create(CultureInfo.InvariantCulture, $"{Name}/{catches}"));
        var hits = 0L;
        Parallel.For(
            0,
            (trials + TrialsAtOnce - 1) / TrialsAtOnce,
            () => 0L,
            (block, _, sum) =>
            {
                for (var trial = block * TrialsAtOnce; trial < Math.Min(trials, (block + 1) * TrialsAtOnce); trial++)
                    sum += Happens(catches, SeededRandom.Of(ofThis, trial)) ? 1 : 0;
                return sum;
            },
            sum => Interlocked.Add(ref hits, sum)
        );
        return new Rate(hits, trials, AtLeast, AtMost);
    }
}
