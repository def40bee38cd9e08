using System.Diagnostics;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// The service from its start to its first answer, at rest, and in its first seconds under load, against a bare host; as it is
/// published (compiled ahead), and as a build leaves it, which is what the first command of the README starts.
/// </summary>
internal sealed class StartComparison : IComparison
{
    private const string Question = "/v1/calculations/catch-test";
    private const string Assembly = "CalibrationApi.dll";
    private const int RoundCount = 7;
    private const int Connections = 16;
    private const int TriesBefore = 1;
    private static readonly TimeSpan FirstSeconds = TimeSpan.FromSeconds(3);

    private readonly byte[] body = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "demo-data", "catch-test.json"));

    public string Name => "start";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("calibration-published-");
        try
        {
            await PublishAsync(folder.FullName);
            var published = Path.Combine(folder.FullName, Assembly);
            var built = Path.Combine(AppContext.BaseDirectory, Assembly);
            return
            [
                .. await CompareAsync("the published service", published, Aim.AtMost(3)),
                .. await CompareAsync("the service as built", built, Aim.AtMost(9)),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private async Task<IReadOnlyList<MeasuredRatio>> CompareAsync(string what, string program, Aim start)
    {
        var (ours, bare) = (new List<Started>(), new List<Started>());
        for (var i = 0; i < RoundCount + TriesBefore; i++)
        {
            var (our, known) = (await MeasureAsync(program), await MeasureAsync(typeof(BareHost).Assembly.Location, BareHost.Word));
            // The first start reads files that the next ones find in memory.
            if (i < TriesBefore)
                continue;
            ours.Add(our);
            bare.Add(known);
        }

        MeasuredRatio Ratio(string measure, Func<Started, double> of, string unit, Aim aim)
        {
            var (our, known) = (Rounds.Median(ours.Select(of)), Rounds.Median(bare.Select(of)));
            return new MeasuredRatio(
                $"{measure} of {what} / of a bare host",
                our / known,
                aim,
                FormattableString.Invariant($"{our:0.00} {unit} against {known:0.00} {unit}")
            );
        }

        return
        [
            Ratio("time from the start to the first answer", one => one.FirstAnswer, "s", start),
            Ratio("time of all cores from the start to the first answer", one => one.OfCores, "s", start),
            Ratio("memory at rest", one => one.Memory, "MiB", Aim.AtMost(2)),
            Ratio(
                $"99th percentile of the time of a request in the first {FirstSeconds.TotalSeconds:0} seconds",
                one => one.Tail,
                "ms",
                Aim.AtMost(10)
            ),
        ];
    }

    private async Task<Started> MeasureAsync(string program, params string[] arguments)
    {
        using var started = await StartedProgram.RunAsync(program, arguments, Question, body);
        var memory = await started.MemoryAtRestAsync();
        using var load = await ExchangeLoad.PostingAsync(started.EndPoint, Question, body, Connections, 200);
        var took = await load.RunAsync(FirstSeconds);
        return new Started(started.FirstAnswer, started.FirstAnswerOfCores, memory, took[took.Length * 99 / 100]);
    }

    private static async Task PublishAsync(string folder)
    {
        var top = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(top.FullName, "CalibrationApi.sln")))
            top = top.Parent ?? throw new InvalidOperationException("The benchmarks run outside of their repository.");
        using var publishing = Process.Start(
            new ProcessStartInfo(
                "dotnet",
                ["publish", Path.Combine(top.FullName, "src", "CalibrationApi"), "-c", "Release", "-o", folder, "-v", "q"]
            )
        )!;
        await publishing.WaitForExitAsync();
        if (publishing.ExitCode != 0)
            throw new InvalidOperationException("The service could not be published.");
    }

    private sealed record Started(double FirstAnswer, double OfCores, double Memory, double Tail);
}
