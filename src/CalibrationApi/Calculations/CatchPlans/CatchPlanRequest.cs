using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>A catch test to be planned: one or several meters in one run.</summary>
[CheckedBy(typeof(CatchPlanRequestValidator))]
public sealed class CatchPlanRequest
{
    internal const int MostMeters = 64;

    /// <summary>
    /// Ground speed that the controller is to be made to believe in during the run; usually the planned one. Where it takes a meter beyond
    /// its limits or leaves too short a run, the answer plans with another.
    /// </summary>
    [Needed, Measured]
    public SpeedQuantity? GroundSpeed { get; init; }

    /// <summary>Ground speeds between which the field will be worked; the meter speeds at both ends are checked.</summary>
    public SpeedRange? WorkingSpeeds { get; init; }

    /// <summary>
    /// How the meters are driven: <c>separate</c> drives that may stop one by one (the default), or a <c>shared-shaft</c>.
    /// </summary>
    [Word(typeof(MeterDrive))]
    public string? Drive { get; init; }

    /// <summary>Largest acceptable expanded uncertainty of the result.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.WantedPrecision))]
    [Measured(0.1, 50, "%")]
    public RatioQuantity? WantedPrecision { get; init; }

    /// <summary>Probability with which the number of catches reaches it.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.PrecisionProbability))]
    [Measured(50, 99, "%")]
    public RatioQuantity? PrecisionProbability { get; init; }

    /// <summary>
    /// Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM
    /// 100:2008.
    /// </summary>
    [Number(0.5, 0.9999)]
    public double? CoverageProbability { get; init; }

    /// <summary>Longest run of one catch.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.LongestRun))]
    [Measured]
    public TimeQuantity? MaximumRunTime { get; init; }

    /// <summary>Shortest run of one catch, not above the longest. A drive takes some seconds to settle.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.ShortestRun))]
    [Measured]
    public TimeQuantity? MinimumRunTime { get; init; }

    /// <summary>How many of the container are at hand. With fewer than meters that share it, the answer says so.</summary>
    [Whole(1, 1000)]
    public int? ContainersAtHand { get; init; }

    /// <summary>Mass that one person lifts, container included.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.LiftLimit))]
    [Measured]
    public MassQuantity? LiftLimit { get; init; }

    /// <summary>The scale that will weigh the catches.</summary>
    [Needed]
    public ScaleOfTest? Scale { get; init; }

    /// <summary>How the empty container will be taken into account: <c>each</c> (the default), <c>shared</c> or <c>zeroed</c>.</summary>
    [Word(typeof(TareReading))]
    public string? TareReading { get; init; }

    /// <summary>Smallest step of the revolution counter.</summary>
    [Default(typeof(CatchTestDefaults), nameof(CatchTestDefaults.CounterResolution))]
    [Measured(0, 10, "rev")]
    public RevolutionsQuantity? CounterResolution { get; init; }

    /// <summary>Where a count begins within its smallest step: <c>free</c> (the default) or <c>on-edge</c> of the sensor.</summary>
    [Word(typeof(CountStart))]
    public string? CountStart { get; init; }

    /// <summary>The container under each meter that does not name its own.</summary>
    public ContainerOfPlan? Container { get; init; }

    /// <summary>The meters of the run.</summary>
    [Needed, Items(1, MostMeters)]
    public IReadOnlyList<MeterOfPlan?>? Meters { get; init; }

    /// <summary>What the test disturbs on this machine and has to be put back, in the owner's words.</summary>
    [Items(0, 200)]
    public IReadOnlyList<RestorePoint?>? RestorePoints { get; init; }
}

/// <summary>A range of ground speeds.</summary>
[CheckedBy(typeof(SpeedRangeValidator))]
public sealed class SpeedRange
{
    /// <summary>Slowest.</summary>
    [Needed, Measured]
    public SpeedQuantity? Minimum { get; init; }

    /// <summary>Fastest.</summary>
    [Needed, Measured]
    public SpeedQuantity? Maximum { get; init; }
}

