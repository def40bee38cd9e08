using System.Net;

namespace CalibrationApi.Clients.Tests;

/// <summary>Requests are sent again when the service is busy, and store one record at most.</summary>
public sealed class RepetitionsTests(Season season) : IClassFixture<Season>, IDisposable
{
    private readonly ImpatientClock clock = new();
    private readonly Wire wire = new();

    private CalibrationClientOptions Options => new() { Clock = clock };

    public void Dispose() => wire.Dispose();

    [Fact]
    public async Task Busy_AtFirst_IsAskedAgainAfterTheTimeItNames()
    {
        using var client = season.Connect(Options, wire, new BusyAtFirst(2, retryAfter: "7"));

        var answer = await client.Calculations.EvaluateCatchTestAsync(Given.CatchTest());

        Assert.Equal(Verdicts.Adopt, answer.Verdict);
        Assert.Equal([TimeSpan.FromSeconds(7), TimeSpan.FromSeconds(7)], clock.Waits);
        Assert.Equal(3, wire.Requests.Count);
        Assert.Single(wire.Requests.Select(request => request.Body).Distinct());
    }

    [Fact]
    public async Task Busy_WithoutATime_IsAskedAgainAfterDoublingWaits()
    {
        using var client = season.Connect(Options, new BusyAtFirst(3, HttpStatusCode.TooManyRequests));

        var units = await client.GetUnitsAsync();

        Assert.NotEmpty(units);
        Assert.Equal([TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(2), TimeSpan.FromSeconds(4)], clock.Waits);
    }

    [Fact]
    public async Task Busy_UntilATime_IsAskedAgainThen()
    {
        var then = DateTimeOffset.UtcNow.AddSeconds(20);
        using var client = season.Connect(Options, new BusyAtFirst(1, retryAfter: then.ToString("R")));

        await client.GetUnitsAsync();

        Assert.InRange(Assert.Single(clock.Waits), TimeSpan.FromTicks(1), TimeSpan.FromSeconds(20));
    }

    [Fact]
    public async Task Busy_ForTooManyTries_FailsAndSaysSo()
    {
        using var client = season.Connect(Options, wire, new BusyAtFirst(100, retryAfter: "2"));

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.GetUnitsAsync());

        Assert.Equal(4, wire.Requests.Count);
        Assert.Equal(503, refused.Status);
        Assert.Equal(TimeSpan.FromSeconds(2), refused.RetryAfter);
    }

    [Fact]
    public async Task Busy_ForLongerThanAllowed_FailsAtOnceAndSaysForHowLong()
    {
        using var client = season.Connect(Options, wire, new BusyAtFirst(1, HttpStatusCode.TooManyRequests, retryAfter: "3600"));

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.GetUnitsAsync());

        Assert.Empty(clock.Waits);
        Assert.Equal(429, refused.Status);
        Assert.Equal(TimeSpan.FromHours(1), refused.RetryAfter);
        Assert.EndsWith("The service asks to wait 3600 s before the next try.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Busy_WithoutRepetitionsAllowed_FailsAtOnce()
    {
        using var client = season.Connect(Options with { Retries = 0 }, wire, new BusyAtFirst(1));

        await Assert.ThrowsAsync<CalibrationException>(() => client.GetUnitsAsync());

        Assert.Single(wire.Requests);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Storing_WithAnswersLostOnTheWay_StoresOneRecordUnderOneKey(bool halfway)
    {
        using var client = season.Connect(Options, wire, new AnswersLost(2, halfway));
        var name = $"scale {Guid.NewGuid()}";

        var scale = await client.Scales.CreateAsync(Given.Scale(name));

        Assert.Equal(3, wire.Requests.Count);
        Assert.NotNull(Assert.Single(wire.Requests.Select(request => request.Key).Distinct()));
        var stored = Assert.Single(await client.Scales.ListAsync().Where(one => one.Name == name).ToListAsync());
        Assert.Equal(scale.Id, stored.Id);
    }

    [Fact]
    public async Task Storing_WithAKeyInFlight_WaitsForItsAnswer()
    {
        using var client = season.Connect(Options, wire, new BusyAtFirst(1, HttpStatusCode.Conflict, retryAfter: "1"));

        var scale = await client.Scales.CreateAsync(Given.Scale());

        Assert.NotEmpty(scale.Id);
        Assert.Equal(2, wire.Requests.Count);
    }

    [Fact]
    public async Task Storing_Twice_UsesTwoKeys()
    {
        using var client = season.Connect(wire);

        var first = await client.CatchTests.RecordAsync(Given.RecordedTest());
        var second = await client.CatchTests.RecordAsync(Given.RecordedTest());

        Assert.NotEqual(first.Id, second.Id);
        Assert.Equal(2, wire.Requests.Select(request => request.Key).Distinct().Count());
    }

    [Fact]
    public async Task Storing_TwiceWithOneKeyOfTheCaller_StoresOnce()
    {
        using var client = season.Connect();
        var key = $"tablet 3, {Guid.NewGuid()}";

        var first = await client.CatchTests.RecordAsync(Given.RecordedTest(), key);
        var second = await client.CatchTests.RecordAsync(Given.RecordedTest(), key);

        Assert.Equal(first.Id, second.Id);
    }

    [Fact]
    public async Task Storing_AnotherRequestWithTheSameKey_IsRefused()
    {
        using var client = season.Connect();
        var key = $"tablet 4, {Guid.NewGuid()}";
        await client.Scales.CreateAsync(Given.Scale(), key);

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.Scales.CreateAsync(Given.Scale("another"), key));

        Assert.Equal("idempotency-key-reused", refused.Code);
    }

    [Fact]
    public async Task Saving_WithItsAnswerLostOnTheWay_IsNotSentAgain()
    {
        using var calm = season.Connect();
        var scale = await calm.Scales.CreateAsync(Given.Scale());
        using var client = season.Connect(Options, wire, new AnswersLost(1));

        await Assert.ThrowsAsync<HttpRequestException>(() => client.Scales.SaveAsync(scale));

        Assert.Single(wire.Requests);
    }

    [Fact]
    public async Task Calculations_StoreNothing_AndCarryNoKey()
    {
        using var client = season.Connect(wire);

        await client.Calculations.EvaluateCatchTestAsync(Given.CatchTest());

        Assert.Null(Assert.Single(wire.Requests).Key);
    }

    [Fact]
    public async Task GeneratedClient_UsedDirectly_CarriesAKeyToo()
    {
        using var client = season.Connect(wire);

        await client.Core.V1.Scales.PostAsync(Given.Scale());

        Assert.NotNull(Assert.Single(wire.Requests).Key);
    }
}
