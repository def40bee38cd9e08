using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>Shorthand for questions about blends, in kg/ha and percent.</summary>
internal static class Wanted
{
    public static readonly OfferedProduct Urea = Product("urea", (NutrientForm.N, 46));
    public static readonly OfferedProduct Phosphate = Product("phosphate", (NutrientForm.N, 11), (NutrientForm.P2O5, 52));
    public static readonly OfferedProduct Potash = Product("potash", (NutrientForm.K2O, 60));
    public static readonly OfferedProduct Sulfate = Product("sulfate", (NutrientForm.N, 21), (NutrientForm.S, 24));

    public static OfferedProduct Product(string name, params (NutrientForm Form, double Percent)[] analysis) =>
        new() { Name = name, Analysis = [.. analysis.Select(one => new NutrientShare(one.Form, one.Percent / 100))] };

    public static OfferedProduct At(this OfferedProduct product, double perTonne) => product with { PricePerKilogram = perTonne / 1000 };

    public static MassPerArea Rate(double kilogramsPerHectare) => RandomBlends.Rate(kilogramsPerHectare);

    public static NutrientTarget Of(NutrientForm form, double amount, TargetKind? kind = null, double? most = null) =>
        new(form, Rate(amount), kind, most is { } known ? Rate(known) : null);

    public static ProductRateQuestion From(this NutrientTarget target, params OfferedProduct[] products) => new[] { target }.From(products);

    public static ProductRateQuestion From(this NutrientTarget[] targets, params OfferedProduct[] products) =>
        new() { Targets = targets, Products = products };

    public static ProductRateQuestion Less(this ProductRateQuestion question, NutrientForm form, double amount) =>
        question with
        {
            Credits = [.. question.Credits, new NutrientCredit(form, Rate(amount))],
        };

    public static ProductRateResult Evaluated(this ProductRateQuestion question) => ProductRateEvaluation.Evaluate(question);

    /// <summary>The rates in kg/ha.</summary>
    public static double[] Rates(this ProductRateResult result) => [.. result.Products.Select(line => KilogramsPerHectare(line.Rate))];

    public static double KilogramsPerHectare(MassPerArea rate) => rate.KilogramsPerSquareMetre / RandomBlends.KilogramPerHectare;

    public static NutrientBalance Nutrient(this ProductRateResult result, NutrientForm form) =>
        result.Nutrients.Single(nutrient => nutrient.Form == form);

    public static void AreNear(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++)
            Assert.True(
                Math.Abs(expected[i] - actual[i]) <= 1e-9 * Math.Max(1, Math.Abs(expected[i])),
                $"{i}: expected {string.Join(" ", expected)}, actual {string.Join(" ", actual)}"
            );
    }
}