/// <summary>A container for one catch.</summary>
public sealed class ContainerOfPlan
{
    /// <summary>Volume; without it the container bounds nothing. With it, every meter needs the bulk density of its product.</summary>
    [Measured(0, 10, "m3", ExcludesLeast = true)]
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Mass of the empty container.</summary>
    [Needed, Measured(0, 10, "t")]
    public MassQuantity? Tare { get; init; }

    /// <summary>Share of the volume that may be filled.</summary>
    [Default(typeof(CatchPlanDefaults), nameof(CatchPlanDefaults.Fill))]
    [Measured(1, 100, "%")]
    public RatioQuantity? Fill { get; init; }
}

/// <summary>One meter of a run. Exactly one of valueInForce and startValue.</summary>
[CheckedBy(typeof(MeterOfPlanValidator))]
public sealed class MeterOfPlan
{
    /// <summary>What the owner calls the meter.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Meter { get; init; }

    /// <summary>What it meters.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Product { get; init; }

    /// <summary>
    /// How the product flows: <c>free-flowing</c>, <c>small-seed</c> or <c>dusty</c>. Default: small-seed when even the longest run does
    /// not bring 6.8 kg, else free-flowing.
    /// </summary>
    [Word(typeof(ProductMaterial))]
    public string? Material { get; init; }

    /// <summary>Width that the meter covers.</summary>
    [Needed, Measured(0, 200, "m", ExcludesLeast = true)]
    public LengthQuantity? CoveredWidth { get; init; }

    /// <summary>Target rate; for a variable rate, the one to be tested at.</summary>
    [Needed, Measured]
    public MassPerAreaQuantity? TargetRate { get; init; }

    /// <summary>Bulk density of the product; needed where a container of known volume bounds the catch.</summary>
    [Measured]
    public BulkDensityQuantity? BulkDensity { get; init; }

    /// <summary>The metering element that is fitted; with the bulk density it says what the value to plan with can be.</summary>
    public FittedElement? FittedElement { get; init; }

    /// <summary>
    /// The mass per revolution that the controller uses now. Default of its <c>relativeUncertainty</c> 2 %: default of a value in force:
    /// judgement, no published source.
    /// </summary>
    [Measured]
    public ReferenceOfTest? ValueInForce { get; init; }

    /// <summary>
    /// A predicted mass per revolution where none is in force yet. Default of its <c>relativeUncertainty</c> 10 %: a predicted start value
    /// may be 20 % off; judgement, no published source.
    /// </summary>
    [Measured]
    public ReferenceOfTest? StartValue { get; init; }

    /// <summary>Limits of the meter speed.</summary>
    public RotationLimits? SpeedLimits { get; init; }

    /// <summary>Its own container.</summary>
    public ContainerOfPlan? Container { get; init; }

    /// <summary>
    /// Repeatability of one catch (standard deviation). Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49
    /// % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev; with 2.9 % in place of 0.93 % for dusty or caking
    /// products: judgement, 4 degrees of freedom, no published source.
    /// </summary>
    [Measured(0.01, 30, "%")]
    public RatioQuantity? Repeatability { get; init; }

    /// <summary>Pockets or flutes that discharge one after the other in one revolution, where known.</summary>
    [Whole(1, 10_000)]
    public int? PocketsPerRevolution { get; init; }
}

/// <summary>Meter speeds between which an element turns evenly and its drive keeps up.</summary>
[CheckedBy(typeof(RotationLimitsValidator))]
public sealed class RotationLimits
{
    /// <summary>Slowest.</summary>
    [Measured(0, 10_000, "rpm")]
    public RotationQuantity? Minimum { get; init; }

    /// <summary>Fastest.</summary>
    [Measured]
    public RotationQuantity? Maximum { get; init; }
}

/// <summary>Something that the test disturbs, in the owner's words.</summary>
public sealed class RestorePoint
{
    /// <summary>What it is, for example a cover or a hose.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>What is done to it before the catch.</summary>
    [Text(500)]
    public string? ToOpen { get; init; }

    /// <summary>How it is put back.</summary>
    [Text(500)]
    public string? ToRestore { get; init; }
}
