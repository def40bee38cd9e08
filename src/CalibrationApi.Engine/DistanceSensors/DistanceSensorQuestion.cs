using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>Runs over a measured course, and what the controller holds.</summary>
public sealed record DistanceSensorQuestion
{
    /// <summary>The runs at work, at least one.</summary>
    public required IReadOnlyList<MeasuredRun> Runs { get; init; }

    /// <summary>Runs to compare skid with: unloaded, or on a hard road; empty for none.</summary>
    public IReadOnlyList<MeasuredRun> ReferenceRuns { get; init; } = [];

    /// <summary>What all of them counted.</summary>
    public CountedThing Counted { get; init; }

    /// <summary>Pulses in one turn of the wheel; null when unknown.</summary>
    public PulsesPerRevolution? PulsesPerTurn { get; init; }

    /// <summary>Smallest step of a distance; null takes the default.</summary>
    public Length? DistanceResolution { get; init; }

    /// <summary>Smallest step of a count of turns; null takes the default.</summary>
    public Revolutions? TurnResolution { get; init; }

    /// <summary>Limit of the error of the tape, relative; null takes the default.</summary>
    public double? TapeLimit { get; init; }

    /// <summary>Scatter of one run, relative; null takes the default.</summary>
    public double? Repeatability { get; init; }

    /// <summary>Degrees of freedom of that scatter.</summary>
    public double? RepeatabilityDegreesOfFreedom { get; init; }

    /// <summary>The number that the controller holds; null when there is none yet.</summary>
    public SensorValue? ValueInForce { get; init; }

    /// <summary>How the controller takes it; null when not stated.</summary>
    public SensorEntry? ControllerEntry { get; init; }

    /// <summary>Width of the machine; null when not stated.</summary>
    public WorkingWidth? Width { get; init; }

    /// <summary>What turns the meters; null takes <see cref="MeterDrive.RateControlled"/>.</summary>
    public MeterDrive? MeterDrive { get; init; }

    /// <summary>The rate to be applied; gives the effect of wrong numbers.</summary>
    public MassPerArea? TargetRate { get; init; }

    /// <summary>The area still to be seeded; gives mass and cost.</summary>
    public Area? Area { get; init; }

    /// <summary>Price of the product in money per kilogram.</summary>
    public double? PricePerKilogram { get; init; }

    /// <summary>Largest acceptable deviation of the value in force, relative; null takes the default.</summary>
    public double? Tolerance { get; init; }

    /// <summary>Largest acceptable expanded uncertainty, relative; null takes the default.</summary>
    public double? WantedPrecision { get; init; }

    /// <summary>Change from which a second run has to confirm, relative; null takes the default.</summary>
    public double? SecondRunChange { get; init; }
}

/// <summary>What turns the meters of a machine.</summary>
public enum MeterDrive
{
    /// <summary>A drive that a controller sets by this sensor.</summary>
    RateControlled,

    /// <summary>A wheel on the ground; the sensor counts distance and area only.</summary>
    GroundDriven,
}
