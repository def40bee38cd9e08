using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>A measured quantity with its uncertainty; names as open metrology formats use them.</summary>
public abstract class MeasuredQuantity<T> : Quantity<T>
    where T : struct, IQuantity<T>
{
    /// <summary>Half width of the coverage interval, in the unit beside it.</summary>
    public required double ExpandedUncertainty { get; init; }

    /// <summary>Factor by which the standard uncertainty was expanded.</summary>
    public required double CoverageFactor { get; init; }

    /// <summary>Probability that the interval covers the true value.</summary>
    public required double CoverageProbability { get; init; }

    /// <summary>
    /// Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt. The coverage
    /// factor is not looked up with them: scatter and the parts known beforehand are expanded each with its own factor.
    /// </summary>
    public double? DegreesOfFreedom { get; init; }
}

/// <summary>A measured rate with its uncertainty.</summary>
public sealed class MeasuredMassPerArea : MeasuredQuantity<MassPerArea>;

/// <summary>A measured number of pulses per distance with its uncertainty.</summary>
public sealed class MeasuredPulsesPerDistance : MeasuredQuantity<PulsesPerDistance>;

/// <summary>A measured length with its uncertainty.</summary>
public sealed class MeasuredLength : MeasuredQuantity<Length>;

/// <summary>Writes measured values of further dimensions in the units of an answer.</summary>
internal static class MeasuredAnswers
{
    public static MeasuredMassPerArea MeasuredRate(this AnswerUnits units, MeasuredValue value)
    {
        var (unit, shown, expanded, degrees) = Written(units, Dimension.MassPerArea, value);
        return new MeasuredMassPerArea
        {
            Value = shown,
            Unit = unit,
            ExpandedUncertainty = expanded,
            CoverageFactor = value.CoverageFactor,
            CoverageProbability = value.CoverageProbability,
            DegreesOfFreedom = degrees,
        };
    }

    public static MeasuredPulsesPerDistance MeasuredPulses(this AnswerUnits units, MeasuredValue value)
    {
        var (unit, shown, expanded, degrees) = Written(units, Dimension.PulsesPerDistance, value);
        return new MeasuredPulsesPerDistance
        {
            Value = shown,
            Unit = unit,
            ExpandedUncertainty = expanded,
            CoverageFactor = value.CoverageFactor,
            CoverageProbability = value.CoverageProbability,
            DegreesOfFreedom = degrees,
        };
    }

    public static MeasuredLength MeasuredLength(this AnswerUnits units, MeasuredValue value)
    {
        var (unit, shown, expanded, degrees) = Written(units, Dimension.Length, value);
        return new MeasuredLength
        {
            Value = shown,
            Unit = unit,
            ExpandedUncertainty = expanded,
            CoverageFactor = value.CoverageFactor,
            CoverageProbability = value.CoverageProbability,
            DegreesOfFreedom = degrees,
        };
    }

    private static (string Unit, double Value, double Expanded, double? DegreesOfFreedom) Written(
        AnswerUnits units,
        Dimension dimension,
        MeasuredValue value
    )
    {
        var unit = units.Display[dimension];
        return (
            unit.Symbol,
            AnswerUnits.Shown(unit.FromCanonical(value.Value)),
            AnswerUnits.Shown(unit.FromCanonical(value.ExpandedUncertainty)),
            double.IsFinite(value.DegreesOfFreedom) ? value.DegreesOfFreedom : null
        );
    }
}
