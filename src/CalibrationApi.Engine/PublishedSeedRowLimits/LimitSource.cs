namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>A publication that states limits.</summary>
/// <param name="Key">Its key in SOURCES.md.</param>
/// <param name="Publisher">Who publishes it.</param>
/// <param name="Title">Its title or subject.</param>
/// <param name="Year">Year of the edition; null when the copy that was read shows none.</param>
/// <param name="Place">The place that it is for, in words.</param>
/// <param name="Regions">The same place as regions.</param>
/// <param name="Address">Where it was read; null for a limit that the caller states.</param>
public sealed record LimitSource(
    string Key,
    string Publisher,
    string Title,
    int? Year,
    string Place,
    IReadOnlyList<Region> Regions,
    string? Address
)
{
    /// <summary>The key of limits that the caller states.</summary>
    public const string StatedKey = "stated";

    /// <summary>The key as answers carry it, in kebab case.</summary>
    public string Word => Key.ToLowerInvariant();

    /// <summary>The year in words.</summary>
    internal string Edition => Year is { } year ? FormattableString.Invariant($"{year}") : "year not shown";
}
