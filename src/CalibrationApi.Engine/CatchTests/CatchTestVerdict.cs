using CalibrationApi.Engine.Catches;
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
    /// <param name="facts">What is known of the test.</param>
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
    public static Decision Decide(CatchTestFacts facts)
    {
        var decision = DecideByCounted(facts);
        if (decision.Verdict != Verdict.Adopt)
            return decision;
        if (facts.Agreement.HasCatchApart(facts.Limits.Tolerance))
            return new(Verdict.Repeat, Rule.CatchApart, 1);
        return facts.Excluded.Decide(facts.Counted) ? new(Verdict.Repeat, Rule.ExclusionDecides, 1) : decision;
    }

    private static Decision DecideByCounted(CatchTestFacts facts)
    {
        var (agreement, change, limits) = (facts.Agreement, facts.Change, facts.Limits);
        if (facts.Mistakes.Named is not null)
            return new(Verdict.Investigate, Rule.LikelyMistake);
        if (facts.IsImpossible)
            return new(Verdict.Investigate, Rule.Impossible);
        if (agreement.HasStray && Math.Abs(agreement.FarthestDeviation) > limits.Tolerance)
            return new(Verdict.Investigate, Rule.StrayCatch);
        if (agreement.QProbability < InvestigateProbability && agreement.Spread > limits.Tolerance)
            return new(Verdict.Investigate, Rule.WildScatter);

        if (facts.ScaleFailed)
            return new(Verdict.Repeat, Rule.ScaleFailed);
        if (facts.Mistakes.LikelierThanChange)
            return new(Verdict.Repeat, Rule.MistakeNotToldApart, 1);
        if (facts.Estimate.RelativeExpanded > limits.WantedPrecision)
            return MoreCatches(facts.Estimate, facts.Counted, facts.MeanVariance, limits);
        if (facts.Expected is { IsLarge: true })
            return facts.SecondTest is { Confirms: true }
                ? new(Verdict.Adopt, Rule.ChangeConfirmed)
                : new(Verdict.Repeat, Rule.SecondTestNeeded);

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
