using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Plumbing.Observability;

/// <summary>What an operator reads of requests, and what nobody may read there.</summary>
public sealed class RequestLogTests : IDisposable
{
    private const string Secret = "calk_qqqqsecretqqqq";
    private const string Machine = "019a0000-0000-7000-8000-000000000000";

    private readonly LogLines log = new();

    [Fact]
    public async Task Request_Answered_IsOneLineWithRouteStatusKeyAndTrace()
    {
        await using var host = Host();

        using var response = await host.GetAsync(
            $"/v1/machines/{Machine}",
            "192.0.2.1",
            "key-7",
            ("traceparent", "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01")
        );

        var line = Assert.Single(log.Requests).AsObject();
        Assert.Equal("GET", line["method"]!.GetValue<string>());
        Assert.Equal("/v1/machines/{id}", line["route"]!.GetValue<string>());
        Assert.Equal(404, line["status"]!.GetValue<int>());
        Assert.Equal("key-7", line["key"]!.GetValue<string>());
        Assert.Equal("4bf92f3577b34da6a3ce929d0e0e4736", line["traceId"]!.GetValue<string>());
        Assert.True(line["milliseconds"]!.GetValue<double>() >= 0);
        Assert.NotEmpty(line["requestId"]!.GetValue<string>());
        Assert.Equal("information", line["level"]!.GetValue<string>());
        Assert.Equal(
            ["time", "level", "category", "message", "traceId", "method", "route", "status", "milliseconds", "key", "requestId"],
            line.Select(part => part.Key)
        );
        Assert.DoesNotContain(Machine, line.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Request_ThatTheServiceFailed_IsAWarningWithItsRouteBesideTheError()
    {
        await using var host = Host();
        host.Endpoints["/fails"] = new(_ => throw new InvalidOperationException("It fails."), null, "fails");

        using var response = await host.GetAsync("/fails");

        var problem = await ProblemBody.ReadAsync(response, 500);
        var line = Assert.Single(log.Requests);
        Assert.Equal(("warning", 500), (line["level"]!.GetValue<string>(), line["status"]!.GetValue<int>()));
        var error = Assert.Single(log.All.Select(one => JsonNode.Parse(one)!), one => one["level"]!.GetValue<string>() == "error");
        Assert.Equal(problem.TraceId, error["traceId"]!.GetValue<string>());
        Assert.Contains("It fails.", error["exception"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Requests_Refused_GetOnlySoManyLinesAMinuteAndAreCounted()
    {
        await using var host = Host(("Calibration:RefusedRequestsLoggedPerMinute", "2"));
        for (var i = 0; i < 5; i++)
            (await host.GetAsync("/nothing")).Dispose();
        (await host.GetAsync("/v1/units")).Dispose();

        Assert.Equal([404, 404, 200], Statuses());
        host.Clock.Advance(60);
        (await host.GetAsync("/nothing")).Dispose();

        Assert.Equal([404, 404, 200, 404], Statuses());
        Assert.Equal(3, Assert.Single(log.Requests, line => line["count"] is not null)["count"]!.GetValue<int>());
    }

    [Fact]
    public async Task Requests_ThatTheServiceFailed_GetOnlySoManyLinesAMinuteWhateverElseIsRefused()
    {
        await using var host = Host(("Calibration:RefusedRequestsLoggedPerMinute", "2"));
        host.Endpoints["/fails"] = new(_ => throw new InvalidOperationException("It fails."), null, "fails");
        for (var i = 0; i < 5; i++)
            (await host.GetAsync("/nothing")).Dispose();
        for (var i = 0; i < 5; i++)
            (await host.GetAsync("/fails")).Dispose();

        Assert.Equal([404, 404, 500, 500], Statuses());
        Assert.Equal(2, log.All.Count(one => one.Contains("It fails.", StringComparison.Ordinal)));
        host.Clock.Advance(60);
        (await host.GetAsync("/fails")).Dispose();

        Assert.Equal([404, 404, 500, 500, 500], Statuses());
        Assert.Equal(3, log.All.Count(one => one.Contains("It fails.", StringComparison.Ordinal)));
        var untold = Assert.Single(log.All.Select(one => JsonNode.Parse(one)!), line => line["count"] is not null);
        Assert.Equal(("warning", 3), (untold["level"]!.GetValue<string>(), untold["count"]!.GetValue<int>()));
    }

    // POSIX.1-2017, 8.1: a name in the environment is of letters, digits and underscores; a shell exports no other.
    [Fact]
    public async Task Lines_OfRequests_AreLeftOutByASettingThatAShellCanExport()
    {
        Assert.Matches("^[A-Za-z0-9_]+$", $"Logging__LogLevel__{CalibrationApi.Plumbing.Observability.RequestLog.Category}");
        await using var host = Host(($"Logging:LogLevel:{CalibrationApi.Plumbing.Observability.RequestLog.Category}", "Warning"));

        (await host.GetAsync("/v1/units")).Dispose();

        Assert.NotEmpty(log.All);
        Assert.Empty(log.Requests);
    }

    [Fact]
    public async Task Requests_ForAPersonAtATerminal_AreNotLogged()
    {
        await using var host = new ArrangedHost { Log = log };

        (await host.GetAsync("/v1/units")).Dispose();

        Assert.NotEmpty(log.All);
        Assert.Empty(log.Requests);
    }

    [Fact]
    public async Task Log_OfRequestsWithAKeyInEveryWrongPlace_DoesNotHoldTheKey()
    {
        await using var host = Host();
        host.Endpoints["/fails"] = new(_ => throw new InvalidOperationException("It fails."), null, "fails");
        var good = Question.Of(Question.CatchTest).Text;
        var catchTest = Question.PathOf(Question.CatchTest);
        string[] paths =
        [
            $"/{Secret}",
            $"/v1/machines/{Secret}",
            $"/v1/{Secret}/units",
            $"/v1/units?{Secret}=1",
            $"/v1/units?key={Secret}",
            $"/v1/history?cursor={Secret}",
            $"/reference/{Secret}",
            $"/openapi/{Secret}.json",
            $"/fails?{Secret}",
        ];
        string[] headers =
        [
            "Authorization",
            "X-Api-Key",
            "Cookie",
            "User-Agent",
            "Referer",
            "Origin",
            "Accept",
            "Accept-Language",
            "Idempotency-Key",
            "If-Match",
            "If-None-Match",
            "traceparent",
            "tracestate",
            "baggage",
            "X-Forwarded-For",
            "X-Forwarded-Proto",
            "X-Request-Id",
            "Request-Id",
            "Prefer",
            "Content-Type",
            "Content-Encoding",
            Secret,
        ];
        string[] bodies =
        [
            $"\"{Secret}\"",
            Secret,
            $"{{\"{Secret}\":1}}",
            $"{{\"meter\":\"{Secret}\"}}",
            good.Replace("kg/hL", Secret, StringComparison.Ordinal),
            $"{{\"meter\":\"{Secret}",
            good + Secret,
        ];

        foreach (var path in paths)
            (await host.GetAsync(path, "192.0.2.1")).Dispose();
        foreach (var header in headers)
        {
            using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(good));
            (
                await host.SendAsync(
                    HttpMethod.Post,
                    header == "If-Match" ? "/v1/machines" : catchTest,
                    "192.0.2.1",
                    null,
                    content,
                    header.StartsWith("Content-", StringComparison.Ordinal)
                        ? [(header, Secret)]
                        : [("Content-Type", "application/json"), (header, header == "Authorization" ? $"Bearer {Secret}" : Secret)]
                )
            ).Dispose();
        }

        foreach (var body in bodies)
        {
            using var content = Question.Json(Encoding.UTF8.GetBytes(body));
            (await host.SendAsync(HttpMethod.Post, catchTest, "192.0.2.1", null, content)).Dispose();
        }

        (await host.SendAsync(new HttpMethod(Secret.Replace("_", "-", StringComparison.Ordinal)), "/v1/units", "192.0.2.1")).Dispose();

        Assert.Equal(paths.Length + headers.Length + bodies.Length + 1, log.Requests.Count);
        Assert.DoesNotContain(log.All, line => line.Contains("qqqqsecretqqqq", StringComparison.OrdinalIgnoreCase));
    }

    public void Dispose() => log.Dispose();

    private ArrangedHost Host(params (string Name, string Value)[] settings) =>
        new([("Calibration:Log", "json"), .. settings]) { Log = log };

    private IEnumerable<int> Statuses() =>
        log.Requests.Where(line => line["status"] is not null).Select(line => line["status"]!.GetValue<int>());
}
