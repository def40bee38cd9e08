using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The decision table: first row that applies wins.</summary>
public static class CatchTestVerdict
{
    /// <summary>Probability of being within tolerance from which a value in force is kept.</summary>
    public const double KeepProbability = 0.95;

    /// <summary>Catches that scatter this improbably point to a mistake rather than to bad luck.</summary>
    public const double InvestigateProbability = 0.01;

    /// <summary>What the table decides and why.</summary>
    /// <param name="Verdict">What to do.</param>
    /// <param name="Rule">Which row of the table applied.</param>
    /// <param name="MoreCatches">How many more catches a repeat takes, with the stated probability; null when no number of catches helps or
    /// the verdict is another.</param>
    /// <param name="ExpectedPrecision">Relative expanded uncertainty to expect then; null where precision is not what is missing.</param>
    public readonly record struct Decision(Verdict Verdict, Rule Rule, int? MoreCatches = null, double? ExpectedPrecision = null);

    /// <summary>The rows of the table.</summary>
    public enum Rule
    {
        /// <summary>One mistake explains the test far better than an ordinary change does.</summary>
        LikelyMistake,

        /// <summary>A catch is more than its container or its scale takes, or the value more than the element can deliver.</summary>
        Impossible,

        /// <summary>One catch stands apart by more than the tolerance.</summary>
        StrayCatch,

        /// <summary>The catches scatter improbably and by more than the tolerance.</summary>
        WildScatter,

        /// <summary>The scale failed its last check before the test.</summary>
        ScaleFailed,

        /// <summary>A mistake is likelier than an ordinary change, but the masses do not say which.</summary>
        MistakeNotToldApart,

        /// <summary>The interval is wider than wanted; more catches will narrow it.</summary>
        PrecisionNotReached,

        /// <summary>What is common to all catches is wider than wanted; more catches will not help.</summary>
        PrecisionOutOfReach,

        /// <summary>A large change rests on one set-up, whose catches share its mistakes, or on two that do not agree.</summary>
        SecondTestNeeded,

        /// <summary>The number in force is within tolerance of the truth, probably enough.</summary>
        WithinTolerance,

        /// <summary>A change was detected and the number in force is not good enough.</summary>
        Changed,

        /// <summary>No change was detected, but it was not shown either that the number in force is good enough.</summary>
        NotShownWithinTolerance,

        /// <summary>
        /// A catch stands apart beyond the tolerance, though not surely: it has to be weighed again, or another one made.
        /// </summary>
        CatchApart,

        /// <summary>A catch that was left out would have kept the value in force, and those that count do not outweigh it.</summary>
        ExclusionDecides,

        /// <summary>A large change that a second test, set up apart, bears out.</summary>
        ChangeConfirmed,

        /// <summary>There is no value in force.</summary>
        NothingInForce,
    }

