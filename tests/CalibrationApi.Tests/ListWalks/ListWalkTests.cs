using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.ListWalks;

/// <summary>
/// Whoever follows the next links of a list sees everything that was there when they began, once, whatever others add meanwhile.
/// </summary>
public sealed class ListWalkTests(RecordService service) : IClassFixture<RecordService>
{
    private const int Writers = 4;
    private const int Walks = 4;
    private const int BeforeTheFirstWalk = 40;

    [Theory]
    [InlineData("newest-first")]
    [InlineData("oldest-first")]
    public async Task History_WalkedWhileFourAdd_LosesAndRepeatsNothing(string order)
    {
        var farm = await Farm.CreateAsync(service);
        // Few instants, so that many lines share one, and pages end among them.
        Task<string> AddAsync(Random random) =>
            service.CreateAsync(
                "/v1/scale-checks",
                farm.ScaleCheck.With(
                    "/occurredAt",
                    new DateTime(2026, 3, 1, random.Next(12), 0, 0).ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture)
                )
            );

        foreach (var walk in await WalksAsync($"/v1/history?scale={farm.Scale}&order={order}&limit=7", AddAsync))
        {
            var times = walk.Select(line => line["occurredAt"]!.GetValue<string>()).ToArray();
            Assert.Equal(
                order == "oldest-first" ? times.Order(StringComparer.Ordinal) : times.OrderDescending(StringComparer.Ordinal),
                times
            );
        }
    }

    [Fact]
    public async Task DescribedRecords_WalkedWhileFourAdd_LosesAndRepeatsNothing()
    {
        // Ids of clients lie anywhere in the order of ids.
        Task<string> AddAsync(Random random)
        {
            var time = new DateTimeOffset(2026, 3, 1, 0, 0, 0, TimeSpan.Zero).AddSeconds(random.Next(1_000_000));
            return service.CreateAsync("/v1/products", Farm.ProductDraft.With("/id", Guid.CreateVersion7(time).ToString()));
        }

        foreach (var walk in await WalksAsync("/v1/products?limit=7", AddAsync))
        {
            var ids = walk.Select(Id).ToArray();
            Assert.Equal(ids.Order(StringComparer.Ordinal), ids);
        }
    }

    private async Task<IReadOnlyList<IReadOnlyList<JsonNode>>> WalksAsync(string address, Func<Random, Task<string>> addAsync)
    {
        var added = new ConcurrentDictionary<string, bool>();
        var first = new Random(7);
        while (added.Count < BeforeTheFirstWalk)
            added[await addAsync(first)] = true;
        var walks = new List<IReadOnlyList<JsonNode>>();
        using var end = new CancellationTokenSource();
        var writers = Enumerable
            .Range(0, Writers)
            .Select(seed =>
                Task.Run(async () =>
                {
                    var random = new Random(seed);
                    while (!end.IsCancellationRequested)
                        added[await addAsync(random)] = true;
                })
            )
            .ToArray();

        try
        {
            while (walks.Count < Walks)
            {
                string[] before = [.. added.Keys];
                var walk = await service.ItemsAsync(address);
                walks.Add(walk);

                var seen = walk.Select(Id).ToArray();
                Assert.Equal(seen.Length, seen.Distinct().Count());
                Assert.Empty(before.Except(seen));
            }
        }
        finally
        {
            await end.CancelAsync();
            await Task.WhenAll(writers);
        }

        Assert.True(added.Count > BeforeTheFirstWalk, "Nobody added anything during the walks.");
        // Nobody adds any more: now the list is exactly what was added.
        Assert.Empty(added.Keys.Except((await service.ItemsAsync(address)).Select(Id)));
        return walks;
    }

    private static string Id(JsonNode item) => item["id"]!.GetValue<string>();
}
