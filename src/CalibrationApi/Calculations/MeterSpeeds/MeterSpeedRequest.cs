using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>What is asked of a meter, and the metering elements it can be fitted with.</summary>
[CheckedBy(typeof(MeterSpeedRequestValidator))]
public sealed class MeterSpeedRequest
{
    /// <summary>Width that the meter covers.</summary>
    [Needed, Measured(0.01, 200, "m")]
    public LengthQuantity? CoveredWidth { get; init; }

    /// <summary>
    /// Rates to be put down: one, or those of all zones of a variable-rate field. Zero means off and is allowed beside others.
    /// </summary>
    [Needed, Items(1, 100), Measured(0, 100_000, "kg/ha")]
    public IReadOnlyList<MassPerAreaQuantity?>? Rates { get; init; }

    /// <summary>Ground speeds: one, or the slowest and the fastest of the field.</summary>
    [Needed, Items(1, 20), Measured(0.01, 100, "km/h")]
    public IReadOnlyList<SpeedQuantity?>? GroundSpeeds { get; init; }

    /// <summary>Bulk density of the product; with the displacement of an element it says what its mass per revolution can be.</summary>
    [Measured]
    public BulkDensityQuantity? BulkDensity { get; init; }

    /// <summary>The metering elements that the machine has for this meter.</summary>
    [Needed, Items(1, 50)]
    public IReadOnlyList<ElementOfMeter?>? Elements { get; init; }

    /// <summary>Limits of the meter speed for elements that do not name their own.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>
    /// Width that the machine works, for the area per hour. Default the covered width: judgement, no overlap between passes.
    /// </summary>
    [Measured(0.01, 200, "m")]
    public LengthQuantity? WorkingWidth { get; init; }

    /// <summary>Share of the time spent working at that width and speed.</summary>
    [Default(typeof(MeterSpeedEvaluation), nameof(MeterSpeedEvaluation.FieldEfficiency))]
    [Measured(1, 100, "%")]
    public RatioQuantity? FieldEfficiency { get; init; }

    /// <summary>Turns and refills, from which the field efficiency follows at each ground speed. Give this or fieldEfficiency.</summary>
    public StopsInField? Stops { get; init; }

    /// <summary>Area to be worked; gives the time in the field.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }

    /// <summary>Time in the field on one day; gives the area of a day.</summary>
    [Measured]
    public TimeQuantity? TimePerDay { get; init; }

    /// <summary>The air stream that carries this product and others.</summary>
    public FanOfMachine? Fan { get; init; }
}

/// <summary>What keeps the machine from working. turnTime goes with runLength, refillTime with areaPerFill.</summary>
[CheckedBy(typeof(StopsInFieldValidator))]
public sealed class StopsInField
{
    /// <summary>Time of one turn at the end of a run.</summary>
    [Measured(0, 1, "h", ExcludesLeast = true)]
    public TimeQuantity? TurnTime { get; init; }

    /// <summary>Length of a run.</summary>
    [Measured(1, 100_000, "m")]
    public LengthQuantity? RunLength { get; init; }

    /// <summary>Time of one refill, from stop to start.</summary>
    [Measured]
    public TimeQuantity? RefillTime { get; init; }

    /// <summary>Area that a fill covers.</summary>
    [Measured(0.001, 100_000, "ha")]
    public AreaQuantity? AreaPerFill { get; init; }
}

/// <summary>
/// One fan with the products that its air carries. All limits are yours, from the manual of the machine: the service knows no fan.
/// </summary>
public sealed class FanOfMachine
{
    /// <summary>Planned fan speed.</summary>
    [Measured]
    public RotationQuantity? FanSpeed { get; init; }

    /// <summary>Planned air flow; gives the product in each cubic metre of air.</summary>
    [Measured]
    public VolumePerTimeQuantity? AirFlow { get; init; }

    /// <summary>The products that share the air.</summary>
    [Needed, Items(1, 20)]
    public IReadOnlyList<ProductInAir?>? Products { get; init; }
}

/// <summary>A product in the air stream.</summary>
[CheckedBy(typeof(ProductInAirValidator))]
public sealed class ProductInAir
{
    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>Its rates; those of the question when left out.</summary>
    [Items(1, 100), Measured(0, 100_000, "kg/ha")]
    public IReadOnlyList<MassPerAreaQuantity?>? Rates { get; init; }

    /// <summary>Width that its meter covers; that of the question when left out.</summary>
    [Measured(0.01, 200, "m")]
    public LengthQuantity? CoveredWidth { get; init; }

    /// <summary>Fan speeds that this product may have.</summary>
    public RotationLimits? FanSpeedLimits { get; init; }

    /// <summary>Air flows that this product may have.</summary>
    public AirFlowLimits? AirFlowLimits { get; init; }
}

/// <summary>Air flows between which a product is carried and not damaged.</summary>
[CheckedBy(typeof(AirFlowLimitsValidator))]
public sealed class AirFlowLimits
{
    /// <summary>Least.</summary>
    [Measured]
    public VolumePerTimeQuantity? Minimum { get; init; }

    /// <summary>Most.</summary>
    [Measured]
    public VolumePerTimeQuantity? Maximum { get; init; }
}

/// <summary>A metering element with one product. Exactly one of massPerRevolution and measuredAt.</summary>
[CheckedBy(typeof(ElementOfMeterValidator))]
public sealed class ElementOfMeter
{
    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>Mass per revolution, the same at every speed. Give this or measuredAt.</summary>
    [Measured]
    public MassPerRevolutionQuantity? MassPerRevolution { get; init; }

    /// <summary>Mass per revolution measured at several meter speeds; straight lines are drawn between them.</summary>
    [Items(1, 50)]
    public IReadOnlyList<DeliveryPoint?>? MeasuredAt { get; init; }

    /// <summary>Limits of its speed.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>
    /// How it carries product, and with it which volume its displacement means: <c>closed-pockets</c> (their volume; no more can come out),
    /// <c>open-flutes</c> (their volume; a layer beyond them is dragged along) or an <c>auger</c> (the volume between shaft and edge of the
    /// flight over one turn). Default not known.
    /// </summary>
    [Word(typeof(ElementKind))]
    public string? Kind { get; init; }

    /// <summary>
    /// Volume that one revolution displaces; with the bulkDensity of the question it says what the mass per revolution can be.
    /// </summary>
    [Measured(0, 1, "m3", ExcludesLeast = true)]
    public VolumeQuantity? DisplacementPerRevolution { get; init; }

    /// <summary>
    /// Pockets or flutes that discharge one after the other in one revolution; gives the spacing of discharges on the ground.
    /// </summary>
    [Whole(1, 10_000)]
    public int? PocketsPerRevolution { get; init; }
}

/// <summary>A mass per revolution at one meter speed.</summary>
public sealed class DeliveryPoint
{
    /// <summary>The meter speed.</summary>
    [Needed, Measured]
    public RotationQuantity? MeterSpeed { get; init; }

    /// <summary>The mass per revolution there.</summary>
    [Needed, Measured]
    public MassPerRevolutionQuantity? MassPerRevolution { get; init; }
}
