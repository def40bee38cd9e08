using System.Text.Json.Serialization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Quantities;

// Required in the contract and not by the compiler, so that one piece of code makes them all.

/// <summary>A measured quantity with its uncertainty; names as open metrology formats use them.</summary>
public abstract class MeasuredQuantity<T> : Quantity<T>
    where T : struct, IQuantity<T>
{
    /// <summary>Half width of the coverage interval, in the unit beside it.</summary>
    [JsonRequired]
    public double ExpandedUncertainty { get; set; }

    /// <summary>Factor by which the standard uncertainty was expanded.</summary>
    [JsonRequired]
    public double CoverageFactor { get; set; }

    /// <summary>Probability that the interval covers the true value.</summary>
    [JsonRequired]
    public double CoverageProbability { get; set; }

    /// <summary>
    /// Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage
    /// factor is not looked up with them: scatter and the parts known beforehand are expanded each with its own factor.
    /// </summary>
    [JsonPropertyOrder(1)]
    public virtual double? DegreesOfFreedom { get; set; }
}

/// <summary>A measured mass per revolution with its uncertainty; names as open metrology formats use them.</summary>
public sealed class MeasuredMassPerRevolution : MeasuredQuantity<MassPerRevolution>
{
    /// <summary>
    /// Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage
    /// factor is not looked up with them: the scatter of the catches and the parts known beforehand are expanded each with its own factor.
    /// </summary>
    [JsonPropertyOrder(1)]
    public override double? DegreesOfFreedom { get; set; }
}

/// <summary>A measured ratio with its uncertainty; names as open metrology formats use them.</summary>
public sealed class MeasuredRatio : MeasuredQuantity<Ratio>
{
    /// <summary>
    /// Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage
    /// factor is not looked up with them: the scatter of the catches and the parts known beforehand are expanded each with its own factor.
    /// </summary>
    [JsonPropertyOrder(1)]
    public override double? DegreesOfFreedom { get; set; }
}

/// <summary>A measured rate with its uncertainty.</summary>
public sealed class MeasuredMassPerArea : MeasuredQuantity<MassPerArea>;

/// <summary>A measured number of pulses per distance with its uncertainty.</summary>
public sealed class MeasuredPulsesPerDistance : MeasuredQuantity<PulsesPerDistance>;

/// <summary>A measured length with its uncertainty.</summary>
public sealed class MeasuredLength : MeasuredQuantity<Length>;
