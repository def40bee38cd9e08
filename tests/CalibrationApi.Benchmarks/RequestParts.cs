using System.Buffers;
using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// What the parts of one calculated catch test cost, each by itself on one thread; printed as a table, since there is nothing to compare
/// with.
/// </summary>
internal sealed class RequestParts : IComparison
{
    private const int RoundCount = 9;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(4);
    private static readonly TimeSpan Round = TimeSpan.FromMilliseconds(200);

    public string Name => "parts";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        var question = await File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "demo-data", "catch-test.json"));
        var type = (JsonTypeInfo<CatchTestRequest>)JsonSettings.Contract.GetTypeInfo(typeof(CatchTestRequest));
        var validator = new RequestValidator<CatchTestRequest>(TimeProvider.System);
        var request = JsonSerializer.Deserialize(question, type)!;
        var test = CatchTestMapping.ToEngine(request);
        var result = CatchTestEvaluation.Evaluate(test).Result!;
        var answer = JsonAnswer.Of(CatchTestMapping.ToAnswer(request, result, CatchTestMapping.UnitsFor(request, null)));
        var output = new ArrayBufferWriter<byte>();
        using var writer = new Utf8JsonWriter(output, JsonAnswer.Writing);
        (string Part, Action Work)[] parts =
        [
            ("strict reading", Read),
            ("validation", () => RequestFilter.Broken(validator, request)),
            ("mapping to the engine", () => CatchTestMapping.ToEngine(request)),
            ("engine", () => CatchTestEvaluation.Evaluate(test)),
            ("sentences and mapping to the answer", () =>
                CatchTestMapping.ToAnswer(request, result, CatchTestMapping.UnitsFor(request, null))
            ),
            ("writing", Write),
        ];

        foreach (var (_, work) in parts)
            Repeat(work, WarmUp);
        var times = parts.ToDictionary(part => part.Part, _ => new List<double>());
        for (var i = 0; i < RoundCount; i++)
        {
            foreach (var (part, work) in parts)
                times[part].Add(Repeat(work, Round));
        }

        var medians = parts.Select(part => (part.Part, Microseconds: Rounds.Median(times[part.Part]))).ToArray();
        var sum = medians.Sum(one => one.Microseconds);
        foreach (var (part, microseconds) in medians.Append(("all of it", sum)))
            Console.WriteLine(FormattableString.Invariant($"{Name}: {part}: {microseconds:0.0} µs of one core ({microseconds / sum:P0})"));
        return [];

        void Read()
        {
            ReadOnlySpan<byte> text = question;
            JsonBody.Parse(ref text, type);
        }

        void Write()
        {
            answer.WriteTo(writer);
            writer.Flush();
            writer.Reset();
            output.ResetWrittenCount();
        }
    }

    // Microseconds of this process for each, so that a busy machine does not count.
    private static double Repeat(Action work, TimeSpan time)
    {
        var (start, before, count) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime, 0);
        for (; Stopwatch.GetElapsedTime(start) < time; count++)
            work();
        return (Environment.CpuUsage.TotalTime - before).TotalMicroseconds / count;
    }
}
