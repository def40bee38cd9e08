using System.Collections.Concurrent;
using System.Text;
using CalibrationApi.Testing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.Tests.Plumbing.Observability;

/// <summary>What a collector gets by OTLP.</summary>
public sealed class TelemetryTests
{
    private const string Secret = "calk_qqqqsecretqqqq";

    [Fact]
    public async Task Service_WithACollector_SendsTracesAndMetricsByTheirStandardNames()
    {
        await using var collector = await Collector.StartAsync();
        // A process of its own: in this one the collection would see the instruments of every other service under test.
        await using var service = ServiceProcess.Start(
            "--urls",
            "http://127.0.0.1:0",
            "--OTEL_EXPORTER_OTLP_ENDPOINT",
            collector.Address,
            "--OTEL_EXPORTER_OTLP_PROTOCOL",
            "http/protobuf",
            "--OTEL_SERVICE_NAME",
            "farm-7",
            "--OTEL_METRIC_EXPORT_INTERVAL",
            "100",
            "--OTEL_BSP_SCHEDULE_DELAY",
            "100"
        );
        using var client = CheckedClient.Of(await service.ListeningAsync());
        using (var content = Question.Json(Encoding.UTF8.GetBytes(Question.Of(Question.CatchTest).Text)))
            (await client.PostAsync(new Uri(Question.PathOf(Question.CatchTest), UriKind.Relative), content)).Dispose();
        using (var content = Question.Json(Encoding.UTF8.GetBytes(Farm.ProductDraft.Text)))
            (await client.PostAsync(new Uri("/v1/products", UriKind.Relative), content)).Dispose();
        (await client.GetAsync(new Uri($"/v1/{Secret}?{Secret}={Secret}", UriKind.Relative))).Dispose();
        (await client.GetAsync(new Uri("/v1/units", UriKind.Relative))).Dispose();

        // What comes last is sent last.
        await collector.UntilAsync("/v1/traces", "/v1/calculations/catch-test", "/v1/units");
        await collector.UntilAsync(
            "/v1/metrics",
            "http.server.request.duration",
            "http.route",
            "/v1/units",
            "calibration.evaluations",
            "catch-test",
            "adopt",
            "calibration.storage.queue.length",
            "calibration.storage.commit.size",
            "calibration.storage.commit.duration",
            "calibration.storage.write.duration",
            "farm-7"
        );
        Assert.Equal(["/v1/metrics", "/v1/traces"], collector.Paths);
        Assert.DoesNotContain(Secret, collector.Text("/v1/metrics") + collector.Text("/v1/traces"), StringComparison.Ordinal);
    }

    /// <summary>Keeps whatever is posted to it.</summary>
    private sealed class Collector : IAsyncDisposable
    {
        private readonly WebApplication app;
        private readonly ConcurrentQueue<(string Path, string Body)> received = new();

        private Collector()
        {
            var builder = WebApplication.CreateSlimBuilder();
            builder.Logging.ClearProviders();
            builder.WebHost.UseUrls("http://127.0.0.1:0");
            app = builder.Build();
            app.Run(async context =>
            {
                using var body = new MemoryStream();
                await context.Request.Body.CopyToAsync(body);
                // Names stand in the binary form as they are.
                received.Enqueue((context.Request.Path, Encoding.Latin1.GetString(body.ToArray())));
                context.Response.ContentType = "application/x-protobuf";
            });
        }

        public string Address => app.Urls.Single();

        public IEnumerable<string> Paths => received.Select(one => one.Path).Distinct().Order(StringComparer.Ordinal);

        public static async Task<Collector> StartAsync()
        {
            var collector = new Collector();
            await collector.app.StartAsync();
            return collector;
        }

        /// <summary>Waits until all of these names came to a path.</summary>
        public async Task UntilAsync(string path, params string[] names)
        {
            for (var i = 0; i < 600 && !names.All(name => Text(path).Contains(name, StringComparison.Ordinal)); i++)
                await Task.Delay(100);
            Assert.All(names, name => Assert.Contains(name, Text(path), StringComparison.Ordinal));
        }

        public string Text(string path) => string.Concat(received.Where(one => one.Path == path).Select(one => one.Body));

        public ValueTask DisposeAsync() => app.DisposeAsync();
    }
}
