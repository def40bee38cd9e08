using CalibrationApi.Engine.Crops;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>
/// The Great Plains of the United States: Kansas (SOURCES.md, keys KSU-WHEAT, KSU-CORN) and North Dakota (NDSU-CPR,
/// NDSU-FLAX); the reductions that South Dakota states for its own limits (SDSU-DRY), which were not read.
/// </summary>
internal static class PlainsLimits
{
    private const string NoUrea = "No urea-based nitrogen with the seed.";

    private static readonly LimitSource Wheat = new(
        "KSU-WHEAT",
        "Kansas State University",
        "In-furrow fertilizers for wheat, table 1",
        null,
        "Kansas",
        [Region.Kansas],
        "eupdate.agronomy.ksu.edu/article/in-furrow-fertilizers-for-wheat-512-5"
    );

    private static readonly LimitSource Corn = new(
        "KSU-CORN",
        "Kansas State University",
        "Starter fertilizer for corn, table 1",
        null,
        "Kansas",
        [Region.Kansas],
        "no-tillfarmer.com/articles/13243-what-to-know-about-using-starter-fertilizer-for-no-till-corn (reprint of eupdate.agronomy.ksu.edu, article 3091)"
    );

    private static readonly LimitSource RowCrops = new(
        "NDSU-CPR",
        "North Dakota State University",
        "Crop and Pest Report, fertilizer with the seed",
        2002,
        "North Dakota",
        [Region.NorthDakota],
        "ag.ndsu.edu/archive/entomology/ndsucpr/Years/2002/May/2/soils_2May02.htm"
    );

    private static readonly LimitSource Flax = new(
        "NDSU-FLAX",
        "North Dakota State University",
        "Crop and Pest Report, fertilizing flax (after circular SF-717 of 1992)",
        1999,
        "North Dakota",
        [Region.NorthDakota],
        "ag.ndsu.edu/archive/entomology/ndsucpr/Years/1999/May/6th/soils_6may99.htm"
    );

    private static readonly LimitSource SouthDakota = new(
        "SDSU-DRY",
        "South Dakota State University",
        "Fertilizer placed with seeds in dry soil conditions",
        null,
        "South Dakota",
        [Region.SouthDakota],
        "extension.sdstate.edu/fertilizer-placed-seeds-dry-soil-conditions"
    );

    private static readonly Crop[] SouthDakotaCrops = [Crop.Corn, Crop.Soybean, Crop.Wheat, Crop.Oat, Crop.Sunflower];
    private static readonly SoilTexture[] MediumToFine = [SoilTexture.Medium, SoilTexture.Heavy];
    private static readonly SoilTexture[] AnySoil = Enum.GetValues<SoilTexture>();
    private static readonly SeedbedMoisture[] AnyMoisture = Enum.GetValues<SeedbedMoisture>();

    public static IReadOnlyList<StatedReduction> Reductions { get; } =
    [
        new(
            SouthDakota,
            SouthDakotaCrops,
            ReductionCause.CoarseAndDrySoil,
            0.8,
            "On coarse soil it takes another 20 % off its rates for dry soil."
        ),
        new(
            SouthDakota,
            SouthDakotaCrops,
            ReductionCause.CoarseAndMoistSoil,
            0.6,
            "On coarse soil it takes 40 % off its rates for moist soil."
        ),
        new(
            SouthDakota,
            SouthDakotaCrops,
            ReductionCause.SmallerStandLoss,
            0.5,
            "It halves its rates, made for 10 % loss of stand, to come down to 5 %."
        ),
        new(
            SouthDakota,
            SouthDakotaCrops,
            ReductionCause.Blend,
            null,
            "Its rates for single products do not add up in a blend: each is reduced by its share."
        ),
    ];

    public static IReadOnlyList<PublishedLimit> All { get; } =
    [
        new()
        {
            Source = Wheat,
            Crops = [Crop.Wheat],
            Nutrient = LimitedNutrient.NitrogenPlusPotash,
            LeavesOut = [LimitedNutrient.Phosphate],
            Soils =
            [
                new(MediumToFine, [SeedbedMoisture.Good], Rows((6, 8, 30), (10, 10, 24), (15, 15, 16))),
                new([SoilTexture.Light], AnyMoisture, Rows((6, 8, 21), (10, 10, 17), (15, 15, 11))),
                new(AnySoil, [SeedbedMoisture.Dry], Rows((6, 8, 21), (10, 10, 17), (15, 15, 11))),
            ],
            Conditions =
                $"Fertilizer is limited by its nitrogen and potash; phosphate is not counted. Coarse textures and dry soils have numbers of their own. {NoUrea} A band of 1 to 2 in gives some margin over a narrow slot.",
        },
        Urea(Wheat, Crop.Wheat),
        new()
        {
            Source = Corn,
            Crops = [Crop.Corn],
            Nutrient = LimitedNutrient.NitrogenPlusPotash,
            Soils =
            [
                new(MediumToFine, [SeedbedMoisture.Good], Rows((20, 20, 12), (30, 30, 8), (40, 40, 6))),
                new([SoilTexture.Light], [SeedbedMoisture.Good], Rows((20, 20, 8), (30, 30, 6), (40, 40, 4))),
            ],
            Conditions = $"{NoUrea} Dry soil is not spoken of.",
        },
        Urea(Corn, Crop.Corn),
        new()
        {
            Source = RowCrops,
            Crops = [Crop.Corn, Crop.Sunflower],
            Nutrient = LimitedNutrient.NitrogenPlusPotash,
            Soils = Moist(Rows((30, 30, 10))),
            Conditions = $"{NoUrea} The author is most comfortable with slightly more than half of it.",
        },
        Urea(RowCrops, Crop.Corn, Crop.Sunflower),
        new()
        {
            Source = RowCrops,
            Crops = [Crop.Soybean],
            Nutrient = LimitedNutrient.Nitrogen,
            Soils = Moist(Rows((6, 6, 10))),
            Conditions = $"{NoUrea} Less is better than the limit.",
        },
        Urea(RowCrops, Crop.Soybean),
        new()
        {
            Source = RowCrops,
            Crops = [Crop.Soybean, Crop.DryBean],
            Nutrient = LimitedNutrient.AllNutrients,
            Soils = SoilLimit.Any(Rows((15, double.PositiveInfinity, 0))),
            Conditions =
                "No fertilizer with the seed of beans grown as row crops; only soybeans in rows narrower than 15 in may have some.",
        },
        new()
        {
            Source = Flax,
            Crops = [Crop.Flax],
            Nutrient = LimitedNutrient.NitrogenPlusPotash,
            Soils = Moist(Rows((6, 6, 10))),
            Conditions = "For a double-disc drill. The same page reports stands that thinned above 10 lb/ac of P2O5.",
        },
    ];

    private static PublishedLimit Urea(LimitSource source, params Crop[] crops) =>
        new()
        {
            Source = source,
            Crops = crops,
            Nutrient = LimitedNutrient.UreaNitrogen,
            Soils = SoilLimit.Any(new AnyOpener(new(0))),
            Conditions = NoUrea,
        };

    private static ByRowSpacing Rows(params (double From, double To, double Pounds)[] rows) =>
        new([.. rows.Select(row => new RowsLimit(row.From, row.To, new(row.Pounds)))]);

    // Where a source does not speak of dry soil, it has no number for it.
    private static IReadOnlyList<SoilLimit> Moist(LimitGeometry geometry) => [new SoilLimit(AnySoil, [SeedbedMoisture.Good], geometry)];
}
