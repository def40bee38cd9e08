using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;

namespace CalibrationApi.Engine.ElementFits;

/// <summary>Which displacement per revolution does an element need, and which of the elements at hand comes nearest?</summary>
public sealed record ElementFitQuestion
{
    /// <summary>Width the meter covers W, above 0.</summary>
    public required Length CoveredWidth { get; init; }

    /// <summary>Rates to be put down, at least one above 0; a zero rate means off and takes no part.</summary>
    public required IReadOnlyList<MassPerArea> Rates { get; init; }

    /// <summary>Ground speeds, at least one, all above 0.</summary>
    public required IReadOnlyList<Speed> GroundSpeeds { get; init; }

    /// <summary>Slowest speed at which the meter turns evenly n_min, above 0.</summary>
    public required RotationalSpeed SlowestMeter { get; init; }

    /// <summary>Fastest speed of the meter n_max, above the slowest.</summary>
    public required RotationalSpeed FastestMeter { get; init; }

    /// <summary>Bulk density of the product rho, above 0.</summary>
    public required Uncertain<BulkDensity> Density { get; init; }

    /// <summary>What is known of the fill efficiency; null takes the default.</summary>
    public StatedFill? Fill { get; init; }

    /// <summary>Elements that could be fitted; may be empty.</summary>
    public IReadOnlyList<ElementAtHand> Elements { get; init; } = [];

    /// <summary>Probability with which an element should stay inside the limits, at least 0.5; null takes 0.95.</summary>
    public double? CoverageProbability { get; init; }
}

/// <summary>A metering element that could be fitted.</summary>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Displacement">Volume that one revolution sweeps V, above 0.</param>
/// <param name="Kind">How it carries product; null when it is not known.</param>
public sealed record ElementAtHand(string Name, Uncertain<Volume> Displacement, ElementKind? Kind = null);
