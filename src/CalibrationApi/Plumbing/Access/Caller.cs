namespace CalibrationApi.Plumbing.Access;

/// <summary>Who sends a request: a key, or where there are no keys whoever sits at the machine.</summary>
/// <param name="Workspace">The workspace it works in.</param>
/// <param name="Key">Id of the key; null without keys.</param>
/// <param name="Scopes">What it may do.</param>
internal sealed record Caller(Workspace Workspace, string? Key, IReadOnlyList<string> Scopes)
{
    /// <summary>Who sends a request that was let through.</summary>
    public static Caller Of(HttpContext context) =>
        context.Features.Get<Caller>() ?? throw new InvalidOperationException("Nobody was authenticated; the route names no scope.");

    /// <summary>A caller with a key.</summary>
    public static Caller With(string workspace, string key, IReadOnlyList<string> scopes) => new(Workspace.Of(workspace), key, scopes);

    /// <summary>Notes that this is who sends a request.</summary>
    public void SendsIn(HttpContext context) => context.Features.Set(this);
}
