using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// Catch tests as one batch against the same ones sent one by one, and against what all cores could do if nothing but the work itself took
/// time.
/// </summary>
internal sealed class BatchComparison : IComparison
{
    private const string Path = "/v1/calculations/catch-test";
    private const int Lines = 20_000;
    private const int RoundCount = 9;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(6);
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(1);

    public string Name => "batch";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        var question = JsonSerializer.SerializeToUtf8Bytes(
            JsonSerializer.Deserialize<JsonElement>(
                await File.ReadAllBytesAsync(System.IO.Path.Combine(AppContext.BaseDirectory, "demo-data", "catch-test.json"))
            )
        );
        await using var host = new BenchmarkHost();
        using var single = await LoadGenerator.PostingAsync(host.EndPoint, Path, question, 1);
        byte[] line = [.. question, (byte)'\n'];
        var body = new byte[line.Length * Lines];
        for (var i = 0; i < Lines; i++)
            line.CopyTo(body, i * line.Length);
        var work = new Work(question);

        var start = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(start) < WarmUp)
        {
            await single.RateAsync(Round / 4);
            await BatchRateAsync(host, body);
            work.Rate(Round / 4);
        }

        var (batch, oneByOne) = await Rounds.MediansAsync(RoundCount, () => BatchRateAsync(host, body), () => single.RateAsync(Round));
        var (onAll, together) = await Rounds.MediansAsync(RoundCount, () => BatchRateAsync(host, body), () => TogetherAsync(question));
        var (again, alone) = await Rounds.MediansAsync(
            RoundCount,
            () => BatchRateAsync(host, body),
            () => Task.FromResult(work.Rate(Round))
        );
        return
        [
            new MeasuredRatio(
                "catch tests per second in one batch / one by one on one connection",
                batch / oneByOne,
                Aim.AtLeast(3),
                FormattableString.Invariant($"{batch:0}/s against {oneByOne:0}/s, {Lines} lines of {line.Length} bytes")
            ),
            new MeasuredRatio(
                "catch tests per second in one batch / cores x one thread that only reads, checks, evaluates and writes",
                again / (Environment.ProcessorCount * alone),
                Aim.AtLeast(0.7),
                FormattableString.Invariant($"{again:0}/s against {Environment.ProcessorCount} x {alone:0}/s")
            ),
            // On a machine that others use too, several threads get less than so many times the one.
            new MeasuredRatio(
                "catch tests per second in one batch / the same work alone on a thread for each core",
                onAll / together,
                Aim.AtLeast(0.7),
                FormattableString.Invariant($"{onAll:0}/s against {together:0}/s")
            ),
        ];
    }

    private static async Task<double> TogetherAsync(byte[] question) =>
        (
            await Task.WhenAll(Enumerable.Range(0, Environment.ProcessorCount).Select(_ => Task.Run(() => new Work(question).Rate(Round))))
        ).Sum();

    private static async Task<double> BatchRateAsync(BenchmarkHost host, byte[] body)
    {
        using var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync(host.EndPoint);
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"POST {Path}/batch HTTP/1.1\r\nHost: {host.EndPoint}\r\nConnection: close\r\nContent-Type: application/x-ndjson\r\nContent-Length: {body.Length}\r\n\r\n"
        );
        var start = Stopwatch.GetTimestamp();
        await socket.SendAsync(Encoding.ASCII.GetBytes(head));
        var sending = Task.Run(async () =>
        {
            for (var sent = 0; sent < body.Length; )
                sent += await socket.SendAsync(body.AsMemory(sent));
        });
        var (buffer, answered, afterReturn) = (new byte[1 << 18], 0, false);
        while (await socket.ReceiveAsync(buffer) is > 0 and var read)
            answered += Ends(buffer.AsSpan(0, read), ref afterReturn);
        await sending;
        return answered == Lines
            ? Lines / Stopwatch.GetElapsedTime(start).TotalSeconds
            : throw new InvalidOperationException($"{answered} of {Lines} lines were answered.");
    }

    // Lines end with a line feed alone, headers and chunks of the transfer with a carriage return before it.
    private static int Ends(ReadOnlySpan<byte> bytes, ref bool afterReturn)
    {
        var count = bytes.Count((byte)'\n') - bytes.Count("\r\n"u8) - (afterReturn && bytes[0] == '\n' ? 1 : 0);
        afterReturn = bytes[^1] == '\r';
        return count;
    }

    /// <summary>What has to be done for each question, with nothing around it.</summary>
    private sealed class Work(byte[] question)
    {
        private readonly JsonTypeInfo<CatchTestRequest> type =
            (JsonTypeInfo<CatchTestRequest>)JsonSettings.Contract.GetTypeInfo(typeof(CatchTestRequest));
        private readonly IValidator<CatchTestRequest> validator = new RequestValidator<CatchTestRequest>(TimeProvider.System);
        private readonly System.Buffers.ArrayBufferWriter<byte> output = new();

        public double Rate(TimeSpan time)
        {
            using var writer = new Utf8JsonWriter(output, JsonAnswer.Writing);
            var start = Stopwatch.GetTimestamp();
            var count = 0;
            for (; Stopwatch.GetElapsedTime(start) < time; count++)
            {
                ReadOnlySpan<byte> text = question;
                var (request, _) = JsonBody.Parse(ref text, type);
                if (
                    RequestFilter.Broken(validator, request!) is not null
                    || CatchTestCalculation.Declaration.Ask(request!, null).Result is not JsonAnswer<CatchTestAnswer> answer
                )
                    throw new InvalidOperationException("The question of the benchmark is refused.");
                answer.WriteTo(writer);
                writer.Flush();
                writer.Reset();
                output.ResetWrittenCount();
            }

            return count / Stopwatch.GetElapsedTime(start).TotalSeconds;
        }
    }
}
