using CalibrationApi.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Products;
using CalibrationApi.Quantities;
using CalibrationApi.SeedingRates;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
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
    /// <summary>Rate to be put down; null while it cannot be told.</summary>
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>Where the rate comes from.</summary>
    public RateOrigin RateFrom { get; init; }

    /// <summary>How the rate follows from a stand.</summary>
    public SeedingRateAnswer? SeedingRate { get; init; }

    /// <summary>Bulk density of what is in the tank.</summary>
    public BulkDensityQuantity? BulkDensity => Lot?.BulkDensity ?? Product.BulkDensity;

    /// <summary>The member of the plan's meter, as the path that errors take.</summary>
    public string Path(string member) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{nameof(PlanRequest.Meters)}[{Index}].{member}");

    /// <summary>What is in force for an element of this meter with this product and setting.</summary>
    public AdoptionRecord? InForce(SqliteConnection connection, Workspace workspace, string machine, string element) =>
        AdoptionStore.InForce(connection, workspace, new Series(machine, Planned.Meter!, element, Planned.Setting ?? "", Planned.Product!), EnteredInstant.Now);

    /// <summary>An adopted value as calculations take it, with its uncertainty where the test behind it stands.</summary>
    public static ReferenceOfTest Reference(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption)
    {
        var unit = UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } entered ? entered : UnitTable.Get("kg/rev");
        var basis = adoption.Test is { } test ? CatchTestStore.Find(connection, workspace, test) : null;
        return new ReferenceOfTest
        {
            Value = AnswerUnits.Shown(unit.FromCanonical(adoption.Value)),
            Unit = unit.Symbol,
            // A test that turned out wrong says nothing of how well the number is known.
            RelativeUncertainty = basis is null || SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, basis.Id) is not null ? null : AnswerUnits.Percent(basis.Random),
        };
    }
}

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
