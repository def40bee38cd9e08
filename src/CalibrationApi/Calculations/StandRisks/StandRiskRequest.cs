using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.StandRisks;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.StandRisks;

/// <summary>A minimum stand, what is known of the seed, and how much of it may come up.</summary>
[CheckedBy(typeof(StandRiskRequestValidator))]
public sealed class StandRiskRequest
{
    /// <summary>The stand that has to be reached.</summary>
    [Needed, Measured]
    public CountPerAreaQuantity? MinimumStand { get; init; }

    /// <summary>Probability with which it has to be reached. Default 0.9, nine seasons of ten; judgement, no published source.</summary>
    [Number(0.5, 0.999)]
    public double? Probability { get; init; }

    /// <summary>Plants per viable seed; needs germination. Give this or survival.</summary>
    public ShareToCome? Emergence { get; init; }

    /// <summary>Plants per pure seed, germination being part of it. Give this or emergence.</summary>
    public ShareToCome? Survival { get; init; }

    /// <summary>Germination; goes with emergence.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Germination { get; init; }

    /// <summary>
    /// Seeds that the germination test counted. Default 400 seeds, as the international rules for seed testing count; from memory.
    /// </summary>
    [Whole(10, 1_000_000)]
    public int? GerminationSeedsTested { get; init; }

    /// <summary>Thousand-kernel mass of the seed as sown; gives rates by mass.</summary>
    [Measured]
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Relative standard uncertainty of the kernel mass.</summary>
    [Default(typeof(StandRiskDefaults), nameof(StandRiskDefaults.KernelMassUncertainty))]
    [Measured(0, 50, "%")]
    public RatioQuantity? KernelMassUncertainty { get; init; }

    /// <summary>Share of the mass that is pure seed; goes with thousandKernelMass.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.Purity))]
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Purity { get; init; }

    /// <summary>Relative standard uncertainty of what the meter puts down.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.MeteringUncertainty))]
    [Measured(0, 50, "%")]
    public RatioQuantity? MeteringUncertainty { get; init; }

    /// <summary>A rate of your own, in pure seeds per area. Give this or rate; the answer has its probability.</summary>
    [Measured]
    public CountPerAreaQuantity? SeedsPerArea { get; init; }

    /// <summary>A rate of your own by mass; needs thousandKernelMass.</summary>
    [Measured]
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>The highest rate that may be sown, in pure seeds per area. Give this or maximumRate.</summary>
    [Measured]
    public CountPerAreaQuantity? MaximumSeedsPerArea { get; init; }

    /// <summary>The highest rate that may be sown by mass; needs thousandKernelMass.</summary>
    [Measured]
    public MassPerAreaQuantity? MaximumRate { get; init; }

    /// <summary>Price of the seed; with thousandKernelMass the answer has what the margin costs.</summary>
    public Price? Price { get; init; }

    /// <summary>Area to be sown, for the cost of the margin on all of it; goes with price.</summary>
    [Measured]
    public AreaQuantity? Area { get; init; }
}

/// <summary>A share of seeds in the season to come: as mean and spread, or as counted in one stand.</summary>
[CheckedBy(typeof(ShareToComeValidator))]
public sealed class ShareToCome
{
    /// <summary>Its mean. Give mean with spread, or counted.</summary>
    [Measured(0.1, 100, "%")]
    public RatioQuantity? Mean { get; init; }

    /// <summary>Its standard deviation from field to field and season to season; goes with mean.</summary>
    [Measured(0, 50, "%")]
    public RatioQuantity? Spread { get; init; }

    /// <summary>What a stand count answered as survival or emergence.</summary>
    public CountedShare? Counted { get; init; }

    /// <summary>
    /// Standard deviation of the share from season to season, beside what the count leaves open; goes with counted. Without it the margin
    /// is too small.
    /// </summary>
    [Measured(0, 50, "%")]
    public RatioQuantity? SeasonSpread { get; init; }
}

/// <summary>A share of the seeds that was counted in a stand.</summary>
[CheckedBy(typeof(CountedShareValidator))]
public sealed class CountedShare
{
    internal const double MostCounted = 10;

    /// <summary>The estimate.</summary>
    [Needed, Measured(0.1, 100, "%")]
    public RatioQuantity? Estimate { get; init; }

    /// <summary>Lower end of its interval.</summary>
    [Needed, Measured(0, 100 * MostCounted, "%")]
    public RatioQuantity? Lower { get; init; }

    /// <summary>Upper end of its interval.</summary>
    [Needed, Measured(0, 100 * MostCounted, "%")]
    public RatioQuantity? Upper { get; init; }

    /// <summary>Coverage probability of the interval.</summary>
    [Needed, Number(0.5, 0.9999)]
    public double? CoverageProbability { get; init; }
}
