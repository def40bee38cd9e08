using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Plumbing.Settings;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>Limits on what is asked of the service: how often, how large, for how long, how many at once.</summary>
internal static partial class LimitsSetup
{
    /// <summary>What the server gives a body before it looks at its speed.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(5);

    public static void AddLimits(this WebApplicationBuilder builder, LimitSettings limits)
    {
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Limits.MaxConcurrentConnections = OpenFiles.Connections(limits.Connections);
            kestrel.Limits.MaxRequestBodySize = limits.BodyBytes;
            kestrel.Limits.MaxRequestHeadersTotalSize = limits.HeadersBytes;
            kestrel.Limits.MaxRequestHeaderCount = limits.Headers;
            kestrel.Limits.MaxRequestLineSize = limits.RequestLineBytes;
            kestrel.Limits.RequestHeadersTimeout = limits.HeadersTime;
            kestrel.Limits.KeepAliveTimeout = limits.IdleTime;
            kestrel.Limits.MinRequestBodyDataRate = new MinDataRate(limits.BodyBytesPerSecond, Grace);
        });
        builder.Services.AddSingleton<RequestLimits>();
        builder.Services.AddSingleton<BatchLimit>();
        builder.Services.AddSingleton<WaitLimit>();
        builder.Services.AddRequestTimeouts(timeouts =>
        {
            timeouts.DefaultPolicy = Policy(limits.RequestTime);
            timeouts.AddPolicy(MuchWork.LongTime, Policy(limits.LongRequestTime));
        });
    }

    /// <summary>Comes before authentication.</summary>
    public static void UseAddressLimit(this WebApplication app)
    {
        var limits = app.Services.GetRequiredService<RequestLimits>();
        app.Use(limits.LimitAddressAsync);
    }

    /// <summary>Comes after authentication, which says whose key it is.</summary>
    public static void UseLimits(this WebApplication app)
    {
        var limits = app.Services.GetRequiredService<RequestLimits>();
        app.Use(limits.LimitKeyAsync);
        app.Use(PlainBodies.RefuseCompressedAsync);
        var batches = app.Services.GetRequiredService<BatchLimit>();
        app.Use(batches.LimitAsync);
        app.UseRequestTimeouts();
        TellOfFewerConnections(app);
    }

    private static void TellOfFewerConnections(WebApplication app)
    {
        var wanted = app.Services.GetRequiredService<CalibrationSettings>().Limits.Connections;
        var taken = OpenFiles.Connections(wanted);
        if (taken < wanted)
            LogFewerConnections(app.Logger, OpenFiles.Most, taken, wanted);
    }

    [LoggerMessage(
        Level = LogLevel.Warning,
        Message = "The system lets this process open {Files} files, so it takes {Taken} connections at once and not {Wanted}. Raise the limit of open files, or set Calibration__Limits__Connections lower."
    )]
    private static partial void LogFewerConnections(ILogger log, long? files, int taken, int wanted);

    private static RequestTimeoutPolicy Policy(TimeSpan time) =>
        new()
        {
            Timeout = time,
            TimeoutStatusCode = StatusCodes.Status503ServiceUnavailable,
            WriteTimeoutResponse = context =>
            {
                context.Response.Headers.RetryAfter = "5";
                return ProblemResult
                    .Busy(
                        $"The service took longer than {time.TotalSeconds:0} seconds and gave up. Try again, with a smaller request if this one was large."
                    )
                    .ExecuteAsync(context);
            },
        };
}
