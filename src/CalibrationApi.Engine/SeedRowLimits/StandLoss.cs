using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>The loss of stand that the linear model of South Dakota State University lets expect of what lies with the seed.</summary>
/// <remarks>
/// <para>T = C F R MX / (30 S): T loss of stand, per cent; F rate of a material, lb/ac; C slope of the crop and the material, per cent for
/// 1 lb/ac (<see cref="StandLossSlopes"/>); R row spacing and S width of the furrow, in; MX factor of soil and moisture. Turned round, F =
/// 30 S T / (C R MX) is the most of one material for an accepted loss. The losses of several products add up, which is what their
/// university says of blends: each limit is reduced by the share of the other products.</para>
/// <para>MX is 1 for a moist seedbed on medium to fine soil. On coarse soil it is 1/0.6, because the companion page takes 40 % off its
/// rates there (SOURCES.md, key SDSU-DRY). The factors of a dry seedbed were not read, so there is no number for it. S is taken as the
/// spread of seed and fertilizer. Source: SOURCES.md, key SDSU-MODEL; checked in StandLossTests and SeedRowTradeTests.</para>
/// </remarks>
public sealed record StandLoss
{
    // An inch and a row of 30 in are what the slopes refer to.
    private const double ReferenceRow = 30;

    // A product is the printed material when its nitrogen is that of its grade, to a point; nutrients at rates of their own are all
    // nitrogen.
    private const double SameGrade = 0.01;

    /// <summary>Loss of stand that is accepted unless stated.</summary>
    public static DefaultValue DefaultLoss { get; } =
        new(new Ratio(0.10), "the loss of stand of the tables published by South Dakota State University; its worksheet is preset to 15 %");

    /// <summary>The publication.</summary>
    public required LimitSource Source { get; init; }

    /// <summary>Loss of stand that is accepted, a fraction.</summary>
    public required double Accepted { get; init; }

    /// <summary>Every product in the zone with the largest loss.</summary>
    public required IReadOnlyList<ProductStandLoss> Products { get; init; }

    /// <summary>
    /// Loss that those products together let expect, a fraction, of those that have a slope; null when none has, or none has a number here.
    /// </summary>
    public double? Expected { get; init; }

    /// <summary>Every product with nutrients has a slope, so that nothing is missing in the expected loss.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>The zone with that loss, counted from 1.</summary>
    public required int Zone { get; init; }

    /// <summary>The field lies where the model is for, so that it is judged; elsewhere it is shown only.</summary>
    public required bool IsJudged { get; init; }

    /// <summary>The reduction of the companion page that makes the factor of soil and moisture; null where that is 1.</summary>
    public StatedReduction? Reduction { get; init; }

    /// <summary>Why there is no number; null with one.</summary>
    public string? Reason { get; init; }

    /// <summary>Conditions of the model.</summary>
    public static string Conditions =>
        "Slopes of emergence in the laboratory, scaled to furrow and rows; a stand in the field can fare worse, the more so where the seedbed dries.";

    /// <summary>What the loss is judged as; none where it is shown only, or has no number.</summary>
    internal LimitVerdict Verdict =>
        !IsJudged || Expected is not { } expected ? LimitVerdict.NoPublishedLimit
        : Threshold.IsAbove(expected, Accepted) ? LimitVerdict.Above
        : IsWhole ? LimitVerdict.Within
        : LimitVerdict.NoPublishedLimit;

