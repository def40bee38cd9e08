using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.VolumeChecks;

/// <summary>How much should an element deliver per revolution, and does a value fit?</summary>
public sealed record VolumeCheckQuestion
{
    /// <summary>What the owner calls the element.</summary>
    public string? Element { get; init; }

    /// <summary>Volume that one revolution of the element sweeps V, above 0.</summary>
    public required Uncertain<Volume> Displacement { get; init; }

    /// <summary>Bulk density of the product rho, above 0.</summary>
    public required Uncertain<BulkDensity> Density { get; init; }

    /// <summary>How the element carries product; null when it is not known.</summary>
    public ElementKind? Kind { get; init; }

    /// <summary>The unit in which the density was given; a slip is looked for with it.</summary>
    public Unit? DensityUnit { get; init; }

    /// <summary>What is known of the fill efficiency; null takes the default.</summary>
    public FillEfficiency? Fill { get; init; }

    /// <summary>A mass per revolution to be checked.</summary>
    public Uncertain<MassPerRevolution>? Checked { get; init; }

    /// <summary>The checked value is the one in force; otherwise it was measured.</summary>
    public bool CheckedIsInForce { get; init; }

    /// <summary>Probability of the intervals; null takes 0.95.</summary>
    public double? CoverageProbability { get; init; }
}

/// <summary>What is known of the fill efficiency of an element.</summary>
public abstract record FillEfficiency
{
    private protected FillEfficiency() { }
}

/// <summary>A fill efficiency that the caller states.</summary>
/// <param name="Median">Median, above 0; null takes the default.</param>
/// <param name="Spread">Standard deviation of its natural logarithm, &gt;= 0; null takes the default.</param>
public sealed record StatedFill(double? Median, double? Spread) : FillEfficiency;

/// <summary>A fill efficiency learned from an earlier product on the same element.</summary>
/// <param name="Value">Mass per revolution that was found with it.</param>
/// <param name="Density">Its bulk density.</param>
/// <param name="Spread">How much fill efficiency changes from product to product: standard deviation of its natural logarithm; null takes
/// the default.</param>
public sealed record LearnedFill(Uncertain<MassPerRevolution> Value, Uncertain<BulkDensity> Density, double? Spread) : FillEfficiency;
