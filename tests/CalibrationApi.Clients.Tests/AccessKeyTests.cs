using System.Net;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.Clients.Tests;

/// <summary>The caller's key goes with every request to the service, to nobody else, and into no text.</summary>
public sealed class AccessKeyTests(Season season) : IClassFixture<Season>, IDisposable
{
    private const string Key = "calk_invented";

    private readonly Wire wire = new();

    public void Dispose() => wire.Dispose();

    [Fact]
    public async Task Requests_OfEverySort_CarryTheKey()
    {
        using var client = season.Connect(wire);

        await client.GetUnitsAsync();
        await client.Scales.CreateAsync(Given.Scale());
        await client.History.ListAsync(new() { PageSize = 20 }).Take(21).ToListAsync();
        await client.Calculations.EvaluateCatchTestsAsync(new[] { Given.CatchTest() }.ToAsyncEnumerable()).ToListAsync();
        await client.Core.V1.Codes.GetAsync();

        Assert.Equal(6, wire.Requests.Count);
        Assert.All(wire.Requests, request => Assert.Equal($"Bearer {SampleKeys.Text}", request.Authorization));
    }

    [Fact]
    public async Task Requests_SentAgain_CarryTheKeyOnce()
    {
        using var client = season.Connect(new CalibrationClientOptions { Clock = new ImpatientClock() }, wire, new BusyAtFirst(2));

        await client.GetUnitsAsync();

        Assert.Equal(Enumerable.Repeat($"Bearer {SampleKeys.Text}", 3), wire.Requests.Select(request => request.Authorization));
    }

    [Fact]
    public async Task Requests_WithoutAKey_CarryNone()
    {
        using var client = season.ConnectWithoutKey(wire);

        await client.GetUnitsAsync();

        Assert.Null(Assert.Single(wire.Requests).Authorization);
    }

    [Fact]
    public async Task List_WhoseNextPageIsElsewhere_GoesOnAtItsOwnAddressWithTheSameQuestion()
    {
        var elsewhere = new NextPageElsewhere();
        wire.InnerHandler = elsewhere;
        using var client = new CalibrationClient(new Uri("https://service.invalid/calibration"), new() { Key = Key, Transport = wire });

        await client.Keys.ListAsync(pageSize: 1).ToListAsync();

        Assert.Equal(
            ["/calibration/v1/keys?limit=1", "/calibration/v1/keys?cursor=a%2Bb&limit=1"],
            wire.Requests.Select(request => request.Target)
        );
        Assert.All(elsewhere.Hosts, host => Assert.Equal("service.invalid", host));
        Assert.All(wire.Requests, request => Assert.Equal($"Bearer {Key}", request.Authorization));
    }

    [Theory]
    [InlineData("https://other.invalid/calibration/v1/units")]
    [InlineData("http://service.invalid/calibration/v1/units")]
    [InlineData("https://service.invalid:8443/calibration/v1/units")]
    [InlineData("https://service.invalid.other.invalid/calibration/v1/units")]
    [InlineData("https://service.invalid/calibration-of-others/v1/units")]
    [InlineData("https://service.invalid/calibration/../v1/units")]
    public async Task Request_ToAnotherAddress_CarriesNoKey(string address)
    {
        wire.InnerHandler = new NextPageElsewhere();
        using var client = new CalibrationClient(new Uri("https://service.invalid/calibration"), new() { Key = Key, Transport = wire });

        await client.Core.V1.Units.WithUrl(address).GetAsync();

        Assert.Null(Assert.Single(wire.Requests).Authorization);
    }

    [Fact]
    public async Task Request_LedToAnotherServerThatIsBusyAtFirst_ArrivesTwiceWithoutTheKey()
    {
        var (here, there) = (new List<string>(), new List<string>());
        await using var other = await ListenAsync(there, context =>
        {
            context.Response.StatusCode = there.Count == 1 ? StatusCodes.Status503ServiceUnavailable : StatusCodes.Status200OK;
            return context.Response.WriteAsJsonAsync(new { units = Array.Empty<string>() });
        });
        await using var service = await ListenAsync(here, context =>
        {
            context.Response.Redirect($"{other.Urls.Single()}{context.Request.Path}");
            return Task.CompletedTask;
        });
        using var client = new CalibrationClient(new Uri(service.Urls.Single()), new() { Key = Key, Clock = new ImpatientClock() });

        Assert.Empty(await client.GetUnitsAsync());

        Assert.Equal([$"Bearer {Key}"], here);
        Assert.Equal(["", ""], there);
    }

