using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>Whether an earlier test, set up apart, bears out the one at hand, and what both give together.</summary>
/// <remarks>
/// <para>Formula: two tests agree when |ln k1 - ln k2| &lt;= h, with h the expanded uncertainty of that difference under the two-part rule:
/// the scatter of both pooled, with nu0 + c1 + c2 - 2 degrees of freedom, and what is known of both: weighing, counting, tare, the day of
/// each, and the span of each scale unless one scale with one check weighed both, whose span error cancels. Not seeing a difference is not
/// agreement, so each test alone has to lie apart from what was expected, by more than its own expanded uncertainty and on the same
/// side.</para>
/// <para>Both together by generalised least squares: weights by the parts that are not shared, a shared span added to the whole.</para>
/// <para>Range: at least one catch in each test, values above 0; a test that knows no scatter takes that of the prior.</para>
/// <para>Source: our own derivation from JCGM 100:2008 (SOURCES.md, key GUM) and <see cref="TwoPartUncertainty"/>; no published source was
/// found for the rule.</para>
/// <para>Accuracy: 1e-6 relative against the formulas by hand (SecondTestTests); how often it is wrong, in the tables of
/// tests/CalibrationApi.Simulation.</para>
/// </remarks>
public sealed record SecondTest
{
    /// <summary>The earlier test.</summary>
    public required EarlierTest Earlier { get; init; }

    /// <summary>k of the test at hand over k of the earlier one, less 1.</summary>
    public required double Difference { get; init; }

    /// <summary>The largest difference of two honest tests, on ln, at the coverage probability (h).</summary>
    public required double LargestHonestDifference { get; init; }

    /// <summary>Each test alone shows a change from what was expected, both on the same side.</summary>
    public required bool BothShowAChange { get; init; }

    /// <summary>Both values together, kg per revolution.</summary>
    public required MeasuredValue Combined { get; init; }

    /// <summary>The two do not differ by more than honest tests do.</summary>
    public bool Agrees => Math.Abs(Math.Log(1 + Difference)) <= LargestHonestDifference;

    /// <summary>The change is confirmed.</summary>
    public bool Confirms => Agrees && BothShowAChange;

    /// <summary>Compares the test at hand with an earlier one.</summary>
    /// <param name="estimate">The value of the test at hand.</param>
    /// <param name="earlier">The earlier test.</param>
    /// <param name="expected">What was expected of both.</param>
    /// <param name="expectedFromAnotherScale">Another scale stands behind what was expected, so that no span error cancels in a
    /// change.</param>
    /// <param name="prior">What was believed about the scatter of one catch.</param>
    /// <param name="dayToDay">Standard deviation between days, relative (sigma_d).</param>
    /// <param name="coverage">Coverage probability.</param>
    internal static SecondTest Of(
        MassPerRevolutionEstimate estimate,
        EarlierTest earlier,
        ExpectedChange expected,
        bool expectedFromAnotherScale,
        RepeatabilityPrior prior,
        double dayToDay,
        double coverage
    )
    {
        var day = dayToDay * dayToDay;
        var first = Part.Of(earlier, estimate, prior);
        var second = new Part(
            Math.Log(estimate.Value.Value),
            estimate.Pooled.BetweenShare,
            estimate.Pooled.Scatter,
            estimate.Pooled.DegreesOfFreedom,
            estimate.Pooled.RelativeVariance - estimate.Pooled.BetweenShare + estimate.SharedTare * estimate.SharedTare,
            estimate.Span
        );

        // The scatter of both over that of the prior: each holds the prior's own part once, both together as well.
        var degreesOfFreedom = Math.Max(
            first.DegreesOfFreedom + second.DegreesOfFreedom - prior.DegreesOfFreedom,
            Math.Max(first.DegreesOfFreedom, second.DegreesOfFreedom)
        );
        var pooled =
            (Math.Max(0, first.DegreesOfFreedom * first.OverPrior - prior.DegreesOfFreedom) + second.DegreesOfFreedom * second.OverPrior)
            / degreesOfFreedom;
        var (one, two) = (first.Pooled(pooled), second.Pooled(pooled));

        var ownSpans = earlier.FromAnotherScale is true;
        var spans = ownSpans ? one.Span * one.Span + two.Span * two.Span : (one.Span - two.Span) * (one.Span - two.Span);
        var difference = new TwoPartUncertainty(one.Scatter + two.Scatter, degreesOfFreedom, one.Known + two.Known + 2 * day + spans);

        var logExpected = Math.Log(expected.Expected.KilogramsPerRevolution);
        var (changeOfFirst, changeOfSecond) = (first.Log - logExpected, second.Log - logExpected);
        return new SecondTest
        {
            Earlier = earlier,
            Difference = Math.Exp(second.Log - first.Log) - 1,
            LargestHonestDifference = difference.Expanded(coverage),
            BothShowAChange =
                changeOfFirst * changeOfSecond > 0
                && Shows(first, changeOfFirst, day, expectedFromAnotherScale, coverage)
                && Shows(second, changeOfSecond, day, expectedFromAnotherScale, coverage),
            Combined = Combine(one, two, degreesOfFreedom, day, ownSpans, estimate.Points, coverage),
        };
    }

    private static bool Shows(Part part, double change, double day, bool withSpan, double coverage) =>
        Math.Abs(change)
        > new TwoPartUncertainty(part.Scatter, part.DegreesOfFreedom, part.Known + day + (withSpan ? part.Span * part.Span : 0)).Expanded(
            coverage
        );

    private static MeasuredValue Combine(
        Part one,
        Part two,
        double degreesOfFreedom,
        double day,
        bool ownSpans,
        double points,
        double coverage
    )
    {
        var (first, second) = (one.Scatter + one.Known + day, two.Scatter + two.Known + day);
        if (ownSpans)
            (first, second) = (first + one.Span * one.Span, second + two.Span * two.Span);
        var weight = first / (first + second);
        var span = ownSpans ? 0 : (1 - weight) * one.Span + weight * two.Span;
        var scatter = (1 - weight) * (1 - weight) * one.Scatter + weight * weight * two.Scatter;
        var variance = (1 - weight) * (1 - weight) * first + weight * weight * second + span * span + points * points;
        var value = Math.Exp((1 - weight) * one.Log + weight * two.Log);
        return MeasuredValue.Create(
            value,
            new TwoPartUncertainty(scatter, degreesOfFreedom, Math.Max(0, variance - scatter)).Times(value),
            coverage
        );
    }

    // One of the two tests: ln k, the variance that scatter gives it, that scatter over the prior's, its degrees of freedom, the other
    // random variance, the span.
    private readonly record struct Part(double Log, double Scatter, double OverPrior, double DegreesOfFreedom, double Known, double Span)
    {
        public static Part Of(EarlierTest earlier, MassPerRevolutionEstimate estimate, RepeatabilityPrior prior)
        {
            var priorVariance = prior.Relative * prior.Relative;
            var scatter = earlier.Scatter is { } stated and > 0 ? stated * stated : priorVariance / earlier.Catches;
            return new Part(
                Math.Log(earlier.Value.KilogramsPerRevolution),
                scatter,
                scatter * earlier.Catches / priorVariance,
                earlier.DegreesOfFreedom ?? prior.DegreesOfFreedom + earlier.Catches - 1,
                earlier.KnownUncertainty * earlier.KnownUncertainty,
                earlier.Span ?? estimate.Span
            );
        }

        public Part Pooled(double overPrior) => this with { Scatter = Scatter * overPrior / OverPrior };
    }
}
