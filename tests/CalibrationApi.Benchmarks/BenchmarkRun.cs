using System.Diagnostics;
using System.Reflection;

namespace CalibrationApi.Benchmarks;

/// <summary>Runs every comparison, or those named on the command line, and prints their ratios.</summary>
internal static class BenchmarkRun
{
    public static async Task<int> Main(string[] names)
    {
        if (names is [BareHost.Word])
            return await BareHost.RunAsync();
        IComparison[] all =
        [
            .. Assembly
                .GetExecutingAssembly()
                .GetTypes()
                .Where(type => type.IsAssignableTo(typeof(IComparison)) && !type.IsAbstract)
                .Select(type => (IComparison)Activator.CreateInstance(type)!)
                .OrderBy(comparison => comparison.Name, StringComparer.Ordinal),
        ];
        if (names.Except(all.Select(comparison => comparison.Name)).FirstOrDefault() is { } unknown)
        {
            await Console.Error.WriteLineAsync(
                $"There is no comparison '{unknown}'. Known: {string.Join(", ", all.Select(comparison => comparison.Name))}."
            );
            return 1;
        }

        if (!IsOptimized())
            Console.WriteLine("This is a Debug build: nothing below means anything. Run with -c Release.");
        foreach (var comparison in all.Where(comparison => names.Length == 0 || names.Contains(comparison.Name)))
        {
            foreach (var measured in await comparison.RunAsync())
                Console.WriteLine(
                    FormattableString.Invariant(
                        $"{comparison.Name}: {measured.What}: {measured.Ratio:0.000} ({measured.Aim}: {(measured.Aim.IsMetBy(measured.Ratio) ? "met" : "NOT met")}; {measured.Detail})"
                    )
                );
        }

        return 0;
    }

    private static bool IsOptimized() =>
        !typeof(Engine.CatchTests.CatchTestEvaluation)
            .Assembly.GetCustomAttributes<DebuggableAttribute>()
            .Any(attribute => attribute.IsJITOptimizerDisabled);
}
