using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;

namespace CalibrationApi.Administration.Keys;

/// <summary>A new key.</summary>
public sealed class KeyRequest : IStoredRequest
{
    internal const int LongestName = 200;
    internal const int LongestReason = 500;

    /// <summary>
    /// The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes one.
    /// </summary>
    [NewId]
    public string? Id { get; init; }

    /// <summary>Who or what uses the key, so that it can be told apart later.</summary>
    [Needed, Text(KeyRequest.LongestName)]
    public string? Name { get; init; }

    /// <summary>
    /// What the key may do; none implies another. <c>calculate</c>: calculations, which store nothing. <c>read</c>: records and what
    /// follows from them. <c>write</c>: storing records. <c>admin</c>: keys and audit of the workspace.
    /// </summary>
    [Needed, Items(1, typeof(Scope), nameof(Scope.OfWorkspace)), Word(typeof(Scope), nameof(Scope.OfWorkspace))]
    public IReadOnlyList<string?>? Scopes { get; init; }

    /// <summary>
    /// From when on it opens nothing, RFC 3339. Default never. A key that expires makes none that outlives it, so it has to give this.
    /// </summary>
    [InstantAhead]
    public string? ExpiresAt { get; init; }
}

/// <summary>A key takes the place of another.</summary>
public sealed class RotationRequest : IStoredRequest
{
    /// <summary>The sender's own id for the new key, a UUID of version 7 in lower case. Default: the service makes one.</summary>
    [NewId]
    public string? Id { get; init; }

    /// <summary>Until when the old key goes on, RFC 3339; it does not outlive its own expiry. Now ends it at once.</summary>
    [Needed, InstantAhead]
    public string? Until { get; init; }

    /// <summary>
    /// From when on the new key opens nothing, RFC 3339. Default: it gets as long a life as the old one was given. It cannot outlive the
    /// key that makes it.
    /// </summary>
    [InstantAhead]
    public string? ExpiresAt { get; init; }
}

/// <summary>Ends a key.</summary>
public sealed class RevocationRequest : IStoredRequest
{
    string? IStoredRequest.Id => null;

    /// <summary>Why, for whoever looks at it later.</summary>
    [Needed, Text(KeyRequest.LongestReason)]
    public string? Reason { get; init; }
}
