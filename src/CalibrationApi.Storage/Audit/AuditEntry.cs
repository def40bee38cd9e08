namespace CalibrationApi.Storage.Audit;

/// <summary>One thing that was done, by whom.</summary>
public sealed record AuditEntry
{
    /// <summary>Done with a key.</summary>
    public const string ByKey = "key";

    /// <summary>Done without a key, on the machine of the service.</summary>
    public const string ByLocal = "local";

    /// <summary>Done by the command of the service.</summary>
    public const string ByCommand = "command";

    /// <summary>When.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Who: one of the words above.</summary>
    public required string Actor { get; init; }

    /// <summary>The key; null for the other actors.</summary>
    public string? Key { get; init; }

    /// <summary>What: the name of the operation.</summary>
    public required string Action { get; init; }

    /// <summary>Address of what was made, changed or exported.</summary>
    public string? Target { get; init; }

    /// <summary>Trace id of the request.</summary>
    public string? Trace { get; init; }
}

/// <summary>Which entries are wanted; null members do not filter.</summary>
public sealed record AuditFilter
{
    /// <summary>Id of a key.</summary>
    public string? Key { get; init; }

    /// <summary>Name of an operation.</summary>
    public string? Action { get; init; }

    /// <summary>At or after.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>Before.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>Newest first instead of oldest first.</summary>
    public bool NewestFirst { get; init; }
}

/// <summary>Where a list goes on: after the entry with this time and sequence.</summary>
/// <param name="At">UTC text as stored.</param>
/// <param name="Sequence">Sequence.</param>
public sealed record AuditPosition(string At, long Sequence);
