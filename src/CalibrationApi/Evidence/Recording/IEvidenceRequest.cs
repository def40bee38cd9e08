using CalibrationApi.Plumbing.Bodies;

namespace CalibrationApi.Evidence.Recording;

/// <summary>What every kind of evidence says of itself.</summary>
public interface IEvidenceRequest : IStoredRequest
{
    /// <summary>When it happened, RFC 3339 with offset.</summary>
    string? OccurredAt { get; }

    /// <summary>Who recorded it.</summary>
    string? RecordedBy { get; }

    /// <summary>The wrong record of the same kind that this one takes the place of.</summary>
    Supersedes? Supersedes { get; }
}
