using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>
/// A metering element and a product. The fill efficiency is stated, or learnedFrom an earlier product, or taken by default.
/// </summary>
[CheckedBy(typeof(VolumeCheckRequestValidator))]
public sealed class VolumeCheckRequest
{
    /// <summary>What the owner calls the element.</summary>
    [Text(Rules.LongestName)]
    public string? Element { get; init; }

    /// <summary>
    /// How the element carries product: <c>closed-pockets</c> that are struck off (no more than 105 % of them can come out),
    /// <c>open-flutes</c> or an <c>auger</c> (up to 160 %, because a layer beyond them is dragged along; judgement). Default not known,
    /// which allows as much as open flutes.
    /// </summary>
    [Word(typeof(ElementKind))]
    public string? ElementKind { get; init; }

    /// <summary>Volume that one revolution of the element sweeps.</summary>
    [Needed, Measured(0, 1000, "L", ExcludesLeast = true)]
    public DisplacementOfElement? Displacement { get; init; }

    /// <summary>Bulk density of the product.</summary>
    [Needed, Measured]
    public DensityOfProduct? BulkDensity { get; init; }

    /// <summary>Share of the swept volume that product fills; a little above 100 % where it settles.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.FillEfficiency))]
    [Measured(1, 200, "%")]
    public RatioQuantity? FillEfficiency { get; init; }

    /// <summary>How sure the fill efficiency is.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.Spread))]
    [Measured(0, 100, "%")]
    public RatioQuantity? FillEfficiencySpread { get; init; }

    /// <summary>An earlier product on the same element, from which the fill efficiency is learned.</summary>
    public EarlierProduct? LearnedFrom { get; init; }

    /// <summary>A mass per revolution to be checked.</summary>
    [Measured]
    public MassPerRevolutionToCheck? MassPerRevolution { get; init; }

    /// <summary>
    /// Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM
    /// 100:2008.
    /// </summary>
    [Number(0.5, 0.9999)]
    public double? CoverageProbability { get; init; }
}

/// <summary>The volume that one revolution sweeps.</summary>
public sealed class DisplacementOfElement : VolumeQuantity
{
    /// <summary>Its standard uncertainty.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.Displacement))]
    [Measured(0, 100, "%")]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>A bulk density.</summary>
public sealed class DensityOfProduct : BulkDensityQuantity
{
    /// <summary>Its standard uncertainty.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.Density))]
    [Measured(0, 100, "%")]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>An earlier product on the same element.</summary>
public sealed class EarlierProduct
{
    /// <summary>The mass per revolution that was found with it.</summary>
    [Needed, Measured]
    public EarlierMassPerRevolution? MassPerRevolution { get; init; }

    /// <summary>Its bulk density.</summary>
    [Needed, Measured]
    public DensityOfProduct? BulkDensity { get; init; }

    /// <summary>How much the fill efficiency of one element changes from one product to another.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.ProductToProduct))]
    [Measured(0, 100, "%")]
    public RatioQuantity? Spread { get; init; }
}

/// <summary>A mass per revolution that was found earlier.</summary>
public class EarlierMassPerRevolution : MassPerRevolutionQuantity
{
    /// <summary>Its standard uncertainty.</summary>
    [Default(typeof(ElementDefaults), nameof(ElementDefaults.MassPerRevolution))]
    [Measured(0, 100, "%")]
    public RatioQuantity? RelativeUncertainty { get; init; }
}

/// <summary>A mass per revolution to be checked.</summary>
public sealed class MassPerRevolutionToCheck : EarlierMassPerRevolution
{
    /// <summary>True when the controller uses it now; otherwise it was measured. Default false.</summary>
    public bool? InForce { get; init; }
}
