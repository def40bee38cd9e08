namespace CalibrationApi.Engine.Uncertainty;

/// <summary>The Welch-Satterthwaite formula.</summary>
public static class EffectiveDegreesOfFreedom
{
    /// <summary>Effective degrees of freedom of a sum of independent parts.</summary>
    /// <param name="parts">Variance and degrees of freedom of each part; infinite degrees of freedom add nothing below the line.</param>
    /// <returns>Not truncated to a whole number; infinity when no part has finite degrees of freedom.</returns>
    /// <remarks>
    /// <para>Formula: nu_eff = (sum u_i^2)^2 / sum(u_i^4 / nu_i), u_i^2 variances in one unit, nu_i their degrees of freedom.</para>
    /// <para>Range: variances at least 0; degrees of freedom above 0, infinity allowed; no part, or none with finite ones, gives
    /// infinity.</para>
    /// <para>Source: JCGM 100:2008, G.4.1, equation (G.2b) (SOURCES.md, key GUM). The GUM truncates before it looks a table up; we compute
    /// the quantile and do not.</para>
    /// <para>Accuracy: 1e-12 relative against sums by hand (EffectiveDegreesOfFreedomTests); published budgets as printed, or the table
    /// says why not (UncertaintyBudgetReferenceTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A variance is negative or degrees of freedom are not positive.</exception>
    public static double Combine(params ReadOnlySpan<(double Variance, double DegreesOfFreedom)> parts)
    {
        var total = 0.0;
        var denominator = 0.0;
        foreach (var (variance, degreesOfFreedom) in parts)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(variance);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degreesOfFreedom);
            total += variance;
            denominator += variance * variance / degreesOfFreedom;
        }

        return denominator > 0 ? total * total / denominator : double.PositiveInfinity;
    }
}
