using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Administration.Keys;

/// <summary>A key as the service keeps it: everything but its secret.</summary>
public class KeyAnswer
{
    /// <summary>Id, a UUID of version 7.</summary>
    public required string Id { get; init; }

    /// <summary>What the text of the key begins with. It is no secret; it says which key a text belongs to.</summary>
    public required string Start { get; init; }

    /// <summary>Id of the workspace that it opens.</summary>
    public required string Workspace { get; init; }

    /// <summary>Who or what uses it.</summary>
    public required string Name { get; init; }

    /// <summary>
    /// What it may do: <c>calculate</c>, <c>read</c>, <c>write</c>, <c>admin</c>; <c>operator</c> for keys that the command of the service
    /// made for whoever runs the installation.
    /// </summary>
    public required IReadOnlyList<string> Scopes { get; init; }

    /// <summary><c>live</c>, <c>expired</c> or <c>revoked</c>.</summary>
    [KnownWords("live", "expired", "revoked")]
    public required string State { get; init; }

    /// <summary>When it was made (UTC).</summary>
    public required string CreatedAt { get; init; }

    /// <summary>Id of the key that made it; absent when the command of the service did.</summary>
    public string? CreatedBy { get; init; }

    /// <summary>From when on it opens nothing (UTC); absent for never.</summary>
    public string? ExpiresAt { get; init; }

    /// <summary>When it was revoked (UTC); absent while it was not.</summary>
    public string? RevokedAt { get; init; }

    /// <summary>Why it was revoked.</summary>
    public string? RevokedBecause { get; init; }

    /// <summary>Id of the key that it takes the place of.</summary>
    public string? Replaces { get; init; }

    /// <summary>Id of the key that takes its place.</summary>
    public string? ReplacedBy { get; init; }

    /// <summary>When it was used last (UTC), to about a minute; absent for never.</summary>
    public string? LastUsedAt { get; init; }
}

/// <summary>A new key.</summary>
public sealed class NewKeyAnswer : KeyAnswer
{
    /// <summary>The key itself. It is shown in this answer only; a repetition of the request does not show it again.</summary>
    public string? Key { get; init; }
}
