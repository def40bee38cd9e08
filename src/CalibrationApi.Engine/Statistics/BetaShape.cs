namespace CalibrationApi.Engine.Statistics;

/// <summary>Shapes of the beta distribution of a share: it can be neither below 0 nor above 1, so mean and spread are not free.</summary>
/// <param name="Alpha">First shape, above 0.</param>
/// <param name="Beta">Second shape, above 0.</param>
/// <remarks>
/// <para>Formula: size = alpha + beta = m (1 - m) / s^2 - 1 and alpha = m size, with m the mean and s the standard deviation of the share
/// e; with y = ln(e / (1 - e)) the density of y goes as e^alpha (1 - e)^beta.</para>
/// <para>Range: 0 &lt; m &lt; 1 and 0 &lt; s^2 &lt; m (1 - m); any finite logit. Shares next to 0 and 1 keep their digits, because ln e and
/// ln(1 - e) are computed apart.</para>
/// <para>Source: method of moments, textbook, from memory.</para>
/// <para>Accuracy: 1e-12 relative for mean and spread against the library's beta distribution, 1e-12 for the density of the logit, 1e-15
/// for ln e (BetaShapeTests).</para>
/// </remarks>
public sealed record BetaShape(double Alpha, double Beta)
{
    /// <summary>Both shapes together; a prior of this size weighs as much as that many seeds looked at.</summary>
    public double Size => Alpha + Beta;

    /// <summary>Whether a share that differs at all can have such a mean and standard deviation: s^2 &lt; m (1 - m).</summary>
    /// <param name="mean">Mean m of the share.</param>
    /// <param name="spread">Its standard deviation s.</param>
    public static bool IsPossible(double mean, double spread) => mean > 0 && mean < 1 && spread > 0 && spread * spread < mean * (1 - mean);

    /// <summary>The shapes of a mean m and a standard deviation s.</summary>
    /// <param name="mean">Mean m, strictly between 0 and 1.</param>
    /// <param name="spread">Standard deviation s, above 0, with s^2 below m (1 - m).</param>
    /// <exception cref="ArgumentOutOfRangeException">No share has this mean and spread.</exception>
    public static BetaShape Of(double mean, double spread)
    {
        if (!IsPossible(mean, spread))
            throw new ArgumentOutOfRangeException(nameof(spread), spread, "No share has this mean and spread.");
        var size = SizeOf(mean, spread);
        return new(mean * size, (1 - mean) * size);
    }

    /// <summary>The size of the beta distribution of a mean and a standard deviation: m (1 - m) / s^2 - 1.</summary>
    /// <param name="mean">Mean m, strictly between 0 and 1.</param>
    /// <param name="spread">Standard deviation s, above 0.</param>
    public static double SizeOf(double mean, double spread) => mean * (1 - mean) / (spread * spread) - 1;

    /// <summary>Logarithm of the density of the logit of the share, up to a constant: alpha ln e + beta ln(1 - e).</summary>
    /// <param name="logit">y = ln(e / (1 - e)).</param>
    public double LogDensityOfLogit(double logit) => Alpha * LogShare(logit) + Beta * LogShare(-logit);

    /// <summary>ln e of the share e with this logit; that of 1 - e for the opposite logit. Exact for shares next to 0 and 1 too.</summary>
    /// <param name="logit">y = ln(e / (1 - e)).</param>
    public static double LogShare(double logit) => logit < 0 ? logit - Math.Log(1 + Math.Exp(logit)) : -Math.Log(1 + Math.Exp(-logit));
}
