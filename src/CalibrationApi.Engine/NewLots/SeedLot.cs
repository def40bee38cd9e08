using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.NewLots;

/// <summary>What is known of a lot of seed, or of any other product that is metered.</summary>
public sealed record SeedLot
{
    /// <summary>Mass of a kernel as sown (treated), above 0; null when unknown.</summary>
    public MassPerThousand? Kernel { get; init; }

    /// <summary>Bulk density rho as it lies in the tank, above 0; null when unknown.</summary>
    public BulkDensity? Density { get; init; }

    /// <summary>Its standard uncertainty, relative; null takes the default.</summary>
    public double? DensityUncertainty { get; init; }

    /// <summary>Germination, above 0, at most 1; null when unknown.</summary>
    public double? Germination { get; init; }

    /// <summary>Share of the mass that is pure seed, above 0, at most 1; null takes the default.</summary>
    public double? Purity { get; init; }

    /// <summary>Treatment in the owner's words; null for none.</summary>
    public string? Treatment { get; init; }
}
