using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>What a limit says to a load. It never says that a load is safe.</summary>
public enum LimitVerdict
{
    /// <summary>The load is not above the limit.</summary>
    Within,

    /// <summary>The load is above the limit.</summary>
    Above,

    /// <summary>The source has no number for this case.</summary>
    NoPublishedLimit,
}

/// <summary>One limit against what lies with the seed.</summary>
public sealed record LimitJudgement
{
    /// <summary>The limit.</summary>
    public required PublishedLimit Limit { get; init; }

    /// <summary>The heaviest load of what the limit counts, over all zones.</summary>
    public required MassPerArea Load { get; init; }

    /// <summary>The zone with that load, counted from 1.</summary>
    public required int Zone { get; init; }

    /// <summary>The number as the source prints it, before any reduction; null when it has none.</summary>
    public PrintedRate? AsPrinted { get; init; }

    /// <summary>What is allowed after the reduction that the source states; null when it has no number.</summary>
    public MassPerArea? Allowed { get; init; }

    /// <summary>How the number was found; null without one.</summary>
    public LimitBasis? Basis { get; init; }

    /// <summary>The printed numbers that it rests on.</summary>
    public IReadOnlyList<PrintedCell> Cells { get; init; } = [];

    /// <summary>The reduction applied; null for none.</summary>
    public StatedReduction? Reduction { get; init; }

    /// <summary>The soils and moistures that the source puts together with this one; null when it has none for it.</summary>
    public SoilLimit? Soil { get; init; }

    /// <summary>Why there is no number; null with one.</summary>
    public string? Reason { get; init; }

    /// <summary>Limit less load: negative when the load is above it; null without a number.</summary>
    /// <remarks>
    /// <para>Formula: limit less load, kg/m2.</para>
    /// <para>Range: negative when the load is above the limit; null without a number.</para>
    /// <para>Source: common practice, no published source.</para>
    /// <para>Accuracy: a difference of two doubles, rounded once: 1e-9 lb/ac (SeedRowVerdictTests).</para>
    /// </remarks>
    public MassPerArea? Margin =>
        Allowed is { } allowed ? new MassPerArea(allowed.KilogramsPerSquareMetre - Load.KilogramsPerSquareMetre) : null;

    /// <summary>The limit is nothing at all.</summary>
    internal bool AllowsNone => Allowed is { KilogramsPerSquareMetre: 0 };

    /// <summary>Load less limit, above 0 when the load is above it.</summary>
    internal MassPerArea Excess => new(-Margin!.Value.KilogramsPerSquareMetre);

    /// <summary>The verdict. A load on the limit is not above it.</summary>
    public LimitVerdict Verdict =>
        Allowed switch
        {
            null => LimitVerdict.NoPublishedLimit,
            { } allowed when Threshold.IsAbove(Load.KilogramsPerSquareMetre, allowed.KilogramsPerSquareMetre) => LimitVerdict.Above,
            _ => LimitVerdict.Within,
        };

    /// <summary>Load over limit; infinity where nothing is allowed and something is placed, 0 without a load.</summary>
    internal double Used =>
        Load.KilogramsPerSquareMetre == 0 || Allowed is null ? 0 : Load.KilogramsPerSquareMetre / Allowed.Value.KilogramsPerSquareMetre;

    /// <summary>Looks up one limit and compares.</summary>
    internal static LimitJudgement Of(PublishedLimit limit, SeedRowQuestion row, SeedRowLoad load)
    {
        var (worst, zone) = load.Worst(limit.Nutrient);
        var blank = new LimitJudgement
        {
            Limit = limit,
            Load = worst,
            Zone = zone,
        };
        if (limit.Soils.FirstOrDefault(each => each.Textures.Contains(row.Soil) && each.Moistures.Contains(row.Moisture)) is not { } soil)
            return blank with { Reason = $"It has no number held here for {SeedRowWords.Of(row.Soil)}, {SeedRowWords.Of(row.Moisture)}." };
        var match =
            soil.NotWith is { } opener && opener == row.Opener
                ? GeometryMatch.Printed(new PrintedCell($"{SeedRowWords.Of(opener)} on {SeedRowWords.Of(row.Soil)}", new PrintedRate(0)))
                : soil.Geometry.Find(row.Spread, row.RowSpacing);
        return blank with
        {
            Soil = soil,
            AsPrinted = match.Limit,
            Allowed = match.Limit is { } printed
                ? new MassPerArea(printed.Rate.KilogramsPerSquareMetre * (soil.Reduction?.Left ?? 1))
                : null,
            Basis = match.Basis,
            Cells = match.Cells,
            Reduction = match.Limit is null ? null : soil.Reduction,
            Reason = match.Reason,
        };
    }
}
