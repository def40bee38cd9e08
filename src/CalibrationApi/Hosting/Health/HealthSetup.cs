using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CalibrationApi.Hosting.Health;

/// <summary>Whether the service runs, and whether it can do its work.</summary>
internal static class HealthSetup
{
    private const string MediaType = "application/health+json";

    public static void AddHealth(this IServiceCollection services) =>
        services.AddHealthChecks().AddCheck<StorageHealth>("storage").AddCheck<SchemaHealth>("schema").AddCheck<DiskHealth>("disk");

    public static void MapHealth(this WebApplication app)
    {
        app.MapHealthChecks("/healthz/live", Options(_ => false)).ExcludeFromDescription();
        app.MapHealthChecks("/healthz/ready", Options(_ => true)).ExcludeFromDescription();
    }

    private static HealthCheckOptions Options(Func<HealthCheckRegistration, bool> which) =>
        new() { Predicate = which, ResponseWriter = WriteAsync };

    // Which check failed and our own sentence about it; never the text of an exception, which may name what is nobody's business.
    private static Task WriteAsync(HttpContext context, HealthReport report)
    {
        var checks = new JsonObject();
        foreach (var (name, entry) in report.Entries)
        {
            var check = new JsonObject { ["status"] = Word(entry.Status) };
            if (entry.Status != HealthStatus.Healthy)
                check["output"] = entry.Description ?? "This check failed.";
            checks[name] = new JsonArray(check);
        }

        var body = new JsonObject { ["status"] = Word(report.Status) };
        if (checks.Count > 0)
            body["checks"] = checks;
        context.Response.ContentType = MediaType;
        return context.Response.WriteAsync(body.ToJsonString(JsonSettings.Writing));
    }

    private static string Word(HealthStatus status) => status == HealthStatus.Healthy ? "pass" : "fail";
}
