using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.ElementFits;

/// <summary>What a meter has to put down, how fast it may turn, and the metering elements at hand.</summary>
public sealed class ElementFitRequest
{
    /// <summary>Bulk density of the product.</summary>
    [Needed, Measured]
    public DensityOfProduct? BulkDensity { get; init; }

    /// <summary>Width that the meter covers: the working width, or the meter's share of it.</summary>
    [Needed, Measured(0.01, 200, "m")]
    public LengthQuantity? CoveredWidth { get; init; }

    /// <summary>Rates to be put down: one, the lowest and the highest, or all. Zero means off and is allowed beside others.</summary>
    [Needed, Items(1, 100), Measured(0, 100_000, "kg/ha")]
    public IReadOnlyList<MassPerAreaQuantity?>? Rates { get; init; }

    /// <summary>Ground speeds: one, the lowest and the highest, or all.</summary>
    [Needed, Items(1, 20), Measured(0.01, 100, "km/h")]
    public IReadOnlyList<SpeedQuantity?>? GroundSpeeds { get; init; }

    /// <summary>Speeds that the meter has to keep to: of the element, of its drive and of its gears.</summary>
    [Needed]
    public BothRotationLimits? SpeedLimits { get; init; }

    /// <summary>Share of the swept volume that product fills; a little above 100 % where it settles.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.FillEfficiency))]
    [Measured(1, 200, "%")]
    public RatioQuantity? FillEfficiency { get; init; }

    /// <summary>How sure the fill efficiency is.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.Spread))]
    [Measured(0, 100, "%")]
    public RatioQuantity? FillEfficiencySpread { get; init; }

    /// <summary>Elements that could be fitted. Without any, only the displacements are found.</summary>
    [Items(1, 50)]
    public IReadOnlyList<ElementToFit?>? Elements { get; init; }

    /// <summary>
    /// Probability with which an element should keep the meter inside its speeds. Default 0.95: common practice for expanded
    /// uncertainties, as in the examples of JCGM 100:2008.
    /// </summary>
    [Number(0.5, 0.9999)]
    public double? CoverageProbability { get; init; }
}

/// <summary>Meter speeds between which an element turns evenly and its drive keeps up; both are needed.</summary>
public sealed class BothRotationLimits
{
    /// <summary>Slowest.</summary>
    [Needed, Measured]
    public RotationQuantity? Minimum { get; init; }

    /// <summary>Fastest.</summary>
    [Needed, Measured]
    public RotationQuantity? Maximum { get; init; }
}

/// <summary>A metering element that could be fitted.</summary>
public sealed class ElementToFit
{
    /// <summary>What the owner calls it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Name { get; init; }

    /// <summary>
    /// How it carries product, and with it which volume its displacement means: <c>closed-pockets</c> that are struck off (their volume; no
    /// more can come out), <c>open-flutes</c> (their volume; a layer beyond them is dragged along) or an <c>auger</c> (the volume between
    /// shaft and edge of the flight over one turn). Default not known.
    /// </summary>
    [Word(typeof(ElementKind))]
    public string? Kind { get; init; }

    /// <summary>Volume that one revolution sweeps.</summary>
    [Needed, Measured(0, 1000, "L", ExcludesLeast = true)]
    public DisplacementOfElement? Displacement { get; init; }
}
