using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>A bulk density with its interval, beside what is published.</summary>
public sealed class BulkDensityAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>The bulk density with its uncertainty.</summary>
    public required MeasuredBulkDensity BulkDensity { get; init; }

    /// <summary>What it is known from.</summary>
    [KnownWords(typeof(DensityBasis))]
    public required string Basis { get; init; }

    /// <summary>The same density in every unit.</summary>
    public required IReadOnlyList<BulkDensityQuantity> InOtherUnits { get; init; }

    /// <summary>Parts of the relative standard uncertainty.</summary>
    public required IReadOnlyList<DensityUncertaintyPart> UncertaintyParts { get; init; }

    /// <summary>Each weighing; absent where nothing was weighed.</summary>
    public IReadOnlyList<WeighingAnswer>? Weighings { get; init; }

    /// <summary>What is published for the material; absent when none was named.</summary>
    public ReferenceAnswer? Reference { get; init; }

    /// <summary>
    /// The density of the same grain poured loosely, if the test weight is an official Canadian one, which allows for settling; absent
    /// where that does not apply.
    /// </summary>
    public BulkDensityQuantity? LooseDensity { get; init; }

    /// <summary>What the tank holds; absent when none was named.</summary>
    public TankAnswer? Tank { get; init; }

    /// <summary>What can hurt somebody on the way.</summary>
    [SentCodes(typeof(BulkDensityCodes), nameof(BulkDensityCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(BulkDensityCodes), nameof(BulkDensityCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>A bulk density with its uncertainty; names as open metrology formats use them.</summary>
public sealed class MeasuredBulkDensity : BulkDensityQuantity
{
    /// <summary>Half width of the coverage interval, in the unit beside it.</summary>
    public required double ExpandedUncertainty { get; init; }

    /// <summary>Factor by which the standard uncertainty was expanded.</summary>
    public required double CoverageFactor { get; init; }

    /// <summary>Probability that the interval covers the true value.</summary>
    public required double CoverageProbability { get; init; }

    /// <summary>Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.</summary>
    public double? DegreesOfFreedom { get; init; }
}

/// <summary>A part of the uncertainty.</summary>
public sealed class DensityUncertaintyPart
{
    /// <summary>
    /// Where it comes from: scatter of the <c>weighings</c>, <c>scale</c>, <c>volume</c>, the <c>mass</c> filled in, <c>test-weight</c>,
    /// <c>stated</c>, <c>published-range</c> or the <c>lot</c>.
    /// </summary>
    [KnownWords("weighings", "scale", "volume", "mass", "test-weight", "stated", "published-range", "lot")]
    public required string Source { get; init; }

    /// <summary>Standard uncertainty, relative.</summary>
    public required RatioQuantity Relative { get; init; }
}

/// <summary>One weighing.</summary>
public sealed class WeighingAnswer
{
    /// <summary>Net mass, a known error of the scale corrected.</summary>
    public required MassQuantity Net { get; init; }

    /// <summary>Its bulk density.</summary>
    public required BulkDensityQuantity BulkDensity { get; init; }
}

/// <summary>A density beside the published ones for its material. Information and a check: a measured density always goes first.</summary>
public sealed class ReferenceAnswer
{
    /// <summary>The material.</summary>
    [KnownWords(typeof(ReferenceMaterial))]
    public required string Material { get; init; }

    /// <summary>The lightest published value.</summary>
    public required BulkDensityQuantity Minimum { get; init; }

    /// <summary>The densest published value.</summary>
    public required BulkDensityQuantity Maximum { get; init; }

    /// <summary>
    /// How far the density is outside the published range, relative to its nearer end: above zero denser, below zero lighter, zero inside.
    /// </summary>
    public required RatioQuantity Beyond { get; init; }

    /// <summary>Every published value as printed, with its source. Where sources differ, all are here.</summary>
    public required IReadOnlyList<PublishedDensityAnswer> Published { get; init; }

    /// <summary>How the density of the material was found to change with moisture. Information only: nothing was corrected.</summary>
    public required IReadOnlyList<MoistureAnswer> Moisture { get; init; }
}

/// <summary>A published bulk density, in the unit in which it was printed.</summary>
public sealed class PublishedDensityAnswer
{
    /// <summary>Lowest printed value.</summary>
    public required BulkDensityQuantity Low { get; init; }

    /// <summary>Highest printed value; the lowest where one value is printed.</summary>
    public required BulkDensityQuantity High { get; init; }

    /// <summary>What the values are; a legal bushel weight is no measured density.</summary>
    [KnownWords(typeof(ReferenceDensityKind))]
    public required string Kind { get; init; }

    /// <summary>The publication.</summary>
    public required string Source { get; init; }
}

/// <summary>A published study of density against moisture.</summary>
public sealed class MoistureAnswer
{
    /// <summary>Moisture at the start.</summary>
    public required RatioQuantity From { get; init; }

    /// <summary>Moisture at the end.</summary>
    public required RatioQuantity To { get; init; }

    /// <summary>What moisture is a share of: <c>dry</c> matter or the <c>wet</c> whole.</summary>
    [KnownWords("dry", "wet")]
    public required string Basis { get; init; }

    /// <summary>Bulk density at the start.</summary>
    public required BulkDensityQuantity DensityFrom { get; init; }

    /// <summary>Bulk density at the end.</summary>
    public required BulkDensityQuantity DensityTo { get; init; }

    /// <summary>Relative change of the density for each percentage point of moisture, on average.</summary>
    public required RatioQuantity ChangePerPoint { get; init; }

    /// <summary>The publication.</summary>
    public required string Source { get; init; }
}

/// <summary>What a tank holds.</summary>
public sealed class TankAnswer
{
    /// <summary>Mass of a fill.</summary>
    public required MassQuantity Mass { get; init; }

    /// <summary>Mass at the lower end of the interval of the density.</summary>
    public required MassQuantity LowerMass { get; init; }

    /// <summary>Mass at the upper end.</summary>
    public required MassQuantity UpperMass { get; init; }

    /// <summary>Area that a fill covers; absent without a rate.</summary>
    public AreaQuantity? Area { get; init; }
}
