using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>What lies in the seed row, and what published limits say to it.</summary>
public sealed record SeedRowQuestion
{
    /// <summary>Distance between rows, above 0.</summary>
    public required Length RowSpacing { get; init; }

    /// <summary>Width over which the opener spreads seed and fertilizer, above 0 and at most the row spacing.</summary>
    public required Length Spread { get; init; }

    /// <summary>The crop.</summary>
    public required Crop Crop { get; init; }

    /// <summary>Texture of the soil.</summary>
    public required SoilTexture Soil { get; init; }

    /// <summary>Moisture of the seedbed.</summary>
    public required SeedbedMoisture Moisture { get; init; }

    /// <summary>Everything placed with the seed; those with more than one rate have one for each of the same zones.</summary>
    public required IReadOnlyList<PlacedProduct> Products { get; init; }

    /// <summary>Where the field lies; null looks at the limits of all regions.</summary>
    public Region? Region { get; init; }

    /// <summary>Keys of the sources to look at; null for all.</summary>
    public IReadOnlyList<string>? Sources { get; init; }

    /// <summary>The opener; null when not stated.</summary>
    public Opener? Opener { get; init; }

    /// <summary>Loss of stand from fertilizer with the seed that is accepted, a fraction above 0; null takes the default.</summary>
    public double? AcceptableStandLoss { get; init; }

    /// <summary>Limits that the caller holds, for example from local guidance.</summary>
    public IReadOnlyList<LocalLimit> LocalLimits { get; init; } = [];

    /// <summary>True when a reduction is stated for this crop, seedbed and number of products.</summary>
    internal bool IsUnder(StatedReduction reduction) =>
        reduction.Crops.Contains(Crop)
        && reduction.Cause switch
        {
            ReductionCause.DrySeedbed => Moisture == SeedbedMoisture.Dry,
            ReductionCause.CoarseAndDrySoil => Soil == SoilTexture.Light && Moisture == SeedbedMoisture.Dry,
            ReductionCause.CoarseAndMoistSoil => Soil == SoilTexture.Light && Moisture == SeedbedMoisture.Good,
            ReductionCause.Blend => Products.Count > 1,
            _ => true,
        };
}

/// <summary>A limit that the caller states for this crop, soil, moisture and opener.</summary>
/// <param name="Source">Where it is printed, in the caller's words.</param>
/// <param name="Nutrient">What it counts.</param>
/// <param name="Rate">The most that it allows with the seed, as printed there.</param>
public sealed record LocalLimit(string Source, LimitedNutrient Nutrient, PrintedRate Rate);
