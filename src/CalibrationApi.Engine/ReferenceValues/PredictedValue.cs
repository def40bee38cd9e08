using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ReferenceValues;

/// <summary>What another lot is expected to give where that is not what the value in force says.</summary>
/// <param name="Value">kg per revolution, above 0.</param>
/// <param name="RelativeUncertainty">Its standard uncertainty, relative; null when unknown.</param>
public sealed record PredictedValue(MassPerRevolution Value, double? RelativeUncertainty = null)
{
    /// <summary>
    /// Standard uncertainty of a value predicted for another lot that states none, relative; judgement, no published source.
    /// </summary>
    public const double DefaultUncertainty = 0.05;

    /// <summary>The stated standard uncertainty, relative, or the default.</summary>
    public double StandardUncertainty => RelativeUncertainty ?? DefaultUncertainty;
}
