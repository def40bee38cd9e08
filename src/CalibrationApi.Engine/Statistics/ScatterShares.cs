namespace CalibrationApi.Engine.Statistics;

/// <summary>
/// How much of the variance of each of several values is scatter of unknown size, and how much is known, as far as a sum of their squares
/// needs it.
/// </summary>
/// <param name="Terms">Independent squares in the sum: values less one.</param>
/// <param name="Mean">Mean of the shares mu_j.</param>
/// <param name="Second">Sum of (mu_j - Mean)^2.</param>
/// <param name="Third">Sum of (mu_j - Mean)^3.</param>
/// <remarks>
/// <para>Formula: with W = diag 1/(s_i^2 + v_i) and D = diag(phi s_i^2 + v_i) the sum Q of squared deviations about the weighted mean is
/// distributed as sum lambda_j chi^2_1 over the non-zero eigenvalues of D^1/2 (W - W11'W / 1'W1) D^1/2. These are 1 + (phi - 1) mu_j, where
/// mu_j are the eigenvalues of P R P with P = I - uu', u_i^2 = w_i / sum(w), R = diag of the shares s_i^2 / (s_i^2 + v_i): they do not
/// depend on phi. Their power sums are traces, which need no eigenvalue.</para>
/// <para>Range: as many scatter variances as known ones, both at least 0 and not both 0; one value has no term, and all shares are
/// 0.</para>
/// <para>Source: our own derivation; no published source was found.</para>
/// <para>Accuracy: 1e-12 of the largest power sum of the eigenvalues that the library finds (ScatterPriorTests).</para>
/// </remarks>
public readonly record struct ScatterShares(int Terms, double Mean, double Second, double Third)
{
    /// <summary>The shares of values with these variances.</summary>
    /// <param name="scatter">Variance of each that is scatter s_i^2, up to one factor for all; at least 0.</param>
    /// <param name="known">Variance of each that is known v_i, at least 0; not 0 together with that of the scatter.</param>
    public static ScatterShares Of(ReadOnlySpan<double> scatter, ReadOnlySpan<double> known)
    {
        double weights = 0,
            s1 = 0,
            s2 = 0,
            s3 = 0,
            u1 = 0,
            u2 = 0,
            u3 = 0;
        for (var i = 0; i < scatter.Length; i++)
        {
            var weight = 1 / (scatter[i] + known[i]);
            var share = scatter[i] * weight;
            weights += weight;
            s1 += share;
            s2 += share * share;
            s3 += share * share * share;
            u1 += weight * share;
            u2 += weight * share * share;
            u3 += weight * share * share * share;
        }

        (u1, u2, u3) = (u1 / weights, u2 / weights, u3 / weights);
        var terms = scatter.Length - 1;
        var first = s1 - u1;
        var second = s2 - 2 * u2 + u1 * u1;
        var third = s3 - 3 * u3 + 3 * u2 * u1 - u1 * u1 * u1;
        var mean = terms > 0 ? first / terms : 0;
        return new(terms, mean, Math.Max(0, second - mean * first), third - 3 * mean * second + 2 * mean * mean * first);
    }
}
