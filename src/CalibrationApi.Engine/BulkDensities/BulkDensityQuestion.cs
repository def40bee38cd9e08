using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>What is the bulk density of a product, and how sure is that?</summary>
public sealed record BulkDensityQuestion
{
    /// <summary>What the owner calls the product.</summary>
    public string? Product { get; init; }

    /// <summary>What the density is known from.</summary>
    public required DensityEvidence Evidence { get; init; }

    /// <summary>The material whose published values it is compared with.</summary>
    public ReferenceMaterial? Material { get; init; }

    /// <summary>A tank to be filled with the product.</summary>
    public TankToFill? Tank { get; init; }

    /// <summary>Probability of the intervals; null takes 0.95.</summary>
    public double? CoverageProbability { get; init; }
}

/// <summary>A tank to be filled.</summary>
/// <param name="Volume">Its volume, above 0, taken as exact.</param>
/// <param name="Fill">Share of it that is filled, above 0, at most 1; null takes all of it.</param>
/// <param name="Rate">Rate at which its content is put down.</param>
public sealed record TankToFill(Volume Volume, double? Fill = null, MassPerArea? Rate = null);
