using CalibrationApi.Engine.Crops;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>
/// Manitoba: urea with cereals and canola (SOURCES.md, keys MB-SBU, MB-SBU2, MB-DRY), soybeans (MB-SOY) and peas (MPSG-PEA); phosphate
/// with narrow-row crops beside Saskatchewan's (MB-SAFE-P, SK-SAFE-P).
/// </summary>
/// <remarks>
/// Cells of equal utilisation agree in all that was read, so the tables are functions of utilisation and texture. Of canola
/// on medium soil only the cells of 1 in spread in rows of 6 and 9 in were read, of canola on heavy soil none.
/// </remarks>
internal static class ManitobaLimits
{
    private static readonly LimitSource Cereals = new(
        "MB-SBU",
        "Manitoba Agriculture",
        "Guidelines for safely applying fertilizer with seed",
        null,
        "Manitoba",
        [Region.Manitoba],
        "manitoba.ca/agriculture/crops/soil-fertility/print,guidelines-for-safely-applying-fertilizer-with-seed.html"
    );

    private static readonly LimitSource SecondOpinion = new(
        "MB-SBU2",
        "Manitoba Agriculture",
        "Seed-placed nitrogen fertilizer: a second opinion",
        null,
        "Manitoba",
        [Region.Manitoba],
        "petroleum.gov.mb.ca/agriculture/crops/soil-fertility/seed-placed-nitrogen-fertilizer---a--second-opinion-please.html"
    );

    private static readonly LimitSource DryBeds = new(
        "MB-DRY",
        "Manitoba Agriculture",
        "Toxicity of seed-placed urea under dry seedbed conditions",
        null,
        "Manitoba",
        [Region.Manitoba],
        "manitoba.ca/agriculture/crops/soil-fertility/toxicity-of-seed-placed-urea.html"
    );

    private static readonly LimitSource SoybeanAdvice = new(
        "MB-SOY",
        "Manitoba Agriculture, Crop Chatter",
        "Dry soils and soybean tolerance for starter fertilizer",
        null,
        "Manitoba",
        [Region.Manitoba],
        "cropchatter.com/tag/seed-placed-fertilizer/"
    );

    private static readonly LimitSource PeaGrowers = new(
        "MPSG-PEA",
        "Manitoba Pulse and Soybean Growers",
        "Field peas, crop nutrition",
        null,
        "Manitoba",
        [Region.Manitoba],
        "mpsg.interplay.design/production/field-pea-production/crop-nutrition"
    );

    private static readonly LimitSource SafePhosphate = new(
        "MB-SAFE-P",
        "Manitoba Agriculture",
        "Safe rates of seed-placed phosphorus, table 1",
        null,
        "Manitoba",
        [Region.Manitoba],
        "petroleum.gov.mb.ca/agriculture/crops/soil-fertility/print,safe-rates-of-seed-placed-phosphorus-for-manitoba--narrow-row-and-row-crops.html"
    );

    private static readonly LimitSource SaskatchewanPhosphate = new(
        "SK-SAFE-P",
        "Saskatchewan's guideline, set beside its own by Manitoba Agriculture",
        "Safe rates of seed-placed phosphorus, table 1",
        null,
        "Saskatchewan",
        [Region.Saskatchewan],
        "petroleum.gov.mb.ca/agriculture/crops/soil-fertility/print,safe-rates-of-seed-placed-phosphorus-for-manitoba--narrow-row-and-row-crops.html"
    );

    // Rows of the printed table: 1, 2, 3 in spread, each in rows of 6, 9, 12 in.
    private static readonly (double Spread, double Row)[] Openers =
    [
        (1, 6),
        (1, 9),
        (1, 12),
        (2, 6),
        (2, 9),
        (2, 12),
        (3, 6),
        (3, 9),
        (3, 12),
    ];

    private static readonly StatedReduction Halved = new(
        DryBeds,
        [Crop.Wheat, Crop.Barley, Crop.Oat, Crop.Canola],
        ReductionCause.DrySeedbed,
        0.5,
        "With warm weather and drying winds it wants its rates of seed-placed urea halved."
    );

    public static IReadOnlyList<StatedReduction> Reductions { get; } = [Halved];

