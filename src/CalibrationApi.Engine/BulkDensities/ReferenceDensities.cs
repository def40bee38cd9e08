using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>Published bulk densities of seeds and fertilizers. The only place where they are written down.</summary>
/// <remarks>
/// <para>A start value and a check, never in place of a measured density. The law's bushel weights are no measured densities: they do not
/// stand for the volume of a bushel (SOURCES.md, key NBS-C10). Where sources differ, all of them are kept.</para>
/// <para>Source: SOURCES.md, keys FERT-BD, MU-G4020, TEST-WEIGHTS, STORAGE-FACTORS, RAZAVI-2009, DURSUN-2007, JAST-BARLEY, OZTURK-2008,
/// MENGISTU-2024, DARFOUR-2022, KIBAR-2008, WANDKAR-2012, ISIK-2007, SEIFI-2010.</para>
/// </remarks>
public static class ReferenceDensities
{
    private const string Fertilizers =
        "estimated physical characteristics of fertilizer material, a sheet whose publisher is not shown; its values are to be checked on the actual material";
    private const string Missouri =
        "University of Missouri Extension G4020, commercial bushel sizes, as reprinted by the University of North Carolina";
    private const string Official = "official bushel weights of the United States, as relayed by an encyclopaedia";
    private const string Storage = "storage capacity, table 2, an extension sheet whose publisher is not shown";

    // What a single printed figure is taken to stand for, to either side.
    private const double SingleFigure = 0.10;

    private static readonly Unit PoundsPerCubicFoot = UnitTable.Get("lb/ft3");
    private static readonly Unit PoundsPerBushel = UnitTable.Get("lb/bu-us");
    private static readonly Unit TonnesPerCubicMetre = UnitTable.Get("kg/L");
    private static readonly Unit KilogramsPerCubicMetre = UnitTable.Get("kg/m3");

    /// <summary>Every published value, by material.</summary>
    public static IReadOnlyList<ReferenceDensity> All { get; } =
    [
        Typical(ReferenceMaterial.UreaGranular, 44, 48),
        Typical(ReferenceMaterial.AmmoniumNitratePrilled, 54, 58),
        Typical(ReferenceMaterial.AmmoniumNitrateLowDensity, 45, 45),
        Typical(ReferenceMaterial.DiammoniumPhosphate, 55, 60),
        Typical(ReferenceMaterial.MonoammoniumPhosphate, 60, 65),
        Typical(ReferenceMaterial.TripleSuperphosphate, 65, 75),
        Typical(ReferenceMaterial.PotassiumChlorideGranular, 58, 65),
        Typical(ReferenceMaterial.PotassiumChlorideSoluble, 94, 94),
        Typical(ReferenceMaterial.PotassiumMagnesiumSulfate, 90, 98),
        Typical(ReferenceMaterial.AmmoniumSulfateCrystal, 63, 66),
        Typical(ReferenceMaterial.AmmoniumSulfateGranular, 47, 53),
        Bushel(ReferenceMaterial.Wheat, 60, Official),
        Bushel(ReferenceMaterial.Soybean, 60, Official),
        Bushel(ReferenceMaterial.Corn, 56, Official),
        Bushel(ReferenceMaterial.Sorghum, 56, Official),
        Bushel(ReferenceMaterial.Rye, 56, Official),
        Bushel(ReferenceMaterial.Barley, 48, Official),
        Bushel(ReferenceMaterial.Rice, 45, Official),
        Bushel(ReferenceMaterial.Oat, 32, Official),
        Bushel(ReferenceMaterial.Alfalfa, 60, Missouri),
        Bushel(ReferenceMaterial.BirdsfootTrefoil, 60, Missouri),
        Bushel(ReferenceMaterial.Bluegrass, 14, Missouri),
        Bushel(ReferenceMaterial.BromeGrass, 14, Missouri),
        Bushel(ReferenceMaterial.Canola, 60, Missouri),
        Bushel(ReferenceMaterial.Clover, 60, Missouri),
        Bushel(ReferenceMaterial.Cowpea, 60, Missouri),
        Bushel(ReferenceMaterial.Flax, 60, Missouri),
        Bushel(ReferenceMaterial.Millet, 50, Missouri),
        Bushel(ReferenceMaterial.OrchardGrass, 14, Missouri),
        Bushel(ReferenceMaterial.SudanGrass, 28, Missouri),
        new(ReferenceMaterial.Sunflower, 24, 32, PoundsPerBushel, ReferenceDensityKind.LegalBushelWeight, Missouri),
        Bushel(ReferenceMaterial.TallFescue, 14, Missouri),
        Bushel(ReferenceMaterial.Timothy, 45, Missouri),
        Bushel(ReferenceMaterial.Vetch, 60, Missouri),
        Store(ReferenceMaterial.Barley, 0.62),
        Store(ReferenceMaterial.CanarySeed, 0.70),
        Store(ReferenceMaterial.Canola, 0.67),
        Store(ReferenceMaterial.Chickpea, 0.60),
        Store(ReferenceMaterial.FabaBean, 0.75),
        Store(ReferenceMaterial.Flax, 0.73),
        Store(ReferenceMaterial.Lupin, 0.75),
        Store(ReferenceMaterial.Oat, 0.50),
        Store(ReferenceMaterial.Pea, 0.75),
        Store(ReferenceMaterial.Rye, 0.71),
        Store(ReferenceMaterial.Safflower, 0.53),
        Store(ReferenceMaterial.Triticale, 0.69),
        Store(ReferenceMaterial.Wheat, 0.75),
        Measured(
            ReferenceMaterial.Barley,
            568.10,
            613.68,
            "Journal of Agricultural Science and Technology (Iran), article 10966, two varieties at 10.12 to 42.17 % moisture"
        ),
        Measured(ReferenceMaterial.Barley, 623.00, 647.34, "Öztürk and Esen 2008, at 10 to 14 % moisture, dry basis"),
        Measured(ReferenceMaterial.Canola, 666.06, 738.8, "Razavi et al. 2009, four varieties at 5.27 to 23.69 % moisture"),
        Measured(ReferenceMaterial.Chickpea, 737.82, 819.48, "Mengistu and Abera 2024, four varieties at 10 to 20 % moisture"),
        Measured(ReferenceMaterial.Corn, 709.50, 746.00, "Darfour et al. 2022, five varieties"),
        Measured(ReferenceMaterial.Soybean, 719.00, 766.12, "Kibar 2008, at 8 to 16 % moisture"),
        Measured(ReferenceMaterial.Soybean, 644.4, 749.1, "Wandkar et al. 2012, at 7.37 to 15.80 % moisture, dry basis"),
        Measured(ReferenceMaterial.Sunflower, 406.56, 415.40, "Isik and Izli 2007, at 10.06 to 27.06 % moisture, dry basis"),
        Measured(ReferenceMaterial.Sunflower, 380, 410, "Seifi and Alimardani 2010, at 4 to 22 % moisture"),
        Measured(ReferenceMaterial.SugarBeet, 418, 447, "Dursun et al. 2007, at 8.39 to 14.00 % moisture, dry basis"),
    ];

