using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>A planned catch test.</summary>
public sealed class CatchPlanAnswer
{
    /// <summary>The plan in one sentence that can be shown as it is.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>The meters in the order given.</summary>
    public required IReadOnlyList<MeterPlanAnswer> Meters { get; init; }

    /// <summary>No simulated speed keeps all meters within their limits, so they run one after the other, each at its own.</summary>
    public required bool OneAfterTheOther { get; init; }

    /// <summary>Containers that stand under the meters at the same time.</summary>
    public required int ContainersNeeded { get; init; }

    /// <summary>
    /// When to stop which meter, first stop first; stops closer than ten seconds share a group. Where the meters run one after the other,
    /// each from its own start.
    /// </summary>
    public required IReadOnlyList<StopAnswer> StopOrder { get; init; }

    /// <summary>What to do, as a set: a step may begin when every step it comes after is done.</summary>
    public required IReadOnlyList<StepAnswer> Steps { get; init; }

    /// <summary>What can hurt somebody; show them with the steps.</summary>
    [SentCodes(typeof(CatchPlanCodes), nameof(CatchPlanCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(CatchPlanCodes), nameof(CatchPlanCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>One meter of the plan.</summary>
public sealed class MeterPlanAnswer
{
    /// <summary>The meter.</summary>
    public required string Meter { get; init; }

    /// <summary>What it meters.</summary>
    public required string Product { get; init; }

    /// <summary>Net mass to catch.</summary>
    public required MassQuantity CatchMass { get; init; }

    /// <summary>Revolutions to turn; whole, except on a shared shaft.</summary>
    public required RevolutionsQuantity Revolutions { get; init; }

    /// <summary>
    /// Ground speed to simulate: the one of the question where it does, else the nearest that keeps the meter within its limits and the run
    /// long enough.
    /// </summary>
    public required SpeedQuantity SimulatedSpeed { get; init; }

    /// <summary>Run time at the simulated ground speed.</summary>
    public required TimeQuantity RunTime { get; init; }

    /// <summary>Meter speed at the simulated ground speed.</summary>
    public required RotationQuantity MeterSpeed { get; init; }

    /// <summary>The meter speed is inside its limits.</summary>
    public required bool WithinLimits { get; init; }

    /// <summary>Meter speeds at the ends of the working range; absent when it was not stated.</summary>
    public IReadOnlyList<SpeedCheckAnswer>? SpeedChecks { get; init; }

    /// <summary>Share of the container's volume that the catch fills; absent without volume.</summary>
    public RatioQuantity? ContainerFill { get; init; }

    /// <summary>Area that the catch would have covered.</summary>
    public required AreaQuantity SimulatedArea { get; init; }

    /// <summary>Catches for the wanted precision; absent when no number of catches reaches it.</summary>
    public int? Catches { get; init; }

    /// <summary>Expanded uncertainty to expect of that many catches, relative; of one catch when none reach the wanted one.</summary>
    public required RatioQuantity ExpectedPrecision { get; init; }

    /// <summary>
    /// Volume of a container that would allow the shortest run; absent where the run is long enough or another bound acts.
    /// </summary>
    public VolumeQuantity? ContainerForLongRun { get; init; }

    /// <summary>Catches that together run as long as the shortest run; absent where one catch does.</summary>
    public int? CatchesForLongRun { get; init; }

    /// <summary>The bound that acts.</summary>
    public required BoundAnswer LimitedBy { get; init; }

    /// <summary>Every bound, acting or not.</summary>
    public required IReadOnlyList<BoundAnswer> Bounds { get; init; }
}

/// <summary>One bound on a catch.</summary>
public sealed class BoundAnswer
{
    /// <summary>What bounds it.</summary>
    [KnownWords(typeof(CatchBoundKind))]
    public required string Bound { get; init; }

    /// <summary>Largest net mass that it allows; for the container with its overflow margin.</summary>
    public required MassQuantity Mass { get; init; }
}

/// <summary>Meter speed at another ground speed.</summary>
public sealed class SpeedCheckAnswer
{
    /// <summary>The ground speed.</summary>
    public required SpeedQuantity GroundSpeed { get; init; }

    /// <summary>The meter speed there.</summary>
    public required RotationQuantity MeterSpeed { get; init; }

    /// <summary>Inside the limits.</summary>
    public required bool WithinLimits { get; init; }
}

/// <summary>The stop of one meter.</summary>
public sealed class StopAnswer
{
    /// <summary>The meter.</summary>
    public required string Meter { get; init; }

    /// <summary>Time from the common start.</summary>
    public required TimeQuantity Time { get; init; }

    /// <summary>Number of the group, from 1; stops closer than ten seconds have the same.</summary>
    public required int Group { get; init; }
}

/// <summary>One step.</summary>
public sealed class StepAnswer
{
    /// <summary>Identifier within the plan.</summary>
    public required string Id { get; init; }

    /// <summary>Steps that come before.</summary>
    public required IReadOnlyList<string> After { get; init; }

    /// <summary>What to do.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }

    /// <summary>The meter it is about, if one.</summary>
    public string? Meter { get; init; }
}