    public static IReadOnlyList<PublishedLimit> All { get; } =
    [
        new()
        {
            Source = Cereals,
            Crops = [Crop.Wheat, Crop.Barley, Crop.Oat],
            Nutrient = LimitedNutrient.UreaNitrogen,
            Soils =
            [
                .. Table(SoilTexture.Light, Opener.DoubleDisc, 10, 0, 0, 20, 15, 10, 30, 20, 15),
                .. Table(SoilTexture.Medium, null, 20, 15, 10, 30, 25, 20, 40, 30, 25),
                .. Table(SoilTexture.Heavy, null, 25, 20, 10, 40, 30, 25, 50, 40, 30),
            ],
            Conditions =
                "Approximate, for a seedbed at or near field capacity. Moisture after seeding matters more than at seeding. Some openers spread less than 1 in. No urea on light soil with a double-disc drill.",
        },
        new()
        {
            Source = SecondOpinion,
            Crops = [Crop.Canola],
            // MB-DRY: for canola the ammonium of ammonium sulfate harms as much as urea.
            Nutrient = LimitedNutrient.UreaAndSulfateNitrogen,
            Soils =
            [
                .. Table(SoilTexture.Light, Opener.DoubleDisc, 0, 0, 0, 10, 0, 0, 20, 10, 0),
                .. Table(SoilTexture.Medium, null, 0, 0),
            ],
            Conditions =
                "Approximate, for good to excellent moisture. Ammonium sulfate is counted because the same department holds it as harmful to canola as urea.",
        },
        new()
        {
            Source = SoybeanAdvice,
            Crops = [Crop.Soybean],
            Nutrient = LimitedNutrient.Phosphate,
            Soils = [new SoilLimit(Enum.GetValues<SoilTexture>(), [SeedbedMoisture.Good], new ByRowSpacing(new RowsLimit(0, 15, new(10))))],
            Conditions =
                "It says that the limit may be too high where soils dry, and that seed-placed phosphate brings soybeans no advantage.",
        },
        new()
        {
            Source = SoybeanAdvice,
            Crops = [Crop.Soybean],
            Nutrient = LimitedNutrient.AllNutrients,
            Soils = SoilLimit.Any(new ByRowSpacing(new RowsLimit(15, double.PositiveInfinity, new(0)))),
            Conditions = "No fertilizer with the seed in rows wider than 15 in.",
        },
        new()
        {
            Source = PeaGrowers,
            Crops = [Crop.Pea],
            Nutrient = LimitedNutrient.Phosphate,
            Soils = SoilLimit.Any(new AboveUtilisation(0.15, IncludesIt: false, new(20), new(0))),
            Conditions = "Moisture is not stated. Up to a seedbed utilisation of 15 % phosphate belongs away from the seed row.",
        },
        .. PeasAwayFromSeed(LimitedNutrient.Potash, LimitedNutrient.Sulfur),
        .. AsAmmoniumPhosphate(
            SafePhosphate,
            "Stated for monoammonium phosphate with disc or knife openers of 1 in spread in rows of 6 to 7 in, and good to excellent moisture.",
            ([Crop.Wheat, Crop.Barley, Crop.Oat], 50),
            ([Crop.Canola], 20),
            ([Crop.Pea, Crop.Flax], 20),
            ([Crop.DryBean], 10),
            ([Crop.Soybean], 10)
        ),
        .. AsAmmoniumPhosphate(
            SaskatchewanPhosphate,
            "Stated for monoammonium phosphate. Its own conditions were not read; it is taken for the opener and the rows of the table that it stands in.",
            ([Crop.Wheat, Crop.Barley, Crop.Oat], 50),
            ([Crop.Canola], 25),
            ([Crop.Pea, Crop.Flax], 15),
            ([Crop.DryBean], 30)
        ),
    ];

    // What ammonium phosphate brings of nitrogen goes with the phosphate that is allowed in that form.
    private static IEnumerable<PublishedLimit> AsAmmoniumPhosphate(
        LimitSource source,
        string conditions,
        params (Crop[] Crops, double Pounds)[] rows
    ) =>
        rows.Select(row => new PublishedLimit
        {
            Source = source,
            Crops = row.Crops,
            Nutrient = LimitedNutrient.Phosphate,
            LeavesOut = [LimitedNutrient.PhosphateNitrogen],
            Soils = [new SoilLimit(Enum.GetValues<SoilTexture>(), [SeedbedMoisture.Good], new OneOpener(1, 6, 7, new(row.Pounds)))],
            Conditions = conditions,
        });

    private static IEnumerable<PublishedLimit> PeasAwayFromSeed(params LimitedNutrient[] nutrients) =>
        nutrients.Select(nutrient => new PublishedLimit
        {
            Source = PeaGrowers,
            Crops = [Crop.Pea],
            Nutrient = nutrient,
            Soils = SoilLimit.Any(new AnyOpener(new(0))),
            Conditions = "Potash and sulfur belong away from the seed row, because they harm more than phosphate.",
        });

    // The same cells twice: as printed for good moisture, and with the stated reduction in a dry seedbed.
    private static IEnumerable<SoilLimit> Table(SoilTexture texture, Opener? notWith, params double[] poundsPerAcre)
    {
        var cells = new ByUtilisation(
            [.. Openers.Zip(poundsPerAcre, (opener, value) => new UtilisationCell(opener.Spread, opener.Row, new(value)))],
            poundsPerAcre.Length == Openers.Length
        );
        yield return new SoilLimit([texture], [SeedbedMoisture.Good], cells, NotWith: notWith);
        yield return new SoilLimit([texture], [SeedbedMoisture.Dry], cells, Halved, notWith);
    }
}
