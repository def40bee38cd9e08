using System.Diagnostics;

namespace CalibrationApi.Benchmarks;

/// <summary>Alternating rounds of two things, so that whatever slows the machine slows both.</summary>
internal static class Rounds
{
    /// <summary>Medians of the measures of <paramref name="ours"/> and <paramref name="known"/>.</summary>
    public static async Task<(double Ours, double Known)> MediansAsync(int rounds, Func<Task<double>> ours, Func<Task<double>> known)
    {
        var (first, second) = (new double[rounds], new double[rounds]);
        for (var i = 0; i < rounds; i++)
        {
            // Who goes first changes too.
            if (i % 2 == 0)
                first[i] = await ours();
            second[i] = await known();
            if (i % 2 != 0)
                first[i] = await ours();
        }

        return (Median(first), Median(second));
    }

    /// <summary>Seconds that one call takes on average.</summary>
    public static double SecondsPerCall(int calls, Action call)
    {
        var start = Stopwatch.GetTimestamp();
        for (var i = 0; i < calls; i++)
            call();
        return Stopwatch.GetElapsedTime(start).TotalSeconds / calls;
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return values.Length % 2 == 1 ? values[values.Length / 2] : (values[values.Length / 2 - 1] + values[values.Length / 2]) / 2;
    }
}
