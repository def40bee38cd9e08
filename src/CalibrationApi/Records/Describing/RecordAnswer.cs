namespace CalibrationApi.Records.Describing;

/// <summary>What the service adds to every described record.</summary>
public interface IRecordAnswer
{
    /// <summary>Id, a UUID of version 7.</summary>
    string Id { get; }

    /// <summary>1 when created, one more with each change.</summary>
    long Revision { get; }

    /// <summary>When it was created (UTC).</summary>
    DateTimeOffset CreatedAt { get; }

    /// <summary>When it was changed last (UTC).</summary>
    DateTimeOffset UpdatedAt { get; }
}
