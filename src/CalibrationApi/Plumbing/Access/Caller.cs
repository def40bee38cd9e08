using System.Security.Claims;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Who sends a request: a key, or where there are no keys whoever sits at the machine.</summary>
/// <param name="Workspace">The workspace it works in.</param>
/// <param name="Key">Id of the key; null without keys.</param>
/// <param name="Scopes">What it may do.</param>
internal sealed record Caller(Workspace Workspace, string? Key, IReadOnlyList<string> Scopes)
{
    /// <summary>The kind of claim that a policy asks for.</summary>
    public const string ScopeClaim = "scope";

    private const string WorkspaceClaim = "workspace";

    public static Caller Of(HttpContext context) =>
        new(
            Workspace.Of(
                context.User.FindFirstValue(WorkspaceClaim)
                    ?? throw new InvalidOperationException("Nobody was authenticated; the route names no scope.")
            ),
            context.User.FindFirstValue(Requester.KeyClaim),
            [.. context.User.FindAll(ScopeClaim).Select(claim => claim.Value)]
        );

    /// <summary>As the framework carries it.</summary>
    public static ClaimsPrincipal Principal(string scheme, string workspace, string? key, IEnumerable<string> scopes)
    {
        var claims = scopes.Select(scope => new Claim(ScopeClaim, scope)).Prepend(new Claim(WorkspaceClaim, workspace));
        return new ClaimsPrincipal(new ClaimsIdentity(key is null ? claims : claims.Append(new Claim(Requester.KeyClaim, key)), scheme));
    }
}
