namespace CalibrationApi.Clients.Tests;

/// <summary>Whatever is under way can be called off.</summary>
public sealed class CancellationTests(Season season) : IClassFixture<Season>
{
    [Fact]
    public async Task Request_CancelledWhileItIsSent_Ends()
    {
        using var client = season.Connect(new NeverAnswers());
        using var stop = new CancellationTokenSource();

        var asked = client.Calculations.EvaluateCatchTestAsync(Given.CatchTest(), cancellationToken: stop.Token);
        await stop.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => asked);
    }

    [Fact]
    public async Task Request_CancelledWhileItWaitsForAnotherTry_Ends()
    {
        // Nobody would live to see the second try.
        using var client = season.Connect(
            new CalibrationClientOptions { LongestWait = TimeSpan.FromDays(40), Timeout = Timeout.InfiniteTimeSpan },
            new BusyAtFirst(1, retryAfter: "2000000")
        );
        using var stop = new CancellationTokenSource();

        var asked = client.GetUnitsAsync(stop.Token);
        await stop.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => asked);
    }

    [Fact]
    public async Task List_CancelledBetweenPages_Ends()
    {
        using var client = season.Connect();
        using var stop = new CancellationTokenSource();
        var seen = 0;

        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            await foreach (var item in client.History.ListAsync(new() { PageSize = 5 }, stop.Token))
            {
                if (++seen == 5)
                    await stop.CancelAsync();
            }
        });

        Assert.Equal(5, seen);
    }

    [Fact]
    public async Task List_CancelledByWithCancellation_Ends()
    {
        using var client = season.Connect();
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            await foreach (var item in client.History.ListAsync().WithCancellation(stop.Token))
                Assert.Fail(item.Id!);
        });
    }

    private sealed class NeverAnswers : DelegatingHandler
    {
        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            await Task.Delay(Timeout.Infinite, cancellationToken);
            throw new InvalidOperationException();
        }
    }
}
