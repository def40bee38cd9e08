using System.Diagnostics;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Storage.OneWriter;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>Traces and metrics for whoever collects them by OTLP; nothing is measured for nobody.</summary>
internal static class Telemetry
{
    /// <summary>The setting of the OpenTelemetry specification that says where the collector is; its others are honoured too.</summary>
    public const string Endpoint = "OTEL_EXPORTER_OTLP_ENDPOINT";

    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        if (string.IsNullOrWhiteSpace(builder.Configuration[Endpoint]))
            return;
        builder
            .Services.AddOpenTelemetry()
            // Before what the environment says, which wins.
            .ConfigureResource(resource =>
                resource.AddService("calibration-api", serviceVersion: EngineVersion.Current).AddEnvironmentVariableDetector()
            )
            .WithTracing(traces => traces.AddAspNetCoreInstrumentation(web => web.EnrichWithHttpResponse = HideAddress).AddOtlpExporter())
            .WithMetrics(metrics =>
                metrics.AddAspNetCoreInstrumentation().AddMeter(Evaluations.Meter).AddMeter(WriterMetrics.Meter).AddOtlpExporter()
            );
    }

    // A path holds whatever its sender wrote, be it a key; its template says as much.
    private static void HideAddress(Activity activity, HttpResponse response)
    {
        activity.SetTag("url.path", RequestLog.RouteOf(response.HttpContext) ?? "-");
        activity.SetTag("url.query", null);
    }
}
