using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>A seeding rate with what it holds, brings up and costs.</summary>
public sealed class SeedingRateAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>Mass to sow per area, with what is no pure seed.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>Pure seeds per area.</summary>
    public required CountPerAreaQuantity SeedsPerArea { get; init; }

    /// <summary>Pure seeds per area that can germinate; absent without germination.</summary>
    public CountPerAreaQuantity? GerminableSeedsPerArea { get; init; }

    /// <summary>Plants expected per area; absent when germination and emergence, or survival, are not given.</summary>
    public ExpectedStand? Plants { get; init; }

    /// <summary>Pure seeds per length of row; absent without a row spacing.</summary>
    public CountPerLengthQuantity? SeedsPerRow { get; init; }

    /// <summary>Plants expected per length of row; absent without a row spacing or plants.</summary>
    public CountPerLengthQuantity? PlantsPerRow { get; init; }

    /// <summary>Mass of a thousand kernels.</summary>
    public required MassPerThousandQuantity ThousandKernelMass { get; init; }

    /// <summary>Seeds per mass of pure seed.</summary>
    public required CountPerMassQuantity SeedsPerMass { get; init; }

    /// <summary>Plants per pure seed: germination times emergence, or as given.</summary>
    public RatioQuantity? Survival { get; init; }

    /// <summary>Share of the mass that is pure and germinates: purity times germination; absent without germination.</summary>
    public RatioQuantity? PureLiveSeed { get; init; }

    /// <summary>Mass that holds one mass of pure live seed; always with the unit 1. Absent without germination.</summary>
    public RatioQuantity? MassForOnePureLive { get; init; }

    /// <summary>Seed for the whole area; absent without an area.</summary>
    public MassQuantity? MassOverArea { get; init; }

    /// <summary>Packages; absent when none is described.</summary>
    public PackagesAnswer? Packages { get; init; }

    /// <summary>What the seed costs; absent without a price.</summary>
    public SeedCostAnswer? Cost { get; init; }

    /// <summary>The rate from elsewhere, compared; absent when none was stated.</summary>
    public StatedRateAnswer? StatedRate { get; init; }

    /// <summary>
    /// Where the uncertainty of the stand comes from: standard uncertainties, relative; their squares add up. Empty when none was stated.
    /// </summary>
    public required IReadOnlyList<StandUncertainty> UncertaintyParts { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed; unusual is possible and is not refused.</summary>
    [SentCodes(typeof(SeedingRateCodes), nameof(SeedingRateCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What can hurt a person. The product label goes first.</summary>
    [SentCodes(typeof(SeedingRateCodes), nameof(SeedingRateCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>Plants per area; with an interval where uncertainties were stated.</summary>
public sealed class ExpectedStand : CountPerAreaQuantity
{
    /// <summary>Half width of the coverage interval, in the unit beside it.</summary>
    public double? ExpandedUncertainty { get; init; }

    /// <summary>Factor by which the standard uncertainty was expanded.</summary>
    public double? CoverageFactor { get; init; }

    /// <summary>Probability that the interval covers the true value, as far as the stated uncertainties go.</summary>
    public double? CoverageProbability { get; init; }
}

/// <summary>One part of the uncertainty of a stand.</summary>
public sealed class StandUncertainty
{
    /// <summary>Where it comes from.</summary>
    [KnownWords(typeof(StandUncertaintySource))]
    public required string Source { get; init; }

    /// <summary>Standard uncertainty, relative.</summary>
    public required RatioQuantity Relative { get; init; }
}

/// <summary>Seed in packages.</summary>
public sealed class PackagesAnswer
{
    /// <summary>Mass of one package.</summary>
    public required MassQuantity Mass { get; init; }

    /// <summary>Area that one package sows.</summary>
    public required AreaQuantity AreaPerPackage { get; init; }

    /// <summary>Packages that the area takes, not rounded; absent without an area.</summary>
    public double? Needed { get; init; }

    /// <summary>The same rounded up to whole packages.</summary>
    public double? Whole { get; init; }

    /// <summary>What stays in the last package.</summary>
    public MassQuantity? LeftOver { get; init; }
}

/// <summary>What the seed costs.</summary>
public sealed class SeedCostAnswer
{
    /// <summary>Cost per area.</summary>
    public required CostPerUnit CostPerArea { get; init; }

    /// <summary>Cost of the seed that the area takes; absent without an area.</summary>
    public Money? TotalCost { get; init; }

    /// <summary>Cost of the packages rounded up; absent without an area or a package.</summary>
    public Money? InWholePackages { get; init; }
}

/// <summary>A rate from elsewhere beside the one computed here.</summary>
public sealed class StatedRateAnswer
{
    /// <summary>The rate stated.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>How much it is above the rate of this answer; negative when below.</summary>
    public required RatioQuantity Difference { get; init; }

    /// <summary>Pure seeds per area that it puts down.</summary>
    public required CountPerAreaQuantity SeedsPerArea { get; init; }

    /// <summary>Plants that it brings up; absent when the establishment is unknown.</summary>
    public CountPerAreaQuantity? Plants { get; init; }

    /// <summary>It comes from dividing by 10: you said so, or it is in lb/ac, nobody said how it was made, and it is 4.13 % high.</summary>
    public required bool FromDivideByTen { get; init; }
}
