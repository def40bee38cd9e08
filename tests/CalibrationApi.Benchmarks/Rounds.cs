using System.Diagnostics;

namespace CalibrationApi.Benchmarks;

/// <summary>Alternating rounds of two things, so that whatever slows the machine slows both.</summary>
internal static class Rounds
{
    /// <summary>Medians of the measures of <paramref name="ours"/> and <paramref name="known"/>.</summary>
    public static async Task<(double Ours, double Known)> MediansAsync(int rounds, Func<Task<double>> ours, Func<Task<double>> known)
    {
        var (first, second) = await AlternatingAsync(rounds, ours, known);
        return (Median(first), Median(second));
    }

    /// <summary>Medians of the rates of two things, and of the time that all cores spent on each single one.</summary>
    public static async Task<(Cost Ours, Cost Known)> CostsAsync(int rounds, Func<Task<double>> ours, Func<Task<double>> known)
    {
        var (first, second) = await AlternatingAsync(rounds, () => CostAsync(ours), () => CostAsync(known));
        return (Cost.MedianOf(first), Cost.MedianOf(second));
    }

    /// <summary>Seconds that one call takes on average.</summary>
    public static double SecondsPerCall(int calls, Action call)
    {
        var start = Stopwatch.GetTimestamp();
        for (var i = 0; i < calls; i++)
            call();
        return Stopwatch.GetElapsedTime(start).TotalSeconds / calls;
    }

    public static double Median(IEnumerable<double> measured)
    {
        double[] values = [.. measured.Order()];
        return values.Length % 2 == 1 ? values[values.Length / 2] : (values[values.Length / 2 - 1] + values[values.Length / 2]) / 2;
    }

    private static async Task<(T[] Ours, T[] Known)> AlternatingAsync<T>(int rounds, Func<Task<T>> ours, Func<Task<T>> known)
    {
        var (first, second) = (new T[rounds], new T[rounds]);
        for (var i = 0; i < rounds; i++)
        {
            // Who goes first changes too.
            if (i % 2 == 0)
                first[i] = await ours();
            second[i] = await known();
            if (i % 2 != 0)
                first[i] = await ours();
        }

        return (first, second);
    }

    private static async Task<Cost> CostAsync(Func<Task<double>> rateAsync)
    {
        var (start, before) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
        var rate = await rateAsync();
        var used = Environment.CpuUsage.TotalTime - before;
        return new Cost(rate, used.TotalMicroseconds / (rate * Stopwatch.GetElapsedTime(start).TotalSeconds));
    }
}

/// <summary>What something costs.</summary>
/// <param name="Rate">How many of it in a second.</param>
/// <param name="Microseconds">Time of all cores for one. Unlike a rate it hardly depends on what else the machine does.</param>
internal sealed record Cost(double Rate, double Microseconds)
{
    public static Cost MedianOf(IReadOnlyCollection<Cost> costs) =>
        new(Rounds.Median(costs.Select(cost => cost.Rate)), Rounds.Median(costs.Select(cost => cost.Microseconds)));
}
