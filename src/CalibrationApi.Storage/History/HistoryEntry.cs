namespace CalibrationApi.Storage.History;

/// <summary>One line of what happened.</summary>
public sealed record HistoryEntry
{
    /// <summary>Kind: catch-test, adoption or scale-check.</summary>
    public required string Kind { get; init; }

    /// <summary>Id of the record.</summary>
    public required string Record { get; init; }

    /// <summary>Id of the machine.</summary>
    public string? Machine { get; init; }

    /// <summary>Position of the meter.</summary>
    public string? Meter { get; init; }

    /// <summary>Metering element.</summary>
    public string? Element { get; init; }

    /// <summary>Setting of the meter.</summary>
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    public string? Product { get; init; }

    /// <summary>Id of the lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Id of the scale.</summary>
    public string? Scale { get; init; }

    /// <summary>Id of the plan.</summary>
    public string? Plan { get; init; }

    /// <summary>Verdict of a test; passed or failed for a scale check.</summary>
    public string? Verdict { get; init; }

    /// <summary>Mass per revolution, kg per revolution; for a scale check its error, relative.</summary>
    public double? Value { get; init; }

    /// <summary>Expanded uncertainty of the value.</summary>
    public double? Expanded { get; init; }

    /// <summary>Change against the value compared with, relative.</summary>
    public double? Change { get; init; }

    /// <summary>Unit in which the value was asked for.</summary>
    public string? EnteredUnit { get; init; }

    /// <summary>Who.</summary>
    public string? RecordedBy { get; init; }

    /// <summary>When it happened, with the offset it was entered with.</summary>
    public required DateTimeOffset OccurredAt { get; init; }

    /// <summary>When the service received it.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>Id of the record that this one takes the place of.</summary>
    public string? Supersedes { get; init; }

    /// <summary>Why it does.</summary>
    public string? Reason { get; init; }

    /// <summary>Code of what spoke against an adopted number; found by the store.</summary>
    public string? DespiteCode { get; init; }

    /// <summary>Why it was adopted all the same; found by the store.</summary>
    public string? DespiteReason { get; init; }

    /// <summary>Position in the order of arrival; set by the store.</summary>
    public long Sequence { get; init; }

    /// <summary>Id of the record that took the place of this one; found by the store.</summary>
    public string? SupersededBy { get; init; }
}

/// <summary>Which lines are wanted; null members do not filter.</summary>
public sealed record HistoryFilter
{
    /// <summary>Kind.</summary>
    public string? Kind { get; init; }

    /// <summary>Machine id.</summary>
    public string? Machine { get; init; }

    /// <summary>Position of the meter.</summary>
    public string? Meter { get; init; }

    /// <summary>Metering element.</summary>
    public string? Element { get; init; }

    /// <summary>Product id.</summary>
    public string? Product { get; init; }

    /// <summary>Lot id.</summary>
    public string? Lot { get; init; }

    /// <summary>Scale id.</summary>
    public string? Scale { get; init; }

    /// <summary>Plan id.</summary>
    public string? Plan { get; init; }

    /// <summary>Verdict.</summary>
    public string? Verdict { get; init; }

    /// <summary>Happened at or after.</summary>
    public DateTimeOffset? From { get; init; }

    /// <summary>Happened before.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>Newest first instead of oldest first.</summary>
    public bool NewestFirst { get; init; }
}

/// <summary>Where a list goes on: after the line with this time and sequence.</summary>
/// <param name="OccurredAt">UTC text as stored.</param>
/// <param name="Sequence">Sequence.</param>
public sealed record HistoryPosition(string OccurredAt, long Sequence);
