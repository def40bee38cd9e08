using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Contract;
using CalibrationApi.Engine.BulkDensities;
using CalibrationApi.Quantities;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>A product whose bulk density is wanted. At most one of weighed, testWeight, filledTank and statedDensity; without any, a reference gives a value to start from.</summary>
public sealed class BulkDensityRequest
{
    /// <summary>What the owner calls the product.</summary>
    public string? Product { get; init; }

    /// <summary>The material whose published densities are compared; needed where nothing else is given.</summary>
    public string? Reference { get; init; }

    /// <summary>Weighings of a container of known volume; the best evidence.</summary>
    public WeighedVolumeOfProduct? Weighed { get; init; }

    /// <summary>A test weight, for example from the elevator. A bushel is always named.</summary>
    public TestWeightOfProduct? TestWeight { get; init; }

    /// <summary>A tank that was filled with a known mass.</summary>
    public FilledTankOfProduct? FilledTank { get; init; }

    /// <summary>A density that somebody stated; it is challenged when it is far from what is published for the reference.</summary>
    public StatedDensityOfProduct? StatedDensity { get; init; }

    /// <summary>Standard uncertainty of one lot about a published value, where nothing but the reference is given.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Published))]
    public RatioQuantity? LotToLot { get; init; }

    /// <summary>A tank to be filled with the product: what does it hold, and how far does that go?</summary>
    public TankOfProduct? Tank { get; init; }

    /// <summary>Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.</summary>
    public double? CoverageProbability { get; init; }
}

/// <summary>Weighings of one container, filled anew and struck off level each time.</summary>
public sealed class WeighedVolumeOfProduct
{
    /// <summary>Volume of the container.</summary>
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Largest error of that volume.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.ContainerVolume))]
    public RatioQuantity? VolumeTolerance { get; init; }

    /// <summary>The scale.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.UnstatedScale))]
    public ScaleOfTest? Scale { get; init; }

    /// <summary>Mass of the empty container, read once for all weighings.</summary>
    public MassQuantity? SharedTare { get; init; }

    /// <summary>Standard deviation of one filling.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Repeatability))]
    public RatioQuantity? Repeatability { get; init; }

    /// <summary>The weighings.</summary>
    public IReadOnlyList<WeighingOfProduct?>? Weighings { get; init; }
}

/// <summary>One weighing, as gross and tare (or the sharedTare) or as net.</summary>
public sealed class WeighingOfProduct
{
    /// <summary>Mass with the container.</summary>
    public MassQuantity? Gross { get; init; }

    /// <summary>Mass of the empty container.</summary>
    public MassQuantity? Tare { get; init; }

    /// <summary>Net mass, where the scale was zeroed with the container.</summary>
    public MassQuantity? Net { get; init; }
}

/// <summary>A test weight.</summary>
public sealed class TestWeightOfProduct : BulkDensityQuantity
{
    /// <summary>Its standard uncertainty as the density in a tank.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.TestWeight))]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>A density that somebody stated.</summary>
public sealed class StatedDensityOfProduct : BulkDensityQuantity
{
    /// <summary>Its standard uncertainty.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Stated))]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>A tank that was filled.</summary>
public sealed class FilledTankOfProduct
{
    /// <summary>Mass filled in.</summary>
    public MassQuantity? Mass { get; init; }

    /// <summary>Volume that it took.</summary>
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Largest error of the mass.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.FilledMass))]
    public RatioQuantity? MassTolerance { get; init; }

    /// <summary>Largest error of the volume.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.TankVolume))]
    public RatioQuantity? VolumeTolerance { get; init; }
}

/// <summary>A tank to be filled.</summary>
public sealed class TankOfProduct
{
    /// <summary>Its volume, taken as exact.</summary>
    public VolumeQuantity? Volume { get; init; }

    /// <summary>Share of it that is filled.</summary>
    [Default(typeof(BulkDensityDefaults), nameof(BulkDensityDefaults.Fill))]
    public RatioQuantity? Fill { get; init; }

    /// <summary>Rate at which its content is put down; gives the area of a fill.</summary>
    public MassPerAreaQuantity? TargetRate { get; init; }
}
