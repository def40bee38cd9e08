using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>What an element should deliver, and how a value compares with it.</summary>
public sealed class VolumeCheckAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>Expected mass per revolution: displacement times bulk density times fill efficiency.</summary>
    public required ExpectedMassPerRevolution Expected { get; init; }

    /// <summary>Fill efficiency behind it.</summary>
    public required ExpectedRatio FillEfficiency { get; init; }

    /// <summary>Parts of the spread of the expected value.</summary>
    public required IReadOnlyList<SpreadPart> SpreadParts { get; init; }

    /// <summary>The expected value as the start value of a catch plan takes it.</summary>
    public required ReferenceOfTest StartValue { get; init; }

    /// <summary>How the checked value compares; absent without one.</summary>
    public CheckedAnswer? Checked { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed. No element was tested here.</summary>
    [SentCodes(typeof(ElementCodes), nameof(ElementCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>An expected mass per revolution. As likely too low as too high, with an interval that is longer upwards.</summary>
public sealed class ExpectedMassPerRevolution : MassPerRevolutionQuantity
{
    /// <summary>Lower end of the coverage interval.</summary>
    public required MassPerRevolutionQuantity Lower { get; init; }

    /// <summary>Upper end of the coverage interval.</summary>
    public required MassPerRevolutionQuantity Upper { get; init; }

    /// <summary>Probability of the interval.</summary>
    public required double CoverageProbability { get; init; }

    /// <summary>Standard deviation of the natural logarithm: the relative standard uncertainty.</summary>
    public required RatioQuantity Spread { get; init; }
}

/// <summary>An expected ratio. As likely too low as too high, with an interval that is longer upwards.</summary>
public sealed class ExpectedRatio : RatioQuantity
{
    /// <summary>Lower end of the coverage interval.</summary>
    public required RatioQuantity Lower { get; init; }

    /// <summary>Upper end of the coverage interval.</summary>
    public required RatioQuantity Upper { get; init; }

    /// <summary>Probability of the interval.</summary>
    public required double CoverageProbability { get; init; }

    /// <summary>Standard deviation of the natural logarithm: the relative standard uncertainty.</summary>
    public required RatioQuantity Spread { get; init; }
}

/// <summary>A part of the spread.</summary>
public sealed class SpreadPart
{
    /// <summary>
    /// Where it comes from: <c>density</c>, <c>displacement</c>, <c>fill-efficiency</c>; or, learned from an earlier product,
    /// <c>earlier-density</c>, <c>earlier-value</c> and <c>product-to-product</c>.
    /// </summary>
    [KnownWords("density", "displacement", "fill-efficiency", "earlier-density", "earlier-value", "product-to-product")]
    public required string Source { get; init; }

    /// <summary>Standard deviation, relative.</summary>
    public required RatioQuantity Relative { get; init; }
}

/// <summary>A value beside the expected one.</summary>
public sealed class CheckedAnswer
{
    /// <summary>The value divided by the expected one.</summary>
    public required RatioQuantity Ratio { get; init; }

    /// <summary>
    /// How many standard deviations it is away, on a logarithmic scale: above zero more than expected, below zero less. Absent when no
    /// spread was left to measure with.
    /// </summary>
    public double? Deviations { get; init; }

    /// <summary>The fill efficiency that the value implies.</summary>
    public required ExpectedRatio FillEfficiency { get; init; }
}
