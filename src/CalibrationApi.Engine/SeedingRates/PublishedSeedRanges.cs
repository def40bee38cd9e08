using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>A published range of something of a seed lot.</summary>
/// <param name="Crops">The crops that it is stated for.</param>
/// <param name="Low">Lowest value, in the unit of its table.</param>
/// <param name="High">Highest value, same unit.</param>
/// <param name="Source">The publisher, as a sentence names it.</param>
public sealed record PublishedRange(IReadOnlyList<Crop> Crops, double Low, double High, string Source);

/// <summary>What a published figure of establishment is a share of.</summary>
public enum EstablishmentBasis
{
    /// <summary>Plants per seed that germinates: field emergence.</summary>
    OfViableSeeds,

    /// <summary>Plants per pure seed, germination included.</summary>
    OfPureSeeds,

    /// <summary>Points that survival lies under germination.</summary>
    PointsUnderGermination,
}

/// <summary>A published range of establishment.</summary>
/// <param name="Crops">The crops that it is stated for.</param>
/// <param name="Basis">What it is a share of.</param>
/// <param name="Low">Lowest value, as a fraction.</param>
/// <param name="High">Highest value, as a fraction.</param>
/// <param name="Source">The publisher, as a sentence names it.</param>
/// <remarks>
/// <para>Formula: of pure seeds as printed; of viable seeds G low to G high; points under germination G - high to G - low, not below
/// 0.</para>
/// <para>Range: germination above 0, at most 1; null where one is needed and unknown.</para>
/// <para>Source: the publications of <see cref="PublishedSeedRanges"/> (SOURCES.md, key MBAG-MORTALITY and others named there); putting
/// them on one footing is our own derivation.</para>
/// <para>Accuracy: 1e-12 for each basis (SeedingRateFindingsTests).</para>
/// </remarks>
public sealed record EstablishmentRange(IReadOnlyList<Crop> Crops, EstablishmentBasis Basis, double Low, double High, string Source)
{
    /// <summary>The range as plants per pure seed; null where that takes a germination and none is known.</summary>
    /// <param name="germination">Germination as a fraction, where known.</param>
    public (double Low, double High)? AsSurvival(double? germination) =>
        (Basis, germination) switch
        {
            (EstablishmentBasis.OfPureSeeds, _) => (Low, High),
            (EstablishmentBasis.OfViableSeeds, { } g) => (g * Low, g * High),
            (EstablishmentBasis.PointsUnderGermination, { } g) => (Math.Max(0, g - High), Math.Max(0, g - Low)),
            _ => null,
        };
}

/// <summary>Every published range that a seed lot is compared with; what lies outside gets a finding, never a refusal.</summary>
/// <remarks>
/// Source: SOURCES.md, keys UKY-SR, UNL-SIZE, DAFM-TGW, ABAG-CANOLA, ISU-212, NDSU-B, MBAG-MORTALITY, AB-HARTMAN, MBAG-TKW, SASKPULSE,
/// GRAINEWS-TKW, WV-SEED.
/// </remarks>
public static class PublishedSeedRanges
{
    private static readonly Crop[] Cereals = [Crop.Wheat, Crop.Barley, Crop.Oat, Crop.Rye];
    private static readonly Crop[] Pulses = [Crop.Pea, Crop.Lentil, Crop.Chickpea, Crop.DryBean, Crop.Soybean];

    /// <summary>Mass of a kernel, kg.</summary>
    public static IReadOnlyList<PublishedRange> KernelMass { get; } =
    [
        SeedsPerPound(Crop.Wheat, 10_000, 20_000, "University of Kentucky"),
        SeedsPerPound(Crop.Wheat, 10_700, 23_000, "University of Nebraska"),
        GramsPerThousand(Crop.Wheat, 35, 46.8, "trials of the Irish Department of Agriculture"),
        GramsPerThousand(Crop.Barley, 39, 54, "trials of the Irish Department of Agriculture"),
        GramsPerThousand(Crop.Oat, 29, 44.3, "trials of the Irish Department of Agriculture"),
        GramsPerThousand(Crop.Canola, 3, 7.5, "Alberta Agriculture"),
        SeedsPerPound(Crop.Soybean, 1_700, 5_000, "Iowa State University"),
    ];

    /// <summary>Field emergence or survival.</summary>
    public static IReadOnlyList<EstablishmentRange> Establishment { get; } =
    [
        new([Crop.Barley], EstablishmentBasis.OfViableSeeds, 0.80, 0.90, "North Dakota State University"),
        new([Crop.Wheat, Crop.Barley, Crop.Oat, Crop.Corn], EstablishmentBasis.OfViableSeeds, 0.85, 0.90, "Manitoba Agriculture"),
        new([Crop.Canola], EstablishmentBasis.OfViableSeeds, 0.40, 0.80, "Manitoba Agriculture"),
        new([Crop.Flax], EstablishmentBasis.OfViableSeeds, 0.50, 0.60, "Manitoba Agriculture"),
        new([Crop.Pea], EstablishmentBasis.OfViableSeeds, 0.85, 0.95, "Manitoba Agriculture"),
        new([Crop.Soybean, Crop.DryBean], EstablishmentBasis.OfViableSeeds, 0.90, 0.95, "Manitoba Agriculture"),
        new([Crop.Canola], EstablishmentBasis.OfPureSeeds, 0.50, 0.75, "Manitoba Agriculture"),
        new([Crop.Canola], EstablishmentBasis.OfPureSeeds, 0.20, 0.80, "Alberta Agriculture, from year to year"),
        new(Cereals, EstablishmentBasis.PointsUnderGermination, 0.05, 0.20, "an agronomist in Grainews"),
        new(Pulses, EstablishmentBasis.PointsUnderGermination, 0.05, 0.15, "Saskatchewan Pulse Growers"),
    ];

    /// <summary>Least germination that a seed law asks for, as a fraction; 70 % for any crop without a figure of its own.</summary>
    public static IReadOnlyList<PublishedRange> Germination { get; } =
    [
        LeastGermination(0.80, Crop.Wheat, Crop.Barley, Crop.Corn, Crop.RedClover, Crop.Vetch, Crop.Ryegrass),
        LeastGermination(0.75, Crop.Oat, Crop.Soybean, Crop.Alfalfa, Crop.Timothy),
        LeastGermination(0.70, Crop.Rye),
    ];

    /// <summary>The same for every other crop.</summary>
    public static PublishedRange GerminationOfOtherCrops { get; } = LeastGermination(0.70);

    /// <summary>Seeds per area above which a publisher sees no gain, 1/m2.</summary>
    public static IReadOnlyList<PublishedRange> SeedsPerArea { get; } =
    [new([Crop.Barley], 0, UnitTable.Get("/ac").Canonical(1_600_000), "North Dakota State University")];

    /// <summary>Seeds of one counted sample below which it says little.</summary>
    /// <remarks>Source: SOURCES.md, key NDSU-B: samples of 100 seeds, counted several times.</remarks>
    public const int SeedsOfASample = 100;

    private static PublishedRange SeedsPerPound(Crop crop, double fewest, double most, string source) =>
        new([crop], 1 / UnitTable.Get("/lb").Canonical(most), 1 / UnitTable.Get("/lb").Canonical(fewest), source);

    private static PublishedRange GramsPerThousand(Crop crop, double low, double high, string source) =>
        new([crop], UnitTable.Get("g/1000").Canonical(low), UnitTable.Get("g/1000").Canonical(high), source);

    private static PublishedRange LeastGermination(double least, params Crop[] crops) =>
        new(crops, least, 1, "the seed law of West Virginia");
}
