using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>A planned catch test.</summary>
public sealed record CatchPlanResult
{
    /// <summary>One sentence that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>The meters in the order given.</summary>
    public required IReadOnlyList<MeterPlan> Meters { get; init; }

    /// <summary>No simulated speed suits all meters, so they run one after the other, each at its own.</summary>
    public required bool OneAfterTheOther { get; init; }

    /// <summary>Containers that stand under the meters at the same time.</summary>
    public required int ContainersNeeded { get; init; }

    /// <summary>When to stop which meter, first stop first; on a shared shaft all at once.</summary>
    public required IReadOnlyList<Stop> StopOrder { get; init; }

    /// <summary>What to do, as a set with dependencies rather than a fixed sequence.</summary>
    public required IReadOnlyList<PlanStep> Steps { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>One meter of the plan.</summary>
public sealed record MeterPlan
{
    /// <summary>The meter.</summary>
    public required PlannedMeter Meter { get; init; }

    /// <summary>Net mass to catch.</summary>
    public required Mass CatchMass { get; init; }

    /// <summary>Revolutions to turn: whole, except on a shared shaft.</summary>
    public required Revolutions Revolutions { get; init; }

    /// <summary>
    /// Ground speed that the controller is made to believe in: the planned one where it does, else the nearest that does.
    /// </summary>
    public required Speed SimulatedSpeed { get; init; }

    /// <summary>Run time at the simulated ground speed.</summary>
    public required Duration RunTime { get; init; }

    /// <summary>Meter speed at the simulated ground speed.</summary>
    public required RotationalSpeed MeterSpeed { get; init; }

    /// <summary>Meter speeds at the ends of the working range; empty when it is not stated.</summary>
    public required IReadOnlyList<SpeedCheck> SpeedChecks { get; init; }

    /// <summary>The meter speed is inside its limits.</summary>
    public required bool WithinLimits { get; init; }

    /// <summary>Share of the container's volume that the catch fills; null without volume or density.</summary>
    public Ratio? ContainerFill { get; init; }

    /// <summary>Area the catch would have covered: m / R.</summary>
    public required Area SimulatedArea { get; init; }

    /// <summary>Catches that reach the wanted precision with the stated probability; null when no number of catches reaches it.</summary>
    public int? Catches { get; init; }

    /// <summary>Relative expanded uncertainty to expect of that many catches; of one catch when none reach it.</summary>
    public required Ratio ExpectedPrecision { get; init; }

    /// <summary>
    /// Volume of a container that would allow a run long enough; null where another bound acts, or the run is long enough.
    /// </summary>
    public Volume? ContainerForLongRun { get; init; }

    /// <summary>Catches that run as long together as one should; null where one is long enough.</summary>
    public int? CatchesForLongRun { get; init; }

    /// <summary>The bound that acts.</summary>
    public required CatchBound LimitedBy { get; init; }

    /// <summary>Every bound, acting or not.</summary>
    public required IReadOnlyList<CatchBound> Bounds { get; init; }
}

/// <summary>Meter speed at another ground speed.</summary>
/// <param name="GroundSpeed">The ground speed.</param>
/// <param name="MeterSpeed">The meter speed there.</param>
/// <param name="Within">Inside the limits.</param>
public sealed record SpeedCheck(Speed GroundSpeed, RotationalSpeed MeterSpeed, bool Within);

/// <summary>One stop of a common run.</summary>
/// <param name="Meters">Meters that stop then; more than one when their stops are closer than ten seconds.</param>
/// <param name="Times">Time of each from the common start.</param>
public sealed record Stop(IReadOnlyList<string> Meters, IReadOnlyList<Duration> Times);

/// <summary>One step; it may begin when every step it comes after is done.</summary>
/// <param name="Id">Identifier within the plan.</param>
/// <param name="After">Steps that come before.</param>
/// <param name="Detail">What to do.</param>
/// <param name="Meter">The meter it is about, if one.</param>
public sealed record PlanStep(string Id, IReadOnlyList<string> After, Sentence Detail, string? Meter = null);
