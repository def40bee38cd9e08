using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples on product from nutrient, cost of a nutrient, and element against oxide.</summary>
public sealed class NutrientTradeTests : TradeCases<NutrientTradeTests>, ITradeTopic
{
    public static string File => "trade-nutrients.csv";

    private static readonly OfferedProduct Urea = Grade("urea", 46, 0, 0);
    private static readonly OfferedProduct Phosphate = Grade("11-52-0", 11, 52, 0);
    private static readonly OfferedProduct Potash = Grade("0-0-60", 0, 0, 60);

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            ["NP-01 urea for 80 lb/ac of N / (lb/ac)"] = () => Straight("lb/ac", NutrientForm.N, 80, 46),
            ["NP-02 11-52-0 for 40 lb/ac of P2O5 / (lb/ac)"] = () => Straight("lb/ac", NutrientForm.P2O5, 40, 52),
            ["NP-02 N that it brings / (lb/ac)"] = () =>
                Rate("lb/ac", Blend("lb/ac", [(NutrientForm.P2O5, 40)], [Phosphate]).Products[0].Supplies[0].Amount),
            ["NP-03 0-0-60 for 15 lb/ac of K2O / (lb/ac)"] = () => Straight("lb/ac", NutrientForm.K2O, 15, 60),
            ["NP-04 N in a tonne of urea / lb"] = () => Convert(1, "t", "lb") * Urea.Share(NutrientForm.N),
            ["NP-04 cost of N / ($/lb)"] = () => CostOfNutrient("lb", 367, "t", 46),
            ["NP-04 N in a tonne of 11-52-0 / lb"] = () => Convert(1, "t", "lb") * Phosphate.Share(NutrientForm.N),
            ["NP-04 value of that N / $"] = () =>
                ManitobaBlend.Nutrients[0].NextKilogram!.Value * Si(1, "t") * Phosphate.Share(NutrientForm.N),
            ["NP-04 cost of the P2O5 in a tonne / $"] = () =>
                ManitobaBlend.Nutrients[1].NextKilogram!.Value * Si(1, "t") * Phosphate.Share(NutrientForm.P2O5),
            ["NP-04 P2O5 in a tonne of 11-52-0 / lb"] = () => Convert(1, "t", "lb") * Phosphate.Share(NutrientForm.P2O5),
            ["NP-05 P to P2O5"] = () => NutrientForm.P.To(NutrientForm.P2O5),
            ["NP-05 K to K2O"] = () => NutrientForm.K.To(NutrientForm.K2O),
            ["NP-06 21-0-0 for 15 lb of N / lb"] = () => Straight("lb/ac", NutrientForm.N, 15, 21),
            ["NP-06 35-0-0 for 5 lb of N / lb"] = () => Straight("lb/ac", NutrientForm.N, 5, 35),
            ["NP-06 31-0-0 for 75 % of 15 lb of N / lb"] = () => Straight("lb/ac", NutrientForm.N, 0.75 * 15, 31),
            ["NP-06 46-0-0 for 25 % of 15 lb of N / lb"] = () => Straight("lb/ac", NutrientForm.N, 0.25 * 15, 46),
            ["NP-07 11-52-0 / (lb/ac)"] = () => Rate("lb/ac", ThreeProducts.Products[1].Rate),
            ["NP-07 46-0-0 / (lb/ac)"] = () => Rate("lb/ac", ThreeProducts.Products[0].Rate),
            ["NP-07 0-0-60 / (lb/ac)"] = () => Rate("lb/ac", ThreeProducts.Products[2].Rate),
            ["NP-07 total / (lb/ac)"] = () => Rate("lb/ac", ThreeProducts.TotalRate),
            ["NP-07 N of the blend / %"] = () => 100 * ThreeProducts.Blend[0].Share,
            ["NP-07 P2O5 of the blend / %"] = () => 100 * ThreeProducts.Blend[1].Share,
            ["NP-07 K2O of the blend / %"] = () => 100 * ThreeProducts.Blend[2].Share,
            ["NP-07 urea too much when the N of 11-52-0 is forgotten / (lb/ac)"] = () =>
                Straight("lb/ac", NutrientForm.N, 80, 46) - Rate("lb/ac", ThreeProducts.Products[0].Rate),
            ["DPI-496 superphosphate of 8.8 % P for 20 kg/ha of P / (kg/ha)"] = () => Straight("kg/ha", NutrientForm.P, 20, 8.8),
            ["DPI-496 P in 125 kg/ha of it / (kg/ha)"] = () =>
                Rate("kg/ha", Fixed(125, NutrientForm.P, 8.8).Products[0].Supplies[0].Amount),
            ["NMSU cost of N in urea at 567 $/ton / ($/lb)"] = () => CostOfNutrient("lb", 567, "ton-us", 46),
            ["NMSU cost of P2O5 in 0-46-0 at 996 $/ton / ($/lb)"] = () => CostOfNutrient("lb", 996, "ton-us", 46),
            ["UWEX cost of N in urea at 700 $/ton / ($/lb)"] = () => CostOfNutrient("lb", 700, "ton-us", 46),
            ["UWEX cost of N in 28-0-0 at 600 $/ton / ($/lb)"] = () => CostOfNutrient("lb", 600, "ton-us", 28),
            ["UWEX difference / ($/lb)"] = () => CostOfNutrient("lb", 600, "ton-us", 28) - CostOfNutrient("lb", 700, "ton-us", 46),
            ["PURDUE N in a ton of 82-0-0 / lb"] = () => Convert(1, "ton-us", "lb") * Grade("ammonia", 82, 0, 0).Share(NutrientForm.N),
            ["NOBLE cost of N in urea at 412 $/ton / (cents/lb)"] = () => 100 * CostOfNutrient("lb", 412, "ton-us", 46),
            ["NOBLE cost of N in 34-0-0 at 370 $/ton / (cents/lb)"] = () => 100 * CostOfNutrient("lb", 370, "ton-us", 34),
            ["NOBLE N in a ton of 27-0-0 / lb"] = () => Convert(1, "ton-us", "lb") * Grade("27-0-0", 27, 0, 0).Share(NutrientForm.N),
            ["VT P to P2O5"] = () => NutrientForm.P.To(NutrientForm.P2O5),
            ["VT P2O5 to P"] = () => NutrientForm.P2O5.To(NutrientForm.P),
            ["VT K to K2O"] = () => NutrientForm.K.To(NutrientForm.K2O),
            ["VT K2O to K"] = () => NutrientForm.K2O.To(NutrientForm.K),
            ["VT SO4 to S"] = () => NutrientForm.SO4.To(NutrientForm.S),
            ["VT S to SO4"] = () => NutrientForm.S.To(NutrientForm.SO4),
            ["LEC-120 urea alone for 120 kg/ha of N / (kg/ha)"] = () => Straight("kg/ha", NutrientForm.N, 120, 46),
            ["LEC-120 0-16-0 for 60 kg/ha of P2O5 / (kg/ha)"] = () => Straight("kg/ha", NutrientForm.P2O5, 60, 16),
            ["LEC-120 18-46-0 / (kg/ha)"] = () => Rate("kg/ha", Lecture.Products[1].Rate),
            ["LEC-120 N that it brings / (kg/ha)"] = () => Rate("kg/ha", Lecture.Products[1].Supplies[0].Amount),
            ["LEC-120 urea beside it / (kg/ha)"] = () => Rate("kg/ha", Lecture.Products[0].Rate),
            ["LEC-120 0-0-60 / (kg/ha)"] = () => Rate("kg/ha", Lecture.Products[2].Rate),
            ["SCHOOL fertilizer of 12 % N and 5 % phosphoric acid / kg"] = () => Rate("kg/ha", School.Products[0].Rate),
            ["SCHOOL fertilizer of 4 % N and 5 % phosphoric acid / kg"] = () => Rate("kg/ha", School.Products[1].Rate),
            ["SCHOOL least cost"] = () => School.CostPerSquareMetre!.Value * Si(1, "ha"),
        };

    private static ProductRateResult ManitobaBlend =>
        Blend(
            "lb/ac",
            [(NutrientForm.N, 80), (NutrientForm.P2O5, 40)],
            [Urea with { PricePerKilogram = 0.367 }, Phosphate with { PricePerKilogram = 0.391 }]
        );

    private static ProductRateResult ThreeProducts =>
        Blend("lb/ac", [(NutrientForm.N, 80), (NutrientForm.P2O5, 40), (NutrientForm.K2O, 15)], [Urea, Phosphate, Potash]);

    private static ProductRateResult Lecture =>
        Blend(
            "kg/ha",
            [(NutrientForm.N, 120), (NutrientForm.P2O5, 60), (NutrientForm.K2O, 40)],
            [Urea, Grade("18-46-0", 18, 46, 0), Potash]
        );

    private static ProductRateResult School =>
        Blend(
            "kg/ha",
            [(NutrientForm.N, 12), (NutrientForm.P2O5, 12)],
            [Grade("A", 12, 5, 0) with { PricePerKilogram = 10 }, Grade("B", 4, 5, 0) with { PricePerKilogram = 8 }]
        );

    // The lecture rounds the nitrogen of 18-46-0 down to 23 kg before it goes on; as a credit of 23 kg that is its figure.
    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void ShortcutShown_NitrogenRoundedOnTheWay_GivesTheFigureOfTheLecture() =>
        new PrintedNumber("210.87").AssertReproducedBy(Straight("kg/ha", NutrientForm.N, 120 - 23, 46));

    [Fact]
    [Trait("Category", "Transcription")]
    public void ShortcutShown_RoundedFactor_GivesTheFigureOfTheLecture() => new PrintedNumber("260.4").AssertReproducedBy(120 * 2.17);

    private static double Straight(string unit, NutrientForm form, double amount, double percent) =>
        Rate(
            unit,
            Blend(unit, [(form, amount)], [new OfferedProduct { Name = "straight", Analysis = [new NutrientShare(form, percent / 100)] }])
                .Products[0]
                .Rate
        );

    private static ProductRateResult Fixed(double rate, NutrientForm form, double percent) =>
        Blend(
            "kg/ha",
            [(form, 20)],
            [
                new OfferedProduct
                {
                    Name = "fixed",
                    Analysis = [new NutrientShare(form, percent / 100)],
                    FixedRate = new MassPerArea(Si(rate, "kg/ha")),
                },
            ]
        );

    // Price for a mass of product of one nutrient, money for a mass of the nutrient.
    private static double CostOfNutrient(string per, double price, string priced, double percent)
    {
        var product = new OfferedProduct
        {
            Name = "straight",
            Analysis = [new NutrientShare(NutrientForm.N, percent / 100)],
            PricePerKilogram = price / Si(1, priced),
        };
        return Blend("lb/ac", [(NutrientForm.N, 50)], [product]).Products[0].OnlyNutrient!.PerKilogram * Si(1, per);
    }

    private static ProductRateResult Blend(string unit, (NutrientForm Form, double Amount)[] targets, OfferedProduct[] products) =>
        ProductRateEvaluation.Evaluate(
            new ProductRateQuestion
            {
                Targets = [.. targets.Select(target => new NutrientTarget(target.Form, new MassPerArea(Si(target.Amount, unit))))],
                Products = products,
            }
        );

    private static double Rate(string unit, MassPerArea rate) => In(unit, rate.KilogramsPerSquareMetre);

    private static OfferedProduct Grade(string name, double n, double p2o5, double k2o) =>
        new()
        {
            Name = name,
            Analysis =
            [
                new NutrientShare(NutrientForm.N, n / 100),
                new NutrientShare(NutrientForm.P2O5, p2o5 / 100),
                new NutrientShare(NutrientForm.K2O, k2o / 100),
            ],
        };
}
