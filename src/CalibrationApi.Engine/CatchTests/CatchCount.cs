using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>How many catches a wanted precision takes.</summary>
public static class CatchCount
{
    /// <summary>Most catches that are ever proposed; beyond it a test is no longer a practical remedy.</summary>
    public const int Most = 50;

    /// <summary>
    /// Relative expanded uncertainty to expect of <paramref name="catches"/> equal catches:
    /// sqrt(t^2 tau^2 / c + z^2 (v / c + u_s^2)), as for a test that was made (<see cref="TwoPartUncertainty"/>).
    /// </summary>
    /// <param name="catches">Number of catches c, &gt;= 1.</param>
    /// <param name="betweenVariance">Variance between catches, relative (tau^2, or s0^2 beforehand).</param>
    /// <param name="degreesOfFreedomOfOne">Degrees of freedom of that variance with one catch (nu0).</param>
    /// <param name="catchVariance">Known random variance of one catch, relative (v).</param>
    /// <param name="common">Standard uncertainty common to all catches, relative (u_s).</param>
    /// <param name="coverage">Coverage probability.</param>
    public static double ExpectedPrecision(int catches, double betweenVariance, double degreesOfFreedomOfOne, double catchVariance, double common, double coverage)
    {
        var between = betweenVariance / catches;
        var rest = catchVariance / catches + common * common;
        return new TwoPartUncertainty(between, degreesOfFreedomOfOne + catches - 1, rest).Expanded(coverage);
    }

    /// <summary>The smallest number of catches, at least <paramref name="atLeast"/>, that reaches the wanted precision; null when none up to <see cref="Most"/> does.</summary>
    /// <inheritdoc cref="ExpectedPrecision"/>
    public static int? Needed(double wanted, int atLeast, double betweenVariance, double degreesOfFreedomOfOne, double catchVariance, double common, double coverage)
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
    /// The smallest number of catches in all, at least <paramref name="atLeast"/>, that reaches the wanted precision with a probability; null when none up to
    /// <see cref="Most"/> does. A number by which it is only to be expected would be too small in every second test.
    /// </summary>
    /// <param name="wanted">Wanted relative expanded uncertainty.</param>
    /// <param name="atLeast">Fewest catches in all that are proposed.</param>
    /// <param name="scatter">What is believed about the catches.</param>
    /// <param name="coverage">Coverage probability of the uncertainty.</param>
    /// <param name="probability">Probability of the promise.</param>
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
    public static bool OutOfReach(double wanted, double common, double coverage) =>
        StudentT.CoverageFactor(coverage, double.PositiveInfinity) * common > wanted;
}
