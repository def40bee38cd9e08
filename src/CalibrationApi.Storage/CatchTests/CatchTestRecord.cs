using CalibrationApi.Storage.History;

namespace CalibrationApi.Storage.CatchTests;

/// <summary>A catch test as stored.</summary>
public sealed record CatchTestRecord : IEvidenceRecord
{
    /// <summary>UUIDv7, lower case.</summary>
    public required string Id { get; init; }

    /// <summary>The series it belongs to.</summary>
    public required Series Series { get; init; }

    /// <summary>Id of the lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Id of the scale.</summary>
    public required string Scale { get; init; }

    /// <summary>Id of the plan.</summary>
    public string? Plan { get; init; }

    /// <summary>Verdict.</summary>
    public required string Verdict { get; init; }

    /// <summary>Mass per revolution, kg per revolution.</summary>
    public required double Value { get; init; }

    /// <summary>Its random standard uncertainty, relative.</summary>
    public required double Random { get; init; }

    /// <summary>When it happened.</summary>
    public required DateTimeOffset OccurredAt { get; init; }

    /// <summary>When the service received it.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The request as entered, JSON.</summary>
    public required string Entered { get; init; }

    /// <summary>The complete question that was evaluated, JSON: nothing else is needed to evaluate it again.</summary>
    public required string Resolved { get; init; }

    /// <summary>The answer, JSON, in the units of the question.</summary>
    public required string Answer { get; init; }

    /// <summary>What came from other records and what was noticed about them, JSON.</summary>
    public required string Context { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Of the request: a repetition is recognised.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Its catches; empty when read back.</summary>
    public IReadOnlyList<CatchRow> Catches { get; init; } = [];
}

/// <summary>One catch of a stored test: as entered, and canonical.</summary>
/// <param name="Counted">It counts.</param>
/// <param name="NetEntered">Net mass in the unit entered.</param>
/// <param name="NetUnit">That unit.</param>
/// <param name="NetKilograms">Net mass, kg.</param>
/// <param name="Revolutions">Revolutions.</param>
/// <param name="Value">kg per revolution.</param>
/// <param name="Variance">Known random variance, relative.</param>
public sealed record CatchRow(
    bool Counted,
    double NetEntered,
    string NetUnit,
    double NetKilograms,
    double Revolutions,
    double Value,
    double Variance
);
