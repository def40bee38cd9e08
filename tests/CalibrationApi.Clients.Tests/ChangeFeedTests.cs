using System.Net;

namespace CalibrationApi.Clients.Tests;

/// <summary>Changes come once each and in order, over pages, broken connections and restarts of the caller.</summary>
public sealed class ChangeFeedTests(Season season) : IClassFixture<Season>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task ListAsync_OverManyPages_GivesEveryChangeOnceAndEnds()
    {
        var wire = new Wire();
        using var client = season.Connect(wire);

        var whole = client.Changes.ListAsync(new() { PageSize = 1000 });
        var all = await whole.ToListAsync();
        var paged = await client.Changes.ListAsync(new() { PageSize = 7 }).ToListAsync();

        Assert.True(all.Count > 30);
        Assert.Equal(Enumerable.Range(1, all.Count).Select(number => (long?)number), all.Select(change => change.Sequence));
        Assert.Equal(all.Select(change => change.Id), paged.Take(all.Count).Select(change => change.Id));
        Assert.All(wire.Requests, request => Assert.DoesNotContain("wait=", request.Target, StringComparison.Ordinal));
    }

    [Fact]
    public async Task ListAsync_Filtered_GivesWhatFitsAndACursorBehindTheRest()
    {
        using var client = season.Connect();

        var feed = client.Changes.ListAsync(new() { Kind = "scale-check" });
        var checks = await feed.ToListAsync();
        var stored = await client.Scales.CreateAsync(Given.Scale("scale behind a cursor"));

        Assert.NotEmpty(checks);
        Assert.All(checks, change => Assert.Equal("scale-check", change.Kind));
        Assert.Contains(await client.Changes.ListAsync(after: feed.After).ToListAsync(), change => change.Id == stored.Id);
        Assert.DoesNotContain(await client.Changes.ListAsync(after: feed.After).ToListAsync(), change => change.Id == checks[^1].Id);
    }

    [Fact]
    public async Task FollowAsync_OverBrokenConnectionsAndRestarts_HandsOutEachChangeOnce()
    {
        var seen = new List<ChangeItem>();
        using var writer = season.Connect();
        var first = writer.Changes.ListAsync();
        await first.ToListAsync();
        var kept = first.After;
        var stored = new List<string>();
        for (var restart = 0; restart < 3; restart++)
        {
            // More answers are lost than one request is sent again for.
            var options = new CalibrationClientOptions { Clock = new ImpatientClock() };
            using var client = season.Connect(options, new AnswersLost(6), new BusyAtFirst(6));
            using var end = new CancellationTokenSource(Patience);
            var feed = client.Changes.FollowAsync(new() { PageSize = 2 }, kept, end.Token);
            var reading = ReadAsync(feed, 4);

            for (var i = 0; i < 4; i++)
                stored.Add((await writer.Scales.CreateAsync(Given.Scale($"scale {restart} {i}"))).Id);

            await reading;
            kept = feed.After;
        }

        Assert.Equal(stored, seen.Where(change => stored.Contains(change.Id!)).Select(change => change.Id));
        Assert.Equal(seen.Count, seen.Select(change => change.Sequence).Distinct().Count());

        // Left in the middle of a page, as a program that ends.
        async Task ReadAsync(ChangeFeed feed, int ofOurs)
        {
            await foreach (var change in feed)
            {
                seen.Add(change);
                if (change.Kind == "scale" && --ofOurs == 0)
                    return;
            }
        }
    }

    [Fact]
    public async Task FollowAsync_WhereNothingHappens_WaitsUntilItIsCancelled()
    {
        var wire = new Wire();
        using var client = season.Connect(wire);
        using var end = new CancellationTokenSource();
        var all = client.Changes.ListAsync(new() { Kind = "container" });
        await all.ToListAsync();
        var waiting = client.Changes.FollowAsync(new() { Kind = "container" }, all.After, end.Token).FirstAsync().AsTask();
        while (wire.Requests.Count < 2)
            await Task.Delay(5);

        await end.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting.WaitAsync(Patience));
        Assert.Contains("wait=20s", wire.Requests[^1].Target, StringComparison.Ordinal);
    }

    [Fact]
    public async Task FollowAsync_OfAnImpatientClient_WaitsNoLongerThanThat()
    {
        var wire = new Wire();
        using var client = season.Connect(new CalibrationClientOptions { Timeout = TimeSpan.FromSeconds(10) }, wire);

        await client.Changes.FollowAsync().FirstAsync();

        Assert.Contains("wait=5s", wire.Requests[^1].Target, StringComparison.Ordinal);
    }

    [Fact]
    public async Task FollowAsync_WithACursorThatIsNone_IsRefusedAndNotTriedAgain()
    {
        var wire = new Wire();
        using var client = season.Connect(wire);

        var refused = await Assert.ThrowsAsync<CalibrationException>(() =>
            client.Changes.FollowAsync(after: "made-up").FirstAsync().AsTask()
        );

        Assert.Equal((400, "cursor-invalid"), (refused.Status, refused.Code));
        Assert.Single(wire.Requests);
    }

    [Fact]
    public async Task ListAsync_OfAServiceThatIsAway_FailsInsteadOfWaitingForIt()
    {
        using var client = season.Connect(
            new CalibrationClientOptions { Clock = new ImpatientClock() },
            new BusyAtFirst(1000, HttpStatusCode.ServiceUnavailable)
        );

        await Assert.ThrowsAsync<CalibrationException>(() => client.Changes.ListAsync().ToListAsync().AsTask());
    }
}
