using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.History;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>A stored catch test.</summary>
public sealed class CatchTestRecordAnswer
{
    /// <summary>Id, a UUID of version 7.</summary>
    public required string Id { get; init; }

    /// <summary>When the test was made, with the offset it was entered with.</summary>
    public required string OccurredAt { get; init; }

    /// <summary>The date of that in the machine's time zone.</summary>
    public required string LocalDate { get; init; }

    /// <summary>When the service received it.</summary>
    public required string ReceivedAt { get; init; }

    /// <summary>Version of the engine that evaluated it.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>The request exactly as entered.</summary>
    public required AsKept<RecordCatchTestRequest> Entered { get; init; }

    /// <summary>The complete question that was evaluated: the request joined with its records and its history.</summary>
    public required AsKept<CatchTestRequest> Resolved { get; init; }

    /// <summary>The evaluation.</summary>
    public required AsKept<CatchTestAnswer> Evaluation { get; init; }

    /// <summary>What was taken from the history.</summary>
    public required UsedHistory UsedHistory { get; init; }

    /// <summary>What was noticed about the records the test refers to.</summary>
    [SentCodes(typeof(CodesOfRecords), nameof(CodesOfRecords.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What came to light after the test; absent when nothing did.</summary>
    [SentCodes(typeof(HistoryCodes), nameof(HistoryCodes.SinceThen))]
    public IReadOnlyList<FindingAnswer>? SinceThen { get; init; }

    /// <summary>The record that took its place, with the reason; absent while the test stands.</summary>
    public Supersedes? SupersededBy { get; init; }
}

/// <summary>Whether a stored test, evaluated again, gives what it gave.</summary>
public sealed class RecomputationAnswer
{
    /// <summary>Every value is the same.</summary>
    public required bool Equal { get; init; }

    /// <summary>Version of the engine that evaluated it first.</summary>
    public required string EngineVersionThen { get; init; }

    /// <summary>Version of the engine now.</summary>
    public required string EngineVersionNow { get; init; }

    /// <summary>What differs; empty when equal.</summary>
    public required IReadOnlyList<DifferenceAnswer> Differences { get; init; }
}

/// <summary>One value that differs.</summary>
public sealed class DifferenceAnswer
{
    /// <summary>Where in the evaluation, as a JSON pointer.</summary>
    public required string Pointer { get; init; }

    /// <summary>The stored value as JSON text; absent when there was none.</summary>
    public string? Stored { get; init; }

    /// <summary>The value now as JSON text; absent when there is none.</summary>
    public string? Recomputed { get; init; }
}
