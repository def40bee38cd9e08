using CalibrationApi.Engine.Crops;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>
/// The Canadian prairies: canola (SOURCES.md, keys SK-CANOLA, CCC-SP, CCC-20), flax (SASKFLAX) and the sensitive pulses
/// (USASK-PULSE).
/// </summary>
internal static class PrairieLimits
{
    private static readonly Region[] Prairies = [Region.Manitoba, Region.Saskatchewan, Region.Alberta];

    private static readonly LimitSource SaskatchewanCanola = new(
        "SK-CANOLA",
        "Saskatchewan Ministry of Agriculture, relayed by the Canola Council of Canada",
        "Limit nitrogen in the seed row",
        2010,
        "Saskatchewan",
        [Region.Saskatchewan],
        "canolacouncil.org/canola-watch/2010/05/17/limit-nitrogen-in-the-seed-row/"
    );

    private static readonly LimitSource CanolaNarrow = new(
        "CCC-SP",
        "Canola Council of Canada",
        "Safe rates of seed-placed nitrogen",
        2011,
        "the Canadian prairies",
        Prairies,
        "canolacouncil.org/canola-watch/2011/05/18/safe-rates-of-seed-placed-fertilizer"
    );

    private static readonly LimitSource Canola = new(
        "CCC-20",
        "Canola Council of Canada",
        "Fertilizer: safe seed-placed rates",
        2020,
        "the Canadian prairies",
        Prairies,
        "canolawatch.org/2020/04/29/fertilizer-safe-seed-placed-rates/"
    );

    private static readonly LimitSource Flax = new(
        "SASKFLAX",
        "Saskatchewan Flax Development Commission",
        "Growing flax, fertilizer practices",
        null,
        "Saskatchewan",
        [Region.Saskatchewan],
        "saskflax.com/growing/fertilizer.php"
    );

    private static readonly LimitSource Pulses = new(
        "USASK-PULSE",
        "University of Saskatchewan, released by Saskatchewan Pulse Growers",
        "Research indicates pulses sensitive to seedrow fertilizer",
        2020,
        "Saskatchewan",
        [Region.Saskatchewan],
        "saskpulse.com/news/research-indicates-pulses-sensitive-to-seedrow-fertilizer/"
    );

    public static IReadOnlyList<PublishedLimit> All { get; } =
    [
        new()
        {
            Source = SaskatchewanCanola,
            Crops = [Crop.Canola],
            Nutrient = LimitedNutrient.UreaNitrogen,
            Soils = [new SoilLimit([SoilTexture.Medium], [SeedbedMoisture.Good], new OneOpener(1, 9, 9, new(10)))],
            Conditions =
                "One cell of a table that runs from 0 to 40 lb/ac; the others were not read. Moisture is not stated beside it; the relaying council holds such tables for good to excellent moisture.",
        },
        new()
        {
            Source = CanolaNarrow,
            Crops = [Crop.Canola],
            Nutrient = LimitedNutrient.Phosphate,
            Soils = SoilLimit.Any(new OneOpener(1, 7, 9, new(20))),
            Conditions = "Printed as 20 to 25 lb/ac, of which the lower is taken. Soil and moisture are not stated beside it.",
        },
        new()
        {
            Source = Canola,
            Crops = [Crop.Canola],
            Nutrient = LimitedNutrient.Phosphate,
            Soils = SoilLimit.Any(new AnyOpener(new(20))),
            Conditions = "Recommended practice; soil and moisture are not stated. Wider rows make it riskier.",
        },
        .. NothingElse(
            Canola,
            Crop.Canola,
            "All fertilizer but phosphate belongs outside the seed row.",
            LimitedNutrient.NitrogenBesidePhosphates,
            LimitedNutrient.Potash,
            LimitedNutrient.Sulfur
        ),
        new()
        {
            Source = Flax,
            Crops = [Crop.Flax],
            Nutrient = LimitedNutrient.Phosphate,
            Soils = SoilLimit.Any(new AnyOpener(new(20, "kg/ha"))),
            Conditions = "What some provinces allow; others want no fertilizer with the seed. Even low rates can injure flax.",
        },
        .. NothingElse(
            Flax,
            Crop.Flax,
            "Nitrogen does not belong with the seed; what ammonium phosphate brings along is not counted.",
            LimitedNutrient.NitrogenBesidePhosphates
        ),
        new()
        {
            Source = Pulses,
            Crops = [Crop.Pea, Crop.Lentil, Crop.Chickpea],
            Nutrient = LimitedNutrient.Nitrogen,
            Soils =
            [
                new SoilLimit(
                    [SoilTexture.Medium],
                    [SeedbedMoisture.Good],
                    new AboveUtilisation(0.15, IncludesIt: true, new(10, "kg/ha"), null)
                ),
            ],
            Conditions =
                "A study with a seedbed utilisation of 15 % on loam: 10 kg of nitrogen per hectare or less, over several blends. No advantage of nitrogen with the seed was found.",
        },
    ];

    private static IEnumerable<PublishedLimit> NothingElse(
        LimitSource source,
        Crop crop,
        string conditions,
        params LimitedNutrient[] nutrients
    ) =>
        nutrients.Select(nutrient => new PublishedLimit
        {
            Source = source,
            Crops = [crop],
            Nutrient = nutrient,
            Soils = SoilLimit.Any(new AnyOpener(new(0))),
            Conditions = conditions,
        });
}
