using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>A value in force, the lot behind it, and the lot that goes into the tank now.</summary>
[CheckedBy(typeof(NewLotRequestValidator))]
public sealed class NewLotRequest
{
    /// <summary>The mass per revolution that the controller uses now.</summary>
    [Needed, Measured]
    public ValueOfLotBefore? ValueInForce { get; init; }

    /// <summary>The lot with which that value was found.</summary>
    [Needed]
    public LotOfChange? LotBefore { get; init; }

    /// <summary>The lot that goes into the tank now.</summary>
    [Needed]
    public LotOfChange? NewLot { get; init; }

    /// <summary>Both are the same lot: another delivery of it, or it was treated meanwhile. Default false.</summary>
    public bool? SameLot { get; init; }

    /// <summary>
    /// Rate by mass that was sown with the lot before; with both kernel masses it gives the rate for the same seeds. Give this or
    /// seedsPerArea.
    /// </summary>
    [Measured]
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>Pure seeds per area that are to stay the same.</summary>
    [Measured]
    public CountPerAreaQuantity? SeedsPerArea { get; init; }

    /// <summary>Field emergence: plants per seed that can germinate. With the germination of the new lot it gives plants.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Emergence { get; init; }

    /// <summary>Area to be sown with the new lot; gives mass and cost.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }

    /// <summary>Price of the new lot.</summary>
    public Price? Price { get; init; }

    /// <summary>Largest acceptable deviation of the value in force from the truth.</summary>
    [Default(typeof(NewLotDefaults), nameof(NewLotDefaults.Tolerance))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? Tolerance { get; init; }

    /// <summary>Standard deviation of the mass per revolution from day to day.</summary>
    [Default(typeof(NewLotDefaults), nameof(NewLotDefaults.DayToDay))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? DayToDay { get; init; }

    /// <summary>How far the fill of the element changes from lot to lot beyond density, as the scale of a t distribution.</summary>
    [Default(typeof(NewLotDefaults), nameof(NewLotDefaults.FillOfLots))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? FillChangeOfLot { get; init; }

    /// <summary>The same with another treatment.</summary>
    [Default(typeof(NewLotDefaults), nameof(NewLotDefaults.FillOfTreatments))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? FillChangeOfTreatment { get; init; }

    /// <summary>
    /// How far bulk density changes where it is not known of both lots, as the scale of a t distribution. Default 7 % with a new lot;
    /// judgement, 3 degrees of freedom, no published source. Default 2 % with another delivery of the same lot; judgement, 3 degrees of
    /// freedom, no published source.
    /// </summary>
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? UnknownDensityChange { get; init; }
}

/// <summary>A mass per revolution in force.</summary>
public sealed class ValueOfLotBefore : MassPerRevolutionQuantity
{
    /// <summary>Its standard uncertainty, relative.</summary>
    [Default(typeof(NewLotDefaults), nameof(NewLotDefaults.ValueUncertainty))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>What is known of a lot. The more, the surer the answer.</summary>
public sealed class LotOfChange
{
    /// <summary>What the owner calls it.</summary>
    [Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>Mass of a thousand kernels as sown, treatment included.</summary>
    [Measured]
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Bulk density as it lies in the tank.</summary>
    [Measured]
    public DensityOfLot? BulkDensity { get; init; }

    /// <summary>Share of the pure seeds that germinate.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Germination { get; init; }

    /// <summary>Share of the mass that is pure seed.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.Purity))]
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Purity { get; init; }

    /// <summary>
    /// Treatment in the owner's words; leave it out for untreated seed. Two lots have the same treatment when the words are the same, or
    /// both have none.
    /// </summary>
    [Text(500)]
    public string? Treatment { get; init; }
}

/// <summary>A bulk density of a lot.</summary>
public sealed class DensityOfLot : BulkDensityQuantity
{
    /// <summary>Its standard uncertainty, relative.</summary>
    [Default(typeof(NewLotDefaults), nameof(NewLotDefaults.DensityUncertainty))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? RelativeUncertainty { get; init; }
}
