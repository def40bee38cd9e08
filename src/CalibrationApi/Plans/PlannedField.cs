using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.CatchTests;
using CalibrationApi.Http;
using CalibrationApi.Machines;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Plans;

/// <summary>A stored plan with the records it names and the rates that follow from them, as they are at this moment.</summary>
internal sealed class PlannedField
{
    private static readonly RequestValidator<SeedingRateRequest> SeedingRules = new(TimeProvider.System);
    private static readonly RequestValidator<ProductRateRequest> NutrientRules = new(TimeProvider.System);

    private PlannedField(PlanRequest plan, MachineRequest? machine, PlannedMeter[] meters)
    {
        Plan = plan;
        Machine = machine;
        Meters = meters;
    }

    /// <summary>The plan.</summary>
    public PlanRequest Plan { get; }

    /// <summary>Its machine; null when there is none, which is one of the errors.</summary>
    public MachineRequest? Machine { get; }

    /// <summary>Its meters, those whose records are there.</summary>
    public IReadOnlyList<PlannedMeter> Meters { get; private set; }

    /// <summary>The planned ground speed, and those between which the field is worked.</summary>
    public IReadOnlyList<SpeedQuantity?> GroundSpeeds =>
        Plan.WorkingSpeeds is { } working ? [Plan.GroundSpeed, working.Minimum, working.Maximum] : [Plan.GroundSpeed];

    /// <summary>How rates follow from the nutrients; null when none are wanted or it cannot be told.</summary>
    public ProductRateAnswer? Nutrients { get; private set; }

    /// <summary>Why a rate cannot be told, by members of the plan.</summary>
    public List<ProblemError> RateErrors { get; } = [];

    /// <summary>Reads a plan's machine, products and lots and finds the rates. Records that are missing are added to <paramref name="records"/>.</summary>
    /// <param name="plan">The plan, valid by itself.</param>
    /// <param name="records">Reads records.</param>
    /// <param name="units">Units of the answers within.</param>
    public static PlannedField Read(PlanRequest plan, ReferredRecords records, string? units = null)
    {
        var machine = records.Machine(plan.Machine!, nameof(plan.Machine));
        var meters = new List<PlannedMeter>();
        for (var i = 0; i < plan.Meters!.Count && machine is not null; i++)
        {
            if (Meter(records, machine, plan.Meters[i]!, i) is { } meter)
                meters.Add(meter);
        }

        var field = new PlannedField(plan, machine, [.. meters]);
        field.Meters = [.. field.Meters.Select(meter => field.WithRate(meter, units))];
        field.FindFromNutrients(units);
        return field;
    }

    private static PlannedMeter? Meter(ReferredRecords records, MachineRequest machine, MeterOfFieldPlan planned, int i)
    {
        var path = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{nameof(PlanRequest.Meters)}[{i}]");
        var product = records.Product(planned.Product!, $"{path}.{nameof(planned.Product)}");
        var lot = planned.Lot is { } lotId ? records.Lot(lotId, planned.Product!, $"{path}.{nameof(planned.Lot)}") : null;
        var meter = records.Meter(machine, planned.Meter!, $"{path}.{nameof(planned.Meter)}");
        var element = meter is null ? null : records.Element(meter, planned.Element!, $"{path}.{nameof(planned.Element)}");
        return product is null || meter is null || element is null ? null : new PlannedMeter(i, planned, product, lot, meter, element);
    }

