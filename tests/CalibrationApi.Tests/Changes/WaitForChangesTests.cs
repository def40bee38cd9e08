using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Limits;
using CalibrationApi.Storage.Access;
using CalibrationApi.Tests.Plumbing.Access;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace CalibrationApi.Tests.Changes;

/// <summary>A request may wait: it ends with the first change that fits, with its time, with the client and with the service.</summary>
public sealed class WaitForChangesTests : IDisposable
{
    private const string Somebody = "192.0.2.1";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly RecordService service = new();

    [Fact]
    public async Task Wait_UntilSomethingIsStored_IsAnsweredWithIt()
    {
        var reader = ChangeReader.Of(service);
        await reader.ReadPageAsync();
        var waiting = reader.ReadPageAsync(waitSeconds: 30);
        await WaitingAsync(1);

        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft);

        Assert.Equal(1, await waiting.WaitAsync(Patience));
        Assert.Equal([id], reader.Ids);
    }

    [Fact]
    public async Task Wait_ForAKind_IsAnsweredByThatKindAndNotByAnother()
    {
        var farm = await Farm.CreateAsync(service);
        var reader = ChangeReader.Of(service, "&kind=catch-test");
        await reader.ReadPageAsync();
        var waiting = reader.ReadPageAsync(waitSeconds: 30);
        await WaitingAsync(1);

        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        await farm.CheckScaleAsync();
        Assert.False(waiting.IsCompleted);
        var id = (await farm.TestAsync()).Id;

        await waiting.WaitAsync(Patience);
        Assert.Equal([id], reader.Ids);
    }

    [Fact]
    public async Task Wait_WhereSomethingIsToBeRead_IsAnsweredAtOnce()
    {
        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var start = Stopwatch.GetTimestamp();

        Assert.Equal(1, await ChangeReader.Of(service).ReadPageAsync(waitSeconds: 30));

        Assert.True(Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(20));
    }

    [Fact]
    public async Task Wait_WhereNothingIsStored_EndsWithItsTimeAndTheSameCursor()
    {
        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var reader = ChangeReader.Of(service);
        await reader.ReadOnAsync();
        var (before, start) = (reader.After, Stopwatch.GetTimestamp());

        Assert.Equal(0, await reader.ReadPageAsync(waitSeconds: 1));

        Assert.True(Stopwatch.GetElapsedTime(start) >= TimeSpan.FromSeconds(0.9));
        Assert.Equal(before, reader.After);
    }

    [Fact]
    public async Task Wait_InOneWorkspace_IsNotEndedByAnother()
    {
        const string South = "019d0000-00aa-7000-8000-000000000002";
        using (var connection = service.Database.Open())
            WorkspaceStore.Insert(
                connection,
                South,
                new WorkspaceRecord(South, 1, "south", false, "", service.Clock.Now, service.Clock.Now)
            );
        var (local, south) = (MadeKey.In(service, "local", [.. Scope.All]).Text, MadeKey.In(service, South, [.. Scope.All]).Text);
        service.Key = local;
        var reader = ChangeReader.Of(service);
        var waiting = reader.ReadPageAsync(waitSeconds: 30);
        await WaitingAsync(1);

        service.Key = south;
        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        Assert.False(waiting.IsCompleted);
        service.Key = local;
        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft);

        await waiting.WaitAsync(Patience);
        Assert.Equal([id], reader.Ids);
    }

    [Fact]
    public async Task Wait_WhenTheServiceStops_EndsAtOnceWithAnAnswer()
    {
        var waiting = ChangeReader.Of(service).ReadPageAsync(waitSeconds: 30);
        await WaitingAsync(1);
        var start = Stopwatch.GetTimestamp();

        service.Service<IHostApplicationLifetime>().StopApplication();

        Assert.Equal(0, await waiting.WaitAsync(Patience));
        Assert.True(Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(20));
    }

    [Fact]
    public async Task Wait_OfAClientThatLeaves_GivesItsPlaceBack()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:WaitsAtOnce", "1"));
        using var client = host.CreateCheckedClient();
        using var leaving = new CancellationTokenSource();
        var left = client.GetAsync(new Uri("/v1/changes?wait=30s", UriKind.Relative), leaving.Token);
        await WaitingAsync(host, 1);

        await leaving.CancelAsync();

        await WaitingAsync(host, 0);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => left);
        using var next = await client.GetAsync(new Uri("/v1/changes?wait=1s", UriKind.Relative));
        Assert.Equal(200, (int)next.StatusCode);
    }

    [Fact]
    public async Task Waiting_OfOneCaller_IsLimitedAndLeavesOthersTheirPlaces()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:WaitsAtOncePerCaller", "2"));
        Task<HttpResponseMessage>[] waiting = [WaitAsync(host, "one"), WaitAsync(host, "one")];
        await WaitingAsync(host, 2);

        using var refused = await WaitAsync(host, "one");
        var other = WaitAsync(host, "two");
        await WaitingAsync(host, 3);
        using var usual = await host.GetAsync("/v1/changes", Somebody, "one");

        var problem = await ProblemBody.ReadAsync(refused, 429);
        Assert.Equal(["waits"], problem.ViolatedPolicies);
        Assert.Equal("5", Assert.Single(refused.Headers.GetValues("Retry-After")));
        Assert.Equal(200, (int)usual.StatusCode);
        await EndAsync(host, [.. waiting, other]);
    }

    [Fact]
    public async Task Waiting_OfAllTogether_IsLimited()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:WaitsAtOnce", "2"));
        Task<HttpResponseMessage>[] waiting = [WaitAsync(host, "one"), WaitAsync(host, "two")];
        await WaitingAsync(host, 2);

        using var refused = await WaitAsync(host, "three");

        Assert.Equal("service-busy", (await ProblemBody.ReadAsync(refused, 503)).Only().Code);
        await EndAsync(host, waiting);
    }

    [Fact]
    public async Task Readers_WhileManyStore_SeeEachChangeOnceInOrderWithoutAGap()
    {
        const int Writers = 4;
        const int OfEach = 25;
        var stored = new ConcurrentDictionary<string, bool>();
        ChangeReader[] readers = [ChangeReader.Of(service), ChangeReader.Of(service), ChangeReader.Of(service)];
        var reading = readers
            .Select(reader =>
                Task.Run(async () =>
                {
                    while (reader.Seen.Count < Writers * OfEach)
                        await reader.ReadPageAsync(limit: 7, waitSeconds: 30);
                })
            )
            .ToArray();

        await Task.WhenAll(
            Enumerable
                .Range(0, Writers)
                .Select(_ =>
                    Task.Run(async () =>
                    {
                        for (var i = 0; i < OfEach; i++)
                        {
                            stored[await service.CreateAsync("/v1/products", Farm.ProductDraft)] = true;
                            (await service.PostAsync("/v1/lots", Farm.LotDraft(Farm.NoRecord))).Expect(422);
                        }
                    })
                )
        );
        await Task.WhenAll(reading).WaitAsync(Patience);

        Assert.All(readers, reader =>
        {
            Assert.Equal(Enumerable.Range(1, Writers * OfEach), reader.Numbers);
            Assert.Equal(stored.Keys.Order(StringComparer.Ordinal), reader.Ids.Order(StringComparer.Ordinal));
        });
    }

    public void Dispose() => service.Dispose();

    private static Task<HttpResponseMessage> WaitAsync(ArrangedHost host, string key) =>
        host.GetAsync("/v1/changes?wait=30s", Somebody, key);

    private static async Task EndAsync(ArrangedHost host, Task<HttpResponseMessage>[] waiting)
    {
        using var content = new StringContent(Farm.ProductDraft.Text, Encoding.UTF8, "application/json");
        using var stored = await host.SendAsync(HttpMethod.Post, "/v1/products", content: content);
        Assert.Equal(201, (int)stored.StatusCode);
        foreach (var response in await Task.WhenAll(waiting).WaitAsync(Patience))
        {
            using (response)
                Assert.Single(JsonNode.Parse(await response.Content.ReadAsStringAsync())!["items"]!.AsArray());
        }
    }

    private Task WaitingAsync(int count) => WaitingAsync(service.Service<WaitLimit>(), count);

    private static Task WaitingAsync(ArrangedHost host, int count) => WaitingAsync(host.Services.GetRequiredService<WaitLimit>(), count);

    private static async Task WaitingAsync(WaitLimit limit, int count)
    {
        using var patience = new CancellationTokenSource(Patience);
        while (limit.Taken != count)
            await Task.Delay(5, patience.Token);
    }
}
