using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples on seeding rate, pure live seed and seeds in a row.</summary>
public sealed class SeedingRateTradeTests : TradeCases<SeedingRateTradeTests>, ITradeTopic
{
    public static string File => "trade-seeding-rate.csv";

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            // Germination 95 %, stand loss 15 %: the reading with germination apart.
            ["SR-01 rate / (lb/ac)"] = () =>
                In("lb/ac", Rate(Si(1_100_000, "/ac"), PerPound(12_500), Establishment.Tested(0.95, emergence: 0.85))),
            ["SR-02 rate by dividing by 10 / (lb/ac)"] = () =>
                In("lb/ac", ByTen(Rate(Si(8, "/ft2"), Grams(290), Establishment.Folded(0.95)))),
            ["SR-02 rate / (lb/ac)"] = () => In("lb/ac", Rate(Si(8, "/ft2"), Grams(290), Establishment.Folded(0.95))),
            ["SR-03 rate / (lb/ac)"] = () => In("lb/ac", Rate(Si(10, "/ft2"), Grams(4), Establishment.Folded(0.50))),
            ["SR-04 rate / (lb/ac)"] = () => In("lb/ac", Rate(Si(8, "/ft2"), Grams(4), Establishment.Folded(0.65))),
            ["SR-05 rate with 6 g / (lb/ac)"] = () => In("lb/ac", Rate(Si(6, "/ft2"), Grams(6), Establishment.Folded(0.60))),
            ["SR-05 rate with 4 g / (lb/ac)"] = () => In("lb/ac", Rate(Si(6, "/ft2"), Grams(4), Establishment.Folded(0.60))),
            ["SR-07 stand / (1/ft2)"] = () =>
                In(
                    "/ft2",
                    Evaluated(
                        new()
                        {
                            Rate = new(Si(5, "lb/ac")),
                            Kernel = Grams(5),
                            Establishment = Establishment.Folded(0.50),
                        }
                    ).Plants!.Value.PerSquareMetre
                ),
            ["SR-09 rate / (kg/ha)"] = () => In("kg/ha", Rate(300, Grams(50), Establishment.Folded(0.85))),
            ["SR-11 35 per ft2 of 10000 per lb / (lb/ac)"] = () => Kentucky(35, 10_000),
            ["SR-11 35 per ft2 of 12000 per lb / (lb/ac)"] = () => Kentucky(35, 12_000),
            ["SR-11 35 per ft2 of 14000 per lb / (lb/ac)"] = () => Kentucky(35, 14_000),
            ["SR-11 35 per ft2 of 16000 per lb / (lb/ac)"] = () => Kentucky(35, 16_000),
            ["SR-11 35 per ft2 of 18000 per lb / (lb/ac)"] = () => Kentucky(35, 18_000),
            ["SR-11 35 per ft2 of 20000 per lb / (lb/ac)"] = () => Kentucky(35, 20_000),
            ["SR-11 30 per ft2 of 10000 per lb / (lb/ac)"] = () => Kentucky(30, 10_000),
            ["SR-11 30 per ft2 of 12000 per lb / (lb/ac)"] = () => Kentucky(30, 12_000),
            ["SR-11 30 per ft2 of 14000 per lb / (lb/ac)"] = () => Kentucky(30, 14_000),
            ["SR-11 30 per ft2 of 16000 per lb / (lb/ac)"] = () => Kentucky(30, 16_000),
            ["SR-11 30 per ft2 of 18000 per lb / (lb/ac)"] = () => Kentucky(30, 18_000),
            ["SR-11 30 per ft2 of 20000 per lb / (lb/ac)"] = () => Kentucky(30, 20_000),
            ["SR-12 seeds per lb for one seed in 20 g"] = () => Counted(1, 20, "g"),
            ["SR-13 pure live seed"] = () => SeedingRate.PureLiveSeed(0.85, 0.75),
            ["SR-13 bulk for one pound of pure live seed / lb"] = () => Bulk(85, 75),
            ["SR-14 bulk at purity 90 and germination 80"] = () => Bulk(90, 80),
            ["SR-14 bulk at purity 85 and germination 70"] = () => Bulk(85, 70),
            ["SR-14 bulk at purity 80 and germination 60"] = () => Bulk(80, 60),
            ["SR-14 bulk at purity 75 and germination 50"] = () => Bulk(75, 50),
            ["SR-14 bulk at purity 50 and germination 50"] = () => Bulk(50, 50),
            ["RC-01 seeds per ft of row"] = () => InRow(Si(200_000, "/ac"), 15),
            ["RC-02 seeds / (1/ac)"] = () => In("/ac", SeedingRate.PerArea(new(Si(5, "/ft")), new(Si(15, "in"))).PerSquareMetre),
            ["RC-03 length of 1 ft2 in rows of 4 in / in"] = () => RowLength(4),
            ["RC-03 length of 1 ft2 in rows of 6 in / in"] = () => RowLength(6),
            ["RC-03 length of 1 ft2 in rows of 7 in / in"] = () => RowLength(7),
            ["RC-03 length of 1 ft2 in rows of 7.5 in / in"] = () => RowLength(7.5),
            ["RC-03 length of 1 ft2 in rows of 8 in / in"] = () => RowLength(8),
            ["RC-03 length of 1 ft2 in rows of 10 in / in"] = () => RowLength(10),
            ["RC-04 seeds per ft of row, 35 per ft2 in rows of 4 in"] = () => InRow(Si(35, "/ft2"), 4),
            ["RC-04 seeds per ft of row, 35 per ft2 in rows of 6 in"] = () => InRow(Si(35, "/ft2"), 6),
            ["RC-04 seeds per ft of row, 35 per ft2 in rows of 7 in"] = () => InRow(Si(35, "/ft2"), 7),
            ["RC-04 seeds per ft of row, 35 per ft2 in rows of 8 in"] = () => InRow(Si(35, "/ft2"), 8),
            ["RC-04 seeds per ft of row, 35 per ft2 in rows of 10 in"] = () => InRow(Si(35, "/ft2"), 10),
            ["RC-04 seeds per ft of row, 30 per ft2 in rows of 4 in"] = () => InRow(Si(30, "/ft2"), 4),
            ["RC-04 seeds per ft of row, 30 per ft2 in rows of 6 in"] = () => InRow(Si(30, "/ft2"), 6),
            ["RC-04 seeds per ft of row, 30 per ft2 in rows of 7 in"] = () => InRow(Si(30, "/ft2"), 7),
            ["RC-04 seeds per ft of row, 30 per ft2 in rows of 8 in"] = () => InRow(Si(30, "/ft2"), 8),
            ["RC-04 seeds per ft of row, 30 per ft2 in rows of 10 in"] = () => InRow(Si(30, "/ft2"), 10),
            ["TEAGASC-SC rate at an establishment of 85 % / (kg/ha)"] = () =>
                In("kg/ha", Rate(280, Grams(50.9), Establishment.Folded(0.85))),
            ["AGL-IE-1 rate / (kg/ha)"] = () => In("kg/ha", Rate(300, Grams(51.9), Establishment.Folded(0.85))),
            ["AGL-IE-2 seeds for 280 plants per m2 at 80 % / (1/m2)"] = () => SeedingRate.Seeds(new(280), 0.80).PerSquareMetre,
            ["AB-SEED 40 seeds per ft2 of 37 g / (lb/ac)"] = () => In("lb/ac", OfSeeds(Si(40, "/ft2"), Grams(37))),
            ["AB-SEED 40 seeds per ft2 of 41 g / (lb/ac)"] = () => In("lb/ac", OfSeeds(Si(40, "/ft2"), Grams(41))),
            // Germination 88 %, mortality 40 %: the reading with germination apart.
            ["MB-FLAX rate by dividing by 10 / (lb/ac)"] = () =>
                In("lb/ac", ByTen(Rate(Si(45, "/ft2"), Grams(5), Establishment.Tested(0.88, emergence: 0.60)))),
            ["MB-FLAX rate / (lb/ac)"] = () => In("lb/ac", Rate(Si(45, "/ft2"), Grams(5), Establishment.Tested(0.88, emergence: 0.60))),
            ["ISU-SEED 150000 per ac of 2750 per lb / (lb/ac)"] = () => In("lb/ac", OfSeeds(Si(150_000, "/ac"), PerPound(2_750))),
            ["ISU-SEED seeds in 60 lb/ac of 2200 per lb / (1/ac)"] = () => In("/ac", SeedsIn(60, 2_200)),
            ["ISU-SEED seeds in 60 lb/ac of 3000 per lb / (1/ac)"] = () => In("/ac", SeedsIn(60, 3_000)),
            ["PSU-PLS pure live seed at purity 92 and germination 80 / %"] = () => 100 * SeedingRate.PureLiveSeed(0.92, 0.80),
            ["PSU-PLS bulk at purity 92 and germination 80"] = () => Bulk(92, 80),
            ["PSU-PLS pure live seed of lot A / %"] = () => 100 * SeedingRate.PureLiveSeed(0.85, 0.60),
            ["PSU-PLS bulk of lot A"] = () => Bulk(85, 60),
            ["PSU-PLS cost per pound of pure live seed of lot A"] = () => 1.95 * Bulk(85, 60),
            ["PSU-PLS pure live seed of lot B / %"] = () => 100 * SeedingRate.PureLiveSeed(0.99, 0.90),
            ["PSU-PLS bulk of lot B"] = () => Bulk(99, 90),
            ["MSUE-COUNT seeds per lb, 100 seeds of 0.0457 lb"] = () => Counted(100, 0.0457, "lb"),
            ["MSUE-COUNT seeds per lb, 100 seeds of 0.73 oz"] = () => Counted(100, 0.73, "oz"),
        };

    // The rules of thumb for lb/ac, against exact units: divide by 10, by 10.4, or multiply by 9.6 with survival in per cent.
    [Theory]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    [InlineData(1 / 10.0, 0.0413)]
    [InlineData(1 / 10.4, 0.0013)]
    [InlineData(9.6 / 100, -0.00035)]
    public void RuleOfThumb_AgainstExactUnits_IsOffByAKnownShare(double factor, double high)
    {
        var exact = In("lb/ac", Rate(Si(1, "/ft2"), Grams(1), Establishment.Folded(1)));

        Assert.Equal(high, factor / exact - 1, 0.00005);
        Assert.Equal(1 / exact, DivideByTen.ExactDivisor, 1e-12);
    }

    // Teagasc takes 10 points of loss from a germination of 95 % and divides by 85. Read as a share of the seeds that germinate, the
    // same loss leaves 85.5 %. The two readings differ in the printed digits, so a figure has to say which one it is.
    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void Establishment_BothReadingsOfOneLoss_DifferAndOnlyTheFoldedOneIsPrinted()
    {
        var folded = In("kg/ha", Rate(280, Grams(50.9), Establishment.Folded(0.95 - 0.10)));
        var apart = In("kg/ha", Rate(280, Grams(50.9), Establishment.Tested(0.95, emergence: 1 - 0.10)));

        new PrintedNumber("168").AssertReproducedBy(folded);
        Assert.Equal(167, Math.Round(apart));
    }

    // Iowa State, Agronomy 212: 50 ac at that rate in bags of 50 lb. 54.545 bags are needed; nobody sells them so.
    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void IowaSoybean_InBagsOverTheField_AreRoundedUp()
    {
        var packages = Evaluated(
            new()
            {
                Seeds = new(Si(150_000, "/ac")),
                Kernel = PerPound(2_750),
                Area = new(Si(50, "ac")),
                Package = SeedPackage.Of(new Mass(Si(50, "lb"))),
            }
        ).Packages!;

        Assert.Equal(150_000 / 2_750.0, packages.Needed!.Value, 1e-9);
        Assert.Equal(55, packages.Whole);
        Assert.Equal((55 - 150_000 / 2_750.0) * 50, In("lb", packages.LeftOver!.Value.Kilograms), 1e-9);
    }

    // Penn State's bulk masses are printed to a tenth; rounding the bulk mass of lot A up to 2 makes its cost two per cent higher.
    [Fact]
    [Trait("Category", "Transcription")]
    public void PennState_CostOfLotA_FollowsFromTheRoundedBulkMass() =>
        new PrintedNumber("3.90").AssertReproducedBy(1.95 * Math.Round(Bulk(85, 60)));

    private static SeedingRateResult Evaluated(SeedingRateQuestion question) => SeedingRateEvaluation.Evaluate(question);

    private static MassPerThousand Grams(double grams) => new(Si(grams, "g/1000"));

    private static MassPerThousand PerPound(double seeds) => SeedingRate.Kernel(new CountPerMass(Si(seeds, "/lb")));

    private static double Rate(double standPerSquareMetre, MassPerThousand kernel, Establishment establishment) =>
        Evaluated(
            new()
            {
                Stand = new(standPerSquareMetre),
                Kernel = kernel,
                Establishment = establishment,
            }
        ).Rate.KilogramsPerSquareMetre;

    private static double OfSeeds(double seedsPerSquareMetre, MassPerThousand kernel) =>
        Evaluated(new() { Seeds = new(seedsPerSquareMetre), Kernel = kernel }).Rate.KilogramsPerSquareMetre;

    private static double SeedsIn(double poundsPerAcre, double seedsPerPound) =>
        Evaluated(new() { Rate = new(Si(poundsPerAcre, "lb/ac")), Kernel = PerPound(seedsPerPound) }).Seeds.PerSquareMetre;

    private static double Kentucky(double seedsPerSquareFoot, double seedsPerPound) =>
        In("lb/ac", OfSeeds(Si(seedsPerSquareFoot, "/ft2"), PerPound(seedsPerPound)));

    private static double ByTen(double exact) => exact * DivideByTen.Factor;

    private static double Bulk(double purity, double germination) => 1 / SeedingRate.PureLiveSeed(purity / 100, germination / 100);

    private static double Counted(double seeds, double mass, string unit) =>
        In("/lb", SeedingRate.SeedsPerMass(SeedingRate.Kernel(seeds, new Mass(Si(mass, unit)))).PerKilogram);

    private static double InRow(double perSquareMetre, double rowInches) =>
        In("/ft", SeedingRate.PerRow(new CountPerArea(perSquareMetre), new Length(Si(rowInches, "in"))).PerMetre);

    // One per square foot, seen along a row: the length on which one stands.
    private static double RowLength(double rowInches) =>
        In("in", 1 / SeedingRate.PerRow(new CountPerArea(Si(1, "/ft2")), new Length(Si(rowInches, "in"))).PerMetre);
}
