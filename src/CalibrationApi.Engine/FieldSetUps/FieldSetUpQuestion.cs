using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>A field, the machine that goes there, and what each of its meters is to put down.</summary>
public sealed record FieldSetUpQuestion
{
    /// <summary>Ground speeds at which the field is worked, at least one, all above 0.</summary>
    public required IReadOnlyList<Speed> GroundSpeeds { get; init; }

    /// <summary>The meters in their order; those that <see cref="AtOdds"/> tells of are left out.</summary>
    public required IReadOnlyList<MeterToSetUp> Meters { get; init; }

    /// <summary>Meters that had to be left out, because their records are at odds.</summary>
    public int MetersLeftOut { get; init; }

    /// <summary>What was found at odds while the question was put together.</summary>
    public IReadOnlyList<OpenPoint> AtOdds { get; init; } = [];

    /// <summary>Width the machine works; null when it is not known.</summary>
    public Length? WorkingWidth { get; init; }

    /// <summary>Distance between rows; null when it is not known.</summary>
    public Length? RowSpacing { get; init; }

    /// <summary>Width over which the opener spreads seed and fertilizer; null when it is not known.</summary>
    public Length? OpenerSpread { get; init; }

    /// <summary>The opener; null when not stated.</summary>
    public Opener? Opener { get; init; }

    /// <summary>Area of the field; null when not stated.</summary>
    public Area? Area { get; init; }

    /// <summary>Share of the time spent working; null takes the default.</summary>
    public double? FieldEfficiency { get; init; }

    /// <summary>Planned fan speed, above 0; null when not stated.</summary>
    public RotationalSpeed? FanSpeed { get; init; }

    /// <summary>Nutrients that are wanted; empty for none.</summary>
    public IReadOnlyList<NutrientTarget> Nutrients { get; init; } = [];

    /// <summary>Nutrients that are there already.</summary>
    public IReadOnlyList<NutrientCredit> Credits { get; init; } = [];

    /// <summary>The seed row of this field; null when not stated.</summary>
    public SeedRowOfField? SeedRow { get; init; }
}

/// <summary>What decides on a field how much may lie with the seed; row spacing and opener are those of the machine.</summary>
/// <param name="Crop">The crop.</param>
/// <param name="Soil">Texture of the soil.</param>
/// <param name="Moisture">Moisture of the seedbed.</param>
/// <param name="Region">Where the field lies; null looks at the limits of all regions.</param>
/// <param name="AcceptableStandLoss">Loss of stand that is accepted, a fraction above 0; null takes the default.</param>
/// <param name="LocalLimits">Limits from the owner's own guidance.</param>
public sealed record SeedRowOfField(
    Crop Crop,
    SoilTexture Soil,
    SeedbedMoisture Moisture,
    Region? Region,
    double? AcceptableStandLoss,
    IReadOnlyList<LocalLimit> LocalLimits
);
