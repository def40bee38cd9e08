namespace CalibrationApi.Storage;

/// <summary>What the rows of all things that are described anew have in common.</summary>
internal abstract class RevisedRow
{
    public string Id { get; set; } = "";

    public long Revision { get; set; }

    public string Name { get; set; } = "";

    public long Retired { get; set; }

    public string Fingerprint { get; set; } = "";

    public string CreatedAt { get; set; } = "";

    public string UpdatedAt { get; set; } = "";
}
