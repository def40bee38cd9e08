using CalibrationApi.CatchPlans;
using CalibrationApi.Contract;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Quantities;

namespace CalibrationApi.MeterSpeeds;

/// <summary>What is asked of a meter, and the metering elements it can be fitted with.</summary>
public sealed class MeterSpeedRequest
{
    /// <summary>Width that the meter covers.</summary>
    public LengthQuantity? CoveredWidth { get; init; }

    /// <summary>Rates to be put down: one, or those of all zones of a variable-rate field. Zero means off and is allowed beside others.</summary>
    public IReadOnlyList<MassPerAreaQuantity?>? Rates { get; init; }

    /// <summary>Ground speeds: one, or the slowest and the fastest of the field.</summary>
    public IReadOnlyList<SpeedQuantity?>? GroundSpeeds { get; init; }

    /// <summary>The metering elements that the machine has for this meter.</summary>
    public IReadOnlyList<ElementOfMeter?>? Elements { get; init; }

    /// <summary>Limits of the meter speed for elements that do not name their own.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>Width that the machine works, for the area per hour. Default the covered width: judgement, no overlap between passes.</summary>
    public LengthQuantity? WorkingWidth { get; init; }

    /// <summary>Share of the time spent working at that width and speed.</summary>
    [Default(typeof(MeterSpeedEvaluation), nameof(MeterSpeedEvaluation.FieldEfficiency))]
    public RatioQuantity? FieldEfficiency { get; init; }
}

/// <summary>A metering element with one product. Exactly one of massPerRevolution and measuredAt.</summary>
public sealed class ElementOfMeter
{
    /// <summary>What the owner calls it.</summary>
    public string? Name { get; init; }

    /// <summary>Mass per revolution, the same at every speed. Give this or measuredAt.</summary>
    public MassPerRevolutionQuantity? MassPerRevolution { get; init; }

    /// <summary>Mass per revolution measured at several meter speeds; straight lines are drawn between them.</summary>
    public IReadOnlyList<DeliveryPoint?>? MeasuredAt { get; init; }

    /// <summary>Limits of its speed.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>Pockets or flutes that discharge one after the other in one revolution; gives the spacing of discharges on the ground.</summary>
    public int? PocketsPerRevolution { get; init; }
}

/// <summary>A mass per revolution at one meter speed.</summary>
public sealed class DeliveryPoint
{
    /// <summary>The meter speed.</summary>
    public RotationQuantity? MeterSpeed { get; init; }

    /// <summary>The mass per revolution there.</summary>
    public MassPerRevolutionQuantity? MassPerRevolution { get; init; }
}