    /// <summary>Decides.</summary>
    /// <param name="estimate">The value of the test.</param>
    /// <param name="agreement">How its catches agree.</param>
    /// <param name="change">The comparison with a value in force or a start value; null without either.</param>
    /// <param name="expected">How far the test lies from what was expected of it; null without a value in force or a start value.</param>
    /// <param name="secondTest">How an earlier test bears this one out; null without one.</param>
    /// <param name="mistakes">The mistakes that would explain the test.</param>
    /// <param name="isImpossible">Something about the test cannot be (<see cref="PhysicalLimits"/>).</param>
    /// <param name="scaleFailed">The scale failed its last check before the test.</param>
    /// <param name="excluded">What the catches that were left out say.</param>
    /// <param name="counted">Catches that count.</param>
    /// <param name="meanVariance">Mean of their known random variances, relative.</param>
    /// <param name="limits">Tolerance, wanted precision, second-test change and coverage in use.</param>
    /// <remarks>
    /// <para>Formula: the first that applies. 1 investigate: one mistake has a probability of at least 0.5 and a Bayes factor of at least
    /// 10 against an ordinary change, and no other explains the test almost as well; or something is physically impossible; or a stray
    /// catch, or Q below 1 %, with a spread above the tolerance. 2 repeat: the scale failed its last check, so that nothing weighed on it
    /// is to be relied on; some mistake is likelier than an ordinary change, although the masses do not say which (catches that share a
    /// mistake agree, so that a second one confirms nothing); expanded uncertainty above the wanted precision; or a change at the
    /// second-test limit that no test of another set-up bears out, however many catches this one has: catches of one set-up share its tare,
    /// points, element, unit and product, and confirm the scatter only; or what would be adopted rests on a catch that stands apart beyond
    /// the tolerance, or on a catch left out that contradicts it. 3 keep: the number in force is within tolerance of the truth with a
    /// probability of at least 0.95. 4 adopt. Absence of evidence is not keep: a wide interval ends in row 2 before row 3 is asked.</para>
    /// <para>Range: at least one catch that counts; probabilities from 0 to 1.</para>
    /// <para>Source: our own derivation; the limits are judgement.</para>
    /// <para>Accuracy: every row of the table, with a case of its own (CatchTestVerdictTests); further catches just enough, their precision
    /// within 1e-9 (CatchTestVerdictTests).</para>
    /// </remarks>
    public static Decision Decide(
        MassPerRevolutionEstimate estimate,
        CatchAgreement agreement,
        ChangeAgainstReference? change,
        ExpectedChange? expected,
        SecondTest? secondTest,
        LikelyMistakesResult mistakes,
        bool isImpossible,
        bool scaleFailed,
        ExcludedCatches excluded,
        int counted,
        double meanVariance,
        CatchTestSettings limits
    )
    {
        var decision = DecideByCounted(
            estimate,
            agreement,
            change,
            expected,
            secondTest,
            mistakes,
            isImpossible,
            scaleFailed,
            counted,
            meanVariance,
            limits
        );
        if (decision.Verdict != Verdict.Adopt)
            return decision;
        if (agreement.HasCatchApart(limits.Tolerance))
            return new(Verdict.Repeat, Rule.CatchApart, 1);
        return excluded.Decide(counted) ? new(Verdict.Repeat, Rule.ExclusionDecides, 1) : decision;
    }

    private static Decision DecideByCounted(
        MassPerRevolutionEstimate estimate,
        CatchAgreement agreement,
        ChangeAgainstReference? change,
        ExpectedChange? expected,
        SecondTest? secondTest,
        LikelyMistakesResult mistakes,
        bool isImpossible,
        bool scaleFailed,
        int counted,
        double meanVariance,
        CatchTestSettings limits
    )
    {
        if (mistakes.Named is not null)
            return new(Verdict.Investigate, Rule.LikelyMistake);
        if (isImpossible)
            return new(Verdict.Investigate, Rule.Impossible);
        if (agreement.HasStray && Math.Abs(agreement.FarthestDeviation) > limits.Tolerance)
            return new(Verdict.Investigate, Rule.StrayCatch);
        if (agreement.QProbability < InvestigateProbability && agreement.Spread > limits.Tolerance)
            return new(Verdict.Investigate, Rule.WildScatter);

        if (scaleFailed)
            return new(Verdict.Repeat, Rule.ScaleFailed);
        if (mistakes.LikelierThanChange)
            return new(Verdict.Repeat, Rule.MistakeNotToldApart, 1);
        if (estimate.RelativeExpanded > limits.WantedPrecision)
            return MoreCatches(estimate, counted, meanVariance, limits);
        if (expected is { IsLarge: true })
            return secondTest is { Confirms: true } ? new(Verdict.Adopt, Rule.ChangeConfirmed) : new(Verdict.Repeat, Rule.SecondTestNeeded);

        if (change is null || change.Reference.Kind == ReferenceKind.StartValue)
            return new(Verdict.Adopt, Rule.NothingInForce);
        if (change.ProbabilityWithinTolerance >= KeepProbability)
            return new(Verdict.Keep, Rule.WithinTolerance);
        return new(Verdict.Adopt, change.IsDetected ? Rule.Changed : Rule.NotShownWithinTolerance);
    }

    private static Decision MoreCatches(MassPerRevolutionEstimate estimate, int counted, double meanVariance, CatchTestSettings limits)
    {
        var common = Math.Sqrt(estimate.RelativeVariance - estimate.Pooled.RelativeVariance);
        var scatter = new ExpectedScatter(estimate.Pooled.BetweenVariance, estimate.Pooled.DegreesOfFreedom, counted, meanVariance, common);
        return
            CatchCount.Promised(limits.WantedPrecision, counted + 1, scatter, limits.CoverageProbability, limits.PrecisionProbability)
                is { } catches
            ? new(Verdict.Repeat, Rule.PrecisionNotReached, catches - counted, scatter.Precision(catches, limits.CoverageProbability))
            : new(Verdict.Repeat, Rule.PrecisionOutOfReach);
    }
}
