using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.StandCounts;

/// <summary>Plants counted at some spots of a field, and what is known about what was sown there.</summary>
[CheckedBy(typeof(StandCountRequestValidator))]
public sealed class StandCountRequest
{
    internal const int MostCounts = 200;

    /// <summary>The ground of each count that does not name its own: how long a row, how large a frame or hoop.</summary>
    public GroundOfCount? Ground { get; init; }

    /// <summary>The counts.</summary>
    [Needed, Items(1, MostCounts)]
    public IReadOnlyList<CountOfPlants?>? Counts { get; init; }

    /// <summary>What was sown; gives survival and, with germination, emergence.</summary>
    public SownSeed? Sown { get; init; }

    /// <summary>The share of seeds expected before counting; the answer shrinks the counted one towards it.</summary>
    public PriorOfShare? Prior { get; init; }

    /// <summary>The stand that was aimed at.</summary>
    [Measured]
    public CountPerAreaQuantity? TargetStand { get; init; }

    /// <summary>The stand below which something would be done.</summary>
    [Measured]
    public CountPerAreaQuantity? MinimumStand { get; init; }

    /// <summary>A stand that somebody made of these counts; it is compared, and known shortcuts are named.</summary>
    [Measured]
    public CountPerAreaQuantity? StatedStand { get; init; }

    /// <summary>Half width of the interval over the stand that is wanted; gives the number of counts.</summary>
    [Default(typeof(StandCountDefaults), nameof(StandCountDefaults.WantedPrecision))]
    [Measured(1, 100, "%")]
    public RatioQuantity? WantedPrecision { get; init; }

    /// <summary>
    /// Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM
    /// 100:2008.
    /// </summary>
    [Number(0.5, 0.9999)]
    public double? CoverageProbability { get; init; }
}

/// <summary>The plants of one spot.</summary>
public sealed class CountOfPlants
{
    /// <summary>Plants counted; none is a count too.</summary>
    [Needed, Whole(0, 100_000)]
    public int? Plants { get; init; }

    /// <summary>The ground of this count, where it differs from that of the others.</summary>
    public GroundOfCount? Ground { get; init; }

    /// <summary>The row or opener where it was counted, in the words of the counter; counts of one row say less.</summary>
    [Text(Rules.LongestName)]
    public string? Row { get; init; }
}

/// <summary>The ground of a count, in one of four forms: rowLength with rowSpacing, length with width, area, or hoopDiameter.</summary>
[CheckedBy(typeof(GroundOfCountValidator))]
public sealed class GroundOfCount
{
    /// <summary>Length counted along each row.</summary>
    [Measured(0.01, 1000, "m")]
    public LengthQuantity? RowLength { get; init; }

    /// <summary>Distance from row to row; goes with rowLength.</summary>
    [Measured(0.01, 10, "m")]
    public LengthQuantity? RowSpacing { get; init; }

    /// <summary>Rows counted side by side. Default 1: common practice.</summary>
    [Whole(1, 1000)]
    public int? Rows { get; init; }

    /// <summary>One side of a frame.</summary>
    [Measured(0.01, 1000, "m")]
    public LengthQuantity? Length { get; init; }

    /// <summary>The other side of it.</summary>
    [Measured(0.01, 1000, "m")]
    public LengthQuantity? Width { get; init; }

    /// <summary>Area of a frame.</summary>
    [Measured(0.001, 100_000, "m2")]
    public AreaQuantity? Area { get; init; }

    /// <summary>Inside diameter of a hoop.</summary>
    [Measured(0.01, 10, "m")]
    public LengthQuantity? HoopDiameter { get; init; }

    /// <summary>What the frame or hoop is called, for example a quarter of a square metre; it is checked and not computed with.</summary>
    [Measured(0.001, 100_000, "m2")]
    public AreaQuantity? CalledArea { get; init; }
}

/// <summary>What was sown, as seeds per area or as a mass per area with the mass of a kernel.</summary>
[CheckedBy(typeof(SownSeedValidator))]
public sealed class SownSeed
{
    /// <summary>Pure seeds sown per area. Give this, or rate with thousandKernelMass.</summary>
    [Measured]
    public CountPerAreaQuantity? SeedsPerArea { get; init; }

    /// <summary>Mass sown per area.</summary>
    [Measured]
    public MassPerAreaQuantity? Rate { get; init; }

    /// <summary>Thousand-kernel mass of the seed as sown; goes with rate.</summary>
    [Measured]
    public MassPerThousandQuantity? ThousandKernelMass { get; init; }

    /// <summary>Share of the mass that is pure seed; goes with rate.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.Purity))]
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Purity { get; init; }

    /// <summary>Germination; with it emergence is told beside survival.</summary>
    [Measured(0, 100, "%", ExcludesLeast = true)]
    public RatioQuantity? Germination { get; init; }

    /// <summary>Relative standard uncertainty of the seeds that were put down.</summary>
    [Default(typeof(SownSeedDefaults), nameof(SownSeedDefaults.MeteringUncertainty))]
    [Measured(0, 50, "%")]
    public RatioQuantity? Uncertainty { get; init; }
}

/// <summary>A share of seeds expected before counting.</summary>
[CheckedBy(typeof(PriorOfShareValidator))]
public sealed class PriorOfShare
{
    /// <summary>Which share: <c>survival</c> (plants per pure seed) or <c>emergence</c> (plants per viable seed).</summary>
    [Needed, Word(typeof(SeedReading))]
    public string? Reading { get; init; }

    /// <summary>Its mean.</summary>
    [Needed, Measured(1, 99.9, "%")]
    public RatioQuantity? Mean { get; init; }

    /// <summary>Its standard deviation from field to field and season to season.</summary>
    [Needed, Measured(0.1, 50, "%")]
    public RatioQuantity? Spread { get; init; }
}
