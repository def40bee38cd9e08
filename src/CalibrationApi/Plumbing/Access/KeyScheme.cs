using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Finds out who sends a request, and turns away whoever may not (RFC 6750).</summary>
/// <remarks>
/// The key is looked up with every request, so that a revocation counts from the next one on, whichever process made it. The framework's
/// authentication and authorization make a dozen objects for each request to choose among schemes and policies; there is one scheme here.
/// </remarks>
internal sealed class KeyScheme(CalibrationDatabase database, TimeProvider clock, LocalMode localMode, KeyUse use)
{
    private const string Method = "Bearer";

    // The same for every request without a key, and never changed.
    private static readonly Caller OfThisMachine = new(Workspace.Local, null, LocalMode.Scopes);

    /// <summary>Lets a request through whose sender has the scope that its route needs.</summary>
    public Task CheckAsync(HttpContext context, RequestDelegate next)
    {
        // Who asks matters only where a scope is needed.
        if (context.GetEndpoint()?.Metadata.GetMetadata<NeededScope>() is not { Scope: var scope })
            return next(context);
        if (context.Features.Get<Caller>() is not { } caller)
        {
            (caller, var refusal) = Authenticate(context);
            if (caller is null)
                return refusal!.ExecuteAsync(context);
            caller.SendsIn(context);
        }

        if (caller.Scopes.Contains(scope))
            return next(context);
        // Without keys nobody was asked for one; that is no key with too small a scope.
        return (caller.Key is null ? AccessRefusal.NoKeyYet(scope) : AccessRefusal.MissingScope(scope)).ExecuteAsync(context);
    }

    private (Caller? Caller, AccessRefusal? Refusal) Authenticate(HttpContext context)
    {
        if (HasKeyInAddress(context.Request))
            return (null, AccessRefusal.KeyInAddress);
        var values = context.Request.Headers.Authorization;
        if (values.Count > 1)
            return (null, AccessRefusal.TwoCredentials);
        if (values.Count == 0)
            return localMode.Refusal(context) is { } why ? (null, why) : (OfThisMachine, null);
        var parts = values[0]!.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts is not [var method, ..] || !method.Equals(Method, StringComparison.OrdinalIgnoreCase))
            return (null, AccessRefusal.OtherMethod);
        if (parts is not [_, var text])
            return (null, AccessRefusal.Malformed);
        return KeyText.Read(text) is { } key ? Shown(key) : (null, AccessRefusal.NotAKey);
    }

    private (Caller? Caller, AccessRefusal? Refusal) Shown(KeyText shown)
    {
        var found = database
            .Read(connection => KeyStore.OfAnyWorkspace(connection, shown.Id))
            .Where(one => shown.Fits(one.Key.SecretHash))
            .ToArray();
        if (found is not [var (workspace, isRetired, key)])
            return (null, AccessRefusal.Unknown);
        localMode.End();
        var now = clock.GetUtcNow();
        var why =
            key.RevokedAt is not null ? AccessRefusal.Revoked
            : !key.IsLive(now) ? AccessRefusal.Expired
            : isRetired ? AccessRefusal.WorkspaceRetired
            : null;
        if (why is not null)
            return (null, why with { Workspace = workspace, Key = key.Id });
        use.Note(workspace, key, now);
        return (Caller.With(workspace, key.Id, key.Scopes), null);
    }

    // Addresses end up in logs and histories. Also where a key in the header would do.
    private static bool HasKeyInAddress(HttpRequest request) =>
        request.QueryString.HasValue
        && request.Query.Any(parameter =>
            parameter.Key == "access_token" || KeyText.IsIn(parameter.Key) || parameter.Value.Any(KeyText.IsIn)
        );
}
