using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.CatchTests;

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
    /// <summary>The change that this error alone makes of a meter that has not changed.</summary>
    /// <remarks>Formula: 1 / (1 + e) - 1, relative.</remarks>
    public double ChangeItMakes => 1 / (1 + Error) - 1;

    /// <summary>
    /// A change was found, and it is nearer to the one that this error makes than its own uncertainty and that of the error.
    /// </summary>
    /// <param name="change">The change, from a value that this scale weighed.</param>
    /// <remarks>
    /// <para>Formula: |ln(1 + delta) + ln(1 + e)| &lt;= sqrt(U(delta)^2 + (z u(e))^2).</para>
    /// <para>Source: our own derivation; judgement where the day-to-day part already stands in U.</para>
    /// <para>Accuracy: errors of the right size and sign, and of others (LaterScaleErrorTests).</para>
    /// </remarks>
    public bool Explains(ChangeAgainstReference change)
    {
        if (!change.IsDetected)
            return false;
        var z = StudentT.CoverageFactor(change.Delta.CoverageProbability, double.PositiveInfinity);
        var allowed = Math.Sqrt(
            Math.Pow(change.Delta.ExpandedUncertainty / (1 + change.Delta.Value), 2) + Math.Pow(z * StandardUncertainty, 2)
        );
        return Math.Abs(Math.Log(1 + change.Delta.Value) + Math.Log(1 + Error)) <= allowed && Error * change.Delta.Value < 0;
    }

    /// <summary>The change in words, with both numbers.</summary>
    internal FormattableString InWords(ChangeAgainstReference change) =>
        $"The scale behind {(change.Reference.Kind == ReferenceKind.ValueInForce ? "the value in force" : "the start value")} showed {new Ratio(Math.Abs(Error)):F1} too {(Error > 0 ? "much" : "little")}, as was found later. That alone makes {MoreOrLess(ChangeItMakes)} per revolution; this test shows {MoreOrLess(change.Delta.Value)}.";

    /// <summary>The finding.</summary>
    internal Finding AsFinding(ChangeAgainstReference change) => Finding.Warning(FindingCode.OldScaleExplainsChange, InWords(change));

    private static FormattableString MoreOrLess(double change) =>
        change >= 0 ? (FormattableString)$"{new Ratio(change):F1} more" : $"{new Ratio(-change):F1} less";
}
