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

    /// <summary>What is common to all catches alone exceeds the wanted precision: no number of catches helps.</summary>
    public static bool OutOfReach(double wanted, double common, double coverage) =>
        StudentT.CoverageFactor(coverage, double.PositiveInfinity) * common > wanted;
}
