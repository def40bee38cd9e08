using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The evaluation of a catch test.</summary>
public sealed record CatchTestResult
{
    /// <summary>One sentence that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What to do.</summary>
    public required CatchTestVerdict.Decision Decision { get; init; }

    /// <summary>Nothing but precision is missing: what the test found can be gone by where nothing else is known.</summary>
    public bool IsMeasure =>
        Decision.Verdict is Verdict.Keep or Verdict.Adopt
        || (
            Decision.Rule is CatchTestVerdict.Rule.PrecisionNotReached or CatchTestVerdict.Rule.PrecisionOutOfReach
            && FromExpected is not { IsLarge: true }
        );

    /// <summary>Why.</summary>
    public required IReadOnlyList<Finding> Reasons { get; init; }

    /// <summary>Mass per revolution with its uncertainty.</summary>
    public required MassPerRevolutionEstimate Estimate { get; init; }

    /// <summary>Total mass over total revolutions, kg per revolution: a person can redo it on paper.</summary>
    public required MassPerRevolution TotalMassOverTotalRevolutions { get; init; }

    /// <summary>Plain mean of the ratios, kg per revolution: a person can redo it on paper.</summary>
    public required MassPerRevolution MeanOfRatios { get; init; }

    /// <summary>Every catch, counted or not, in the order given.</summary>
    public required IReadOnlyList<CatchReading> Catches { get; init; }

    /// <summary>How the counted catches agree.</summary>
    public required CatchAgreement Agreement { get; init; }

    /// <summary>Comparison with the value in force or the start value; null without either.</summary>
    public ChangeAgainstReference? Change { get; init; }

    /// <summary>How far the test lies from what was expected of it; null without a value in force or a start value.</summary>
    public ExpectedChange? FromExpected { get; init; }

    /// <summary>How an earlier test, set up apart, bears this one out; null without one, or without anything to compare with.</summary>
    public SecondTest? SecondTest { get; init; }

    /// <summary>Mistakes that would explain the test.</summary>
    public required LikelyMistakesResult LikelyMistakes { get; init; }

    /// <summary>The number that serves best from now on; null unless the verdict is adopt.</summary>
    public ValueToUse? ToUse { get; init; }

    /// <summary>What the catches that were left out say.</summary>
    public required ExcludedCatches Excluded { get; init; }

    /// <summary>What to type in; null unless the verdict is adopt and the form is known.</summary>
    public ControllerNumber? Enter { get; init; }

    /// <summary>
    /// The value in force as the controller shows it; null when there is none, or when it is no number of the controller's form.
    /// </summary>
    public ControllerNumber? InForce { get; init; }

    /// <summary>The measured value in the controller's form, beside the verdicts keep and adopt; null when the form is not known.</summary>
    public ControllerNumber? MeasuredEntry { get; init; }

    /// <summary>
    /// The value in force in the controller's form, rounded where it was stated more finely, beside the verdicts keep and adopt.
    /// </summary>
    public ControllerNumber? InForceEntry { get; init; }

    /// <summary>What happens if the value in force stays; null without value in force or target rate.</summary>
    public EffectOnApplication? EffectIfValueInForceStays { get; init; }

    /// <summary>What cannot be about the test: container, scale or element; empty when all can.</summary>
    public IReadOnlyList<Finding> Impossible { get; init; } = [];

    /// <summary>Limits in use.</summary>
    public required CatchTestSettings Settings { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The evaluation of a test as an earlier one.</summary>
    /// <remarks>
    /// <para>Formula: scatter^2 = share of the scatter in the variance of the value; known^2 = the rest of its random variance + shared
    /// tare^2, relative.</para>
    /// <para>Range: any evaluation with a catch that counts.</para>
    /// <para>Source: our own derivation, as <see cref="SecondTest"/>.</para>
    /// <para>Accuracy: 1e-9 relative against its parts (SecondTestTests).</para>
    /// </remarks>
    public EarlierTest AsEarlierTest()
    {
        var estimate = Estimate;
        return new EarlierTest
        {
            Value = new MassPerRevolution(estimate.Value.Value),
            Catches = Catches.Count(one => one.ExcludedBecause is null),
            Scatter = Math.Sqrt(estimate.Pooled.BetweenShare),
            DegreesOfFreedom = estimate.Pooled.DegreesOfFreedom,
            KnownUncertainty = Math.Sqrt(
                Math.Max(0, estimate.Pooled.RelativeVariance - estimate.Pooled.BetweenShare) + estimate.SharedTare * estimate.SharedTare
            ),
            Span = estimate.Span,
        };
    }
}

/// <summary>One catch as evaluated.</summary>
/// <param name="Net">Net mass as the scale showed it.</param>
/// <param name="Metered">Mass metered: corrected for the scale, scaled to all points of the meter.</param>
/// <param name="Revolutions">Revolutions.</param>
/// <param name="MassPerRevolution">Metered mass over revolutions.</param>
/// <param name="ExcludedBecause">Why it does not count; null when it does.</param>
public sealed record CatchReading(
    Mass Net,
    Mass Metered,
    Revolutions Revolutions,
    MassPerRevolution MassPerRevolution,
    string? ExcludedBecause
);
