using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>
/// A product whose bulk density is wanted. At most one of weighed, testWeight, filledTank and statedDensity; without any, a reference gives
/// a value to start from.
/// </summary>
[CheckedBy(typeof(BulkDensityRequestValidator))]
public sealed class BulkDensityRequest
{
    /// <summary>What the owner calls the product.</summary>
    [Text(Rules.LongestName)]
    public string? Product { get; init; }

    /// <summary>The material whose published densities are compared; needed where nothing else is given.</summary>
    [Word(typeof(ReferenceMaterial))]
    public string? Reference { get; init; }

    /// <summary>Weighings of a container of known volume; the best evidence.</summary>
    public WeighedVolumeOfProduct? Weighed { get; init; }

    /// <summary>A test weight, for example from the elevator. A bushel is always named.</summary>
    [Measured]
    public TestWeightOfProduct? TestWeight { get; init; }

    /// <summary>A tank that was filled with a known mass.</summary>
    public FilledTankOfProduct? FilledTank { get; init; }

    /// <summary>A density that somebody stated; it is challenged when it is far from what is published for the reference.</summary>
    [Measured]
    public StatedDensityOfProduct? StatedDensity { get; init; }

    /// <summary>Standard uncertainty of one lot about a published value, where nothing but the reference is given.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Published))]
    [Measured(0, 50, "%")]
    public RatioQuantity? LotToLot { get; init; }

    /// <summary>A tank to be filled with the product: what does it hold, and how far does that go?</summary>
    public TankOfProduct? Tank { get; init; }

    /// <summary>
    /// Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM
    /// 100:2008.
    /// </summary>
    [Number(0.5, 0.9999)]
    public double? CoverageProbability { get; init; }
}

/// <summary>Weighings of one container, filled anew and struck off level each time.</summary>
[CheckedBy(typeof(WeighedVolumeOfProductValidator))]
public sealed class WeighedVolumeOfProduct
{
    internal const int MostWeighings = 50;

    /// <summary>Volume of the container.</summary>
    [Needed, Measured]
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Largest error of that volume.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.ContainerVolume))]
    [Measured(0, 50, "%")]
    public RatioQuantity? VolumeTolerance { get; init; }

    /// <summary>The scale.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.UnstatedScale))]
    public ScaleOfTest? Scale { get; init; }

    /// <summary>Mass of the empty container, read once for all weighings.</summary>
    [Measured]
    public MassQuantity? SharedTare { get; init; }

    /// <summary>Standard deviation of one filling.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Repeatability))]
    [Measured(0.01, 30, "%")]
    public RatioQuantity? Repeatability { get; init; }

    /// <summary>The weighings.</summary>
    [Needed, Items(1, MostWeighings)]
    public IReadOnlyList<WeighingOfProduct?>? Weighings { get; init; }
}

/// <summary>One weighing, as gross and tare (or the sharedTare) or as net.</summary>
public sealed class WeighingOfProduct
{
    /// <summary>Mass with the container.</summary>
    [Measured]
    public MassQuantity? Gross { get; init; }

    /// <summary>Mass of the empty container.</summary>
    [Measured]
    public MassQuantity? Tare { get; init; }

    /// <summary>Net mass, where the scale was zeroed with the container.</summary>
    [Measured]
    public MassQuantity? Net { get; init; }
}

/// <summary>A test weight.</summary>
public sealed class TestWeightOfProduct : BulkDensityQuantity
{
    /// <summary>Its standard uncertainty as the density in a tank.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.TestWeight))]
    [Measured(0, 50, "%")]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>A density that somebody stated.</summary>
public sealed class StatedDensityOfProduct : BulkDensityQuantity
{
    /// <summary>Its standard uncertainty.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Stated))]
    [Measured(0, 50, "%")]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>A tank that was filled.</summary>
[CheckedBy(typeof(FilledTankOfProductValidator))]
public sealed class FilledTankOfProduct
{
    /// <summary>Mass filled in.</summary>
    [Needed, Measured]
    public MassQuantity? Mass { get; init; }

    /// <summary>Volume that it took.</summary>
    [Needed, Measured]
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Largest error of the mass.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.FilledMass))]
    [Measured(0, 50, "%")]
    public RatioQuantity? MassTolerance { get; init; }

    /// <summary>Largest error of the volume.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.TankVolume))]
    [Measured(0, 50, "%")]
    public RatioQuantity? VolumeTolerance { get; init; }
}

/// <summary>A tank to be filled.</summary>
public sealed class TankOfProduct
{
    /// <summary>Its volume, taken as exact.</summary>
    [Needed, Measured]
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Share of it that is filled.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Fill))]
    [Measured(1, 100, "%")]
    public RatioQuantity? Fill { get; init; }

    /// <summary>Rate at which its content is put down; gives the area of a fill.</summary>
    [Measured]
    public MassPerAreaQuantity? TargetRate { get; init; }
}
