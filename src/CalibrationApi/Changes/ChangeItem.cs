using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Changes;

/// <summary>One stored change.</summary>
public sealed class ChangeItem
{
    /// <summary>Its number: 1 for the first change of the workspace, one more with each, and none is left out.</summary>
    public required long Sequence { get; init; }

    /// <summary>Kind of the record; read it under the path of its kind.</summary>
    [KnownWords("machine", "product", "lot", "scale", "container", "plan", "catch-test", "adoption", "scale-check")]
    public required string Kind { get; init; }

    /// <summary>Id of the record.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// 1 when the record was stored first, one more with each change of it. That of a described record is the one in its ETag:
    /// <c>"r3"</c> for 3.
    /// </summary>
    public required long Revision { get; init; }

    /// <summary>
    /// What happened: <c>created</c>, <c>changed</c>, <c>retired</c> or <c>reinstated</c> (no longer retired) for what is described,
    /// <c>recorded</c> or <c>superseded</c> for evidence.
    /// </summary>
    [KnownWords("created", "changed", "retired", "reinstated", "recorded", "superseded")]
    public required string What { get; init; }

    /// <summary>
    /// When the service received it (UTC). Changes stand in the order in which they were stored, not in that of any times.
    /// </summary>
    public required string ReceivedAt { get; init; }

    /// <summary>
    /// When that happened which the evidence tells of, with the offset it was entered with, long before it was received perhaps; absent for
    /// what is described.
    /// </summary>
    public string? OccurredAt { get; init; }

    /// <summary>Id of the machine that it is about, where it is about one.</summary>
    public string? Machine { get; init; }

    /// <summary>Id of the machine that a plan was for until then, where that was another.</summary>
    public string? MachineBefore { get; init; }

    /// <summary>Id of the record that took its place; only with <c>superseded</c>.</summary>
    public string? SupersededBy { get; init; }

    /// <summary>The cursor behind this change: give it as <c>after</c> to go on with the next one, at any time.</summary>
    public required string Cursor { get; init; }
}

/// <summary>A page of the changes.</summary>
public sealed class ChangePage
{
    /// <summary>The changes of this page, oldest first.</summary>
    public required IReadOnlyList<ChangeItem> Items { get; init; }

    /// <summary>Address of the next page; absent when there is nothing more yet.</summary>
    public string? Next { get; init; }

    /// <summary>
    /// The cursor behind everything that this page looked at. Keep it: given as <c>after</c>, it lists what was stored since, however much
    /// later.
    /// </summary>
    public required string After { get; init; }
}
