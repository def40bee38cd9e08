using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Products;
using CalibrationApi.Quantities;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;
using CalibrationApi.Storing;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plans;

/// <summary>What one meter puts down, with the records that the plan names for it.</summary>
/// <param name="Index">Its place in the plan.</param>
/// <param name="Planned">The plan.</param>
/// <param name="Product">The product.</param>
/// <param name="Lot">The lot, where one is named.</param>
/// <param name="Meter">The meter.</param>
/// <param name="Element">The element that is fitted.</param>
internal sealed record PlannedMeter(int Index, MeterOfFieldPlan Planned, ProductRequest Product, LotRequest? Lot, MeterOfMachine Meter, ElementOfMachine Element)
{
    private static readonly RequestValidator<VolumeCheckRequest> VolumeRules = new(TimeProvider.System);

    /// <summary>Rate to be put down; null while it cannot be told.</summary>
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>The meter stands still: nothing is needed of its product.</summary>
    public bool IsOff => Rate is { Value: 0 };

    /// <summary>Where the rate comes from.</summary>
    public RateOrigin RateFrom { get; init; }

    /// <summary>How the rate follows from a stand.</summary>
    public SeedingRateAnswer? SeedingRate { get; init; }

    /// <summary>Bulk density of what is in the tank.</summary>
    public BulkDensityQuantity? BulkDensity => Lot?.BulkDensity ?? Product.BulkDensity;

    /// <summary>The member of the plan's meter, as the path that errors take.</summary>
    public string Path(string member) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{nameof(PlanRequest.Meters)}[{Index}].{member}");

    /// <summary>The share of a working width that this meter covers, at most 1; all of it where the width is not known.</summary>
    public double ShareOf(LengthQuantity? workingWidth) =>
        workingWidth is null ? 1 : Math.Min(1, Meter.CoveredWidth!.Canonical() / workingWidth.Canonical());

    /// <summary>
    /// The mass per revolution of an element of this meter with this product and setting: the value in force, else for the element
    /// fitted the plan's start value, else what its volume and the bulk density let expect. Null when nothing is known.
    /// </summary>
    public KnownValue? ValueOf(ElementOfMachine element, SqliteConnection connection, Workspace workspace, string machine)
    {
        if (InForce(connection, workspace, machine, element.Name!) is { } adopted)
            return new KnownValue(Reference(adopted), ValueOrigin.ValueInForce);
        if (element.Name == Planned.Element && Planned.StartValue is { } start)
            return new KnownValue(start, ValueOrigin.StartValue);
        if (element.DisplacementPerRevolution is not { } volume || BulkDensity is not { } density)
            return null;
        var (check, _) = Calculation.Ask(
            new VolumeCheckRequest
            {
                Element = element.Name,
                Displacement = new DisplacementOfElement { Value = volume.Value, Unit = volume.Unit },
                BulkDensity = new DensityOfProduct { Value = density.Value, Unit = density.Unit },
            },
            VolumeRules,
            VolumeCheckCalculation.Declaration.Ask,
            units: null);
        return check is null ? null : new KnownValue(check.StartValue, ValueOrigin.Displacement);
    }

    /// <summary>What is open where nothing is known of the element fitted.</summary>
    public ProblemError WithoutValue() => new()
    {
        Pointer = RequestFilter.Pointer(Path(nameof(Planned.StartValue))),
        Code = ErrorCode.ValueMissing,
        Detail = "No value is in force for this meter, element, setting and product, and none can be predicted. Adopt a value, add a startValue to the plan, or give the element its displacement and the lot or product its bulk density.",
    };

    /// <summary>What is in force for an element of this meter with this product and setting.</summary>
    public AdoptedValue? InForce(SqliteConnection connection, Workspace workspace, string machine, string element) =>
        AdoptionStore.ValueInForce(connection, workspace, new Series(machine, Planned.Meter!, element, Planned.Setting ?? "", Planned.Product!), EnteredInstant.Now);

    /// <summary>An adopted value as calculations take it, with its uncertainty where the test behind it stands.</summary>
    public static ReferenceOfTest Reference(AdoptedValue adopted)
    {
        var unit = UnitTable.Find(adopted.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } entered ? entered : UnitTable.Get("kg/rev");
        return new ReferenceOfTest
        {
            Value = AnswerUnits.Shown(unit.FromCanonical(adopted.Value)),
            Unit = unit.Symbol,
            // A test that turned out wrong says nothing of how well the number is known.
            RelativeUncertainty = adopted.Random is { } random ? AnswerUnits.Percent(random) : null,
        };
    }
}

/// <summary>A mass per revolution, and where it comes from.</summary>
internal sealed record KnownValue(ReferenceOfTest Value, ValueOrigin From);

/// <summary>Where the rate of a planned meter comes from.</summary>
internal enum RateOrigin
{
    /// <summary>It stands in the plan.</summary>
    TargetRate,

    /// <summary>It follows from the stand that is wanted.</summary>
    Stand,

    /// <summary>It follows from the nutrients that are wanted.</summary>
    Nutrients,
}
