using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>What is fixed of a seeding rate; the rest follows from it.</summary>
public enum SowingTarget
{
    /// <summary>Plants per area that are to stand.</summary>
    Stand,

    /// <summary>Pure seeds per area that are to be sown.</summary>
    Seeds,

    /// <summary>Mass per area that is sown: the inverse, what stand does it give?</summary>
    Rate,

    /// <summary>Pure seeds per area that can germinate.</summary>
    GerminableSeeds,
}

/// <summary>How much to sow for a stand, or what stand a rate gives.</summary>
public sealed record SeedingRateQuestion
{
    /// <summary>
    /// Plants wanted D, above 0; exactly one of this, <see cref="Seeds"/>, <see cref="GerminableSeeds"/> and <see cref="Rate"/>.
    /// </summary>
    public CountPerArea? Stand { get; init; }

    /// <summary>Pure seeds to be sown, above 0.</summary>
    public CountPerArea? Seeds { get; init; }

    /// <summary>Pure seeds that can germinate, above 0; needs the germination.</summary>
    public CountPerArea? GerminableSeeds { get; init; }

    /// <summary>Mass sown R, above 0.</summary>
    public MassPerArea? Rate { get; init; }

    /// <summary>Mass of a kernel as sown (treated), above 0.</summary>
    public required MassPerThousand Kernel { get; init; }

    /// <summary>Its standard uncertainty, relative, where stated.</summary>
    public double? KernelUncertainty { get; init; }

    /// <summary>Seeds that were counted for it, where it comes from a sample.</summary>
    public int? SeedsCounted { get; init; }

    /// <summary>Share of the mass that is pure seed, above 0, at most 1; null takes the default.</summary>
    public double? Purity { get; init; }

    /// <summary>What becomes of the seeds; needed in full for a stand.</summary>
    public Establishment Establishment { get; init; } = Establishment.Unknown;

    /// <summary>The crop, to compare with what is published.</summary>
    public Crop? Crop { get; init; }

    /// <summary>Distance between two rows, above 0.</summary>
    public Length? RowSpacing { get; init; }

    /// <summary>Area to be sown, above 0.</summary>
    public Area? Area { get; init; }

    /// <summary>How the seed is packed.</summary>
    public SeedPackage? Package { get; init; }

    /// <summary>What it costs; a price of packages needs <see cref="Package"/>.</summary>
    public SeedPrice? Price { get; init; }

    /// <summary>A rate that the asker has from elsewhere, to be compared.</summary>
    public MassPerArea? StatedRate { get; init; }

    /// <summary>
    /// That rate was made by dividing by ten; false when it cannot have been, null when nobody said, so that only its size can tell.
    /// </summary>
    public bool? StatedRateIsShortcut { get; init; }

    /// <summary>Which one is fixed.</summary>
    /// <exception cref="InvalidOperationException">Not exactly one is.</exception>
    public SowingTarget Target =>
        (Stand, Seeds, GerminableSeeds, Rate) switch
        {
            ({ }, null, null, null) => SowingTarget.Stand,
            (null, { }, null, null) => SowingTarget.Seeds,
            (null, null, { }, null) => SowingTarget.GerminableSeeds,
            (null, null, null, { }) => SowingTarget.Rate,
            _ => throw new InvalidOperationException("Exactly one of stand, seeds, germinable seeds and rate is needed."),
        };
}
