using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>What lies with the seed, and what published limits say to it. No answer says that a load is safe.</summary>
public sealed class SeedRowLimitAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are; they name crop, place and source.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// The outcome over all limits: <c>above</c> when any is exceeded, <c>within</c> when none is, <c>no-published-limit</c> when none has
    /// a number for anything placed.
    /// </summary>
    [KnownWords(typeof(LimitVerdict))]
    public required string Verdict { get; init; }

    /// <summary>Spread divided by row spacing.</summary>
    public required RatioQuantity SeedbedUtilisation { get; init; }

    /// <summary>What lies with the seed: the sum over all products, in the zone where it is heaviest.</summary>
    public required IReadOnlyList<NutrientLoadAnswer> Loads { get; init; }

    /// <summary>Every limit for this crop and region: those exceeded first, the worst at the head; those without a number last.</summary>
    public required IReadOnlyList<SeedRowLimitOfSource> Limits { get; init; }

    /// <summary>
    /// The loss of stand that the linear model of South Dakota State University lets expect; absent for crops that it has no slope for.
    /// Judged in South Dakota, shown elsewhere.
    /// </summary>
    public StandLossAnswer? StandLoss { get; init; }

    /// <summary>
    /// Reductions that sources state for such a seedbed or such products. They hold for the limits of their own source only.
    /// </summary>
    public required IReadOnlyList<StatedReductionAnswer> Reductions { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(SeedRowCodes), nameof(SeedRowCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>What can hurt the stand; always to be shown with the limits.</summary>
    [SentCodes(typeof(SeedRowCodes), nameof(SeedRowCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>A nutrient with the seed.</summary>
public sealed class NutrientLoadAnswer
{
    /// <summary>What is counted.</summary>
    [KnownWords(typeof(LimitedNutrient))]
    public required string Nutrient { get; init; }

    /// <summary>The heaviest load of all zones.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>The zone with that load, counted from 1.</summary>
    public required int Zone { get; init; }
}

/// <summary>One limit against what lies with the seed.</summary>
public sealed class SeedRowLimitOfSource
{
    /// <summary>
    /// <c>within</c>: not above the limit. <c>above</c>: above it. <c>no-published-limit</c>: the source has no number for this case; the
    /// reason says why.
    /// </summary>
    [KnownWords(typeof(LimitVerdict))]
    public required string Verdict { get; init; }

    /// <summary>What the limit counts.</summary>
    [KnownWords(typeof(LimitedNutrient))]
    public required string Nutrient { get; init; }

    /// <summary>The heaviest load of what it counts, over all zones.</summary>
    public required MassPerAreaQuantity Load { get; init; }

    /// <summary>The zone with that load, counted from 1.</summary>
    public required int Zone { get; init; }

    /// <summary>The limit, after the reduction that its source states for such a seedbed; absent without a number.</summary>
    public MassPerAreaQuantity? Limit { get; init; }

    /// <summary>Limit less load: negative is the excess; absent without a number.</summary>
    public MassPerAreaQuantity? Margin { get; init; }

    /// <summary>The number as the source prints it, in its own unit; absent without one.</summary>
    public MassPerAreaQuantity? AsPrinted { get; init; }

    /// <summary>
    /// How the number was found: <c>published-cell</c> is printed for this geometry, the others take a stricter printed number. Absent
    /// without one.
    /// </summary>
    [KnownWords(typeof(LimitBasis))]
    public string? Basis { get; init; }

    /// <summary>The printed numbers that it rests on.</summary>
    public required IReadOnlyList<PrintedLimit> Cells { get; init; }

    /// <summary>Why there is no number; absent with one.</summary>
    public string? Reason { get; init; }

    /// <summary>Conditions as the source states them.</summary>
    public required string Conditions { get; init; }

    /// <summary>The publication.</summary>
    public required LimitSourceAnswer Source { get; init; }
}

/// <summary>Expected loss of stand: slope of crop and material times rate times row spacing over the width of the furrow.</summary>
public sealed class StandLossAnswer
{
    /// <summary>Loss of stand that is accepted.</summary>
    public required RatioQuantity Accepted { get; init; }

    /// <summary>
    /// Loss that the products with a slope let expect together, in the zone where it is largest; absent when none has a number.
    /// </summary>
    public RatioQuantity? Expected { get; init; }

    /// <summary>Every product with nutrients has a slope; otherwise more may be lost than expected.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>The zone with that loss, counted from 1.</summary>
    public required int Zone { get; init; }

    /// <summary>The verdict counts it, because the field lies where the model is for.</summary>
    public required bool Judged { get; init; }

    /// <summary>The products, in the order given.</summary>
    public required IReadOnlyList<StandLossOfProduct> Products { get; init; }

    /// <summary>Why there is no number; absent with one.</summary>
    public string? Reason { get; init; }

    /// <summary>Conditions of the model.</summary>
    public required string Conditions { get; init; }

    /// <summary>The publication.</summary>
    public required LimitSourceAnswer Source { get; init; }
}

/// <summary>A product in the stand-loss model.</summary>
public sealed class StandLossOfProduct
{
    /// <summary>Name of the product.</summary>
    public required string Name { get; init; }

    /// <summary>The material whose slope was taken; absent when none that was read fits it.</summary>
    public string? Material { get; init; }

    /// <summary>Loss that it lets expect by itself; absent without a number.</summary>
    public RatioQuantity? Expected { get; init; }

    /// <summary>The most of it that alone keeps to the accepted loss; absent without a number.</summary>
    public MassPerAreaQuantity? Maximum { get; init; }
}

/// <summary>A number as a source prints it.</summary>
public sealed class PrintedLimit
{
    /// <summary>The geometry that it is printed for.</summary>
    public required string Geometry { get; init; }

    /// <summary>The number, in the unit of the source.</summary>
    public required MassPerAreaQuantity Limit { get; init; }
}

/// <summary>A publication that states limits.</summary>
public sealed class LimitSourceAnswer
{
    /// <summary>Its key in kebab case; <c>stated</c> for a limit of the question.</summary>
    public required string Key { get; init; }

    /// <summary>Who publishes it.</summary>
    public required string Publisher { get; init; }

    /// <summary>Its title or subject.</summary>
    public required string Title { get; init; }

    /// <summary>Year of the edition; absent when the copy that was read shows none.</summary>
    public int? Year { get; init; }

    /// <summary>The place that it is for.</summary>
    public required string Region { get; init; }

    /// <summary>Where it was read.</summary>
    public string? Address { get; init; }
}

/// <summary>A reduction that a source states for its own limits.</summary>
public sealed class StatedReductionAnswer
{
    /// <summary>What the source says.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }

    /// <summary>Share of the limit that is left; absent when it depends on the case.</summary>
    public RatioQuantity? Left { get; init; }

    /// <summary>It was applied to a limit of this answer. Where the limits of that source are not held, nothing could be.</summary>
    public required bool Applied { get; init; }

    /// <summary>The publication.</summary>
    public required LimitSourceAnswer Source { get; init; }
}
