using CalibrationApi.Engine.Crops;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>What one source allows of one nutrient with the seed of some crops.</summary>
public sealed record PublishedLimit
{
    /// <summary>The publication.</summary>
    public required LimitSource Source { get; init; }

    /// <summary>Crops that the source names.</summary>
    public required IReadOnlyList<Crop> Crops { get; init; }

    /// <summary>What it counts.</summary>
    public required LimitedNutrient Nutrient { get; init; }

    /// <summary>What a source that limits fertilizer as a whole does not count: it is limited by what comes with it.</summary>
    public IReadOnlyList<LimitedNutrient> LeavesOut { get; init; } = [];

    /// <summary>The numbers, for each soil and moisture that the source tells apart; the first that fits holds.</summary>
    public required IReadOnlyList<SoilLimit> Soils { get; init; }

    /// <summary>Further conditions as the source states them.</summary>
    public required string Conditions { get; init; }
}

/// <summary>The numbers of a source for some soils.</summary>
/// <param name="Textures">Textures that it is for.</param>
/// <param name="Moistures">Moistures that it is for.</param>
/// <param name="Geometry">The numbers.</param>
/// <param name="Reduction">A reduction that the source states for these conditions; null for none.</param>
/// <param name="NotWith">An opener that the source rules out on these soils: its limit is nothing; null for none.</param>
public sealed record SoilLimit(
    IReadOnlyList<SoilTexture> Textures,
    IReadOnlyList<SeedbedMoisture> Moistures,
    LimitGeometry Geometry,
    StatedReduction? Reduction = null,
    Opener? NotWith = null
)
{
    /// <summary>A source that does not tell soils apart.</summary>
    internal static IReadOnlyList<SoilLimit> Any(LimitGeometry geometry) =>
        [new SoilLimit(Enum.GetValues<SoilTexture>(), Enum.GetValues<SeedbedMoisture>(), geometry)];
}
