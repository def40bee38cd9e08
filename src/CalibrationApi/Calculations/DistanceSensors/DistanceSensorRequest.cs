using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>Runs over a measured course, and what the controller holds.</summary>
[CheckedBy(typeof(DistanceSensorRequestValidator))]
public sealed class DistanceSensorRequest
{
    internal const int MostRuns = 50;

    /// <summary>The runs at work, on the ground that is seeded: one or more, each with pulses or each with wheel turns.</summary>
    [Needed, Items(1, MostRuns)]
    public IReadOnlyList<RunOfSensor?>? Runs { get; init; }

    /// <summary>Runs to compare skid with, unloaded or on a hard road, counted like the others.</summary>
    [Items(0, MostRuns)]
    public IReadOnlyList<RunOfSensor?>? ReferenceRuns { get; init; }

    /// <summary>Sensor pulses in one turn of the wheel. With it, pulses and the rolling circumference follow from one another.</summary>
    [Measured]
    public PulsesPerRevolutionQuantity? PulsesPerTurn { get; init; }

    /// <summary>
    /// Smallest step to which a distance between two marks is known: how closely the machine is lined up with each of them.
    /// </summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.DistanceResolution))]
    [Measured(0, 10, "m")]
    public LengthQuantity? DistanceResolution { get; init; }

    /// <summary>Smallest step of a count of wheel turns; pulses are counted to one.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.TurnResolution))]
    [Measured(0, 10, "rev")]
    public RevolutionsQuantity? TurnResolution { get; init; }

    /// <summary>Limit of the error of the tape, relative. It is common to all runs, so more runs do not average it out.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.TapeLimit))]
    [Measured(0, 20, "%")]
    public RatioQuantity? TapeLimit { get; init; }

    /// <summary>Scatter of one run (standard deviation), counting and marking removed.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.Repeatability))]
    [Measured(0.01, 30, "%")]
    public RatioQuantity? Repeatability { get; init; }

    /// <summary>
    /// Degrees of freedom of that scatter. Default 4: judgement, no published source; the stated deviation is then uncertain by about 35 %
    /// (JCGM 100:2008, G.4.2).
    /// </summary>
    [Number(1, 1000)]
    public double? RepeatabilityDegreesOfFreedom { get; init; }

    /// <summary>The number that the controller holds now.</summary>
    public ValueOfSensor? ValueInForce { get; init; }

    /// <summary>How the controller takes the number; gives what to type in.</summary>
    public EntryOfSensor? ControllerEntry { get; init; }

    /// <summary>The width of the machine; gives overlap, and what a wrong width does to the rate.</summary>
    public WidthOfMachine? Width { get; init; }

    /// <summary>
    /// What turns the meters: <c>rate-controlled</c>, a drive that a controller sets by this sensor, or <c>ground-driven</c>, a wheel on
    /// the ground, so that a wrong value spoils the count of distance and area but not the rate. Default rate-controlled: common practice.
    /// </summary>
    [Word(typeof(MeterDrive))]
    public string? MeterDrive { get; init; }

    /// <summary>The rate to be applied; gives the effect of wrong numbers.</summary>
    [Measured]
    public MassPerAreaQuantity? TargetRate { get; init; }

    /// <summary>The area still to be seeded; gives mass and cost.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }

    /// <summary>Price of the product; gives the cost of wrong numbers.</summary>
    public Price? Price { get; init; }

    /// <summary>Largest acceptable deviation of the value in force from the truth.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.Tolerance))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? Tolerance { get; init; }

    /// <summary>Largest acceptable expanded uncertainty of the result.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.WantedPrecision))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? WantedPrecision { get; init; }

    /// <summary>Change from which a second run has to confirm.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.SecondRunChange))]
    [Measured(0.1, 100, "%")]
    public RatioQuantity? SecondRunChange { get; init; }
}

/// <summary>One run: the distance, and either pulses or turns.</summary>
public sealed class RunOfSensor
{
    /// <summary>Distance driven, as measured with a tape.</summary>
    [Needed, Measured(1, 10_000, "m")]
    public LengthQuantity? Distance { get; init; }

