using System.Diagnostics;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.Tests.Plumbing.Observability;

/// <summary>What a client and a log see of mistakes: the client's own, and ours.</summary>
public sealed class UnhandledFailuresTests
{
    private const string Secret = "SELECT secret FROM machine at CalibrationApi.Storage.Store.cs:42";

    [Theory]
    [InlineData("/fails")]
    [InlineData("/fails-late")]
    public async Task Request_ThatMakesTheServiceFail_TellsTheClientNothingOfItsInside(string path)
    {
        var log = new LogEntries();
        await using var host = new FailingHost(log);
        using var client = host.CreateCheckedClient();

        using var response = await client.GetAsync(new Uri(path, UriKind.Relative));

        var problem = await ProblemBody.ReadAsync(response, 500);
        Assert.Equal("internal-error", problem.Only().Code);
        Assert.DoesNotContain("secret", problem.Text, StringComparison.OrdinalIgnoreCase);
        var entry = Assert.Single(log.All, entry => entry.Level >= LogLevel.Error);
        Assert.Equal(Secret, entry.Exception?.Message);
    }

    [Fact]
    public async Task Request_WithATraceParent_IsAnsweredWithItsTraceId()
    {
        // The example of W3C Trace Context, section 3.2.3.
        using var request = new HttpRequestMessage(HttpMethod.Get, "/nothing");
        request.Headers.Add("traceparent", "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01");

        using var response = await ApiHost.Client.SendAsync(request);

        Assert.Equal("4bf92f3577b34da6a3ce929d0e0e4736", (await ProblemBody.ReadAsync(response, 404)).TraceId);
    }

    [Fact]
    public async Task Requests_WithTheClientsMistakes_LeaveTheLogQuiet()
    {
        var log = new LogEntries();
        await using var host = new FailingHost(log);
        using var client = host.CreateCheckedClient();
        var good = Question.Of(Question.CatchTest).Text;
        string[] bodies =
        [
            "",
            "null",
            "[]",
            "{}",
            good[..50],
            good + "x",
            "{\"bogus\":1}",
            "{\"meter\":1}",
            "{\"meter\":\"\\ud800\"}",
            "{\"meter\":\"a\",\"meter\":\"b\"}",
            good.Replace("18.7", "1e309", StringComparison.Ordinal),
            good.Replace("kg/hL", "bu", StringComparison.Ordinal),
            new string('[', 1000),
            new string(' ', 2_000_000),
        ];
        var statuses = new HashSet<int>();

        foreach (var body in bodies)
        {
            using var response = await Question.AskAsync(client, Question.CatchTest, body);
            statuses.Add((int)response.StatusCode);
        }

        foreach (var path in (string[])["/nothing", "/v1/units?x=1", Question.PathOf(Question.CatchPlan)])
        {
            using var response = await client.GetAsync(new Uri(path, UriKind.Relative));
            statuses.Add((int)response.StatusCode);
        }

        using (var text = new StringContent("{}"))
        using (var response = await client.PostAsync(new Uri(Question.PathOf(Question.CatchTest), UriKind.Relative), text))
            statuses.Add((int)response.StatusCode);

        Assert.Equal([400, 404, 405, 413, 415, 422], statuses.Order());
        Assert.DoesNotContain(log.All, entry => entry.Level >= LogLevel.Warning);
        // The start of the host is in it, so it does listen.
        Assert.Contains(log.All, entry => entry.Level == LogLevel.Information);
    }

    /// <summary>The real service, and two addresses at which it fails.</summary>
    private sealed class FailingHost(LogEntries log) : ApiHost
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureServices(services =>
            {
                services.AddSingleton<ILoggerProvider>(log);
                services.AddSingleton<IStartupFilter>(new Failures());
            });
        }

        private sealed class Failures : IStartupFilter
        {
            public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
                app =>
                {
                    next(app);
                    app.Use(
                        async (context, rest) =>
                        {
                            if (context.Request.Path == "/fails-late")
                                context.Response.Headers.ETag = "\"half\"";
                            if (context.Request.Path.StartsWithSegments("/fails") || context.Request.Path == "/fails-late")
                                throw new UnreachableException(Secret);
                            await rest(context);
                        }
                    );
                };
        }
    }
}
