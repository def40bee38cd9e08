using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>Turns a question into relative numbers and back: rates by the largest target, nutrients each by its own, prices by the highest.</summary>
internal sealed class BlendScales
{
    // Only says which basis holds just above a target; the price is that of the basis, so the size of the step does not enter it.
    private const double Step = 1e-6;

    // Where every target is 0, as a ban of everything is, rates are relative to 1 kg/ha.
    private const double OneKilogramPerHectare = 1e-4;

    private readonly ProductRateQuestion question;
    private readonly OfferedProduct[] products;
    private readonly double rate;
    private readonly double[] amounts;
    private readonly double highestPrice;

    /// <param name="question">The question.</param>
    /// <param name="products">The products whose rates are to be found.</param>
    public BlendScales(ProductRateQuestion question, OfferedProduct[] products)
    {
        this.question = question;
        this.products = products;
        var largest = question.Targets.Max(target => target.Amount.KilogramsPerSquareMetre);
        rate = largest > 0 ? largest : OneKilogramPerHectare;
        amounts = [.. question.Targets.Select(target => target.Amount.KilogramsPerSquareMetre > 0 ? target.Amount.KilogramsPerSquareMetre : rate)];
        highestPrice = products.Select(product => product.PricePerKilogram ?? 0).DefaultIfEmpty(0).Max();
    }

    /// <summary>The blend in relative numbers. Products that all cost nothing are as good as products without prices.</summary>
    public BlendProgram Program() => new(
        [.. question.Targets.Select((target, j) => products.Select(product => product.Share(target.Form) * rate / amounts[j]).ToArray())],
        [.. products.Select(product => (product.LeastRate?.KilogramsPerSquareMetre ?? 0) / rate)],
        [.. products.Select(product => Math.Max(product.LeastRate?.KilogramsPerSquareMetre ?? 0, product.MostRate?.KilogramsPerSquareMetre ?? double.PositiveInfinity) / rate)],
        highestPrice > 0 ? [.. products.Select(product => product.PricePerKilogram!.Value / highestPrice)] : []);

    /// <summary>What the computed rates have to bring of a nutrient.</summary>
    /// <param name="target">The target.</param>
    /// <param name="there">What is there without them, kg/m2.</param>
    public BlendRow Row(NutrientTarget target, double there)
    {
        var scale = amounts[question.Targets.ToList().IndexOf(target)];
        var left = (target.Amount.KilogramsPerSquareMetre - there) / scale;
        return (target.Kind ?? ProductRateDefaults.Kind) switch
        {
            TargetKind.AtLeast => new BlendRow(
                left > 0 ? left : double.NegativeInfinity,
                target.Most is { } most ? Math.Max(left, (most.KilogramsPerSquareMetre - there) / scale) : double.PositiveInfinity,
                IsLimit: true),
            TargetKind.Exactly => new BlendRow(left, left, IsLimit: false),
            _ => new BlendRow(double.NegativeInfinity, left, IsLimit: true),
        };
    }

    /// <summary>A rate in units.</summary>
    public MassPerArea Rate(double relative) => new(relative * rate);

    /// <summary>What the next kilogram of a target would cost; null without prices, or when no more can be had.</summary>
    public double? NextKilogram(BlendProgram program, BlendRow[] rows, BlendSolution best, int target)
    {
        if (program.Costs.Length == 0 || !best.MeetsAll)
            return null;
        var isLeast = (question.Targets[target].Kind ?? ProductRateDefaults.Kind) == TargetKind.AtLeast;
        if (isLeast && double.IsNegativeInfinity(rows[target].Least))
            return 0;
        var row = rows[target];
        var above = row with { Least = row.Least + Step, Most = isLeast ? Math.Max(row.Most, row.Least + Step) : row.Most + Step };
        var solution = program.Solve([.. rows.Select((one, j) => j == target ? above : one)]);
        return solution.MeetsAll ? solution.Prices[target] * highestPrice * rate / amounts[target] : null;
    }
}
