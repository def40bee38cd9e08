using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.History;

/// <summary>One line of what happened.</summary>
public sealed class HistoryItem
{
    /// <summary>What it is: <c>catch-test</c>, <c>adoption</c> or <c>scale-check</c>.</summary>
    [KnownWords("catch-test", "adoption", "scale-check")]
    public required string Kind { get; init; }

    /// <summary>Id of the record; read it whole under the path of its kind.</summary>
    public required string Id { get; init; }

    /// <summary>When it happened, with the offset it was entered with.</summary>
    public required string OccurredAt { get; init; }

    /// <summary>The date of that in the machine's time zone; UTC for scale checks.</summary>
    public required string LocalDate { get; init; }

    /// <summary>When the service received it.</summary>
    public required string ReceivedAt { get; init; }

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
    [KnownWords("investigate", "repeat", "keep", "adopt", "passed", "failed")]
    public string? Verdict { get; init; }

    /// <summary>The mass per revolution found or adopted.</summary>
    public HistoryValue? MassPerRevolution { get; init; }

    /// <summary>Change that a test found.</summary>
    public RatioQuantity? Change { get; init; }

    /// <summary>Span error that a scale check found.</summary>
    public RatioQuantity? ScaleError { get; init; }

    /// <summary>Who recorded it.</summary>
    public string? RecordedBy { get; init; }

    /// <summary>The record that it took the place of.</summary>
    public string? Supersedes { get; init; }

    /// <summary>Why it was adopted, or why it supersedes another.</summary>
    public string? Reason { get; init; }

    /// <summary>
    /// Code of what spoke against an adopted number when it was typed in, several separated by semicolons; absent when nothing did.
    /// </summary>
    public string? DespiteCode { get; init; }

    /// <summary>Why the number was adopted all the same: one reason for each code, in the same order.</summary>
    public string? DespiteReason { get; init; }

    /// <summary>The record that took its place; absent while it stands.</summary>
    public string? SupersededBy { get; init; }
}

/// <summary>A mass per revolution in the history.</summary>
public sealed class HistoryValue : MassPerRevolutionQuantity
{
    /// <summary>Half width of the 95 % coverage interval; absent for an adoption.</summary>
    public double? ExpandedUncertainty { get; init; }
}
