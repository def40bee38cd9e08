namespace CalibrationApi.Benchmarks;

/// <summary>A catch test over HTTP against a bare address of the same host that reads the same body and answers as many bytes.</summary>
internal sealed class RequestComparison : IComparison
{
    private const string Path = "/v1/calculations/catch-test";
    private const int Connections = 16;
    private const int RoundCount = 11;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(1);

    public string Name => "request";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync() =>
        [.. await CompareAsync(isLogged: false, Aim.AtLeast(0.5)), .. await CompareAsync(isLogged: true, Aim.AtLeast(0.4))];

    private static async Task<MeasuredRatio[]> CompareAsync(bool isLogged, Aim aim)
    {
        var body = await File.ReadAllBytesAsync(System.IO.Path.Combine(AppContext.BaseDirectory, "demo-data", "catch-test.json"));
        await using var host = new BenchmarkHost(isLogged);
        host.AnswerBarely(await AnswerLengthAsync(host, body));
        using var ours = await LoadGenerator.PostingAsync(host.EndPoint, Path, body, Connections);
        using var bare = await LoadGenerator.PostingAsync(host.EndPoint, BenchmarkHost.BarePath, body, Connections);
        await bare.RateAsync(WarmUp);
        await ours.RateAsync(WarmUp);

        var (our, known) = await Rounds.CostsAsync(RoundCount, () => ours.RateAsync(Round), () => bare.RateAsync(Round));
        var log = isLogged ? ", with its line in the log" : "";
        return
        [
            new MeasuredRatio(
                $"requests per second of POST {Path}{log} / of a bare POST",
                our.Rate / known.Rate,
                aim,
                FormattableString.Invariant($"{our.Rate:0}/s against {known.Rate:0}/s, {Connections} connections, {body.Length} bytes in")
            ),
            new MeasuredRatio(
                $"time of all cores for a bare POST / for POST {Path}{log}",
                known.Microseconds / our.Microseconds,
                aim,
                FormattableString.Invariant($"{known.Microseconds:0} µs against {our.Microseconds:0} µs, client included")
            ),
        ];
    }

    private static async Task<int> AnswerLengthAsync(BenchmarkHost host, byte[] body)
    {
        using var client = new HttpClient { BaseAddress = host.Address };
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new("application/json");
        using var response = await client.PostAsync(new Uri(Path, UriKind.Relative), content);
        return (await response.EnsureSuccessStatusCode().Content.ReadAsByteArrayAsync()).Length;
    }
}
