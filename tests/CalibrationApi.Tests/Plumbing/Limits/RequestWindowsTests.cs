using CalibrationApi.Plumbing.Limits;

namespace CalibrationApi.Tests.Plumbing.Limits;

public sealed class RequestWindowsTests
{
    private readonly SteppingClock clock = new();

    [Fact]
    public void Take_UpToTheQuota_CountsDownAndThenRefuses()
    {
        var windows = new RequestWindows<string>(3, 10, clock);

        var standings = Enumerable.Range(0, 5).Select(_ => windows.Take("a")).ToArray();

        Assert.Equal([true, true, true, false, false], standings.Select(standing => standing.IsAllowed));
        Assert.Equal([2, 1, 0, 0, 0], standings.Select(standing => standing.Remaining));
    }

    [Fact]
    public void Take_OfAnotherCaller_IsCountedApart()
    {
        var windows = new RequestWindows<string>(1, 10, clock);
        windows.Take("a");

        Assert.True(windows.Take("b").IsAllowed);
        Assert.False(windows.Take("a").IsAllowed);
    }

    [Fact]
    public void Take_WhenTheSecondsToldHavePassed_HasTheWholeQuotaAgain()
    {
        var windows = new RequestWindows<string>(2, 10, clock);
        windows.Take("a");
        clock.Advance(20.5);
        windows.Take("a");
        var refused = windows.Take("a");

        Assert.Equal(40, refused.Seconds);
        clock.Advance(refused.Seconds);
        Assert.Equal(new Standing(true, 1, 60), windows.Take("a"));
    }

    [Fact]
    public void Take_JustBeforeTheSecondsToldHavePassed_IsStillRefused()
    {
        var windows = new RequestWindows<string>(1, 10, clock);
        windows.Take("a");

        clock.Advance(59.999);

        Assert.Equal(new Standing(false, 0, 1), windows.Take("a"));
    }

    [Fact]
    public void Take_OfMoreCallersThanAreCountedApart_LetsTheFurtherOnesShareOneCount()
    {
        var windows = new RequestWindows<int>(2, 3, clock);

        var allowed = Enumerable.Range(0, 10).Count(caller => windows.Take(caller).IsAllowed);

        // Three of their own, and two of the shared count.
        Assert.Equal(5, allowed);
        Assert.Equal(3, windows.Remembered);
        Assert.True(windows.Take(0).IsAllowed);
    }

    [Fact]
    public void Take_AfterAMinute_HasForgottenCallersThatStayedAway()
    {
        var windows = new RequestWindows<int>(5, 1000, clock);
        for (var caller = 0; caller < 1000; caller++)
            windows.Take(caller);
        clock.Advance(30);
        windows.Take(7);
        clock.Advance(31);

        windows.Take(2000);

        Assert.Equal(1, windows.Remembered);
        Assert.True(windows.Take(3000).IsAllowed);
    }

    [Fact]
    public async Task Take_FromManyThreads_AllowsTheQuotaExactly()
    {
        var windows = new RequestWindows<string>(1000, 10, clock);

        var counts = await Task.WhenAll(
            Enumerable.Range(0, 8).Select(_ => Task.Run(() => Enumerable.Range(0, 500).Count(_ => windows.Take("a").IsAllowed)))
        );

        Assert.Equal(1000, counts.Sum());
    }
}
