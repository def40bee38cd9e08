namespace CalibrationApi.Plumbing.Access;

/// <summary>
/// The workspace that a request works in. Handlers take it as a parameter and pass it on; there is no default to forget it by.
/// </summary>
internal sealed record Workspace
{
    private readonly string id;

    private Workspace(string id) => this.id = id;

    /// <summary>The workspace that every database begins with, and the only one where there are no keys.</summary>
    public static Workspace Local { get; } = new("local");

    /// <summary>As stores take it.</summary>
    public static implicit operator string(Workspace workspace) => workspace.id;

    /// <summary>The workspace of whoever sends the request.</summary>
    public static ValueTask<Workspace?> BindAsync(HttpContext context) => ValueTask.FromResult<Workspace?>(Caller.Of(context).Workspace);

    /// <summary>The workspace that a caller was found to belong to.</summary>
    public static Workspace Of(string id) => new(id);

    /// <inheritdoc/>
    public override string ToString() => id;
}
