using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>The rate of each meter of a field: stated, for a stand, or from the nutrients that are wanted.</summary>
public sealed class FieldRates
{
    // 100 t/ha: more than any machine puts down, so that something behind it is wrong; judgement.
    private const double MostRate = 10;

    private readonly FieldSetUpQuestion question;
    private readonly List<OpenPoint> open = [];

    private FieldRates(FieldSetUpQuestion question)
    {
        this.question = question;
        Meters = [.. question.Meters.Select(RateOf)];
        FindFromNutrients();
        Meters = [.. Meters.Select(Plausible)];
    }

    /// <summary>The meters, in the order of the question.</summary>
    public IReadOnlyList<MeterRate> Meters { get; private set; }

    /// <summary>How rates follow from the nutrients; null when none are wanted or it cannot be told.</summary>
    public ProductRateResult? Nutrients { get; private set; }

    /// <summary>Why a rate cannot be told.</summary>
    public IReadOnlyList<OpenPoint> Open => open;

    /// <summary>Finds the rates.</summary>
    /// <param name="question">The field.</param>
    /// <remarks>
    /// <para>
    /// Formula: a stated rate is taken as it is. A stand takes D m / (S P) of its lot (<see cref="SeedingRateEvaluation"/>). The other
    /// products get the rates that supply the nutrients at least cost, or at least mass where not all have a price in one currency
    /// (<see cref="ProductRateEvaluation"/>); what has a rate already counts with the share of the width that its meters cover,
    /// sum(R_i W_i) / W. Meters that share a product get the same rate, R / sum(W_i / W).
    /// </para>
    /// <para>
    /// Range: rates in kg/m2, up to 100 t/ha; one that follows from more is refused, because something behind it is wrong. As long as one
    /// rate is open for another reason, the nutrients are too: the others would have to make up for it.
    /// </para>
    /// <para>Source: our own derivation; the limit is judgement.</para>
    /// <para>Accuracy: 1e-9 of the rate, as that of the evaluations behind it; shown in FieldRatesTests.</para>
    /// </remarks>
    public static FieldRates Of(FieldSetUpQuestion question) => new(question);

    /// <summary>True when every one of these products has a price, all in one currency.</summary>
    internal static bool PricesCompare(IEnumerable<MeterRate> meters) =>
        meters.Select(meter => meter.Meter.Product.Price?.Currency).Distinct().ToArray() is [not null];

    private MeterRate RateOf(MeterToSetUp meter)
    {
        if (meter.TargetRate is { } stated)
            return new(meter, MeterRateOrigin.TargetRate, stated);
        if (meter.Stand is not { } stand)
            return new(meter, MeterRateOrigin.Nutrients);
        if (meter.Lot?.Kernel is not { } kernel)
            return Missing(
                meter,
                $"The rate for a stand needs the thousand-kernel mass of the lot. Add it to the lot, or give a target rate in place of the stand."
            );
        if (EstablishmentOf(stand, meter.Lot.Germination) is not { } establishment)
            return Missing(
                meter,
                $"Emergence goes with the germination of the lot. Add that to the lot, or give survival in place of emergence."
            );
        var seeding = SeedingRateEvaluation.Evaluate(
            new SeedingRateQuestion
            {
                Stand = stand.Plants,
                Kernel = kernel,
                Establishment = establishment,
                Purity = meter.Lot.Purity,
                RowSpacing = question.RowSpacing,
                Area = question.Area,
                Price = meter.Product.Price is { } price ? new SeedPrice(price.PerKilogram, null) : null,
            }
        );
        return new(meter, MeterRateOrigin.Stand, seeding.Rate, seeding);
    }

    private static Establishment? EstablishmentOf(WantedStand stand, double? germination) =>
        stand.Survival is { } survival ? Establishment.Folded(survival)
        : germination is { } viable ? Establishment.Tested(viable, emergence: stand.Emergence)
        : null;

    private MeterRate Missing(MeterToSetUp meter, Sentence detail)
    {
        open.Add(OpenPoint.Missing(meter.Member("lot"), detail));
        return new(meter, MeterRateOrigin.Stand);
    }

