using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Referring;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Records.Plans;

/// <summary>A stored plan joined with the records it names, each read once, as they are at this moment.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Machine">Its machine; null when there is none.</param>
/// <param name="Meters">Its meters, those whose records are there.</param>
/// <param name="AtOdds">Why records do not fit, by members of the plan.</param>
internal sealed record PlannedField(
    PlanRequest Plan,
    MachineRequest? Machine,
    IReadOnlyList<PlannedMeter> Meters,
    IReadOnlyList<ProblemError> AtOdds
)
{
    /// <summary>Joins a plan with its machine, products and lots.</summary>
    /// <param name="plan">The plan, valid by itself.</param>
    /// <param name="records">Reads records, and collects which are missing.</param>
    /// <param name="elements">Of which elements the values in force are read, too.</param>
    public static PlannedField Read(PlanRequest plan, ReferredRecords records, ElementsRead elements)
    {
        var machine = records.Machine(plan.Machine!, nameof(plan.Machine));
        var meters = new List<PlannedMeter>();
        for (var i = 0; i < plan.Meters!.Count && machine is not null; i++)
        {
            if (Meter(records, machine, plan.Meters[i]!, i) is { } meter)
                meters.Add(WithValues(meter, records, plan.Machine!, elements));
        }

        return new PlannedField(plan, machine, meters, records.Errors);
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

    private static PlannedMeter WithValues(PlannedMeter meter, ReferredRecords records, string machine, ElementsRead elements)
    {
        var (known, planned) = (records.Known, meter.Planned);
        var inForce = meter
            .Meter.Elements!.Where(element => elements == ElementsRead.All || (elements == ElementsRead.Fitted && element == meter.Element))
            .Select(element => new Series(machine, planned.Meter!, element!.Name!, planned.Setting ?? "", planned.Product!))
            .Select(series => (Name: series.Element, Value: known.ValueInForce(series, EnteredInstant.Now)))
            .Where(one => one.Value is not null)
            .ToDictionary(one => one.Name, one => one.Value!);
        var lot = inForce.GetValueOrDefault(planned.Element!)?.Lot;
        return meter with { InForce = inForce, LotBefore = lot is null || lot == planned.Lot ? null : known.Lot(lot) };
    }
}

/// <summary>What one meter puts down, with the records that the plan names for it.</summary>
/// <param name="Index">Its place in the plan.</param>
/// <param name="Planned">The plan.</param>
/// <param name="Product">The product.</param>
/// <param name="Lot">The lot, where one is named.</param>
/// <param name="Meter">The meter.</param>
/// <param name="Element">The element that is fitted.</param>
internal sealed record PlannedMeter(
    int Index,
    MeterOfFieldPlan Planned,
    ProductRequest Product,
    LotRequest? Lot,
    MeterOfMachine Meter,
    ElementOfMachine Element
)
{
    /// <summary>What is in force with this product and setting, by the name of the element.</summary>
    public IReadOnlyDictionary<string, AdoptedValue> InForce { get; init; } = new Dictionary<string, AdoptedValue>();

    /// <summary>The lot behind the value in force of the element that is fitted, where it is another one.</summary>
    public LotRequest? LotBefore { get; init; }

    /// <summary>Bulk density of what is in the tank.</summary>
    public BulkDensityQuantity? BulkDensity => Lot?.BulkDensity ?? Product.BulkDensity;
}

/// <summary>Of which elements of its meters a plan needs the values in force.</summary>
internal enum ElementsRead
{
    /// <summary>Of none: only rates are asked for.</summary>
    None,

    /// <summary>Of those that are fitted.</summary>
    Fitted,

    /// <summary>Of all.</summary>
    All,
}
