using CalibrationApi.Storage.History;

namespace CalibrationApi.Storage.ScaleChecks;

/// <summary>A check of a scale against known masses, as stored.</summary>
public sealed record ScaleCheckRecord : IEvidenceRecord
{
    /// <summary>UUIDv7, lower case.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the scale.</summary>
    public required string Scale { get; init; }

    /// <summary>Span error, relative.</summary>
    public required double Error { get; init; }

    /// <summary>Its standard uncertainty, relative.</summary>
    public required double Uncertainty { get; init; }

    /// <summary>Inside the limit of the scale.</summary>
    public required bool Passed { get; init; }

    /// <summary>When it happened.</summary>
    public required DateTimeOffset OccurredAt { get; init; }

    /// <summary>When the service received it.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The request as entered, JSON.</summary>
    public required string Body { get; init; }

    /// <summary>The answer, JSON.</summary>
    public required string Answer { get; init; }

    /// <summary>Of the request: a repetition is recognised.</summary>
    public required string Fingerprint { get; init; }
}
