using System.Collections.Frozen;
using System.Net;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Settings;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Working without keys: only while there are none, and only for the machine itself.</summary>
/// <remarks>
/// A proxy on the same machine would let the whole world pass as this machine, and a page in a browser can make a name of
/// its own lead here, or send to a name of this machine. So a request has to come from a loopback address, straight, by a name of
/// this machine, and from no page but our own and those that the operator named.
/// </remarks>
internal sealed class LocalMode(CalibrationDatabase database, CalibrationSettings settings, TimeProvider clock)
{
    /// <summary>Keys and workspaces are left to whoever has a key.</summary>
    public static IReadOnlyList<string> Scopes { get; } = [Scope.Calculate, Scope.Read, Scope.Write];

    // RFC 7239, RFC 9110 section 7.6.3, and what proxies, balancers and networks in front of a service write (common practice, no published
    // source).
    private static readonly FrozenSet<string> SignsOfAProxy = new[]
    {
        "Forwarded",
        "Via",
        "Proxy-Connection",
        "X-Real-IP",
        "X-Client-IP",
        "X-Cluster-Client-IP",
        "X-ProxyUser-IP",
        "X-Envoy-External-Address",
        "True-Client-IP",
        "CF-Connecting-IP",
        "Fastly-Client-IP",
        "Client-IP",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    // The latter is what the framework leaves of the former where it believed it.
    private static readonly string[] SignsOfAProxyBegin = ["X-Forwarded", "X-Original-"];

    // Keys are never deleted, so what was once seen stays true.
    private volatile bool hasKeys = database.Read(KeyStore.AnyExists);

    /// <summary>Why a request without a key may not pass; null when it may.</summary>
    public AccessRefusal? Refusal(HttpContext context)
    {
        if (HasKeys(context))
            return AccessRefusal.NoKey;
        if (!IsFromThisMachine(context))
            return AccessRefusal.FromElsewhere;
        return IsFromAPageElsewhere(context.Request) ? AccessRefusal.FromAPage : null;
    }

    /// <summary>A key was met, so that nobody works without one any more, whether the database can be asked or not.</summary>
    public void End() => hasKeys = true;

    // Calculations read and store nothing. Where there were no keys when last looked, they go on without the database.
    private bool HasKeys(HttpContext context)
    {
        try
        {
            hasKeys = hasKeys || database.Read(KeyStore.AnyExists);
        }
        catch (Exception failure)
            when (DatabaseOutage.Is(failure) && context.GetEndpoint()?.Metadata.GetMetadata<NeededScope>() is { Scope: Scope.Calculate })
        { }

        return hasKeys;
    }

    /// <summary>
    /// Why the service must not start on the addresses that are configured; null when it may. With a key that can make others it may be
    /// reached from elsewhere.
    /// </summary>
    public static string? StartRefusal(WebApplication app)
    {
        // Looks once for keys while the database is known to be well.
        var mode = app.Services.GetRequiredService<LocalMode>();
        return LoopbackOnly.Refusal(app.Configuration) is { } refusal && !mode.HasLiveAdmin() ? refusal : null;
    }

    private bool HasLiveAdmin() => database.Read(connection => KeyStore.AnyLive(connection, Scope.Admin, clock.GetUtcNow()));

    private static bool IsFromThisMachine(HttpContext context) =>
        // No address at all: not from a network.
        (context.Connection.RemoteIpAddress is not { } address || IPAddress.IsLoopback(address))
        && IsLoopbackName(context.Request.Host.Host)
        && !HasSignOfAProxy(context.Request.Headers);

    private static bool HasSignOfAProxy(IHeaderDictionary headers)
    {
        foreach (var (header, _) in headers)
        {
            if (SignsOfAProxy.Contains(header))
                return true;
            foreach (var begin in SignsOfAProxyBegin)
            {
                if (header.StartsWith(begin, StringComparison.OrdinalIgnoreCase))
                    return true;
            }
        }

        return false;
    }

    // Whether a browser then lets the page read the answer comes too late for a request that stores.
    private bool IsFromAPageElsewhere(HttpRequest request) =>
        request.Headers.Origin is { Count: > 0 } origin
        && origin != $"{request.Scheme}://{request.Host.Value}"
        && !settings.AllowedOrigins.Contains(origin.ToString());

    private static bool IsLoopbackName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
}