    private PlannedMeter WithRate(PlannedMeter meter, string? units)
    {
        if (meter.Planned.TargetRate is { } stated)
            return meter with { Rate = stated, RateFrom = RateOrigin.TargetRate };
        if (meter.Planned.Stand is not { } stand)
            return meter with { RateFrom = RateOrigin.Nutrients };
        meter = meter with { RateFrom = RateOrigin.Stand };
        if (meter.Lot?.ThousandKernelMass is null)
            return Missing(meter, nameof(meter.Planned.Lot), "The rate for a stand needs the thousand-kernel mass of the lot. Add it to the lot, or give a target rate in place of the stand.");
        if (stand.Emergence is not null && meter.Lot.Germination is null)
            return Missing(meter, nameof(meter.Planned.Lot), "Emergence goes with the germination of the lot. Add that to the lot, or give survival in place of emergence.");
        var question = new SeedingRateRequest
        {
            TargetStand = stand.Plants,
            ThousandKernelMass = meter.Lot.ThousandKernelMass,
            Germination = stand.Survival is null ? meter.Lot.Germination : null,
            Emergence = stand.Emergence,
            Survival = stand.Survival,
            Purity = meter.Lot.Purity,
            RowSpacing = Machine!.RowSpacing,
            Area = Plan.Area,
            Price = meter.Product.Price,
        };
        var (answer, errors) = Calculation.Ask(question, SeedingRules, SeedingRateCalculation.Declaration.Ask, units);
        Take(errors, meter.Path(nameof(meter.Planned.Stand)));
        return meter with { Rate = answer?.Rate, SeedingRate = answer };
    }

    private void FindFromNutrients(string? units)
    {
        foreach (var meter in Meters.Where(meter => meter.RateFrom == RateOrigin.Nutrients && meter.Product.Analysis is null))
            Missing(meter, nameof(meter.Planned.Product), "The rate should follow from the nutrients of the plan, but the analysis of this product is not known. Add it to the product, or give a target rate.");
        var bringing = Meters.Where(meter => meter.Product.Analysis is not null).ToArray();
        // What a meter brings that is open for another reason is not known, and the others would have to make up for it.
        var isKnown = Meters.Count == Plan.Meters!.Count && Meters.All(meter => meter.Rate is not null || meter is { RateFrom: RateOrigin.Nutrients, Product.Analysis: not null });
        if (Plan.Nutrients is null || bringing.Length == 0 || !isKnown)
            return;
        PlannedProduct[] products = [.. bringing.GroupBy(meter => (meter.Planned.Product, IsFixed: meter.Rate is not null)).Select(meters => new PlannedProduct([.. meters], Machine!.WorkingWidth))];
        var question = new ProductRateRequest
        {
            Targets = Plan.Nutrients,
            Credits = Plan.NutrientCredits,
            Area = Plan.Area,
            // One price missing would leave the others without use.
            Products = [.. products.Select(product => product.Offer(PricesCompare(bringing)))],
        };
        var (answer, errors) = Calculation.Ask(question, NutrientRules, ProductRateCalculation.Declaration.Ask, units);
        Take(errors, nameof(Plan.Nutrients));
        Nutrients = answer;
        if (answer is null)
            return;
        // The lines of the answer stand in the order of the question.
        var found = products.Zip(answer.Products).SelectMany(pair => pair.First.Rates(pair.Second.Rate)).ToDictionary(one => one.Meter, one => one.Rate);
        Meters = [.. Meters.Select(meter => found.TryGetValue(meter.Index, out var rate) ? meter with { Rate = rate } : meter)];
    }

    /// <summary>True when every one of these products has a price, all in one currency.</summary>
    public static bool PricesCompare(IEnumerable<PlannedMeter> meters) =>
        meters.Select(meter => meter.Product.Price?.Currency).Distinct().ToArray() is [not null];

    private PlannedMeter Missing(PlannedMeter meter, string member, string detail)
    {
        RateErrors.Add(new ProblemError { Pointer = RequestFilter.Pointer(meter.Path(member)), Code = ErrorCode.ValueMissing, Detail = detail });
        return meter;
    }

    private void Take(IReadOnlyList<ProblemError> errors, string member) => RateErrors.AddRange(errors.Select(error => new ProblemError
    {
        Pointer = RequestFilter.Pointer(member),
        Code = error.Code,
        Detail = error.Detail,
    }));
}
