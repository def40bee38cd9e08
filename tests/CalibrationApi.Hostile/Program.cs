// Sends requests of every kind to a service of its own and fails when one is not answered as it has to be.
//   --requests 100000   how many
//   --seed 20260501     another seed, other requests
//   --only 4711         prints one request of the run, sends it and prints the answer and the log
using System.Diagnostics;
using System.Globalization;
using CalibrationApi.Hostile;

const int MostGrowth = 50 << 20;

int Given(string name, int otherwise) =>
    Array.IndexOf(args, name) is >= 0 and var at ? int.Parse(args[at + 1], CultureInfo.InvariantCulture) : otherwise;

await using var run = await HostileRun.StartAsync(Given("--seed", 20260501));
if (Given("--only", -1) is >= 0 and var only)
{
    Console.WriteLine(await run.OnlyAsync(only));
    return 0;
}

var clock = Stopwatch.StartNew();
var report = await run.RunAsync(Given("--requests", 100_000), Console.WriteLine);
Console.WriteLine($"{report}  {clock.Elapsed.TotalSeconds:0} s");
return report.Faults.Count == 0 && report.GrowthOverSecondHalf < MostGrowth ? 0 : 1;
