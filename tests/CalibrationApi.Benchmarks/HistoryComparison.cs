using System.Text.Json.Nodes;
using CalibrationApi.Storage;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Benchmarks;

/// <summary>A page of the history of many tests against the same page of few.</summary>
internal sealed class HistoryComparison : IComparison
{
    private const int Few = 1_000;
    private const int Many = 100_000;
    private const int RoundCount = 11;
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(1);

    public string Name => "history";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        await using var small = new BenchmarkHost();
        await using var large = new BenchmarkHost();
        var (smallTest, largeTest) = (await FillAsync(small, Few), await FillAsync(large, Many));
        return
        [
            await CompareAsync("the newest 100", small, large, _ => Task.FromResult("/v1/history?limit=100")),
            await CompareAsync("100 in the middle, by cursor", small, large, MiddleAsync),
            await CompareAsync("the newest 100 of a verdict", small, large, _ => Task.FromResult("/v1/history?limit=100&verdict=adopt")),
            await CompareAsync("100 of a machine, product and scale", small, large, host =>
                Task.FromResult(Filtered(host == small ? smallTest : largeTest))
            ),
        ];
    }

    private static async Task<JsonNode> FillAsync(BenchmarkHost host, int count)
    {
        using var client = new HttpClient { BaseAddress = host.Address };
        var test = await StoredSeason.CatchTestAsync(client);
        StoredSeason.AddTests(host.Services.GetRequiredService<CalibrationDatabase>(), test, count);
        return test;
    }

    private static string Filtered(JsonNode test) =>
        $"/v1/history?limit=100&machine={test["machine"]}&product={test["product"]}&scale={test["scale"]}";

    // The page after the one that begins in the middle of the fewer tests and deep among the many.
    private static async Task<string> MiddleAsync(BenchmarkHost host)
    {
        using var client = new HttpClient { BaseAddress = host.Address };
        var page = JsonNode.Parse(
            await client.GetStringAsync(new Uri("/v1/history?limit=100&until=2000-01-22T00:00:00Z", UriKind.Relative))
        )!;
        return new Uri(page["next"]!.GetValue<string>()).PathAndQuery;
    }

    private static async Task<MeasuredRatio> CompareAsync(
        string what,
        BenchmarkHost small,
        BenchmarkHost large,
        Func<BenchmarkHost, Task<string>> pathAsync
    )
    {
        using var few = await ExchangeLoad.GettingAsync(small.EndPoint, await pathAsync(small), 1);
        using var many = await ExchangeLoad.GettingAsync(large.EndPoint, await pathAsync(large), 1);
        await few.RunAsync(WarmUp);
        await many.RunAsync(WarmUp);
        var (manyTook, fewTook) = await Rounds.MediansAsync(RoundCount, () => MedianAsync(many), () => MedianAsync(few));
        return new MeasuredRatio(
            $"page of the history ({what}) among {Many} tests / among {Few}",
            manyTook / fewTook,
            Aim.AtMost(1.5),
            FormattableString.Invariant($"{manyTook:0.00} ms against {fewTook:0.00} ms")
        );
    }

    private static async Task<double> MedianAsync(ExchangeLoad load)
    {
        var took = await load.RunAsync(Round);
        return took[took.Length / 2];
    }
}
