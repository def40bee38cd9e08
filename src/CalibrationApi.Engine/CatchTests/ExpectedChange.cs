using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>How far a test lies from what was expected of it.</summary>
/// <param name="Expected">The mass per revolution expected: the value in force, the value predicted for this lot, or the start
/// value.</param>
/// <param name="IsPredicted">True where another lot lets another value be expected than the one in force.</param>
/// <param name="Delta">k / k_expected - 1.</param>
/// <param name="Limit">Change from which one set-up is not enough, relative.</param>
public sealed record ExpectedChange(MassPerRevolution Expected, bool IsPredicted, double Delta, double Limit)
{
    // A prediction is ordinarily this many standard uncertainties off.
    private const double OrdinaryDeviations = 2;

    /// <summary>So large a change is never adopted on one set-up: catches of one set-up share its mistakes.</summary>
    public bool IsLarge => !Threshold.IsBelow(Math.Abs(Delta), Limit);

    /// <summary>Compares.</summary>
    /// <param name="value">What the test found, kg per revolution.</param>
    /// <param name="reference">The value in force or the start value.</param>
    /// <param name="predicted">The value predicted for another lot; null for the same lot, or when nothing is known of the other
    /// one.</param>
    /// <param name="limit">Change from which a second test is asked for, relative.</param>
    /// <remarks>Twice its own uncertainty is no surprise of a prediction or a start value, so that the limit is at least that.</remarks>
    internal static ExpectedChange Of(double value, ReferenceValue reference, PredictedValue? predicted, double limit)
    {
        if (predicted is { } lot)
            return new(lot.Value, true, value / lot.Value.KilogramsPerRevolution - 1, Widened(limit, lot.StandardUncertainty));
        return new(
            reference.Value,
            false,
            value / reference.Value.KilogramsPerRevolution - 1,
            reference.Kind == ReferenceKind.StartValue ? Widened(limit, reference.StandardUncertainty) : limit
        );
    }

    private static double Widened(double limit, double uncertainty) => Math.Max(limit, OrdinaryDeviations * uncertainty);
}
