namespace CalibrationApi.Storage.Described;

/// <summary>The kinds of things that are described and may be described anew.</summary>
public enum RecordKind
{
    /// <summary>Machines with their meters.</summary>
    Machines,

    /// <summary>Products.</summary>
    Products,

    /// <summary>Lots of a product.</summary>
    Lots,

    /// <summary>Scales.</summary>
    Scales,

    /// <summary>Containers.</summary>
    Containers,

    /// <summary>Plans.</summary>
    Plans,
}

/// <summary>A described thing as stored.</summary>
/// <param name="Id">UUIDv7, lower case.</param>
/// <param name="Revision">1 when created, one more with each change.</param>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Retired">No longer in use; evidence about it stays.</param>
/// <param name="Body">The description as entered, JSON.</param>
/// <param name="Fingerprint">Of the request that created it: a repetition of that request is recognised.</param>
/// <param name="CreatedAt">When it was created.</param>
/// <param name="UpdatedAt">When it was changed last.</param>
public sealed record DescribedRecord(
    string Id,
    long Revision,
    string Name,
    bool Retired,
    string Body,
    string Fingerprint,
    DateTimeOffset CreatedAt,
    DateTimeOffset UpdatedAt
);
