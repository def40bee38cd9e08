using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.StandRisks;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.StandRisks;

/// <summary>The rate for a minimum stand, what its margin costs, and how a rate of your own does.</summary>
public sealed class StandRiskAnswer
{
    /// <summary>The outcome in a few sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>Probability with which the minimum stand has to be reached.</summary>
    public required double Probability { get; init; }

    /// <summary>The rate that reaches the minimum stand with that probability; absent when no sensible rate does.</summary>
    public RateAnswer? Needed { get; init; }

    /// <summary>The rate that would just do in the mean of all seasons.</summary>
    public required RateAnswer AtMean { get; init; }

    /// <summary>What the needed rate is more than the rate at the mean; absent without a needed rate.</summary>
    public MarginAnswer? Margin { get; init; }

    /// <summary>The rate of the question; absent without one.</summary>
    public RateAnswer? Given { get; init; }

    /// <summary>What makes the stand uncertain before it is sown: relative standard deviations.</summary>
    public required IReadOnlyList<RiskPart> UncertaintyParts { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(StandRiskCodes), nameof(StandRiskCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>A rate and the stand that comes of it.</summary>
public sealed class RateAnswer
{
    /// <summary>Pure seeds per area.</summary>
    public required CountPerAreaQuantity SeedsPerArea { get; init; }

    /// <summary>Mass per area; absent without a kernel mass.</summary>
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>The stand in the mean of all seasons.</summary>
    public required CountPerAreaQuantity ExpectedStand { get; init; }

    /// <summary>The stand that is reached with the wanted probability.</summary>
    public required CountPerAreaQuantity StandReached { get; init; }

    /// <summary>Probability that the minimum stand is reached.</summary>
    public required double ProbabilityReached { get; init; }
}

/// <summary>The margin of a rate over the one at the mean.</summary>
public sealed class MarginAnswer
{
    /// <summary>The margin over the rate at the mean.</summary>
    public required RatioQuantity Relative { get; init; }

    /// <summary>Extra seeds per area.</summary>
    public required CountPerAreaQuantity SeedsPerArea { get; init; }

    /// <summary>Extra mass per area; absent without a kernel mass.</summary>
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>What the extra seed costs on one unit of area; absent without price and kernel mass.</summary>
    public CostPerUnit? CostPerArea { get; init; }

    /// <summary>What the extra seed costs on the whole area; absent without it.</summary>
    public Money? TotalCost { get; init; }
}

/// <summary>One part of the risk.</summary>
public sealed class RiskPart
{
    /// <summary>
    /// Where it comes from: <c>share-of-seeds</c> (emergence or survival), <c>germination-test</c>, <c>kernel-mass</c> or <c>metering</c>.
    /// </summary>
    [KnownWords(typeof(RiskSource))]
    public required string Source { get; init; }

    /// <summary>Standard deviation, relative.</summary>
    public required RatioQuantity Relative { get; init; }
}
