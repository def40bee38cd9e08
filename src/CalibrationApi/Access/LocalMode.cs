using System.Net;
using CalibrationApi.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Access;

/// <summary>Working without keys: only while there are none, and only for the machine itself.</summary>
/// <remarks>
/// A proxy on the same machine would let the whole world pass as this machine, and a page in a browser can make a name of
/// its own lead here. So a request has to come from a loopback address, straight, and by a name of this machine.
/// </remarks>
internal sealed class LocalMode(CalibrationDatabase database, TimeProvider clock)
{
    /// <summary>Keys and workspaces are left to whoever has a key.</summary>
    public static IReadOnlyList<string> Scopes { get; } = [Scope.Calculate, Scope.Read, Scope.Write];

    private static readonly string[] SignsOfAProxy =
        ["Forwarded", "Via", "X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto", "X-Real-IP", "X-Original-For", "X-Original-Host", "X-Original-Proto"];

    // Keys are never deleted, so what was once seen stays true.
    private volatile bool hasKeys = database.Read(KeyStore.AnyExists);

    /// <summary>Why a request without a key may not pass; null when it may.</summary>
    public AccessRefusal? Refusal(HttpContext context)
    {
        if (HasKeys(context))
            return AccessRefusal.NoKey;
        return IsFromThisMachine(context) ? null : AccessRefusal.FromElsewhere;
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
        catch (Exception failure) when (DatabaseOutage.Is(failure) && context.GetEndpoint()?.Metadata.GetMetadata<NeededScope>() is { Scope: Scope.Calculate })
        {
        }

        return hasKeys;
    }

    /// <summary>Why the service must not start on the addresses that are configured; null when it may. With a key that can make others it may be reached from elsewhere.</summary>
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
        && !SignsOfAProxy.Any(context.Request.Headers.ContainsKey);

    private static bool IsLoopbackName(string host) =>
        host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
}
