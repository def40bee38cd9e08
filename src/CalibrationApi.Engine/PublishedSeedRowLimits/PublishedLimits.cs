namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>Every published limit that is held here.</summary>
public static class PublishedLimits
{
    /// <summary>The limits, source by source.</summary>
    public static IReadOnlyList<PublishedLimit> All { get; } = [.. ManitobaLimits.All, .. PrairieLimits.All, .. PlainsLimits.All];

    /// <summary>Reductions that sources state for their own limits.</summary>
    public static IReadOnlyList<StatedReduction> Reductions { get; } = [.. ManitobaLimits.Reductions, .. PlainsLimits.Reductions];

    /// <summary>Keys of the sources, as answers carry them.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [
        .. All.Select(limit => limit.Source.Word)
            .Concat(Reductions.Select(reduction => reduction.Source.Word))
            .Append(StandLossSlopes.Source.Word)
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];
}