    [Fact]
    public async Task Request_WithoutTheKeyThatItNeeds_IsATypedProblemThatSaysWhatToDo()
    {
        using var client = season.ConnectWithoutKey();

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.Scales.ListAsync().ToListAsync().AsTask());

        Assert.Equal((401, "key-missing", "Authorization"), (refused.Status, refused.Code, Assert.Single(refused.Errors).Header));
        Assert.Equal(
            "401: Authorization: This request needs a key. Send it in the header Authorization, as Bearer, one space, and the key. (key-missing)",
            refused.Message
        );
    }

    [Fact]
    public async Task Request_WithAKeyThatTheServiceDoesNotKnow_IsATypedProblemWithoutTheKey()
    {
        using var client = season.Connect(new CalibrationClientOptions { Key = Key });

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.Calculations.EvaluateCatchTestAsync(Given.CatchTest()));

        Assert.Equal((401, "key-invalid"), (refused.Status, refused.Code));
        Assert.DoesNotContain(Key, refused.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Batch_WithAKeyThatTheServiceDoesNotKnow_IsATypedProblem()
    {
        using var client = season.Connect(new CalibrationClientOptions { Key = Key });

        var refused = await Assert.ThrowsAsync<CalibrationException>(() =>
            client.Calculations.EvaluateCatchTestsAsync(new[] { Given.CatchTest() }.ToAsyncEnumerable()).ToListAsync().AsTask()
        );

        Assert.Equal((401, "key-invalid"), (refused.Status, refused.Code));
    }

    [Fact]
    public async Task Request_WithAKeyThatMayNot_IsATypedProblemThatNamesTheScope()
    {
        using var client = season.Connect(new CalibrationClientOptions { Key = SampleKeys.LesserText });

        var refused = await Assert.ThrowsAsync<CalibrationException>(() => client.Keys.ListAsync().ToListAsync().AsTask());

        Assert.Equal((403, "scope-missing"), (refused.Status, refused.Code));
        Assert.Contains("scope admin", refused.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(SampleKeys.LesserText, refused.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData(Key + "\n")]
    [InlineData("Bearer " + Key)]
    [InlineData(Key + "é")]
    public void Client_WithATextThatIsNoKey_IsRefusedWithoutShowingIt(string text)
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            new CalibrationClient(new Uri("http://service.invalid"), new() { Key = text })
        );

        Assert.DoesNotContain(Key, refused.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Options_AsText_HideTheKey()
    {
        Assert.DoesNotContain(Key, new CalibrationClientOptions { Key = Key }.ToString(), StringComparison.Ordinal);
        Assert.Contains("Key = hidden, Retries = 3", new CalibrationClientOptions { Key = Key }.ToString(), StringComparison.Ordinal);
        Assert.Contains("Key = none", new CalibrationClientOptions().ToString(), StringComparison.Ordinal);
    }

    private static async Task<WebApplication> ListenAsync(List<string> authorizations, RequestDelegate answer)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        var server = builder.Build();
        server.Urls.Add("http://127.0.0.1:0");
        server.Run(context =>
        {
            authorizations.Add(context.Request.Headers.Authorization.ToString());
            return answer(context);
        });
        await server.StartAsync();
        return server;
    }

    /// <summary>Answers one page, whose next one would be elsewhere, and then the last.</summary>
    private sealed class NextPageElsewhere : HttpMessageHandler
    {
        public List<string> Hosts { get; } = [];

        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            Hosts.Add(request.RequestUri!.Host);
            var next = Hosts.Count == 1 ? """, "next": "https://elsewhere.invalid/v1/keys?limit=1&cursor=a%2Bb" """ : "";
            return Task.FromResult(
                new HttpResponseMessage(HttpStatusCode.OK)
                {
                    Content = new StringContent($$"""{ "items": [{ }]{{next}} }""", Encoding.UTF8, "application/json"),
                }
            );
        }
    }
}
