using System.Text.Encodings.Web;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Finds out who sends a request, and turns away whoever may not (RFC 6750).</summary>
/// <remarks>The key is looked up with every request, so that a revocation counts from the next one on, whichever process made it.</remarks>
internal sealed class KeyScheme(
    IOptionsMonitor<AuthenticationSchemeOptions> options,
    ILoggerFactory logger,
    UrlEncoder encoder,
    CalibrationDatabase database,
    TimeProvider clock,
    LocalMode localMode,
    KeyUse use
) : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string Name = "Key";

    private const string Method = "Bearer";

    // The same for every request without a key, and never changed.
    private static readonly AuthenticateResult OfThisMachine = Success(Workspace.Local, null, LocalMode.Scopes);

    private AccessRefusal refusal = AccessRefusal.NoKey;

    protected override Task<AuthenticateResult> HandleAuthenticateAsync() => Task.FromResult(Authenticate());

    protected override Task HandleChallengeAsync(AuthenticationProperties properties) => refusal.ExecuteAsync(Context);

    protected override Task HandleForbiddenAsync(AuthenticationProperties properties)
    {
        var scope = Context.GetEndpoint()!.Metadata.GetRequiredMetadata<NeededScope>().Scope;
        // Without keys nobody was asked for one; that is no key with too small a scope.
        return (Caller.Of(Context).Key is null ? AccessRefusal.NoKeyYet(scope) : AccessRefusal.MissingScope(scope)).ExecuteAsync(Context);
    }

    private AuthenticateResult Authenticate()
    {
        // Who asks matters only where a scope is needed.
        if (Context.GetEndpoint()?.Metadata.GetMetadata<NeededScope>() is null)
            return AuthenticateResult.NoResult();
        if (HasKeyInAddress())
            return Fail(AccessRefusal.KeyInAddress);
        var values = Request.Headers.Authorization;
        if (values.Count > 1)
            return Fail(AccessRefusal.TwoCredentials);
        if (values.Count == 0)
            return Local();
        var parts = values[0]!.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts is not [var method, ..] || !method.Equals(Method, StringComparison.OrdinalIgnoreCase))
            return Fail(AccessRefusal.OtherMethod);
        if (parts is not [_, var text])
            return Fail(AccessRefusal.Malformed);
        return KeyText.Read(text) is { } key ? Shown(key) : Fail(AccessRefusal.NotAKey);
    }

    private AuthenticateResult Local()
    {
        if (localMode.Refusal(Context) is { } why)
            return Fail(why);
        return OfThisMachine;
    }

    private AuthenticateResult Shown(KeyText shown)
    {
        var found = database
            .Read(connection => KeyStore.OfAnyWorkspace(connection, shown.Id))
            .Where(one => shown.Fits(one.Key.SecretHash))
            .ToArray();
        if (found is not [var (workspace, isRetired, key)])
            return Fail(AccessRefusal.Unknown);
        localMode.End();
        var now = clock.GetUtcNow();
        var why =
            key.RevokedAt is not null ? AccessRefusal.Revoked
            : !key.IsLive(now) ? AccessRefusal.Expired
            : isRetired ? AccessRefusal.WorkspaceRetired
            : null;
        if (why is not null)
            return Fail(why with { Workspace = workspace, Key = key.Id });
        use.Note(workspace, key, now);
        return Success(workspace, key.Id, key.Scopes);
    }

    // Addresses end up in logs and histories. Also where a key in the header would do.
    private bool HasKeyInAddress() =>
        Request.QueryString.HasValue
        && Request.Query.Any(parameter =>
            parameter.Key == "access_token" || KeyText.IsIn(parameter.Key) || parameter.Value.Any(KeyText.IsIn)
        );

    private static AuthenticateResult Success(string workspace, string? key, IEnumerable<string> scopes) =>
        AuthenticateResult.Success(new AuthenticationTicket(Caller.Principal(Name, workspace, key, scopes), Name));

    private AuthenticateResult Fail(AccessRefusal why)
    {
        refusal = why;
        return AuthenticateResult.Fail(why.Code.Word);
    }
}