    /// <summary>The lightest and the densest of all published values.</summary>
    public static (BulkDensity Lightest, BulkDensity Densest) Extremes { get; } = Range(All);

    /// <summary>The published values for a material, at least one.</summary>
    public static IReadOnlyList<ReferenceDensity> Of(ReferenceMaterial material) => [.. All.Where(one => one.Material == material)];

    /// <summary>
    /// The range in which a lot of a material is to be expected: what all published values for it span, single figures widened.
    /// </summary>
    /// <param name="material">Any material.</param>
    /// <remarks>
    /// <para>A single printed figure stands for lots that differ, so it counts with a tenth to either side: the way of measuring alone
    /// moves the bulk density of grain by 5 to 13 % (SOURCES.md, key SASJ-1981); judgement. A legal bushel weight is no measured density;
    /// beside measured ranges it counts as printed.</para>
    /// <para>Formula: from the least of rho_low (1 - g) to the most of rho_high (1 + g) over the sources, kg/m3, with g = 0.1 for a single
    /// figure, otherwise 0.</para>
    /// <para>Range: every material has at least one published value.</para>
    /// <para>Accuracy: 1e-12 of the printed ends (ReferenceDensitiesTests); the entries as printed, or the table of cases says why not
    /// (BulkDensityTradeTests).</para>
    /// </remarks>
    public static (BulkDensity Lightest, BulkDensity Densest) RangeOf(ReferenceMaterial material)
    {
        var published = Of(material);
        var isMeasured = published.Any(one => one.Kind is ReferenceDensityKind.MeasuredRange);
        var ranges = published
            .Select(one =>
                (
                    one,
                    Give: one.Kind switch
                    {
                        ReferenceDensityKind.StorageFactor => SingleFigure,
                        ReferenceDensityKind.LegalBushelWeight when !isMeasured => SingleFigure,
                        _ => 0,
                    }
                )
            )
            .ToArray();
        return (
            new(ranges.Min(range => range.one.Lowest.KilogramsPerCubicMetre * (1 - range.Give))),
            new(ranges.Max(range => range.one.Highest.KilogramsPerCubicMetre * (1 + range.Give)))
        );
    }

    /// <summary>What a sentence calls a material.</summary>
    public static string NameOf(ReferenceMaterial material) =>
        material switch
        {
            ReferenceMaterial.AmmoniumNitrateLowDensity => "ammonium nitrate of low density",
            ReferenceMaterial.AmmoniumNitratePrilled => "prilled ammonium nitrate",
            ReferenceMaterial.AmmoniumSulfateCrystal => "ammonium sulfate crystals",
            ReferenceMaterial.AmmoniumSulfateGranular => "granular ammonium sulfate",
            ReferenceMaterial.PotassiumChlorideGranular => "granular potassium chloride",
            ReferenceMaterial.PotassiumChlorideSoluble => "soluble potassium chloride",
            ReferenceMaterial.SugarBeet => "sugar-beet seed",
            ReferenceMaterial.UreaGranular => "granular urea",
            _ => string.Concat(
                material
                    .ToString()
                    .Select(
                        (letter, i) =>
                            i > 0 && char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"
                    )
            ),
        };

    private static (BulkDensity Lightest, BulkDensity Densest) Range(IReadOnlyList<ReferenceDensity> values) =>
        (values.MinBy(one => one.Lowest.KilogramsPerCubicMetre)!.Lowest, values.MaxBy(one => one.Highest.KilogramsPerCubicMetre)!.Highest);

    private static ReferenceDensity Typical(ReferenceMaterial material, double low, double high) =>
        new(material, low, high, PoundsPerCubicFoot, ReferenceDensityKind.TypicalRange, Fertilizers);

    private static ReferenceDensity Bushel(ReferenceMaterial material, double weight, string source) =>
        new(material, weight, weight, PoundsPerBushel, ReferenceDensityKind.LegalBushelWeight, source);

    private static ReferenceDensity Store(ReferenceMaterial material, double factor) =>
        new(material, factor, factor, TonnesPerCubicMetre, ReferenceDensityKind.StorageFactor, Storage);

    private static ReferenceDensity Measured(ReferenceMaterial material, double low, double high, string source) =>
        new(material, low, high, KilogramsPerCubicMetre, ReferenceDensityKind.MeasuredRange, source);
}
