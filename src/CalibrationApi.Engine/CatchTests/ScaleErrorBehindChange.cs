using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>Whether an error of the old scale, found only later, explains a change.</summary>
public static class ScaleErrorBehindChange
{
    /// <summary>
    /// A change was found, and it is nearer to the one that this error makes than its own uncertainty and that of the error.
    /// </summary>
    /// <param name="error">The error found later.</param>
    /// <param name="change">The change, from a value that this scale weighed.</param>
    /// <remarks>
    /// <para>Formula: |ln(1 + delta) + ln(1 + e)| &lt;= sqrt(U(delta)^2 + (z u(e))^2).</para>
    /// <para>Range: errors above -1, uncertainties at least 0; a change that was not detected is explained by nothing.</para>
    /// <para>Source: our own derivation; judgement where the day-to-day part already stands in U.</para>
    /// <para>Accuracy: errors of the right size and sign, and of others (LaterScaleErrorTests).</para>
    /// </remarks>
    public static bool Explains(this LaterScaleError error, ChangeAgainstReference change)
    {
        if (!change.IsDetected)
            return false;
        var z = StudentT.CoverageFactor(change.Delta.CoverageProbability, double.PositiveInfinity);
        var allowed = Math.Sqrt(
            Math.Pow(change.Delta.ExpandedUncertainty / (1 + change.Delta.Value), 2) + Math.Pow(z * error.StandardUncertainty, 2)
        );
        return Math.Abs(Math.Log(1 + change.Delta.Value) + Math.Log(1 + error.Error)) <= allowed && error.Error * change.Delta.Value < 0;
    }

    /// <summary>The change in words, with both numbers.</summary>
    internal static Sentence InWords(this LaterScaleError error, ChangeAgainstReference change) =>
        $"The scale behind {(change.Reference.Kind == ReferenceKind.ValueInForce ? "the value in force" : "the start value")} showed {new Ratio(Math.Abs(error.Error)):F1} too {(error.Error > 0 ? "much" : "little")}, as was found later. That alone makes {MoreOrLess(error.ChangeItMakes)} per revolution; this test shows {MoreOrLess(change.Delta.Value)}.";

    /// <summary>The finding.</summary>
    internal static Finding AsFinding(this LaterScaleError error, ChangeAgainstReference change) =>
        Finding.Warning(CatchTestCodes.OldScaleExplainsChange, error.InWords(change));

    private static Sentence MoreOrLess(double change) =>
        change >= 0 ? (Sentence)$"{new Ratio(change):F1} more" : $"{new Ratio(-change):F1} less";
}
