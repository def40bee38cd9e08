using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published limits of fertilizer with the seed, looked up as an answer looks them up, and the sums around them.</summary>
public sealed class SeedRowTradeTests : TradeCases<SeedRowTradeTests>, ITradeTopic
{
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

    public static string File => "trade-seed-row.csv";

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } = Figures();

    private static Dictionary<string, Func<double>> Figures()
    {
        var computed = new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            ["SP-02 urea of 25 lb N / lb"] = () => Product(25, new NutrientAnalysis(N: 0.46), each => each.N),
            ["CCC-10N urea of 10 lb N / lb"] = () => Product(10, new NutrientAnalysis(N: 0.46), each => each.N),
            ["PAMI urea of 70 lb N / lb"] = () => Product(70, new NutrientAnalysis(N: 0.46), each => each.N),
            ["BCG urea of 10 kg N / kg"] = () => Product(10, new NutrientAnalysis(N: 0.46), each => each.N),
            ["SP-06 11-52-0 for 20 lb P2O5 / lb"] = () => Product(20, new NutrientAnalysis(N: 0.11, P2O5: 0.52), each => each.P2O5),
            ["SP-06 11-52-0 for 25 lb P2O5 / lb"] = () => Product(25, new NutrientAnalysis(N: 0.11, P2O5: 0.52), each => each.P2O5),
            ["CA-28 N of half urea and half 11-52-0 / %"] = () => Blend(LimitedNutrient.Nitrogen),
            ["CA-28 P2O5 of half urea and half 11-52-0 / %"] = () => Blend(LimitedNutrient.Phosphate),
            ["MAYKO utilisation of 2 in spread in 10 in rows / %"] = () => Utilisation(2, 10),
            ["TCM-20 utilisation of 1.5 in spread in 10 in rows / %"] = () => Utilisation(1.5, 10),
            ["SP-06 N plus K2O with corn in 30 in rows / (lb/ac)"] = () =>
                Limit("NDSU-CPR", Crop.Corn, LimitedNutrient.NitrogenPlusPotash, row: 30),
            ["SP-06 N plus K2O with sunflower in 30 in rows / (lb/ac)"] = () =>
                Limit("NDSU-CPR", Crop.Sunflower, LimitedNutrient.NitrogenPlusPotash, row: 30),
            ["SP-06 urea N with corn in 30 in rows / (lb/ac)"] = () => Limit("NDSU-CPR", Crop.Corn, LimitedNutrient.UreaNitrogen, row: 30),
            ["SP-06 N with soybeans in 6 in rows / (lb/ac)"] = () => Limit("NDSU-CPR", Crop.Soybean, LimitedNutrient.Nitrogen, row: 6),
            ["SP-06 all nutrients with soybeans in 30 in rows / (lb/ac)"] = () =>
                Limit("NDSU-CPR", Crop.Soybean, LimitedNutrient.AllNutrients, row: 30),
            ["SP-06 all nutrients with dry beans in 30 in rows / (lb/ac)"] = () =>
                Limit("NDSU-CPR", Crop.DryBean, LimitedNutrient.AllNutrients, row: 30),
            ["SP-06 taken off on coarse dry soil / %"] = () => TakenOff(ReductionCause.CoarseAndDrySoil),
            ["SP-06 taken off on coarse moist soil / %"] = () => TakenOff(ReductionCause.CoarseAndMoistSoil),
            ["SP-06 taken off for half the loss of stand / %"] = () => TakenOff(ReductionCause.SmallerStandLoss),
            ["SP-06 P2O5 with canola, 1 in spread in 9 in rows / (lb/ac)"] = () =>
                Limit("CCC-SP", Crop.Canola, LimitedNutrient.Phosphate, row: 9),
            ["CCC-20 P2O5 with canola / (lb/ac)"] = () => Limit("CCC-20", Crop.Canola, LimitedNutrient.Phosphate, row: 12),
            ["CCC-10N urea N with canola, medium, 1 in spread in 9 in rows / (lb/ac)"] = () =>
                Limit("SK-CANOLA", Crop.Canola, LimitedNutrient.UreaNitrogen, row: 9),
            ["KSU-W1 N plus K2O with wheat, dry, 10 in rows / (lb/ac)"] = () =>
                Limit("KSU-WHEAT", Crop.Wheat, LimitedNutrient.NitrogenPlusPotash, row: 10, moisture: SeedbedMoisture.Dry),
            ["MB-DRY urea N with cereals, medium, dry, 1 in spread in 9 in rows / (lb/ac)"] = () =>
                Limit("MB-SBU", Crop.Wheat, LimitedNutrient.UreaNitrogen, row: 9, moisture: SeedbedMoisture.Dry),
            ["SASKFLAX P2O5 with flax / (kg/ha)"] = () => In("kg/ha", Si(Limit("SASKFLAX", Crop.Flax, LimitedNutrient.Phosphate), "lb/ac")),
            ["SASKFLAX P2O5 with flax / (lb/ac)"] = () => Limit("SASKFLAX", Crop.Flax, LimitedNutrient.Phosphate),
            ["NDSU-FL N plus K2O with flax in 6 in rows / (lb/ac)"] = () =>
                Limit("NDSU-FLAX", Crop.Flax, LimitedNutrient.NitrogenPlusPotash, row: 6),
            ["MB-SOY P2O5 with soybeans in 12 in rows / (lb/ac)"] = () => Limit("MB-SOY", Crop.Soybean, LimitedNutrient.Phosphate, row: 12),
            ["MPSG P2O5 with peas, 2 in spread in 10 in rows / (lb/ac)"] = () =>
                Limit("MPSG-PEA", Crop.Pea, LimitedNutrient.Phosphate, spread: 2, row: 10),
            ["USASK N with lentils, 1.5 in spread in 10 in rows / (kg/ha)"] = () =>
                In("kg/ha", Si(Limit("USASK-PULSE", Crop.Lentil, LimitedNutrient.Nitrogen, spread: 1.5, row: 10), "lb/ac")),
        };
        foreach (var (spread, row) in Openers)
        {
            computed[$"SP-01 utilisation of {spread} in spread in {row} in rows / %"] = () => Utilisation(spread, row);
            foreach (var soil in Enum.GetValues<SoilTexture>())
                computed[$"SP-02 urea N with cereals, {Word(soil)}, {spread} in spread in {row} in rows / (lb/ac)"] = () =>
                    Limit("MB-SBU", Crop.Barley, LimitedNutrient.UreaNitrogen, soil, spread, row);
            computed[$"SP-03 urea N with canola, light, {spread} in spread in {row} in rows / (lb/ac)"] = () =>
                Limit("MB-SBU2", Crop.Canola, LimitedNutrient.UreaAndSulfateNitrogen, SoilTexture.Light, spread, row);
        }

        foreach (var (spread, row) in Openers[..2])
            computed[$"SP-03 urea N with canola, medium, {spread} in spread in {row} in rows / (lb/ac)"] = () =>
                Limit("MB-SBU2", Crop.Canola, LimitedNutrient.UreaAndSulfateNitrogen, SoilTexture.Medium, spread, row);
        foreach (var row in (double[])[6, 7.5, 8, 10, 15])
        {
            computed[Invariant($"KSU-W1 N plus K2O with wheat, medium to fine, {row} in rows / (lb/ac)")] = () =>
                Limit("KSU-WHEAT", Crop.Wheat, LimitedNutrient.NitrogenPlusPotash, SoilTexture.Heavy, row: row);
            computed[Invariant($"KSU-W1 N plus K2O with wheat, coarse, {row} in rows / (lb/ac)")] = () =>
                Limit("KSU-WHEAT", Crop.Wheat, LimitedNutrient.NitrogenPlusPotash, SoilTexture.Light, row: row);
        }

        foreach (var row in (double[])[20, 30, 40])
        {
            computed[$"KSU-C1 N plus K2O with corn, medium to fine, {row} in rows / (lb/ac)"] = () =>
                Limit("KSU-CORN", Crop.Corn, LimitedNutrient.NitrogenPlusPotash, row: row);
            computed[$"KSU-C1 N plus K2O with corn, sandy, {row} in rows / (lb/ac)"] = () =>
                Limit("KSU-CORN", Crop.Corn, LimitedNutrient.NitrogenPlusPotash, SoilTexture.Light, row: row);
        }

        computed["SDSU-F urea with corn, 15 % loss, 1 in furrow in 30 in rows / (lb/ac)"] = MostUrea;
        computed["SDSU-F N in it / (lb/ac)"] = () => 0.46 * MostUrea();
        foreach (var crop in (Crop[])[Crop.Wheat, Crop.Barley, Crop.Oat, Crop.Canola, Crop.Pea, Crop.Flax, Crop.DryBean, Crop.Soybean])
        {
            computed[$"MB-SAFE-P P2O5 with {crop.ToString().ToLowerInvariant()} / (lb/ac)"] = () =>
                Limit("MB-SAFE-P", crop, LimitedNutrient.Phosphate, row: 7);
            if (crop != Crop.Soybean)
                computed[$"SK-SAFE-P P2O5 with {crop.ToString().ToLowerInvariant()} / (lb/ac)"] = () =>
                    Limit("SK-SAFE-P", crop, LimitedNutrient.Phosphate, row: 6);
        }

        foreach (var rate in (double[])[10, 20, 30])
            computed[$"CA-28 {rate} kg N per ha / (lb/ac)"] = () => Convert(rate, "kg/ha", "lb/ac");
        return computed;
    }

    // Geometries of one utilisation have one number: that is what lets the table be read by utilisation.
    [Fact]
    [Trait("Category", "Transcription")]
    public void Sp02AndSp03_CellsOfEqualUtilisation_Agree()
    {
        var tables = PublishedLimits.All.SelectMany(limit => limit.Soils).Select(soil => soil.Geometry).OfType<ByUtilisation>().ToArray();

        Assert.NotEmpty(tables);
        Assert.All(tables.SelectMany(table => table.Cells.GroupBy(cell => cell.Percent)), same =>
            Assert.Single(same.Select(cell => cell.Rate).Distinct())
        );
    }

    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void Sp03_CellsThatWereNotSeen_HaveNoNumber()
    {
        Assert.Null(Judged("MB-SBU2", Crop.Canola, LimitedNutrient.UreaAndSulfateNitrogen, SoilTexture.Medium, 3, 9).Allowed);
        Assert.Null(Judged("MB-SBU2", Crop.Canola, LimitedNutrient.UreaAndSulfateNitrogen, SoilTexture.Heavy, 1, 9).Allowed);
    }

    private static string Word(SoilTexture soil) => soil.ToString().ToLowerInvariant();

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private static double Utilisation(double spread, double row) =>
        SeedbedUtilisation.Of(new Length(Si(spread, "in")), new Length(Si(row, "in"))) * 100;

    private static double Limit(
        string source,
        Crop crop,
        LimitedNutrient nutrient,
        SoilTexture soil = SoilTexture.Medium,
        double spread = 1,
        double row = 9,
        SeedbedMoisture moisture = SeedbedMoisture.Good
    ) => In("lb/ac", Judged(source, crop, nutrient, soil, spread, row, moisture).Allowed!.Value.KilogramsPerSquareMetre);

    private static LimitJudgement Judged(
        string source,
        Crop crop,
        LimitedNutrient nutrient,
        SoilTexture soil,
        double spread,
        double row,
        SeedbedMoisture moisture = SeedbedMoisture.Good
    ) =>
        SeedRowEvaluation
            .Evaluate(
                new SeedRowQuestion
                {
                    Crop = crop,
                    Soil = soil,
                    Moisture = moisture,
                    RowSpacing = new Length(Si(row, "in")),
                    Spread = new Length(Si(spread, "in")),
                    Products =
                    [
                        new PlacedProduct
                        {
                            Name = "urea",
                            Analysis = new NutrientAnalysis(N: 0.46),
                            Rates = [new MassPerArea(0.001)],
                        },
                    ],
                    Sources = [source.ToLowerInvariant()],
                }
            )
            .Limits.Single(limit => limit.Limit.Nutrient == nutrient);

    private static double MostUrea() =>
        In(
            "lb/ac",
            SeedRowEvaluation
                .Evaluate(
                    new SeedRowQuestion
                    {
                        Crop = Crop.Corn,
                        Soil = SoilTexture.Medium,
                        Moisture = SeedbedMoisture.Good,
                        RowSpacing = new Length(Si(30, "in")),
                        Spread = new Length(Si(1, "in")),
                        AcceptableStandLoss = 0.15,
                        Products =
                        [
                            new PlacedProduct
                            {
                                Name = "urea",
                                Analysis = new NutrientAnalysis(N: 0.46),
                                Rates = [new MassPerArea(0.001)],
                                NitrogenForm = NitrogenForm.Urea,
                            },
                        ],
                    }
                )
                .StandLoss!.Products.Single()
                .Most!.Value.KilogramsPerSquareMetre
        );

    private static double TakenOff(ReductionCause cause) =>
        (1 - PublishedLimits.Reductions.Single(reduction => reduction.Source.Key == "SDSU-DRY" && reduction.Cause == cause).Left!.Value)
        * 100;

    // Mass of a product with that much of one nutrient in it.
    private static double Product(double nutrient, NutrientAnalysis analysis, Func<NutrientAnalysis, double> share) =>
        nutrient / share(analysis);

    // Per cent of a nutrient in equal masses of urea and 11-52-0, as the sum over products gives it.
    private static double Blend(LimitedNutrient nutrient) =>
        SeedRowLoad
            .Of([
                new PlacedProduct
                {
                    Name = "urea",
                    Analysis = new NutrientAnalysis(N: 0.46),
                    Rates = [new MassPerArea(0.5)],
                },
                new PlacedProduct
                {
                    Name = "11-52-0",
                    Analysis = new NutrientAnalysis(N: 0.11, P2O5: 0.52),
                    Rates = [new MassPerArea(0.5)],
                },
            ])
            .Worst(nutrient)
            .Load.KilogramsPerSquareMetre * 100;
}
