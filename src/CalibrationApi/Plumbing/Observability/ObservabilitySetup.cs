using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Settings;
using Microsoft.Extensions.Configuration.Memory;
using Microsoft.Extensions.Logging.Console;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>What an operator sees of the service: its log, and traces and metrics for those who collect them.</summary>
internal static class ObservabilitySetup
{
    public static void AddObservability(this WebApplicationBuilder builder, CalibrationSettings settings)
    {
        builder.AddTelemetry();
        // What is set here are defaults: the usual settings of logging change them.
        builder.Configuration.Sources.Insert(
            0,
            new MemoryConfigurationSource
            {
                InitialData =
                [
                    // Several lines for every request fill a log that nobody reads; ours is one.
                    new("Logging:LogLevel:Microsoft.AspNetCore", nameof(LogLevel.Warning)),
                    // Refused requests are counted; a line of the scheme for each would let anybody fill the log.
                    new($"Logging:LogLevel:{typeof(KeyScheme).FullName}", nameof(LogLevel.Warning)),
                    // Whoever starts the service is told why it does not start in one sentence, or by the exception itself.
                    new("Logging:LogLevel:Microsoft.Extensions.Hosting.Internal.Host", nameof(LogLevel.None)),
                    // Checks that fail are told by whoever asked for them.
                    new("Logging:LogLevel:Microsoft.Extensions.Diagnostics.HealthChecks", nameof(LogLevel.None)),
                    // A person at a terminal sees the answers.
                    new(
                        $"Logging:LogLevel:{RequestLog.Category}",
                        settings.LogsJson ? nameof(LogLevel.Information) : nameof(LogLevel.Warning)
                    ),
                    new("Logging:Console:FormatterName", settings.LogsJson ? JsonLogFormatter.FormatterName : ConsoleFormatterNames.Simple),
                ],
            }
        );
        builder.Logging.AddConsoleFormatter<JsonLogFormatter, ConsoleFormatterOptions>();
        builder.Services.AddSingleton<FailureLines>();
        builder.Services.AddSingleton<RequestLog>();
    }

    /// <summary>Comes first, so that it sees the status that really leaves.</summary>
    public static void UseRequestLog(this WebApplication app)
    {
        var log = app.Services.GetRequiredService<RequestLog>();
        app.Use(log.LogAsync);
    }
}
