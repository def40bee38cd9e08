using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>What is placed with the seed, where and with which opener.</summary>
[CheckedBy(typeof(SeedRowLimitRequestValidator))]
public sealed class SeedRowLimitRequest
{
    /// <summary>The crop. A limit of one crop is never used for another; <c>other</c> gets no number.</summary>
    [Needed, Word(typeof(Crop))]
    public string? Crop { get; init; }

    /// <summary>
    /// Texture of the soil: <c>light</c> is sandy loam or lighter, <c>medium</c> loam to clay loam, <c>heavy</c> clay to heavy clay. Take
    /// the lightest one of the field.
    /// </summary>
    [Needed, Word(typeof(SoilTexture))]
    public string? Soil { get; init; }

    /// <summary>
    /// Moisture of the seedbed: <c>good</c> is at or near field capacity and expected to stay so. In doubt, and in drying weather, it is
    /// <c>dry</c>.
    /// </summary>
    [Needed, Word(typeof(SeedbedMoisture))]
    public string? Moisture { get; init; }

    /// <summary>
    /// Where the field lies. Without it limits of all regions are shown; <c>elsewhere</c> is any place without a word here.
    /// </summary>
    [Word(typeof(Region))]
    public string? Region { get; init; }

    /// <summary>Distance between rows.</summary>
    [Needed, Measured(0, 5, "m", ExcludesLeast = true)]
    public LengthQuantity? RowSpacing { get; init; }

    /// <summary>Width over which the opener spreads seed and fertilizer, measured in the field; at most the row spacing.</summary>
    [Needed, Measured(0, 5, "m", ExcludesLeast = true)]
    public LengthQuantity? SeedRowWidth { get; init; }

    /// <summary>The opener. A source rules one out on light soil, and pairs each with a usual spread.</summary>
    [Word(typeof(Opener))]
    public string? Opener { get; init; }

    /// <summary>Everything that goes into the seed row together; their sum counts.</summary>
    // As many as a plan has meters.
    [Needed, Items(1, 64)]
    public IReadOnlyList<ProductWithSeed?>? Products { get; init; }

    /// <summary>Keys of the sources to look at, as answers name them. Without it all are looked at.</summary>
    [Items(1, typeof(PublishedLimits), nameof(PublishedLimits.Keys)), Word(typeof(PublishedLimits), nameof(PublishedLimits.Keys))]
    public IReadOnlyList<string?>? Sources { get; init; }

    /// <summary>Loss of stand from fertilizer with the seed that you accept, for the stand-loss model.</summary>
    [Default(typeof(StandLoss), nameof(StandLoss.DefaultLoss))]
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? AcceptableStandLoss { get; init; }

    /// <summary>
    /// Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones.
    /// </summary>
    [Items(1, 20)]
    public IReadOnlyList<LocalLimitWithSeed?>? LocalLimits { get; init; }
}

/// <summary>A product placed with the seed: its analysis with rates, or nutrients at rates of their own.</summary>
[CheckedBy(typeof(ProductWithSeedValidator))]
public sealed class ProductWithSeed
{
    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>Its nutrients, each as a share of its mass in a stated form. Give it with rates.</summary>
    [Items(1, NutrientRules.MostShares)]
    public IReadOnlyList<ShareOfNutrient?>? Analysis { get; init; }

    /// <summary>
    /// Rates of the product: one that holds everywhere, or one for each zone of a variable rate, in the same order for all products. Zero
    /// is allowed.
    /// </summary>
    [Items(1, 100), Measured(0, 100_000, "kg/ha")]
    public IReadOnlyList<MassPerAreaQuantity?>? Rates { get; init; }

    /// <summary>Nutrients per area, the same everywhere. Give them in place of analysis and rates.</summary>
    [Items(1, NutrientRules.MostShares)]
    public IReadOnlyList<AmountOfNutrient?>? Nutrients { get; init; }

    /// <summary>
    /// Form of its nitrogen. Coated or treated urea is <c>urea</c>, for no source has a number for it, but <c>urea-with-inhibitor</c> where
    /// the treatment is a urease inhibitor: published limits count that as urea, and the stand-loss model has its own slope. Default urea,
    /// the form that harms most: judgement.
    /// </summary>
    [Word(typeof(NitrogenForm))]
    public string? NitrogenForm { get; init; }
}

/// <summary>A limit from the caller's own guidance.</summary>
public sealed class LocalLimitWithSeed
{
    /// <summary>Where it is printed; answers name it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Source { get; init; }

    /// <summary>What it counts.</summary>
    [Needed, Word(typeof(LimitedNutrient))]
    public string? Nutrient { get; init; }

    /// <summary>The most that it allows with the seed.</summary>
    [Needed, Measured(0, 100_000, "kg/ha")]
    public MassPerAreaQuantity? Rate { get; init; }
}
