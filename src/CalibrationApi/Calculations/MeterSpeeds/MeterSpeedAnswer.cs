using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Meter speeds, windows and the order of the elements.</summary>
public sealed class MeterSpeedAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// <c>fits</c> when the best element serves every rate at every ground speed, otherwise <c>none-fits</c>; <c>fan-unsuited</c> when an
    /// element does, but the fan has to be set otherwise.
    /// </summary>
    [KnownWords(typeof(MeterSpeedVerdict))]
    public required string Verdict { get; init; }

    /// <summary>The elements, best first.</summary>
    public required IReadOnlyList<ElementAnswer> Elements { get; init; }

    /// <summary>Field capacity at each ground speed.</summary>
    public required IReadOnlyList<CapacityAnswer> Capacity { get; init; }

    /// <summary>The air stream; absent when none was asked about.</summary>
    public FanAnswer? Fan { get; init; }

    /// <summary>What can hurt somebody who sets the fan; empty without one.</summary>
    [SentCodes(typeof(MeterSpeedCodes), nameof(MeterSpeedCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(MeterSpeedCodes), nameof(MeterSpeedCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>One element.</summary>
public sealed class ElementAnswer
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>It serves every rate at every ground speed.</summary>
    public required bool Fits { get; init; }

    /// <summary>
    /// Room to the nearer limit of its speed: 25 % means that the nearer limit is a factor of 1.25 away; negative when it does not fit;
    /// absent without limits.
    /// </summary>
    public RatioQuantity? Room { get; init; }

    /// <summary>Lowest and highest rate at lowest and highest ground speed.</summary>
    public required IReadOnlyList<CornerAnswer> Corners { get; init; }

    /// <summary>For each rate above zero, the ground speeds inside the limits.</summary>
    public required IReadOnlyList<SpeedWindowAnswer> SpeedWindows { get; init; }

    /// <summary>For each ground speed, the rates inside the limits.</summary>
    public required IReadOnlyList<RateWindowAnswer> RateWindows { get; init; }
}

/// <summary>One combination of rate and ground speed.</summary>
public sealed class CornerAnswer
{
    /// <summary>The rate.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>The ground speed.</summary>
    public required SpeedQuantity GroundSpeed { get; init; }

    /// <summary>The meter speed that it takes.</summary>
    public required RotationQuantity MeterSpeed { get; init; }

    /// <summary>Inside the limits.</summary>
    public required bool WithinLimits { get; init; }

    /// <summary>Ground between two discharges; absent when the pockets are unknown.</summary>
    public LengthQuantity? DischargeSpacing { get; init; }
}

/// <summary>The ground speeds at which a rate can be put down.</summary>
public sealed class SpeedWindowAnswer
{
    /// <summary>The rate.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>Slowest; absent without a lower limit.</summary>
    public SpeedQuantity? Minimum { get; init; }

    /// <summary>Fastest; absent without an upper limit.</summary>
    public SpeedQuantity? Maximum { get; init; }
}

/// <summary>The rates that can be put down at a ground speed.</summary>
public sealed class RateWindowAnswer
{
    /// <summary>The ground speed.</summary>
    public required SpeedQuantity GroundSpeed { get; init; }

    /// <summary>Lowest; absent without a lower limit.</summary>
    public MassPerAreaQuantity? Minimum { get; init; }

    /// <summary>Highest; absent without an upper limit.</summary>
    public MassPerAreaQuantity? Maximum { get; init; }
}

/// <summary>Area worked at one ground speed.</summary>
public sealed class CapacityAnswer
{
    /// <summary>The ground speed.</summary>
    public required SpeedQuantity GroundSpeed { get; init; }

    /// <summary>Area worked in one hour.</summary>
    public required AreaQuantity AreaPerHour { get; init; }

    /// <summary>Share of the time in the field that is spent working.</summary>
    public required RatioQuantity FieldEfficiency { get; init; }

    /// <summary>Area worked in a day of the stated time; absent without one.</summary>
    public AreaQuantity? AreaPerDay { get; init; }

    /// <summary>Time in the field for the stated area; absent without one.</summary>
    public TimeQuantity? TimeForArea { get; init; }
}
