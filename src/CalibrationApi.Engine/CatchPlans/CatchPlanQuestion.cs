using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>How the meters of a common run are driven.</summary>
public enum MeterDrive
{
    /// <summary>Each meter has its own drive and may stop at its own time.</summary>
    Separate,

    /// <summary>One shaft drives all meters: they stop together.</summary>
    SharedShaft,
}

/// <summary>A catch test to be planned: several meters in one run.</summary>
public sealed record CatchPlanQuestion
{
    /// <summary>
    /// Ground speed the machine is to be made to believe in during the run; another one is planned with where it does not do
    /// (<see cref="RunSpeed"/>).
    /// </summary>
    public required Speed GroundSpeed { get; init; }

    /// <summary>Lowest ground speed in the field; null when the range is not stated.</summary>
    public Speed? LowestWorkingSpeed { get; init; }

    /// <summary>Highest ground speed in the field; null when the range is not stated.</summary>
    public Speed? HighestWorkingSpeed { get; init; }

    /// <summary>How the meters are driven.</summary>
    public MeterDrive Drive { get; init; }

    /// <summary>The scale that will weigh the catches.</summary>
    public required Scale Scale { get; init; }

    /// <summary>How the empty container will be taken into account.</summary>
    public TareReading TareReading { get; init; }

    /// <summary>Smallest step of the revolution count, in revolutions; null takes the default.</summary>
    public Revolutions? CounterResolution { get; init; }

    /// <summary>Where a count begins within its smallest step.</summary>
    public CountStart CountStart { get; init; }

    /// <summary>Container under every meter that does not name its own; null when unknown.</summary>
    public Container? Container { get; init; }

    /// <summary>Mass one person lifts, container included; null takes the default.</summary>
    public Mass? LiftLimit { get; init; }

    /// <summary>Longest run of one catch; null takes the default.</summary>
    public Duration? LongestRun { get; init; }

    /// <summary>
    /// Shortest run of one catch, not above the longest; null takes the default, or the longest run where that is shorter.
    /// </summary>
    public Duration? ShortestRun { get; init; }

    /// <summary>Containers at hand that several meters share; null when unknown.</summary>
    public int? ContainersAtHand { get; init; }

    /// <summary>Wanted expanded uncertainty, relative; null takes the default.</summary>
    public double? WantedPrecision { get; init; }

    /// <summary>Probability with which the number of catches reaches it; null takes the default.</summary>
    public double? PrecisionProbability { get; init; }

    /// <summary>Coverage probability of that uncertainty; null takes the default.</summary>
    public double? CoverageProbability { get; init; }

    /// <summary>The meters, at least one.</summary>
    public required IReadOnlyList<PlannedMeter> Meters { get; init; }

    /// <summary>What the test disturbs on this machine, in the owner's words.</summary>
    public IReadOnlyList<DisturbedPoint> DisturbedPoints { get; init; } = [];

    internal double LongestRunSeconds => LongestRun?.Seconds ?? CatchPlanDefaults.LongestRunSeconds;

    internal double ShortestRunSeconds => ShortestRun?.Seconds ?? Math.Min(CatchPlanDefaults.ShortestRunSeconds, LongestRunSeconds);
}

/// <summary>A container for one catch.</summary>
/// <param name="Volume">Volume; null when unknown, then it bounds nothing.</param>
/// <param name="Tare">Its own mass.</param>
/// <param name="Fill">Share of the volume that may be filled; null takes the default.</param>
public sealed record Container(Volume? Volume, Mass Tare, double? Fill = null);

/// <summary>One meter of a common run.</summary>
public sealed record PlannedMeter
{
    /// <summary>What the owner calls the meter.</summary>
    public required string Name { get; init; }

    /// <summary>How sentences call it: a name that is only a number would read like one more quantity.</summary>
    internal string Called => Name.All(char.IsAsciiDigit) ? $"meter {Name}" : Name;

    /// <summary>What it meters.</summary>
    public required string Product { get; init; }

    /// <summary>Width it covers W.</summary>
    public required Length CoveredWidth { get; init; }

    /// <summary>Target rate R, above 0.</summary>
    public required MassPerArea TargetRate { get; init; }

    /// <summary>Bulk density; needed where a container of known volume bounds the catch.</summary>
    public BulkDensity? BulkDensity { get; init; }

    /// <summary>What the fitted element can hold of the product; null when it is not known.</summary>
    public ElementContent? Element { get; init; }

    /// <summary>Mass per revolution to plan with, and how sure it is.</summary>
    public required ReferenceValue Value { get; init; }

    /// <summary>Limits of the meter speed.</summary>
    public MeterSpeedLimits SpeedLimits { get; init; } = MeterSpeedLimits.None;

    /// <summary>Its own container; null takes that of the plan.</summary>
    public Container? Container { get; init; }

    /// <summary>How the product flows; null when not stated.</summary>
    public ProductMaterial? Material { get; init; }

    /// <summary>Repeatability of one catch, relative; null takes the default.</summary>
    public double? Repeatability { get; init; }

    /// <summary>Pockets that discharge in one revolution, where known.</summary>
    public int? PocketsPerRevolution { get; init; }
}

/// <summary>Something the test disturbs and that has to be put back, in the owner's words.</summary>
/// <param name="Name">What it is, for example a cover or a hose.</param>
/// <param name="ToOpen">What is done to it before the catch.</param>
/// <param name="ToRestore">How it is put back.</param>
public sealed record DisturbedPoint(string Name, string? ToOpen, string? ToRestore);
