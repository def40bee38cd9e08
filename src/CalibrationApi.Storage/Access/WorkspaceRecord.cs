namespace CalibrationApi.Storage.Access;

/// <summary>A workspace: what one farm, dealer or customer keeps, and what only its keys open.</summary>
/// <param name="Id">UUIDv7 in lower case, or <c>local</c> for the one that every database begins with.</param>
/// <param name="Revision">1 when created, one more with each change.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Retired">Its keys open nothing; everything stays stored.</param>
/// <param name="Fingerprint">Of the request that created it: a repetition is recognised.</param>
/// <param name="CreatedAt">When it was created.</param>
/// <param name="UpdatedAt">When it was changed last.</param>
public sealed record WorkspaceRecord(
    string Id,
    long Revision,
    string Name,
    bool Retired,
    string Fingerprint,
    DateTimeOffset CreatedAt,
    DateTimeOffset UpdatedAt
);
