using CalibrationApi.Engine.NewLots;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>What another lot or treatment changes.</summary>
public sealed class NewLotAnswer
{
    /// <summary>The outcome in a few sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// When to make a catch test: <c>test-now</c> (before sowing this lot), <c>test-at-next-fill</c> or <c>no-test-needed</c> (not because
    /// of this lot).
    /// </summary>
    [KnownWords(typeof(LotVerdict))]
    public required string Verdict { get; init; }

    /// <summary>Why.</summary>
    [SentCodes(typeof(NewLotCodes), nameof(NewLotCodes.Reasons))]
    public required IReadOnlyList<LotReason> Reasons { get; init; }

    /// <summary>
    /// The mass per revolution expected of the new lot, with its interval: the value in force times the ratio of the bulk densities.
    /// </summary>
    public required MeasuredMassPerRevolution PredictedMassPerRevolution { get; init; }

    /// <summary>How much that is above the value in force; negative when below.</summary>
    public required RatioQuantity PredictedChange { get; init; }

    /// <summary>Where its uncertainty comes from: relative, their squares add up.</summary>
    public required IReadOnlyList<LotUncertainty> UncertaintyParts { get; init; }

    /// <summary>Probability that the value in force is within the tolerance of the truth.</summary>
    public required double ProbabilityWithinTolerance { get; init; }

    /// <summary>Probability that the truth is within the tolerance of the predicted value, were that typed in.</summary>
    public required double ProbabilityWithinToleranceOfPrediction { get; init; }

    /// <summary>What a catch plan takes as startValue.</summary>
    public required StartValueOfLot StartValue { get; init; }

    /// <summary>The rate for the new lot; absent when nothing says how many seeds there were.</summary>
    public RateOfLot? Rate { get; init; }

    /// <summary>What is sown when the rate is set anew, where it can be, and the value in force stays; absent without a rate.</summary>
    public EffectOfLot? EffectIfValueStays { get; init; }

    /// <summary>What is sown when neither rate nor value is touched; absent when the rate cannot be computed.</summary>
    public EffectOfLot? EffectIfNothingIsChanged { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed beyond the verdict.</summary>
    [SentCodes(typeof(NewLotCodes), nameof(NewLotCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What can hurt a person. The product label goes first.</summary>
    [SentCodes(typeof(NewLotCodes), nameof(NewLotCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>A reason for when to test.</summary>
public sealed class LotReason
{
    /// <summary>Stable code. Which ones can come stands at the list that holds it; <c>GET /v1/codes</c> explains each.</summary>
    public required string Code { get; init; }

    /// <summary>A sentence that can be shown as it is.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }
}

/// <summary>One part of the uncertainty of a prediction.</summary>
public sealed class LotUncertainty
{
    /// <summary>Where it comes from.</summary>
    [KnownWords(typeof(LotUncertaintySource))]
    public required string Source { get; init; }

    /// <summary>
    /// Standard uncertainty, relative; of unknown-density and the two fills the scale of a t distribution with 3 degrees of freedom.
    /// </summary>
    public required RatioQuantity Relative { get; init; }
}

/// <summary>A value to plan a catch with.</summary>
public sealed class StartValueOfLot : MassPerRevolutionQuantity
{
    /// <summary>Its standard uncertainty, relative.</summary>
    public required RatioQuantity RelativeUncertainty { get; init; }
}

/// <summary>Rates for the new lot.</summary>
public sealed class RateOfLot
{
    /// <summary>Pure seeds per area, as with the lot before.</summary>
    public required CountPerAreaQuantity SeedsPerArea { get; init; }

    /// <summary>Mass per area that holds them now; absent without the kernel mass of the new lot.</summary>
    public MassPerAreaQuantity? ForSameSeeds { get; init; }

    /// <summary>Mass per area that brings up as many plants as before; absent unless both germinations are known.</summary>
    public MassPerAreaQuantity? ForSameStand { get; init; }
}

/// <summary>What is sown when something stays as it was.</summary>
public sealed class EffectOfLot
{
    /// <summary>The rate that the controller is told.</summary>
    public required MassPerAreaQuantity SetRate { get; init; }

    /// <summary>The rate that falls.</summary>
    public required MassPerAreaQuantity AppliedRate { get; init; }

    /// <summary>
    /// How much that is above the rate for the same seeds, or above the set rate where that is unknown; negative when below. The interval
    /// is that of the predicted mass per revolution.
    /// </summary>
    public required MeasuredRatio RateDeviation { get; init; }

    /// <summary>Pure seeds per area; absent without kernel masses.</summary>
    public CountPerAreaQuantity? SeedsPerArea { get; init; }

    /// <summary>How much more seeds than before; negative for fewer.</summary>
    public RatioQuantity? SeedsDeviation { get; init; }

    /// <summary>Plants per area; absent without emergence and the germination of the new lot.</summary>
    public CountPerAreaQuantity? Plants { get; init; }

    /// <summary>How much more plants than before; absent unless both germinations are known.</summary>
    public RatioQuantity? PlantsDeviation { get; init; }

    /// <summary>Seed too much over the area, negative when too little; absent without an area.</summary>
    public MassQuantity? MassOverArea { get; init; }

    /// <summary>Cost of it; absent without an area and a price.</summary>
    public Money? TotalCost { get; init; }
}
