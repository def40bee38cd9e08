using CalibrationApi.Engine.Weighing;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>A stored check of a scale.</summary>
public sealed class ScaleCheckAnswer
{
    /// <summary>Id, a UUID of version 7.</summary>
    public required string Id { get; init; }

    /// <summary>When it was made, with the offset it was entered with.</summary>
    public required string OccurredAt { get; init; }

    /// <summary>When the service received it.</summary>
    public required string ReceivedAt { get; init; }

    /// <summary>The outcome in one sentence that can be shown as it is.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary><c>passed</c> when every reading is inside the limit of the scale, otherwise <c>failed</c>.</summary>
    [KnownWords(typeof(ScaleVerdict))]
    public required string Verdict { get; init; }

    /// <summary>Span error: indicated minus true over true. Later tests on this scale are corrected for it.</summary>
    public required RatioQuantity Error { get; init; }

    /// <summary>Standard uncertainty of that error.</summary>
    public required RatioQuantity StandardUncertainty { get; init; }

    /// <summary>The deviation that comes nearest to its limit or exceeds it most.</summary>
    public required MassQuantity LargestDeviation { get; init; }

    /// <summary>The limit at that load.</summary>
    public required MassQuantity Limit { get; init; }

    /// <summary>Where the limit comes from.</summary>
    public required string LimitOrigin { get; init; }

    /// <summary>The request exactly as entered.</summary>
    public required AsKept<ScaleCheckRequest> Entered { get; init; }

    /// <summary>The record that took its place, with the reason; absent while it stands.</summary>
    public Supersedes? SupersededBy { get; init; }
}
