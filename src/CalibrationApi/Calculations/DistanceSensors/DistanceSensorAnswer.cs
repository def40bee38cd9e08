using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>What runs over a measured course say of a distance sensor.</summary>
public sealed class DistanceSensorAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// What to do: <c>investigate</c> (something is wrong with the runs), <c>repeat</c> (not sure enough yet), <c>keep</c> (the value in
    /// force is good enough) or <c>adopt</c> (type in the new value).
    /// </summary>
    [KnownWords(typeof(Verdict))]
    public required string Verdict { get; init; }

    /// <summary>How many more runs a repeat takes; absent for other verdicts and when no number of runs would help.</summary>
    public int? MoreRuns { get; init; }

    /// <summary>Why.</summary>
    [SentCodes(typeof(DistanceSensorCodes), nameof(DistanceSensorCodes.Reasons))]
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }

    /// <summary>Pulses per distance with their uncertainty; absent when turns were counted and the pulses of a turn are unknown.</summary>
    public MeasuredPulsesPerDistance? PulsesPerDistance { get; init; }

    /// <summary>Pulses per metre or foot.</summary>
    public CountPerLengthQuantity? PulsesPerLength { get; init; }

    /// <summary>Distance driven from one pulse to the next.</summary>
    public LengthQuantity? DistancePerPulse { get; init; }

    /// <summary>
    /// Rolling circumference of the wheel under the load and on the ground of the runs; absent when its turns are unknown.
    /// </summary>
    public MeasuredLength? RollingCircumference { get; init; }

    /// <summary>All pulses over all distances: can be redone on paper.</summary>
    public PulsesPerDistanceQuantity? TotalPulsesOverTotalDistance { get; init; }

    /// <summary>Where the uncertainty comes from: standard uncertainties, relative; their squares add up.</summary>
    public required IReadOnlyList<RunUncertaintyPart> UncertaintyParts { get; init; }

    /// <summary>Every run in the order given.</summary>
    public required IReadOnlyList<RunAnswer> Runs { get; init; }

    /// <summary>How the runs agree.</summary>
    public required RunAgreementAnswer Agreement { get; init; }

    /// <summary>Runs like these that the wanted precision takes in all; absent when no practical number reaches it.</summary>
    public int? RunsForWantedPrecision { get; init; }

    /// <summary>
    /// Skid against the reference runs, 1 - (turns per distance at work) / (turns per distance on the reference): positive when the wheel
    /// turns less often at work (it skids), negative when it turns more often (it slips). The sign is that of <c>skid</c> of a drive wheel.
    /// </summary>
    public MeasuredRatio? Skid { get; init; }

    /// <summary>Width of the machine, as asked.</summary>
    public WidthAnswer? Width { get; init; }

    /// <summary>
    /// Pulses per distance found over those in force, less 1, with its interval: positive when the sensor gives more than the controller
    /// believes. Absent without a value in force.
    /// </summary>
    public MeasuredRatio? Change { get; init; }

    /// <summary>Probability that the truth is within the tolerance of the value in force.</summary>
    public double? ProbabilityWithinTolerance { get; init; }

    /// <summary>What to type in; given with the verdict adopt when the controller's form is known.</summary>
    public SensorEntryAnswer? Enter { get; init; }

    /// <summary>What happens if the numbers in the controller stay; absent when none of them is known.</summary>
    public DistanceEffectAnswer? EffectIfNumbersStay { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed beyond the verdict.</summary>
    [SentCodes(typeof(DistanceSensorCodes), nameof(DistanceSensorCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What can hurt somebody on the course.</summary>
    [SentCodes(typeof(DistanceSensorCodes), nameof(DistanceSensorCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>One part of the uncertainty.</summary>
public sealed class RunUncertaintyPart
{
    /// <summary>Where it comes from: <c>runs</c> (scatter, counting, marking) or <c>tape</c> (common to all).</summary>
    [KnownWords("runs", "tape")]
    public required string Source { get; init; }

    /// <summary>Standard uncertainty, relative.</summary>
    public required RatioQuantity Relative { get; init; }
}

/// <summary>One run as evaluated.</summary>
public sealed class RunAnswer
{
    /// <summary>Distance driven.</summary>
    public required LengthQuantity Distance { get; init; }

    /// <summary>Pulses per distance of this run alone.</summary>
    public PulsesPerDistanceQuantity? PulsesPerDistance { get; init; }

    /// <summary>Distance per turn of the wheel of this run alone.</summary>
    public LengthQuantity? DistancePerTurn { get; init; }

    /// <summary>Its counts per distance against those of all runs together.</summary>
    public required RatioQuantity Deviation { get; init; }

    /// <summary>Distance over time; absent without a time.</summary>
    public SpeedQuantity? GroundSpeed { get; init; }
}

/// <summary>How runs agree.</summary>
public sealed class RunAgreementAnswer
{
    /// <summary>Standard deviation of the runs, relative; zero for one run.</summary>
    public required RatioQuantity Spread { get; init; }

    /// <summary>Sum of squared deviations over the variances expected of them.</summary>
    public required double Q { get; init; }

    /// <summary>How often chance alone gives at least this Q.</summary>
    public required double QProbability { get; init; }

    /// <summary>Counts per distance there over those back, less 1; absent unless both ways were driven.</summary>
    public RatioQuantity? DirectionDifference { get; init; }

    /// <summary>No test speaks against the runs; all tests together err in 5 of 100 honest cases.</summary>
    public required bool Agree { get; init; }
}

/// <summary>The width of a machine.</summary>
public sealed class WidthAnswer
{
    /// <summary>Openers times spacing.</summary>
    public required LengthQuantity Nominal { get; init; }

    /// <summary>Width that each pass covers anew.</summary>
    public required LengthQuantity Effective { get; init; }

    /// <summary>Width that the controller reckons with.</summary>
    public required LengthQuantity InForce { get; init; }

    /// <summary>Nominal less effective width: positive where passes overlap, negative where strips are left.</summary>
    public required LengthQuantity Overlap { get; init; }

    /// <summary>Overlap as a share of the width covered anew: product that a field takes beyond its area.</summary>
    public required RatioQuantity OverlapShare { get; init; }
}

/// <summary>A number for the controller.</summary>
public sealed class SensorEntryAnswer
{
    /// <summary>
    /// The form in which the controller takes it: <c>pulses-per-distance</c>, <c>distance-per-pulse</c> or <c>wheel-circumference</c>.
    /// </summary>
    [KnownWords(typeof(SensorForm))]
    public required string Form { get; init; }

    /// <summary>
    /// The number to type in, already rounded to the controller's decimals: a count of pulses over <c>distance</c>, or a length in
    /// <c>unit</c>.
    /// </summary>
    public required double Value { get; init; }

    /// <summary>Its unit; absent for a count of pulses.</summary>
    public string? Unit { get; init; }

    /// <summary>Distance over which the pulses are counted; absent for a length.</summary>
    public LengthQuantity? Distance { get; init; }

    /// <summary>
    /// Relative error of the pulses per distance that the rounding causes: positive when the controller then counts too little distance.
    /// </summary>
    public required RatioQuantity RoundingError { get; init; }
}

/// <summary>The effect of wrong numbers.</summary>
public sealed class DistanceEffectAnswer
{
    /// <summary>Rate applied over rate set, less 1, with the interval of the runs: positive when the field gets too much.</summary>
    public required MeasuredRatio RateChange { get; init; }

    /// <summary>Distance counted over distance driven; absent without a value in force.</summary>
    public RatioQuantity? DistanceCounted { get; init; }

    /// <summary>Width in the controller over width covered anew; absent without a width.</summary>
    public RatioQuantity? WidthCounted { get; init; }

    /// <summary>Area counted over area covered: the product of the two. Without a value in force the distance counts as right.</summary>
    public required RatioQuantity AreaCounted { get; init; }

    /// <summary>The rate that is really applied; absent without a target rate.</summary>
    public MassPerAreaQuantity? AppliedRate { get; init; }

    /// <summary>Product too much over the stated area; negative when too little.</summary>
    public MassQuantity? MassOverArea { get; init; }

    /// <summary>Money for that product; negative when the crop gets too little.</summary>
    public Money? TotalCost { get; init; }
}
