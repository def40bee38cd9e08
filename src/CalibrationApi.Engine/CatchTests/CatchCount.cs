using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>How many catches a wanted precision takes.</summary>
/// <remarks>
/// <para>Range: at least one catch; variances and common parts at least 0; coverage and probabilities strictly between 0 and 1; null beyond
/// 50 catches.</para>
/// <para>Source: our own derivation from the two parts of JCGM 100:2008 (SOURCES.md, key GUM); 50 catches are judgement.</para>
/// <para>Accuracy: 1e-12 relative for the precision, the number as the smallest that serves (CatchCountTests); the promised number as the
/// smallest with its probability (ExpectedScatterTests).</para>
/// </remarks>
public static class CatchCount
{
    /// <summary>Most catches that are ever proposed; beyond it a test is no longer a practical remedy.</summary>
    public const int Most = 50;

    /// <summary>
    /// Relative expanded uncertainty to expect of so many equal catches, as for a test that was made (<see cref="TwoPartUncertainty"/>).
    /// </summary>
    /// <param name="catches">Number of catches c, &gt;= 1.</param>
    /// <param name="betweenVariance">Variance between catches, relative (tau^2, or s0^2 beforehand).</param>
    /// <param name="degreesOfFreedomOfOne">Degrees of freedom of that variance with one catch (nu0).</param>
    /// <param name="catchVariance">Known random variance of one catch, relative (v).</param>
    /// <param name="common">Standard uncertainty common to all catches, relative (u_s).</param>
    /// <param name="coverage">Coverage probability.</param>
    /// <remarks>Formula: U = sqrt(t^2 tau^2 / c + z^2 (v / c + u_s^2)), with t of nu0 + c - 1 degrees of freedom; all relative.</remarks>
    public static double ExpectedPrecision(
        int catches,
        double betweenVariance,
        double degreesOfFreedomOfOne,
        double catchVariance,
        double common,
        double coverage
    )
    {
        var between = betweenVariance / catches;
        var rest = catchVariance / catches + common * common;
        return new TwoPartUncertainty(between, degreesOfFreedomOfOne + catches - 1, rest).Expanded(coverage);
    }

    /// <summary>The smallest number of catches that reaches the wanted precision; null when none up to <see cref="Most"/> does.</summary>
    /// <param name="wanted">Wanted relative expanded uncertainty, above 0.</param>
    /// <param name="atLeast">Fewest catches that are proposed, at least 1.</param>
    /// <param name="betweenVariance">Variance between catches, relative (tau^2, or s0^2 beforehand).</param>
    /// <param name="degreesOfFreedomOfOne">Degrees of freedom of that variance with one catch (nu0).</param>
    /// <param name="catchVariance">Known random variance of one catch, relative (v).</param>
    /// <param name="common">Standard uncertainty common to all catches, relative (u_s).</param>
    /// <param name="coverage">Coverage probability.</param>
    /// <remarks>Formula: the smallest c from the fewest on whose expected precision is at most the wanted one.</remarks>
    public static int? Needed(
        double wanted,
        int atLeast,
        double betweenVariance,
        double degreesOfFreedomOfOne,
        double catchVariance,
        double common,
        double coverage
    )
    {
        if (OutOfReach(wanted, common, coverage))
            return null;
        for (var catches = atLeast; catches <= Most; catches++)
        {
            if (ExpectedPrecision(catches, betweenVariance, degreesOfFreedomOfOne, catchVariance, common, coverage) <= wanted)
                return catches;
        }

        return null;
    }

    /// <summary>
    /// The smallest number of catches in all that reaches the wanted precision with a probability; null when none up to <see cref="Most"/>
    /// does. A number by which it is only to be expected would be too small in every second test.
    /// </summary>
    /// <param name="wanted">Wanted relative expanded uncertainty.</param>
    /// <param name="atLeast">Fewest catches in all that are proposed.</param>
    /// <param name="scatter">What is believed about the catches.</param>
    /// <param name="coverage">Coverage probability of the uncertainty.</param>
    /// <param name="probability">Probability of the promise.</param>
    /// <remarks>
    /// Formula: the smallest c whose probability by <see cref="ExpectedScatter.ProbabilityOf"/> is at least the one asked for.
    /// </remarks>
    public static int? Promised(double wanted, int atLeast, ExpectedScatter scatter, double coverage, double probability)
    {
        if (OutOfReach(wanted, scatter.Common, coverage) || atLeast > Most)
            return null;
        if (scatter.ProbabilityOf(wanted, atLeast, coverage) >= probability)
            return atLeast;
        var (tooFew, enough) = (atLeast, Most);
        if (scatter.ProbabilityOf(wanted, enough, coverage) < probability)
            return null;
        while (enough - tooFew > 1)
        {
            var middle = (tooFew + enough) / 2;
            if (scatter.ProbabilityOf(wanted, middle, coverage) >= probability)
                enough = middle;
            else
                tooFew = middle;
        }

        return enough;
    }

    /// <summary>What is common to all catches alone exceeds the wanted precision: no number of catches helps.</summary>
    /// <param name="wanted">Wanted relative expanded uncertainty.</param>
    /// <param name="common">Standard uncertainty common to all catches, relative (u_s).</param>
    /// <param name="coverage">Coverage probability.</param>
    /// <remarks>Formula: z u_s above the wanted precision.</remarks>
    public static bool OutOfReach(double wanted, double common, double coverage) =>
        StudentT.CoverageFactor(coverage, double.PositiveInfinity) * common > wanted;
}
