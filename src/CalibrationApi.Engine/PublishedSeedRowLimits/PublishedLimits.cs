namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>Every published limit that is held here.</summary>
public static class PublishedLimits
{
    /// <summary>The limits, source by source.</summary>
    public static IReadOnlyList<PublishedLimit> All { get; } = [.. ManitobaLimits.All, .. PrairieLimits.All, .. PlainsLimits.All];

    /// <summary>Reductions that sources state for their own limits.</summary>
    public static IReadOnlyList<StatedReduction> Reductions { get; } = [.. ManitobaLimits.Reductions, .. PlainsLimits.Reductions];

    /// <summary>Keys of the sources, as in SOURCES.md.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [
        .. All.Select(limit => limit.Source.Key)
            .Concat(Reductions.Select(reduction => reduction.Source.Key))
            .Append(StandLossSlopes.Source.Key)
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];
}
