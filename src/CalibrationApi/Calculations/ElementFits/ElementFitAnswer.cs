using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.Engine.ElementFits;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.ElementFits;

/// <summary>The displacements that keep a meter inside its speeds, and the elements at hand beside them.</summary>
public sealed class ElementFitAnswer
{
    /// <summary>The outcome in a few sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// Whether an element fits: <c>fits</c> (the nearest at hand does), <c>none-fits</c> (none at hand, but another displacement would),
    /// <c>none-stated</c> (no element was stated) or <c>none-can-fit</c> (no displacement serves all rates at all speeds).
    /// </summary>
    [KnownWords(typeof(ElementFitVerdict))]
    public required string Verdict { get; init; }

    /// <summary>The displacements that serve every rate at every ground speed.</summary>
    public required DisplacementWindowAnswer Window { get; init; }

    /// <summary>The part of the window that serves with the wanted probability; absent where nothing does.</summary>
    public InnerWindowAnswer? InnerWindow { get; init; }

    /// <summary>The combination that takes most product: it sets the lower end.</summary>
    public required ProductNeedAnswer HighestNeed { get; init; }

    /// <summary>The combination that takes least product: it sets the upper end.</summary>
    public required ProductNeedAnswer LowestNeed { get; init; }

    /// <summary>What would open an empty window; absent when it is open.</summary>
    public WaysOutAnswer? WaysOut { get; init; }

    /// <summary>The elements at hand, nearest to the middle of the window first.</summary>
    public required IReadOnlyList<FittingElementAnswer> Elements { get; init; }

    /// <summary>Fill efficiency behind the window.</summary>
    public required ExpectedRatio FillEfficiency { get; init; }

    /// <summary>Parts of the spread of the window.</summary>
    public required IReadOnlyList<SpreadPart> SpreadParts { get; init; }

    /// <summary>What can hurt somebody who changes an element.</summary>
    [SentCodes(typeof(ElementFitCodes), nameof(ElementFitCodes.Cautions))]
    public required IReadOnlyList<CautionAnswer> Cautions { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed. No element was tested here.</summary>
    [SentCodes(typeof(ElementFitCodes), nameof(ElementFitCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>The displacements with which the meter stays inside its speeds.</summary>
public sealed class DisplacementWindowAnswer
{
    /// <summary>Smallest: below it the meter would have to turn too fast.</summary>
    public required VolumeQuantity Lower { get; init; }

    /// <summary>Largest: above it the meter would turn too slowly. Less than the smallest where the window is empty.</summary>
    public required VolumeQuantity Upper { get; init; }

    /// <summary>Geometric middle of the two: as far from too slow as from too fast.</summary>
    public required VolumeQuantity Middle { get; init; }

    /// <summary>No displacement serves.</summary>
    public required bool IsEmpty { get; init; }

    /// <summary>Standard deviation of the natural logarithm of both ends, which move together: the relative standard uncertainty.</summary>
    public required RatioQuantity Spread { get; init; }

    /// <summary>Probability that a displacement in the middle serves: no other has a higher one.</summary>
    public required double BestProbability { get; init; }
}

/// <summary>The displacements, known exactly, that serve with a probability.</summary>
public sealed class InnerWindowAnswer
{
    /// <summary>Smallest.</summary>
    public required VolumeQuantity Lower { get; init; }

    /// <summary>Largest.</summary>
    public required VolumeQuantity Upper { get; init; }

    /// <summary>The probability.</summary>
    public required double CoverageProbability { get; init; }
}

/// <summary>A combination of rate and ground speed.</summary>
public sealed class ProductNeedAnswer
{
    /// <summary>The rate.</summary>
    public required MassPerAreaQuantity Rate { get; init; }

    /// <summary>The ground speed.</summary>
    public required SpeedQuantity GroundSpeed { get; init; }

    /// <summary>Product that the meter has to deliver.</summary>
    public required MassPerTimeQuantity MassFlow { get; init; }
}

/// <summary>What would open an empty window, each by itself; absent where that alone is not enough.</summary>
public sealed class WaysOutAnswer
{
    /// <summary>Highest ground speed, beside the lowest of the question.</summary>
    public SpeedQuantity? MaximumGroundSpeed { get; init; }

    /// <summary>Lowest ground speed, beside the highest of the question.</summary>
    public SpeedQuantity? MinimumGroundSpeed { get; init; }

    /// <summary>Highest rate, beside the lowest of the question.</summary>
    public MassPerAreaQuantity? MaximumRate { get; init; }

    /// <summary>Lowest rate, beside the highest of the question.</summary>
    public MassPerAreaQuantity? MinimumRate { get; init; }

    /// <summary>The rates shared out among as few elements as serve all ground speeds; empty where up to four do not.</summary>
    public required IReadOnlyList<ShareOfRatesAnswer> Shares { get; init; }
}

/// <summary>Rates that one of several elements serves.</summary>
public sealed class ShareOfRatesAnswer
{
    /// <summary>Lowest of them.</summary>
    public required MassPerAreaQuantity MinimumRate { get; init; }

    /// <summary>Highest of them: there the next element takes over.</summary>
    public required MassPerAreaQuantity MaximumRate { get; init; }

    /// <summary>The displacements that serve them.</summary>
    public required DisplacementWindowAnswer Window { get; init; }
}

/// <summary>An element at hand.</summary>
public sealed class FittingElementAnswer
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>How it carries product; absent when it is not known.</summary>
    [KnownWords(typeof(ElementKind))]
    public string? Kind { get; init; }

    /// <summary>Its displacement.</summary>
    public required VolumeQuantity Displacement { get; init; }

    /// <summary>It keeps the meter inside its speeds at every rate and ground speed.</summary>
    public required bool Fits { get; init; }

    /// <summary>Meter speed at the lowest rate and ground speed.</summary>
    public required RotationQuantity LowestMeterSpeed { get; init; }

    /// <summary>Meter speed at the highest rate and ground speed.</summary>
    public required RotationQuantity HighestMeterSpeed { get; init; }

    /// <summary>By how much the lowest meter speed would have to rise; absent when it is high enough.</summary>
    public RatioQuantity? TooSlowBy { get; init; }

    /// <summary>By how much the highest meter speed is above its limit; absent when it is not.</summary>
    public RatioQuantity? TooFastBy { get; init; }

    /// <summary>Natural logarithm of its displacement divided by the middle of the window: below zero smaller, above zero larger.</summary>
    public required double DistanceFromMiddle { get; init; }

    /// <summary>Probability that the meter stays inside its speeds at every rate and ground speed.</summary>
    public required double Probability { get; init; }

    /// <summary>Expected mass per revolution, as <c>volume-check</c> finds it.</summary>
    public required ExpectedMassPerRevolution Expected { get; init; }
}
