namespace CalibrationApi.Storage.Changes;

/// <summary>One stored change.</summary>
public sealed record Change
{
    /// <summary>1 for the first of a workspace, one more with each; set by the store.</summary>
    public long Sequence { get; init; }

    /// <summary>A number by chance that a change has in no other past of the same file; set by the store.</summary>
    public long Mark { get; init; }

    /// <summary>Kind of the record.</summary>
    public required string Kind { get; init; }

    /// <summary>Id of the record.</summary>
    public required string Record { get; init; }

    /// <summary>1 when it was stored first, one more with each change of it.</summary>
    public required long Revision { get; init; }

    /// <summary>What happened, see <see cref="ChangeWords"/>.</summary>
    public required string What { get; init; }

    /// <summary>When the service received it.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>When that happened which the record tells of, with the offset it was entered with; null for what is described.</summary>
    public DateTimeOffset? OccurredAt { get; init; }

    /// <summary>Id of the machine that it is about.</summary>
    public string? Machine { get; init; }

    /// <summary>Id of the machine that it was about until then, where that was another.</summary>
    public string? MachineBefore { get; init; }

    /// <summary>Id of the record that took its place.</summary>
    public string? SupersededBy { get; init; }
}

/// <summary>What can happen to a record.</summary>
public static class ChangeWords
{
    /// <summary>Described for the first time.</summary>
    public const string Created = "created";

    /// <summary>Described anew.</summary>
    public const string Changed = "changed";

    /// <summary>Taken out of use.</summary>
    public const string Retired = "retired";

    /// <summary>Taken into use again.</summary>
    public const string Reinstated = "reinstated";

    /// <summary>Evidence was added.</summary>
    public const string Recorded = "recorded";

    /// <summary>Another record took the place of evidence.</summary>
    public const string Superseded = "superseded";
}

/// <summary>Which changes are wanted; null members do not filter.</summary>
public sealed record ChangeFilter
{
    /// <summary>Kind of the record.</summary>
    public string? Kind { get; init; }

    /// <summary>Id of the machine that it is about, or was until then.</summary>
    public string? Machine { get; init; }
}

/// <summary>Where a list goes on: after the change with this number, and with this mark, which tells it from one of another past.</summary>
/// <param name="Sequence">Number of the change.</param>
/// <param name="Mark">Its mark.</param>
public sealed record ChangePosition(long Sequence, long Mark)
{
    /// <summary>Before the first change.</summary>
    public static ChangePosition Beginning { get; } = new(0, 0);
}