    /// <summary>Sensor pulses over it, a plain count.</summary>
    [Number(1, 1_000_000_000)]
    public double? Pulses { get; init; }

    /// <summary>Turns of the wheel over it, in place of pulses.</summary>
    [Measured(0.1, 1_000_000, "rev")]
    public RevolutionsQuantity? Turns { get; init; }

    /// <summary>
    /// Standard uncertainty of this distance, beside the limit of the tape. Default as the distance resolution says: common practice, for
    /// two marks.
    /// </summary>
    [Measured(0, 100, "m")]
    public LengthQuantity? DistanceUncertainty { get; init; }

    /// <summary>Which way it was driven: <c>there</c> or <c>back</c>. With runs of both kinds the two ways are compared.</summary>
    [Word(typeof(RunDirection))]
    public string? Direction { get; init; }

    /// <summary>Time taken for the distance at an even speed; gives the ground speed.</summary>
    [Measured]
    public TimeQuantity? Time { get; init; }
}

/// <summary>
/// A number as a controller holds it: exactly one of pulsesPerDistance, pulses with their distance, distancePerPulse and
/// wheelCircumference.
/// </summary>
[CheckedBy(typeof(ValueOfSensorValidator))]
public sealed class ValueOfSensor
{
    /// <summary>Pulses per distance.</summary>
    [Measured]
    public PulsesPerDistanceQuantity? PulsesPerDistance { get; init; }

    /// <summary>Pulses as the controller shows them, a plain count over <c>distance</c>.</summary>
    [Number(1, 1_000_000_000)]
    public double? Pulses { get; init; }

    /// <summary>Distance over which the controller counts these pulses, for example 150 m; goes with pulses.</summary>
    [Measured(1, 10_000, "m")]
    public LengthQuantity? Distance { get; init; }

    /// <summary>Distance driven from one pulse to the next.</summary>
    [Measured(0, 100, "m", ExcludesLeast = true)]
    public LengthQuantity? DistancePerPulse { get; init; }

    /// <summary>Rolling circumference of the wheel.</summary>
    [Measured(0, 100, "m", ExcludesLeast = true)]
    public LengthQuantity? WheelCircumference { get; init; }
}

/// <summary>How a controller takes the number.</summary>
[CheckedBy(typeof(EntryOfSensorValidator))]
public sealed class EntryOfSensor
{
    /// <summary>The form: <c>pulses-per-distance</c>, <c>distance-per-pulse</c> or <c>wheel-circumference</c>.</summary>
    [Needed, Word(typeof(SensorForm))]
    public string? Form { get; init; }

    /// <summary>Distance over which the controller counts pulses; only with that form.</summary>
    [Default(typeof(DistanceSensorDefaults), nameof(DistanceSensorDefaults.EntryDistance))]
    [Measured(1, 10_000, "m")]
    public LengthQuantity? Distance { get; init; }

    /// <summary>Unit of the number; needed for the two forms that are lengths.</summary>
    [Word(typeof(UnitWords), nameof(UnitWords.OfLength))]
    public string? Unit { get; init; }

    /// <summary>Decimals that the controller takes.</summary>
    [Needed, Whole(0, SensorEntry.MostDecimals)]
    public int? Decimals { get; init; }
}

/// <summary>The width of a machine: built, driven and typed in.</summary>
[CheckedBy(typeof(WidthOfMachineValidator))]
public sealed class WidthOfMachine
{
    /// <summary>Number of openers.</summary>
    [Needed, Whole(1, 1000)]
    public int? Openers { get; init; }

    /// <summary>Distance between neighbouring openers.</summary>
    [Needed, Measured(0.01, 10, "m")]
    public LengthQuantity? Spacing { get; init; }

    /// <summary>
    /// Measured distance from a mark on the machine to the same mark in the next pass. Default openers times spacing: judgement, no overlap
    /// and no gap between passes.
    /// </summary>
    [Measured(0.01, 200, "m")]
    public LengthQuantity? PassToPass { get; init; }

    /// <summary>Width typed into the controller. Default openers times spacing: common practice.</summary>
    [Measured(0.01, 200, "m")]
    public LengthQuantity? InForce { get; init; }
}
