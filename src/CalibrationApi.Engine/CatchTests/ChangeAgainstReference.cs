using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>A test compared with the value in force or the start value. Two questions, kept apart.</summary>
public sealed record ChangeAgainstReference
{
    /// <summary>What it was compared with.</summary>
    public required ReferenceValue Reference { get; init; }

    /// <summary>Has the meter changed since? Delta = k / k_reference - 1, relative, with its interval.</summary>
    public required MeasuredValue Delta { get; init; }

    /// <summary>Is the number good enough? Probability that the true mass per revolution lies within the tolerance of it.</summary>
    public required double ProbabilityWithinTolerance { get; init; }

    /// <summary>Old and new value combined, kg per revolution; null when the old uncertainty is unknown or a change was detected.</summary>
    public MeasuredValue? Combined { get; init; }

    /// <summary>The interval of the change leaves out zero.</summary>
    public bool IsDetected => Math.Abs(Delta.Value) > Delta.ExpandedUncertainty;

    /// <remarks>
    /// The change: on the same scale with the same check the span error cancels; on another scale it enters. The uncertainty of the old
    /// value enters as stated, or as the default of its kind. The tolerance: the number typed in is exact, so the span error enters whole
    /// and the old uncertainty does not (JCGM 106:2012 with the distribution of the interval). The day-to-day component enters both, once
    /// for the test.
    /// </remarks>
    internal static ChangeAgainstReference Of(
        MassPerRevolutionEstimate estimate,
        ReferenceValue reference,
        double dayToDay,
        double tolerance,
        double coverage
    )
    {
        var ratio = estimate.Value.Value / reference.Value.KilogramsPerRevolution;
        var day = dayToDay * dayToDay;
        var old = reference.StandardUncertainty * reference.StandardUncertainty;
        var changeVariance =
            estimate.VarianceWithoutSpan + day + old + (reference.FromAnotherScale is true ? estimate.Span * estimate.Span : 0);
        var delta = MeasuredValue.Create(ratio - 1, estimate.UncertaintyOf(changeVariance).Times(ratio), coverage);

        var truthVariance = estimate.RelativeVariance + day;
        var probability = Conformance.Probability(ratio, estimate.UncertaintyOf(truthVariance).Times(ratio), 1 - tolerance, 1 + tolerance);

        var change = new ChangeAgainstReference
        {
            Reference = reference,
            Delta = delta,
            ProbabilityWithinTolerance = probability,
        };
        return reference.RelativeUncertainty is { } known && known > 0 && !change.IsDetected
            ? change with
            {
                Combined = Combine(estimate, reference, known * known + day, day, coverage),
            }
            : change;
    }

    // Inverse-variance mean of the aged old value and the new one. A span error that both share is not averaged:
    // it is added to the whole afterwards.
    private static MeasuredValue Combine(
        MassPerRevolutionEstimate estimate,
        ReferenceValue reference,
        double aged,
        double day,
        double coverage
    )
    {
        var span = estimate.Span * estimate.Span;
        var fresh = estimate.VarianceWithoutSpan + day + (reference.FromAnotherScale is true ? span : 0);
        var shareOfNew = aged / (aged + fresh);
        var old = reference.Value.KilogramsPerRevolution;
        var value = old + shareOfNew * (estimate.Value.Value - old);
        var variance = aged * fresh / (aged + fresh) + (reference.FromAnotherScale is true ? 0 : span);
        var between = shareOfNew * shareOfNew * estimate.Pooled.BetweenShare;
        var uncertainty = new TwoPartUncertainty(between, estimate.Pooled.DegreesOfFreedom, Math.Max(0, variance - between));
        return MeasuredValue.Create(value, uncertainty.Times(value), coverage);
    }
}
