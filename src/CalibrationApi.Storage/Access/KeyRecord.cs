namespace CalibrationApi.Storage.Access;

/// <summary>A key as stored: everything but its secret.</summary>
public sealed record KeyRecord
{
    /// <summary>UUIDv7, lower case. Told apart within a workspace.</summary>
    public required string Id { get; init; }

    /// <summary>Who or what uses it.</summary>
    public required string Name { get; init; }

    /// <summary>What it may do.</summary>
    public required IReadOnlyList<string> Scopes { get; init; }

    /// <summary>SHA-256 of its secret.</summary>
    public required byte[] SecretHash { get; init; }

    /// <summary>Of the request that created it: a repetition is recognised. Empty for a key that the command made.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>When it was made.</summary>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <summary>The key that made it; null for the command.</summary>
    public string? CreatedBy { get; init; }

    /// <summary>From when on it opens nothing; null for never.</summary>
    public DateTimeOffset? ExpiresAt { get; init; }

    /// <summary>When it was revoked; null while it stands.</summary>
    public DateTimeOffset? RevokedAt { get; init; }

    /// <summary>Why it was revoked.</summary>
    public string? RevokedBecause { get; init; }

    /// <summary>The key that it takes the place of.</summary>
    public string? Replaces { get; init; }

    /// <summary>The key that takes its place.</summary>
    public string? ReplacedBy { get; init; }

    /// <summary>When it was used last, to about a minute; null for never.</summary>
    public DateTimeOffset? LastUsedAt { get; init; }

    /// <summary>Whether it opens anything at an instant.</summary>
    public bool IsLive(DateTimeOffset now) => RevokedAt is null && !(ExpiresAt <= now);
}
