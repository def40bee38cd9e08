namespace CalibrationApi.Storage.History;

/// <summary>What the rows of all evidence have in common.</summary>
internal abstract class EvidenceRow
{
    public string Id { get; set; } = "";

    public string OccurredAt { get; set; } = "";

    public long OffsetMinutes { get; set; }

    /// <summary>When it happened, with the offset it was entered with.</summary>
    protected DateTimeOffset Happened => Instants.Read(OccurredAt, OffsetMinutes);
}

/// <summary>What the rows of all evidence about a series have in common.</summary>
internal abstract class SeriesEvidenceRow : EvidenceRow
{
    public string Machine { get; set; } = "";

    public string Meter { get; set; } = "";

    public string Element { get; set; } = "";

    public string Setting { get; set; } = "";

    public string Product { get; set; } = "";

    protected Series Series => new(Machine, Meter, Element, Setting, Product);
}
