using CalibrationApi.Plumbing.Settings;
using Microsoft.AspNetCore.HttpOverrides;

namespace CalibrationApi.Hosting.Pipeline;

/// <summary>Believes what named proxies say of the client: its address and its scheme. What anybody else says of it is ignored.</summary>
/// <remarks>The host is not among it: a proxy passes it on as it is, and many hand on a forwarded one that the client made up.</remarks>
internal static partial class ForwardedRequests
{
    private const string Header = "X-Forwarded-For";

    public static void AddForwardedRequests(this IServiceCollection services, CalibrationSettings settings) =>
        services.Configure<ForwardedHeadersOptions>(forwarded =>
        {
            forwarded.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            // As far as the chain of known proxies goes, and no further.
            forwarded.ForwardLimit = null;
            forwarded.KnownProxies.Clear();
            forwarded.KnownIPNetworks.Clear();
            foreach (var network in settings.Proxies)
                forwarded.KnownIPNetworks.Add(network);
        });

    public static void UseForwardedRequests(this WebApplication app)
    {
        if (app.Services.GetRequiredService<CalibrationSettings>().Proxies.Count > 0)
            app.UseForwardedHeaders();
        var isTold = 0;
        app.Use(
            (context, next) =>
            {
                // What is believed is taken out of the header. What is left came from somebody who is no proxy of ours.
                if (context.Request.Headers.ContainsKey(Header) && Interlocked.Exchange(ref isTold, 1) == 0)
                    Ignored(app.Logger, context.Connection.RemoteIpAddress?.ToString() ?? "somebody");
                return next(context);
            }
        );
    }

    [LoggerMessage(
        Level = LogLevel.Warning,
        Message = "{Address} sent X-Forwarded-For and is not in Calibration__Proxies; it was ignored. If that is your proxy, name it there. Further ones are not told."
    )]
    private static partial void Ignored(ILogger logger, string address);
}
