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
    private const int StartRounds = 7;
    private const int LoadRounds = 3;
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
            return await CompareAsync([
                new("the published service", Aim.AtMost(3), published),
                new("the service as built", Aim.AtMost(9), built),
                new("a bare host", Aim.AtMost(1), typeof(BareHost).Assembly.Location, BareHost.Word),
            ]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // One bare host for both, and only some of the starts go on to rest and load, which take the time.
    private async Task<IReadOnlyList<MeasuredRatio>> CompareAsync(Measured[] programs)
    {
        var starts = programs.ToDictionary(program => program, _ => new List<Started>());
        var loads = programs.ToDictionary(program => program, _ => new List<Loaded>());
        for (var i = 0; i < StartRounds + TriesBefore; i++)
        {
            foreach (var program in programs)
            {
                using var started = await StartedProgram.RunAsync(program.Path, program.Arguments, Question, body);
                // The first start reads files that the next ones find in memory.
                if (i < TriesBefore)
                    continue;
                starts[program].Add(new Started(started.FirstAnswer, started.FirstAnswerOfCores));
                if (i < TriesBefore + LoadRounds)
                    loads[program].Add(await LoadAsync(started));
            }
        }

        var bare = programs[^1];
        return
        [
            .. programs[..^1]
                .SelectMany(ours =>
                    (MeasuredRatio[])
                        [
                            Ratio(starts, "time from the start to the first answer", one => one.FirstAnswer, "s", ours, bare, ours.Aim),
                            Ratio(
                                starts,
                                "time of all cores from the start to the first answer",
                                one => one.OfCores,
                                "s",
                                ours,
                                bare,
                                ours.Aim
                            ),
                            Ratio(loads, "memory at rest", one => one.Memory, "MiB", ours, bare, Aim.AtMost(2)),
                            Ratio(
                                loads,
                                $"99th percentile of the time of a request in the first {FirstSeconds.TotalSeconds:0} seconds",
                                one => one.Tail,
                                "ms",
                                ours,
                                bare,
                                Aim.AtMost(10)
                            ),
                        ]
                ),
        ];
    }

    private static MeasuredRatio Ratio<T>(
        Dictionary<Measured, List<T>> measures,
        string measure,
        Func<T, double> of,
        string unit,
        Measured ours,
        Measured bare,
        Aim aim
    )
    {
        var (our, known) = (Rounds.Median(measures[ours].Select(of)), Rounds.Median(measures[bare].Select(of)));
        return new MeasuredRatio(
            $"{measure} of {ours.What} / of {bare.What}",
            our / known,
            aim,
            FormattableString.Invariant($"{our:0.00} {unit} against {known:0.00} {unit}")
        );
    }

    private async Task<Loaded> LoadAsync(StartedProgram started)
    {
        var memory = await started.MemoryAtRestAsync();
        using var load = await ExchangeLoad.PostingAsync(started.EndPoint, Question, body, Connections, 200);
        var took = await load.RunAsync(FirstSeconds);
        return new Loaded(memory, took[took.Length * 99 / 100]);
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

    private sealed record Measured(string What, Aim Aim, string Path, params string[] Arguments);

    private sealed record Started(double FirstAnswer, double OfCores);

    private sealed record Loaded(double Memory, double Tail);
}
