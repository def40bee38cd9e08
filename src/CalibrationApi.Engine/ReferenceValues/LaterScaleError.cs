using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.ReferenceValues;

/// <summary>The error of the scale behind a value, found only after the value was.</summary>
/// <param name="Error">What the scale showed over what was on it, less 1, relative; beyond what was corrected when the value was found.
/// Above -1.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, relative, at least 0.</param>
/// <remarks>
/// <para>Range: errors above -1, uncertainties at least 0; a change that was not detected is explained by nothing.</para>
/// <para>Source: our own derivation.</para>
/// <para>Accuracy: 1e-12 for the change it makes (LaterScaleErrorTests).</para>
/// </remarks>
public sealed record LaterScaleError(double Error, double StandardUncertainty)
{
    /// <summary>The error beyond one that was corrected when the value was found.</summary>
    /// <param name="found">The error found later, relative, above -1.</param>
    /// <param name="corrected">The error corrected then, relative, above -1; 0 when none was.</param>
    /// <remarks>Formula: (1 + e) / (1 + c) - 1.</remarks>
    public static double Beyond(double found, double corrected) => (1 + found) / (1 + corrected) - 1;

    /// <summary>The error beyond one that was corrected, as far as it is counted.</summary>
    /// <param name="found">The error found later, relative, above -1.</param>
    /// <param name="uncertainty">Standard uncertainty of that, relative, at least 0.</param>
    /// <param name="corrected">The error corrected when the value was found, relative, above -1; 0 when none was.</param>
    /// <remarks>
    /// <para>Formula: <see cref="Beyond"/> within -0.2 to 0.2 and the uncertainty up to 0.2 (<see cref="KnownScaleError.Most"/>): evidence is
    /// kept whatever the history says, so what it says stays inside what a question may state.</para>
    /// </remarks>
    public static LaterScaleError Counted(double found, double uncertainty, double corrected) =>
        new(Math.Clamp(Beyond(found, corrected), -KnownScaleError.Most, KnownScaleError.Most), Math.Min(uncertainty, KnownScaleError.Most));

    /// <summary>The change that this error alone makes of a meter that has not changed.</summary>
    /// <remarks>Formula: 1 / (1 + e) - 1, relative.</remarks>
    public double ChangeItMakes => 1 / (1 + Error) - 1;
}
