namespace CalibrationApi.Storage.History;

/// <summary>The kinds of evidence, as history and supersessions name them.</summary>
public static class EvidenceKind
{
    /// <summary>Catch tests.</summary>
    public const string CatchTest = "catch-test";

    /// <summary>Values typed into a controller.</summary>
    public const string Adoption = "adoption";

    /// <summary>Checks of scales.</summary>
    public const string ScaleCheck = "scale-check";
}

/// <summary>What every kind of evidence is stored with.</summary>
public interface IEvidenceRecord
{
    /// <summary>UUIDv7, lower case.</summary>
    string Id { get; }

    /// <summary>When it happened, with the offset it was entered with.</summary>
    DateTimeOffset OccurredAt { get; }

    /// <summary>When the service received it.</summary>
    DateTimeOffset ReceivedAt { get; }

    /// <summary>Of the request: a repetition is recognised.</summary>
    string Fingerprint { get; }
}