    private void FindFromNutrients()
    {
        MeterRate[] asking = [.. Meters.Where(meter => meter.From == MeterRateOrigin.Nutrients)];
        foreach (var meter in asking.Where(meter => !meter.Meter.Product.BringsNutrients))
        {
            open.Add(
                OpenPoint.Missing(
                    meter.Meter.Member("product"),
                    $"The rate should follow from the nutrients of the plan, but the analysis of this product is not known. Add it to the product, or give a target rate."
                )
            );
        }

        MeterRate[] bringing = [.. Meters.Where(meter => meter.Meter.Product.BringsNutrients)];
        var isKnown =
            question.MetersLeftOut == 0
            && Meters.Except(asking).All(meter => meter.Rate is not null)
            && asking.All(meter => meter.Meter.Product.BringsNutrients);
        if (question.Nutrients.Count == 0 || bringing.Length == 0 || !isKnown)
            return;
        // One price missing would leave the others without use.
        var withPrices = PricesCompare(bringing);
        ProductOnField[] products =
        [
            .. bringing
                .GroupBy(meter => (meter.Meter.Product.Key, IsFixed: meter.Rate is not null))
                .Select(meters => new ProductOnField([.. meters], question.WorkingWidth)),
        ];
        Nutrients = ProductRateEvaluation.Evaluate(
            new ProductRateQuestion
            {
                Targets = question.Nutrients,
                Credits = question.Credits,
                Area = question.Area,
                Products = [.. products.Select(product => product.Offer(withPrices))],
            }
        );
        // The lines stand in the order of the question.
        var found = products
            .Zip(Nutrients.Products)
            .SelectMany(pair => pair.First.Rates(pair.Second.Rate))
            .ToDictionary(one => one.Meter, one => one.Rate);
        Meters = [.. Meters.Select(meter => found.TryGetValue(meter.Meter, out var rate) ? meter with { Rate = rate } : meter)];
    }

    private MeterRate Plausible(MeterRate meter, int place)
    {
        if (meter.From == MeterRateOrigin.TargetRate || !(meter.Rate?.KilogramsPerSquareMetre > MostRate))
            return meter;
        open.Add(
            meter.From == MeterRateOrigin.Stand
                ? new OpenPoint(
                    OpenKind.Refused,
                    meter.Meter.Member("stand"),
                    $"This stand takes {meter.Rate} of the lot, and no machine puts down more than {new MassPerArea(MostRate)}. Check the plants wanted, the kernel mass and the shares, with their units.",
                    new SetUpPart(SetUpPartKind.SeedingRate, place)
                )
                : new OpenPoint(
                    OpenKind.Refused,
                    "nutrients",
                    $"The nutrients take {meter.Rate} of {meter.Meter.Product.Name}, and no machine puts down more than {new MassPerArea(MostRate)}. Check the amounts wanted and the analysis, with their units.",
                    new SetUpPart(SetUpPartKind.Nutrients)
                )
        );
        return meter with { Rate = null };
    }
}

/// <summary>The rate of one meter, and where it comes from.</summary>
/// <param name="Meter">The meter.</param>
/// <param name="From">Where the rate comes from, or should come from.</param>
/// <param name="Rate">Rate to be put down; null while it cannot be told.</param>
/// <param name="Seeding">How the rate follows from a stand; null otherwise.</param>
public sealed record MeterRate(MeterToSetUp Meter, MeterRateOrigin From, MassPerArea? Rate = null, SeedingRateResult? Seeding = null)
{
    /// <summary>The meter stands still: nothing is needed of its product.</summary>
    public bool IsOff => Rate is { KilogramsPerSquareMetre: 0 };

    /// <summary>The meter puts something down.</summary>
    public bool IsOn => Rate is { KilogramsPerSquareMetre: > 0 };
}

/// <summary>Where the rate of a meter comes from.</summary>
public enum MeterRateOrigin
{
    /// <summary>It is stated.</summary>
    TargetRate,

    /// <summary>It follows from the stand that is wanted.</summary>
    Stand,

    /// <summary>It follows from the nutrients that are wanted.</summary>
    Nutrients,
}
