using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>
/// Turns a question into relative numbers and back: rates by the largest target, nutrients each by its own, prices by the highest.
/// </summary>
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
        amounts =
        [
            .. question.Targets.Select(target => target.Amount.KilogramsPerSquareMetre > 0 ? target.Amount.KilogramsPerSquareMetre : rate),
        ];
        highestPrice = products.Select(product => product.PricePerKilogram ?? 0).DefaultIfEmpty(0).Max();
    }

    /// <summary>The blend in relative numbers. Products that all cost nothing are as good as products without prices.</summary>
    public BlendProgram Program() =>
        new(
            [
                .. question.Targets.Select(
                    (target, j) => products.Select(product => product.Share(target.Form) * rate / amounts[j]).ToArray()
                ),
            ],
            [.. products.Select(product => (product.LeastRate?.KilogramsPerSquareMetre ?? 0) / rate)],
            [
                .. products.Select(product =>
                    Math.Max(
                        product.LeastRate?.KilogramsPerSquareMetre ?? 0,
                        product.MostRate?.KilogramsPerSquareMetre ?? double.PositiveInfinity
                    ) / rate
                ),
            ],
            highestPrice > 0 ? [.. products.Select(product => product.PricePerKilogram!.Value / highestPrice)] : []
        );

    /// <summary>What the computed rates have to bring of a nutrient.</summary>
    /// <param name="target">The target.</param>
    /// <param name="there">What is there without them, kg/m2.</param>
    public BlendRow Row(NutrientTarget target, double there)
    {
        var at = question.Targets.ToList().IndexOf(target);
        var (scale, left) = (amounts[at], Left(at, there));
        return (target.Kind ?? ProductRateDefaults.Kind) switch
        {
            TargetKind.AtLeast => new BlendRow(
                left > 0 ? left : double.NegativeInfinity,
                target.Most is { } most ? Math.Max(left, (most.KilogramsPerSquareMetre - there) / scale) : double.PositiveInfinity,
                IsLimit: true
            ),
            TargetKind.Exactly => new BlendRow(left, left, IsLimit: false),
            _ => new BlendRow(double.NegativeInfinity, left, IsLimit: true),
        };
    }

    /// <summary>A rate in units.</summary>
    public MassPerArea Rate(double relative) => new(relative * rate);

    /// <summary>
    /// What one more kilogram of a target would cost while every limit stays, its own too; null without prices, for a target that is only a
    /// limit, or when no more can be had.
    /// </summary>
    /// <param name="program">The blend.</param>
    /// <param name="rows">What is asked of each nutrient.</param>
    /// <param name="best">The best rates.</param>
    /// <param name="target">Which target.</param>
    /// <param name="there">What is there without the computed rates, kg/m2.</param>
    public double? NextKilogram(BlendProgram program, BlendRow[] rows, BlendSolution best, int target, double there)
    {
        var row = rows[target];
        if (program.Costs.Length == 0 || !best.MeetsAll || KindOf(target) == TargetKind.AtMost)
            return null;
        if (KindOf(target) == TargetKind.Exactly)
            return Price(program, rows, target, row with { Least = row.Least + Step, Most = row.Most + Step }, (_, _) => true);
        var wanted = Left(target, there) + Step;
        return wanted <= 0 ? 0
            : wanted + Step > row.Most ? null
            : Price(program, rows, target, row with { Least = wanted }, (amount, asked) => amount - asked.Least < Step / 2);
    }

    /// <summary>
    /// What the limit of a target costs: what one kilogram more allowed would save; 0 where it does not bind, null without prices, without
    /// a limit, or where the targets cannot be met.
    /// </summary>
    public double? KilogramOfLimit(BlendProgram program, BlendRow[] rows, BlendSolution best, int target)
    {
        var row = rows[target];
        if (program.Costs.Length == 0 || !best.MeetsAll || KindOf(target) == TargetKind.Exactly || double.IsPositiveInfinity(row.Most))
            return null;
        var saved = Price(program, rows, target, row with { Most = row.Most + Step }, (amount, asked) => asked.Most - amount < Step / 2);
        return saved is { } known ? Math.Max(0, -known) : null;
    }

    private double Left(int target, double there) => (question.Targets[target].Amount.KilogramsPerSquareMetre - there) / amounts[target];

    private TargetKind KindOf(int target) => question.Targets[target].Kind ?? ProductRateDefaults.Kind;

    // The price of the programme belongs to the bound on which the amount stands; where it stands on another, this one costs nothing.
    private double? Price(BlendProgram program, BlendRow[] rows, int target, BlendRow moved, Func<double, BlendRow, bool> standsOnIt)
    {
        var solution = program.Solve([.. rows.Select((one, j) => j == target ? moved : one)]);
        return !solution.MeetsAll ? null
            : standsOnIt(solution.Amounts[target], moved) ? solution.Prices[target] * highestPrice * rate / amounts[target]
            : 0;
    }
}
