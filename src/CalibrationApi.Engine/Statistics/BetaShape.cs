namespace CalibrationApi.Engine.Statistics;

/// <summary>Shapes of the beta distribution of a share: it can be neither below 0 nor above 1, so mean and spread are not free.</summary>
/// <param name="Alpha">First shape, above 0.</param>
/// <param name="Beta">Second shape, above 0.</param>
/// <remarks>Source: method of moments, alpha + beta = m (1 - m) / s^2 - 1 and alpha / (alpha + beta) = m; textbook, from memory.</remarks>
public sealed record BetaShape(double Alpha, double Beta)
{
    /// <summary>Both shapes together; a prior of this size weighs as much as that many seeds looked at.</summary>
    public double Size => Alpha + Beta;

    /// <summary>Whether a share that differs at all can have such a mean and standard deviation: s^2 &lt; m (1 - m).</summary>
    public static bool IsPossible(double mean, double spread) => mean > 0 && mean < 1 && spread > 0 && spread * spread < mean * (1 - mean);

    /// <summary>The shapes of a mean m and a standard deviation s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No share has this mean and spread.</exception>
    public static BetaShape Of(double mean, double spread)
    {
        if (!IsPossible(mean, spread))
            throw new ArgumentOutOfRangeException(nameof(spread), spread, "No share has this mean and spread.");
        var size = SizeOf(mean, spread);
        return new(mean * size, (1 - mean) * size);
    }

    /// <summary>The size of the beta distribution of a mean and a standard deviation: m (1 - m) / s^2 - 1.</summary>
    public static double SizeOf(double mean, double spread) => mean * (1 - mean) / (spread * spread) - 1;

    /// <summary>Logarithm of the density of the logit of the share, up to a constant: alpha ln e + beta ln(1 - e).</summary>
    /// <param name="logit">y = ln(e / (1 - e)).</param>
    public double LogDensityOfLogit(double logit) => Alpha * LogShare(logit) + Beta * LogShare(-logit);

    /// <summary>ln e of the share e with this logit; that of 1 - e for the opposite logit. Exact for shares next to 0 and 1 too.</summary>
    /// <param name="logit">y = ln(e / (1 - e)).</param>
    public static double LogShare(double logit) => logit < 0 ? logit - Math.Log(1 + Math.Exp(logit)) : -Math.Log(1 + Math.Exp(-logit));
}
