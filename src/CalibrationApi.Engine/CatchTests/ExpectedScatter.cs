using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What is believed about catches that are still to be made, all of one size.</summary>
/// <param name="Between">Variance between catches, relative: tau^2 of those made, or s0^2 before any.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of that variance.</param>
/// <param name="Made">Catches made already; 0 before any.</param>
/// <param name="Known">Known random variance of one catch, relative (v).</param>
/// <param name="Common">Standard uncertainty common to all catches, relative (u_s).</param>
/// <remarks>
/// <para>Range: variances and common parts at least 0, degrees of freedom at least 1, at least one catch in all and no fewer than were
/// made.</para>
/// <para>Source: our own derivation.</para>
/// <para>Accuracy: the probability within 1e-5 of the library's F distribution where nothing is known (ExpectedScatterTests); the precision
/// within 1e-9 of that of a test (CatchTestVerdictTests).</para>
/// </remarks>
public readonly record struct ExpectedScatter(double Between, double DegreesOfFreedom, int Made, double Known, double Common)
{
    /// <summary>Relative expanded uncertainty to expect of so many catches in all, if they scatter as believed.</summary>
    /// <param name="catches">Catches in all.</param>
    /// <param name="coverage">Coverage probability.</param>
    /// <remarks>Formula: U = sqrt(t^2 tau^2 / c + z^2 (v / c + u_s^2)), relative.</remarks>
    public double Precision(int catches, double coverage) =>
        new TwoPartUncertainty(Between / catches, DegreesOfFreedom + Further(catches), Known / catches + Common * Common).Expanded(
            coverage
        );

    /// <summary>
    /// How probable it is that so many catches in all reach a precision, their scatter being drawn from what is believed of it.
    /// </summary>
    /// <param name="wanted">Wanted relative expanded uncertainty.</param>
    /// <param name="catches">Catches in all, those made among them.</param>
    /// <param name="coverage">Coverage probability of that uncertainty.</param>
    /// <remarks>
    /// Formula: U^2 = t^2 x / c + z^2 (v / c + u_s^2) &lt;= wanted^2 gives the largest tau^2 = x that serves. The estimate is at most that
    /// when Q / (x + v) (tau0^2 + v) + nu tau0^2 / x &lt;= nu + m, with m further squares whose sum Q has the distribution of
    /// <see cref="ScatterPrior"/>. One catch before any other has no further square: it serves or it does not.
    /// </remarks>
    public double ProbabilityOf(double wanted, int catches, double coverage)
    {
        var further = Further(catches);
        var t = StudentT.CoverageFactor(coverage, DegreesOfFreedom + further);
        var z = StudentT.CoverageFactor(coverage, double.PositiveInfinity);
        var largest = catches * (wanted * wanted - z * z * (Known / catches + Common * Common)) / (t * t);
        if (largest <= 0)
            return 0;
        if (further == 0)
            return Between <= largest ? 1 : 0;
        var squares = (largest + Known) / (Between + Known) * (DegreesOfFreedom + further - DegreesOfFreedom * Between / largest);
        return squares <= 0
            ? 0
            : 1 - ScatterPrior.Of(DegreesOfFreedom).UpperTail(squares, new ScatterShares(further, Between / (Between + Known), 0, 0));
    }

    private int Further(int catches) => catches - Math.Max(1, Made);
}
