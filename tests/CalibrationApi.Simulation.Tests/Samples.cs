using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation.Tests;

/// <summary>
/// Means and variances of many seeded draws, compared with what they should be. The tolerance is five standard errors: an
/// honest simulator misses it once in 1.7 million comparisons, and a wrong factor anywhere is far outside.
/// </summary>
internal sealed class Samples
{
    public const int Count = 20_000;
    private const double StandardErrors = 5;

    private readonly double[] values;

    public Samples(IEnumerable<double> draws)
    {
        values = [.. draws];
        Mean = values.Average();
        Variance = values.Sum(value => (value - Mean) * (value - Mean)) / (values.Length - 1);
    }

    public double Mean { get; }

    public double Variance { get; }

    public IReadOnlyList<double> Values => values;

    public static Samples Of(Func<SeededRandom, double> draw, ulong seed = 20_260_301) =>
        new(Enumerable.Range(0, Count).Select(trial => draw(SeededRandom.Of(seed, trial))));

    public void AssertMean(double expected)
    {
        var tolerance = StandardErrors * Math.Sqrt(Variance / values.Length);
        Assert.True(Math.Abs(Mean - expected) <= tolerance, $"Mean {Mean:G8}, expected {expected:G8} within {tolerance:G2}.");
    }

    // The standard error of a variance from the fourth central moment.
    public void AssertVariance(double expected)
    {
        var fourth = values.Average(value => Math.Pow(value - Mean, 4));
        var tolerance = StandardErrors * Math.Sqrt((fourth - Variance * Variance) / values.Length);
        Assert.True(Math.Abs(Variance - expected) <= tolerance, $"Variance {Variance:G8}, expected {expected:G8} within {tolerance:G2}.");
    }
}

/// <summary>Set-ups to start from: an invented cereal meter at 0.36 kg per revolution, everything without error.</summary>
internal static class Given
{
    public const double PerRevolution = 0.36;

    public static MeteringDevice Device { get; } =
        new()
        {
            Displacement = new Volume(0.001),
            BulkDensity = new BulkDensity(600),
            Fill = new FillEfficiency(0.6),
        };

    public static SimulatedScale PerfectScale { get; } = new(new Scale { Division = new Mass(1e-9) });

    public static CatchTestSetup Setup { get; } =
        new()
        {
            Device = Device,
            Scale = PerfectScale,
            Counter = new SimulatedCounter(0),
            PlannedTurns = [47, 47, 47],
        };

    public static double Value(this OneCatch one) => one.Net / one.Counted;
}
