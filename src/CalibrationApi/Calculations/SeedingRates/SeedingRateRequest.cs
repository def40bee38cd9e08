using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>
/// What is fixed of a seeding rate (exactly one of targetStand, seedsPerArea, germinableSeedsPerArea, seedsPerRow and rate), and what is
/// known of the seed.
/// </summary>
[CheckedBy(typeof(SeedingRateRequestValidator))]
public sealed class SeedingRateRequest
{
    /// <summary>Plants per area that are to stand. Needs germination and emergence, or survival.</summary>
    [Measured]
    public CountPerAreaQuantity? TargetStand { get; init; }

    /// <summary>Pure seeds per area that are to be sown.</summary>
    [Measured]
    public CountPerAreaQuantity? SeedsPerArea { get; init; }

    /// <summary>Pure seeds per area that can germinate and are to be sown: seeds times germination. Needs germination.</summary>
    [Measured]
    public CountPerAreaQuantity? GerminableSeedsPerArea { get; init; }

    /// <summary>Pure seeds per length of row that are to be sown. Needs rowSpacing.</summary>
    [Measured]
    public CountPerLengthQuantity? SeedsPerRow { get; init; }

    /// <summary>Mass per area that is sown: the answer tells what it puts down and what stand it gives.</summary>
    [Measured]
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>Mass of a thousand kernels as sown, treatment included. Exactly one of this, seedsPerMass and sample.</summary>
    [Measured]
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Seeds per mass, as a seed tag tells it.</summary>
    // The lower end is the heaviest kernel that is taken, 5000 g/1000.
    [Measured(200, 1_000_000_000, "/kg")]
    public CountPerMassQuantity? SeedsPerMass { get; init; }

    /// <summary>A sample that was counted and weighed.</summary>
    public SampleOfSeed? Sample { get; init; }

    /// <summary>Standard uncertainty of the kernel mass, relative; goes into the interval of the stand.</summary>
    [Measured(0, 50, "%", ExcludesLeast = true)]
    public RatioQuantity? KernelMassUncertainty { get; init; }

    /// <summary>Share of the pure seeds that germinate.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Germination { get; init; }

    /// <summary>Seeds in the germination test, for example 400; gives its uncertainty.</summary>
    [Whole(10, 1_000_000)]
    public int? GerminationSeedsTested { get; init; }

    /// <summary>Field emergence: plants per seed that can germinate. Goes with germination, never with survival.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Emergence { get; init; }

    /// <summary>Lowest and highest emergence that you think possible, around the emergence; gives its uncertainty.</summary>
    public ShareRange? EmergenceRange { get; init; }

    /// <summary>
    /// Plants per pure seed, germination included, as many tables print it. Takes the place of germination and emergence.
    /// </summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Survival { get; init; }

    /// <summary>Lowest and highest survival that you think possible, around the survival; gives its uncertainty.</summary>
    public ShareRange? SurvivalRange { get; init; }

    /// <summary>Share of the mass that is pure seed.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.Purity))]
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Purity { get; init; }

    /// <summary>The crop; kernel mass, germination and emergence are compared with what is published for it.</summary>
    [Word(typeof(Crop))]
    public string? Crop { get; init; }

    /// <summary>Distance between two rows; gives seeds and plants per length of row.</summary>
    [Measured(0, 10, "m", ExcludesLeast = true)]
    public LengthQuantity? RowSpacing { get; init; }

    /// <summary>Area to be sown; gives seed, packages and cost for it.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }

    /// <summary>How the seed is packed.</summary>
    public PackageOfSeed? Package { get; init; }

    /// <summary>Price of the seed by mass. Give this or the price of a package.</summary>
    public Price? Price { get; init; }

    /// <summary>A rate that you have from elsewhere; the answer compares it. Not with rate.</summary>
    [Measured]
    public RateFromElsewhere? StatedRate { get; init; }
}

/// <summary>Seeds that were counted and weighed together.</summary>
public sealed class SampleOfSeed
{
    /// <summary>Seeds counted.</summary>
    [Needed, Whole(1, 10_000_000)]
    public int? Seeds { get; init; }

    /// <summary>Their mass together.</summary>
    [Needed, Measured]
    public MassQuantity? Mass { get; init; }
}

/// <summary>Two shares, the lower one first.</summary>
[CheckedBy(typeof(ShareRangeValidator))]
public sealed class ShareRange
{
    /// <summary>The lower one.</summary>
    [Needed, Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Minimum { get; init; }

    /// <summary>The higher one.</summary>
    [Needed, Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Maximum { get; init; }
}

/// <summary>A bag or box of seed: of a mass or of a count of pure seeds, exactly one of the two.</summary>
[CheckedBy(typeof(PackageOfSeedValidator))]
public sealed class PackageOfSeed
{
    /// <summary>Mass of the seed in one package.</summary>
    [Measured]
    public MassQuantity? Mass { get; init; }

    /// <summary>Pure seeds in one package.</summary>
    [Number(1, 1_000_000_000)]
    public double? Seeds { get; init; }

    /// <summary>Price of one package.</summary>
    public PackagePrice? Price { get; init; }
}

/// <summary>A price of one package.</summary>
public sealed class PackagePrice
{
    /// <summary>Amount of money.</summary>
    [Needed, Number(0, 1_000_000_000)]
    public double? Value { get; init; }

    /// <summary>ISO 4217 currency code, for example EUR.</summary>
    [Needed, CurrencyCode]
    public string? Currency { get; init; }
}

/// <summary>A rate from a table, a label or a sum on paper.</summary>
public sealed class RateFromElsewhere : MassPerAreaQuantity
{
    /// <summary>
    /// How it was made, where known: <c>divide-by-ten</c> is the trade's shortcut for lb/ac (plants per square foot times grams per
    /// thousand over survival over 10), <c>exact-units</c> has no such shortcut in it. Left out, a rate in lb/ac is judged by how far it is
    /// off.
    /// </summary>
    [Word(typeof(RateOrigin))]
    public string? MadeBy { get; init; }
}
