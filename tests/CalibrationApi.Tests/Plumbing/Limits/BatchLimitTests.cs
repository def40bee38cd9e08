using CalibrationApi.Plumbing.Operations;
using Microsoft.AspNetCore.Http;

namespace CalibrationApi.Tests.Plumbing.Limits;

/// <summary>How many batches are answered at once. What a batch does is not looked at, only that its route says it is much work.</summary>
public sealed class BatchLimitTests
{
    private const string Path = "/much-work";
    private const string Somebody = "192.0.2.1";

    [Fact]
    public async Task Caller_WithAsManyBatchesAsItMay_IsRefusedAnotherUntilOneIsThrough()
    {
        await using var host = Host(all: 10, ofOne: 1, out var release);
        var running = host.GetAsync(Path, Somebody, "one");
        await host.EnteredAsync(1);

        using var refused = await host.Service.GetAsync(Path, "192.0.2.9", "one");
        release.SetResult();
        using var first = await running;
        using var again = await host.Service.GetAsync(Path, Somebody, "one");

        var problem = await ProblemBody.ReadAsync(refused, 429);
        Assert.Equal(["batches"], problem.ViolatedPolicies);
        Assert.Contains(
            "\"batches\";q=1;qu=\"concurrent-requests\"",
            Assert.Single(refused.Headers.GetValues("RateLimit-Policy")),
            StringComparison.Ordinal
        );
        Assert.Contains("\"batches\";r=0", Assert.Single(refused.Headers.GetValues("RateLimit")), StringComparison.Ordinal);
        Assert.Equal("5", Assert.Single(refused.Headers.GetValues("Retry-After")));
        Assert.Equal(200, (int)first.StatusCode);
        Assert.Equal(200, (int)again.StatusCode);
    }

    [Fact]
    public async Task Service_WithAsManyBatchesAsItTakes_IsBusyForEverybody()
    {
        await using var host = Host(all: 2, ofOne: 2, out var release);
        Task<HttpResponseMessage>[] running = [host.GetAsync(Path, Somebody, "one"), host.GetAsync(Path, null, null)];
        await host.EnteredAsync(2);

        using var refused = await host.Service.GetAsync(Path, Somebody, "two");
        using var local = await host.Service.GetAsync(Path);
        release.SetResult();
        foreach (var response in await Task.WhenAll(running))
            response.Dispose();
        using var again = await host.Service.GetAsync(Path, Somebody, "two");

        var problem = await ProblemBody.ReadAsync(refused, 503);
        Assert.Equal("https://iana.org/assignments/http-problem-types#temporary-reduced-capacity", problem.Type);
        Assert.Equal("service-busy", problem.Only().Code);
        Assert.Equal("5", Assert.Single(refused.Headers.GetValues("Retry-After")));
        Assert.Equal(503, (int)local.StatusCode);
        Assert.Equal(200, (int)again.StatusCode);
    }

    [Fact]
    public async Task Batch_ThatFails_GivesItsPlaceBack()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:BatchesAtOnce", "1"));
        host.Endpoints["/fails"] = new Endpoint(
            _ => throw new InvalidOperationException("It fails."),
            new EndpointMetadataCollection(MuchWork.Metadata),
            "fails"
        );

        using var first = await host.GetAsync("/fails");
        using var second = await host.GetAsync("/fails");

        Assert.Equal((500, 500), ((int)first.StatusCode, (int)second.StatusCode));
    }

    [Fact]
    public async Task OtherRequests_WhileTheServiceIsBusyWithBatches_AreAnswered()
    {
        await using var host = Host(all: 1, ofOne: 1, out var release);
        var running = host.GetAsync(Path, Somebody, "one");
        await host.EnteredAsync(1);

        using var response = await host.Service.GetAsync("/v1/units", Somebody, "one");
        release.SetResult();
        using var first = await running;

        Assert.Equal(200, (int)response.StatusCode);
    }

    private static BusyHost Host(int all, int ofOne, out TaskCompletionSource release)
    {
        release = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        return new BusyHost(all, ofOne, release.Task);
    }

    /// <summary>The service with a route whose requests stay until they are released.</summary>
    private sealed class BusyHost : IAsyncDisposable
    {
        private readonly SemaphoreSlim entered = new(0);

        public BusyHost(int all, int ofOne, Task released)
        {
            Service = new(("Calibration:Limits:BatchesAtOnce", $"{all}"), ("Calibration:Limits:BatchesAtOncePerCaller", $"{ofOne}"));
            Service.Endpoints[Path] = new Endpoint(
                async _ =>
                {
                    entered.Release();
                    await released;
                },
                new EndpointMetadataCollection(MuchWork.Metadata),
                "much work"
            );
        }

        public ArrangedHost Service { get; }

        public Task<HttpResponseMessage> GetAsync(string path, string? from, string? key) => Service.GetAsync(path, from, key);

        public async Task EnteredAsync(int count)
        {
            for (var i = 0; i < count; i++)
                await entered.WaitAsync();
        }

        public async ValueTask DisposeAsync()
        {
            await Service.DisposeAsync();
            entered.Dispose();
        }
    }
}
