using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>
/// Questions about blends, drawn from a seed: whole percents and prices, so that ties and targets that just cannot be met come up often.
/// </summary>
internal static class RandomBlends
{
    public const double KilogramPerHectare = 1e-4;

    private static readonly NutrientForm[] Forms = [NutrientForm.N, NutrientForm.P2O5, NutrientForm.K2O, NutrientForm.S];

    /// <param name="seed">Decides everything.</param>
    /// <param name="mostProducts">Most products.</param>
    public static ProductRateQuestion Draw(int seed, int mostProducts)
    {
        var random = new Random(seed);
        var priced = random.Next(5) > 0;
        var forms = Forms.OrderBy(_ => random.Next()).Take(random.Next(1, 5)).ToArray();
        return new ProductRateQuestion
        {
            Targets = [.. forms.Select(form => Target(random, form))],
            Products = [.. Enumerable.Range(0, random.Next(1, mostProducts + 1)).Select(i => Product(random, i, priced))],
            Credits = random.Next(3) == 0 ? [new NutrientCredit(forms[0], Rate(random.Next(1, 60)))] : [],
        };
    }

    public static MassPerArea Rate(double kilogramsPerHectare) => new(kilogramsPerHectare * KilogramPerHectare);

    private static NutrientTarget Target(Random random, NutrientForm form)
    {
        var amount = random.Next(5, 121);
        return random.Next(8) switch
        {
            0 => new NutrientTarget(form, Rate(amount), TargetKind.Exactly),
            1 => new NutrientTarget(form, Rate(random.Next(0, 81)), TargetKind.AtMost),
            2 => new NutrientTarget(form, Rate(amount), TargetKind.AtLeast, Rate(amount + random.Next(0, 40))),
            _ => new NutrientTarget(form, Rate(amount)),
        };
    }

    private static OfferedProduct Product(Random random, int number, bool priced)
    {
        var analysis = Forms.Select(form => new NutrientShare(form, random.Next(5) < 3 ? 0 : random.Next(1, 25) / 100.0)).ToArray();
        if (analysis.All(one => one.Share == 0))
            analysis[random.Next(4)] = analysis[random.Next(4)] with { Share = 0.46 };
        if (analysis.All(one => one.Share == 0) || analysis.DistinctBy(one => one.Form).Count() < 4)
            analysis = [new NutrientShare(NutrientForm.N, 0.46)];
        var least = random.Next(6) == 0 ? random.Next(1, 50) : 0;
        var isFixed = random.Next(10) == 0;
        return new OfferedProduct
        {
            Name = $"product {number}",
            Analysis = analysis,
            PricePerKilogram = priced ? random.Next(0, 13) / 10.0 : null,
            FixedRate = isFixed ? Rate(random.Next(0, 100)) : null,
            LeastRate = !isFixed && least > 0 ? Rate(least) : null,
            MostRate = !isFixed && random.Next(4) == 0 ? Rate(least + random.Next(0, 200)) : null,
        };
    }
}

/// <summary>A question as plain numbers in kg/ha, for methods that know nothing of the engine.</summary>
internal sealed record PlainBlend(
    double[][] Shares,
    double[] Least,
    double[] Most,
    double[] Cost,
    double[] RowLeast,
    double[] RowMost,
    bool[] IsLimit,
    double[] Scale
)
{
    public static PlainBlend Of(ProductRateQuestion question)
    {
        const double Unit = RandomBlends.KilogramPerHectare;
        var free = question.Products.Where(product => product.FixedRate is null).ToArray();
        var targets = question.Targets;
        double There(NutrientTarget target) =>
            (
                question.Credits.Where(credit => credit.Form == target.Form).Sum(credit => credit.Amount.KilogramsPerSquareMetre)
                + question.Products.Sum(product => (product.FixedRate?.KilogramsPerSquareMetre ?? 0) * Held(product, target.Form))
            ) / Unit;
        double Asked(MassPerArea amount, NutrientTarget target) => amount.KilogramsPerSquareMetre / Unit - There(target);
        var largest = targets.Max(target => target.Amount.KilogramsPerSquareMetre) / Unit;
        return new PlainBlend(
            [.. targets.Select(target => free.Select(product => Held(product, target.Form)).ToArray())],
            [.. free.Select(product => (product.LeastRate?.KilogramsPerSquareMetre ?? 0) / Unit)],
            [.. free.Select(product => (product.MostRate?.KilogramsPerSquareMetre ?? double.PositiveInfinity) / Unit)],
            [.. free.Select(product => product.PricePerKilogram ?? 1)],
            [.. targets.Select(target => target.Kind == TargetKind.AtMost ? double.NegativeInfinity : Asked(target.Amount, target))],
            [
                .. targets.Select(target =>
                    target.Kind is TargetKind.AtMost or TargetKind.Exactly ? Asked(target.Amount, target)
                    : target.Most is { } most ? Asked(most, target)
                    : double.PositiveInfinity
                ),
            ],
            [.. targets.Select(target => target.Kind != TargetKind.Exactly)],
            [
                .. targets.Select(target =>
                    target.Amount.KilogramsPerSquareMetre > 0 ? target.Amount.KilogramsPerSquareMetre / Unit
                    : largest > 0 ? largest
                    : 1
                ),
            ]
        );
    }

    /// <summary>What is made least, in this order: over limits, off targets, cost, mass.</summary>
    public double[] Objectives(double[] rates)
    {
        double over = 0,
            off = 0;
        for (var j = 0; j < Shares.Length; j++)
        {
            var amount = Shares[j].Zip(rates, (share, rate) => share * rate).Sum();
            var above = Math.Max(0, amount - RowMost[j]) / Scale[j];
            off += Math.Max(0, RowLeast[j] - amount) / Scale[j] + (IsLimit[j] ? 0 : above);
            over += IsLimit[j] ? above : 0;
        }

        return [over, off, Cost.Zip(rates, (cost, rate) => cost * rate).Sum(), rates.Sum()];
    }

    private static double Held(OfferedProduct product, NutrientForm form) =>
        product.Analysis.Where(one => one.Form == form).Sum(one => one.Share);
}