    /// <summary>Computes the loss; null for a crop of which no slope is held, or when other sources only are asked for.</summary>
    internal static StandLoss? Of(SeedRowQuestion row)
    {
        if (!StandLossSlopes.Name(row.Crop) || row.Sources?.Contains(StandLossSlopes.Source.Word) is false)
            return null;
        var reduction = row is { Soil: SoilTexture.Light, Moisture: SeedbedMoisture.Good }
            ? PublishedLimits.Reductions.Single(one =>
                one.Source.Regions.Contains(Region.SouthDakota) && one.Cause == ReductionCause.CoarseAndMoistSoil
            )
            : null;
        double? factor = row.Moisture == SeedbedMoisture.Dry ? null : 1 / (reduction?.Left ?? 1);
        var accepted = row.AcceptableStandLoss ?? DefaultLoss.Value.Canonical;
        var zones = row.Products.Max(product => product.Rates.Count);
        ProductStandLoss[][] losses =
        [
            .. Enumerable
                .Range(0, zones)
                .Select(zone => row.Products.Select(product => ProductStandLoss.Of(product, zone, row, factor, accepted)).ToArray()),
        ];
        var worst = Enumerable.Range(0, zones).MaxBy(zone => losses[zone].Sum(loss => loss.Expected ?? 0));
        var placed = losses[worst].Where(loss => loss.HoldsNutrients).ToArray();
        return new StandLoss
        {
            Source = StandLossSlopes.Source,
            Accepted = accepted,
            Products = losses[worst],
            Expected = placed.Any(loss => loss.Expected is not null) ? placed.Sum(loss => loss.Expected ?? 0) : null,
            IsWhole = placed.All(loss => loss.Expected is not null),
            Zone = worst + 1,
            IsJudged = row.Region == Region.SouthDakota,
            Reduction = reduction,
            Reason = factor is null ? "Its factor for a dry seedbed was not read, so there is no number." : null,
        };
    }

    internal static IEnumerable<Assumption> Assumptions(SeedRowQuestion row, StandLoss? loss)
    {
        if (row.AcceptableStandLoss is null && loss?.Products.Any(product => product.Most is not null) is true)
            yield return DefaultLoss.Assumed("acceptableStandLoss");
    }

    internal static double? ShareLost(StandLossMaterial material, MassPerArea rate, SeedRowQuestion row, double? factor) =>
        StandLossSlopes.Of(material, row.Crop) is { } slope && factor is { } mx
            ? slope
                / 100
                * In("lb/ac", rate.KilogramsPerSquareMetre)
                * In("in", row.RowSpacing.Metres)
                * mx
                / (ReferenceRow * In("in", row.Spread.Metres))
            : null;

    internal static StandLossMaterial? MaterialOf(PlacedProduct product)
    {
        var analysis = product.Analysis;
        if (
            analysis is not { N: > 0, P2O5: 0, K2O: 0, S: 0 }
            || StandLossSlopes.With(product.NitrogenForm ?? NitrogenForm.Urea) is not { } material
        )
            return null;
        return Math.Abs(analysis.N - material.Nitrogen) <= SameGrade || analysis.N == 1 ? material : null;
    }

    private static double In(string unit, double canonical) => UnitTable.Get(unit).FromCanonical(canonical);
}

/// <summary>One product in the stand-loss model.</summary>
/// <param name="Product">The product.</param>
/// <param name="Material">The material whose slope is taken; null when none fits.</param>
/// <param name="Expected">Loss that it lets expect by itself, a fraction; null without a number.</param>
/// <param name="Most">The most of it that alone keeps to the accepted loss; null without a number.</param>
public sealed record ProductStandLoss(PlacedProduct Product, string? Material, double? Expected, MassPerArea? Most)
{
    internal bool HoldsNutrients { get; private init; }

    internal static ProductStandLoss Of(PlacedProduct product, int zone, SeedRowQuestion row, double? factor, double accepted)
    {
        var rate = product.RateIn(zone);
        var holds = rate.KilogramsPerSquareMetre > 0 && product.Analysis is not { N: 0, P2O5: 0, K2O: 0, S: 0 };
        if (StandLoss.MaterialOf(product) is not { } material)
            return new(product, null, null, null) { HoldsNutrients = holds };
        // What was stated as a nutrient is so much more of the material.
        var ofMaterial = new MassPerArea(rate.KilogramsPerSquareMetre * product.Analysis.N / material.Nitrogen);
        var one = new MassPerArea(product.Analysis.N / material.Nitrogen);
        var lost = StandLoss.ShareLost(material, ofMaterial, row, factor);
        MassPerArea? most = StandLoss.ShareLost(material, one, row, factor) is { } perKilogram
            ? new MassPerArea(accepted / perKilogram)
            : null;
        return new(product, lost is null ? null : material.Name, lost, most) { HoldsNutrients = holds };
    }
}
