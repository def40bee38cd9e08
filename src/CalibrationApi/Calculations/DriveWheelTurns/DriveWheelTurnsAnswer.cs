using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>Turns of a drive wheel, expected catches, and what turn tests say.</summary>
public sealed class DriveWheelTurnsAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// What to do about the setting: <c>investigate</c> (the rate is implausible, or an outlet gave nothing), <c>repeat</c> (not sure
    /// enough, test again), <c>keep</c> (within tolerance of the target) or <c>correct</c> (take the corrected setting, then test again);
    /// <c>untested</c> without a turn test, <c>no-target</c> without a target rate.
    /// </summary>
    [KnownWords(typeof(DriveWheelVerdict))]
    public required string Verdict { get; init; }

    /// <summary>Why; empty without a turn test or a target rate.</summary>
    [SentCodes(typeof(DriveWheelCodes), nameof(DriveWheelCodes.Reasons))]
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }

    /// <summary>Rolling circumference in use.</summary>
    public required LengthQuantity Circumference { get; init; }

    /// <summary>
    /// Where it comes from: <c>circumference</c> (stated), <c>measured-run</c> (distance over turns) or <c>diameter</c> (reckoned, and too
    /// long under load).
    /// </summary>
    [KnownWords(typeof(WheelOrigin))]
    public required string CircumferenceFrom { get; init; }

    /// <summary>Ground that the machine covers in one turn of the wheel in the field.</summary>
    public required AreaQuantity AreaPerTurn { get; init; }

    /// <summary>For each area asked for, in that order.</summary>
    public required IReadOnlyList<TurnsAnswer> Turns { get; init; }

    /// <summary>Mass that one turn of the wheel has to deliver over the whole width for the target rate.</summary>
    public MassPerRevolutionQuantity? NeededPerTurn { get; init; }

    /// <summary>The same for one revolution of the meter.</summary>
    public MassPerRevolutionQuantity? NeededPerMeterRevolution { get; init; }

    /// <summary>
    /// Meter revolutions per turn of the drive wheel that the target rate needs with the stated mass per revolution of the meter: the gear
    /// ratio to look for.
    /// </summary>
    public RatioQuantity? NeededMeterRevolutionsPerTurn { get; init; }

    /// <summary>Rate that the stated mass per revolution of the meter gives.</summary>
    public MassPerAreaQuantity? ExpectedRate { get; init; }

    /// <summary>Rate that the turn tests give, with its uncertainty.</summary>
    public MeasuredMassPerArea? Rate { get; init; }

    /// <summary>Every turn test in the order given.</summary>
    public required IReadOnlyList<TurnTestAnswer> TurnTests { get; init; }

    /// <summary>The rate against its target.</summary>
    public RateAcceptanceAnswer? Acceptance { get; init; }

    /// <summary>What would bring the rate to its target if it were proportional to the setting: a first step, test again.</summary>
    public CorrectionAnswer? Correction { get; init; }

    /// <summary>Outlets that were weighed one by one, over all tests; empty when they were not.</summary>
    public required IReadOnlyList<OutletAnswer> Outlets { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed beyond the verdict.</summary>
    [SentCodes(typeof(DriveWheelCodes), nameof(DriveWheelCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What can hurt somebody at the machine.</summary>
    [SentCodes(typeof(DriveWheelCodes), nameof(DriveWheelCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>Turns for one area.</summary>
public sealed class TurnsAnswer
{
    /// <summary>The area.</summary>
    public required AreaQuantity Area { get; init; }

    /// <summary>Distance that the machine drives over it.</summary>
    public required LengthQuantity Distance { get; init; }

    /// <summary>Turns of the drive wheel.</summary>
    public required RevolutionsQuantity Turns { get; init; }

    /// <summary>The nearest whole number of turns, which is easier to count.</summary>
    public required RevolutionsQuantity WholeTurns { get; init; }

    /// <summary>Revolutions of the meter over the area.</summary>
    public RevolutionsQuantity? MeterRevolutions { get; init; }

    /// <summary>Mass from all outlets over the area at the target rate.</summary>
    public MassQuantity? CatchInAll { get; init; }

    /// <summary>Mass from each outlet.</summary>
    public MassQuantity? CatchPerOutlet { get; init; }

    /// <summary>Mass from all outlets in the whole turns.</summary>
    public MassQuantity? CatchOfWholeTurns { get; init; }

    /// <summary>Mass from each outlet in the whole turns.</summary>
    public MassQuantity? CatchPerOutletOfWholeTurns { get; init; }
}

/// <summary>One turn test as evaluated.</summary>
public sealed class TurnTestAnswer
{
    /// <summary>Turns of the drive wheel.</summary>
    public required RevolutionsQuantity Turns { get; init; }

    /// <summary>Area that the machine would have worked meanwhile.</summary>
    public required AreaQuantity Area { get; init; }

    /// <summary>Mass from all outlets, those not caught included.</summary>
    public required MassQuantity Metered { get; init; }

    /// <summary>Rate of this test alone.</summary>
    public required MassPerAreaQuantity Rate { get; init; }
}

/// <summary>A rate against its target.</summary>
public sealed class RateAcceptanceAnswer
{
    /// <summary>Rate over target, less 1, with its interval: positive when too much.</summary>
    public required MeasuredRatio Deviation { get; init; }

    /// <summary>The rate found is within the tolerance of the target.</summary>
    public required bool WithinTolerance { get; init; }

    /// <summary>Probability that the true rate is.</summary>
    public required double ProbabilityWithinTolerance { get; init; }
}

/// <summary>A correction in proportion.</summary>
public sealed class CorrectionAnswer
{
    /// <summary>Target over rate found: what to multiply the setting by.</summary>
    public required RatioQuantity Factor { get; init; }

    /// <summary>The setting times that factor, as a plain number on the machine's own marks; absent when no setting was stated.</summary>
    public double? Setting { get; init; }

    /// <summary>
    /// Meter revolutions per turn times that factor, for a machine that is set by its gears; absent when no gearing was stated.
    /// </summary>
    public RatioQuantity? MeterRevolutionsPerTurn { get; init; }
}

/// <summary>One outlet over all tests.</summary>
public sealed class OutletAnswer
{
    /// <summary>Net mass caught.</summary>
    public required MassQuantity Caught { get; init; }

    /// <summary>Deviation from the mean of the outlets.</summary>
    public required RatioQuantity Deviation { get; init; }

    /// <summary>The deviation is within the tolerance.</summary>
    public required bool WithinTolerance { get; init; }
}
