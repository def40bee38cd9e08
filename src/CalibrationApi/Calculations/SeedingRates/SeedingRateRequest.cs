using CalibrationApi.Contract;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Quantities;

namespace CalibrationApi.Calculations.SeedingRates;

/// <summary>What is fixed of a seeding rate (exactly one of targetStand, seedsPerArea, germinableSeedsPerArea, seedsPerRow and rate), and what is known of the seed.</summary>
public sealed class SeedingRateRequest
{
    /// <summary>Plants per area that are to stand. Needs germination and emergence, or survival.</summary>
    public CountPerAreaQuantity? TargetStand { get; init; }

    /// <summary>Pure seeds per area that are to be sown.</summary>
    public CountPerAreaQuantity? SeedsPerArea { get; init; }

    /// <summary>Pure seeds per area that can germinate and are to be sown: seeds times germination. Needs germination.</summary>
    public CountPerAreaQuantity? GerminableSeedsPerArea { get; init; }

    /// <summary>Pure seeds per length of row that are to be sown. Needs rowSpacing.</summary>
    public CountPerLengthQuantity? SeedsPerRow { get; init; }

    /// <summary>Mass per area that is sown: the answer tells what it puts down and what stand it gives.</summary>
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>Mass of a thousand kernels as sown, treatment included. Exactly one of this, seedsPerMass and sample.</summary>
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Seeds per mass, as a seed tag tells it.</summary>
    public CountPerMassQuantity? SeedsPerMass { get; init; }

    /// <summary>A sample that was counted and weighed.</summary>
    public SampleOfSeed? Sample { get; init; }

    /// <summary>Standard uncertainty of the kernel mass, relative; goes into the interval of the stand.</summary>
    public RatioQuantity? KernelMassUncertainty { get; init; }

    /// <summary>Share of the pure seeds that germinate.</summary>
    public RatioQuantity? Germination { get; init; }

    /// <summary>Seeds in the germination test, for example 400; gives its uncertainty.</summary>
    public int? GerminationSeedsTested { get; init; }

    /// <summary>Field emergence: plants per seed that can germinate. Goes with germination, never with survival.</summary>
    public RatioQuantity? Emergence { get; init; }

    /// <summary>Lowest and highest emergence that you think possible, around the emergence; gives its uncertainty.</summary>
    public ShareRange? EmergenceRange { get; init; }

    /// <summary>Plants per pure seed, germination included, as many tables print it. Takes the place of germination and emergence.</summary>
    public RatioQuantity? Survival { get; init; }

    /// <summary>Lowest and highest survival that you think possible, around the survival; gives its uncertainty.</summary>
    public ShareRange? SurvivalRange { get; init; }

    /// <summary>Share of the mass that is pure seed.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.Purity))]
    public RatioQuantity? Purity { get; init; }

    /// <summary>The crop; kernel mass, germination and emergence are compared with what is published for it.</summary>
    public string? Crop { get; init; }

    /// <summary>Distance between two rows; gives seeds and plants per length of row.</summary>
    public LengthQuantity? RowSpacing { get; init; }

    /// <summary>Area to be sown; gives seed, packages and cost for it.</summary>
    public AreaQuantity? Area { get; init; }

    /// <summary>How the seed is packed.</summary>
    public PackageOfSeed? Package { get; init; }

    /// <summary>Price of the seed by mass. Give this or the price of a package.</summary>
    public Price? Price { get; init; }

    /// <summary>A rate that you have from elsewhere; the answer compares it. Not with rate.</summary>
    public RateFromElsewhere? StatedRate { get; init; }
}

/// <summary>Seeds that were counted and weighed together.</summary>
public sealed class SampleOfSeed
{
    /// <summary>Seeds counted.</summary>
    public int? Seeds { get; init; }

    /// <summary>Their mass together.</summary>
    public MassQuantity? Mass { get; init; }
}

/// <summary>Two shares, the lower one first.</summary>
public sealed class ShareRange
{
    /// <summary>The lower one.</summary>
    public RatioQuantity? Lowest { get; init; }

    /// <summary>The higher one.</summary>
    public RatioQuantity? Highest { get; init; }
}

/// <summary>A bag or box of seed: of a mass or of a count of pure seeds, exactly one of the two.</summary>
public sealed class PackageOfSeed
{
    /// <summary>Mass of the seed in one package.</summary>
    public MassQuantity? Mass { get; init; }

    /// <summary>Pure seeds in one package.</summary>
    public double? Seeds { get; init; }

    /// <summary>Price of one package.</summary>
    public PackagePrice? Price { get; init; }
}

/// <summary>A price of one package.</summary>
public sealed class PackagePrice
{
    /// <summary>Amount of money.</summary>
    public double? Value { get; init; }

    /// <summary>ISO 4217 currency code, for example EUR.</summary>
    public string? Currency { get; init; }
}

/// <summary>A rate from a table, a label or a sum on paper.</summary>
public sealed class RateFromElsewhere : MassPerAreaQuantity
{
    /// <summary>How it was made, where known: <c>divide-by-ten</c> is the trade's shortcut for lb/ac (plants per square foot times grams per thousand over survival over 10), <c>exact-units</c> has no such shortcut in it. Left out, a rate in lb/ac is judged by how far it is off.</summary>
    public string? MadeBy { get; init; }
}
