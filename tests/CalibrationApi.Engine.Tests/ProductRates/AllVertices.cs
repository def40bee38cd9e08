namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>
/// The best rates by trying every point at which nutrients stand on a bound and all other rates stand on theirs. What is made
/// least is straight between such points, so that the best one is among them, whether or not the targets can be met.
/// </summary>
internal static class AllVertices
{
    private const double Equal = 1e-9;

    /// <summary>The objectives of <see cref="PlainBlend.Objectives"/> at the best point.</summary>
    public static double[] Best(PlainBlend blend)
    {
        double[]? best = null;
        foreach (var rates in Points(blend))
        {
            var objectives = blend.Objectives(rates);
            if (best is null || IsBetter(objectives, best))
                best = objectives;
        }

        return best!;
    }

    public static bool IsBetter(double[] one, double[] other)
    {
        for (var k = 0; k < one.Length; k++)
        {
            if (Math.Abs(one[k] - other[k]) > Equal * Math.Max(1, Math.Abs(other[k])))
                return one[k] < other[k];
        }

        return false;
    }

    private static IEnumerable<double[]> Points(PlainBlend blend)
    {
        var (n, m) = (blend.Least.Length, blend.Shares.Length);
        for (var inside = 0; inside < 1 << n; inside++)
        {
            var moving = Members(inside, n);
            for (var rows = 0; moving.Length <= m && rows < 1 << m; rows++)
            {
                var tight = Members(rows, m);
                if (tight.Length != moving.Length)
                    continue;
                for (var sides = 0; sides < 1 << n; sides++)
                {
                    // The bits of products that move say on which bound a nutrient stands, the others on which bound a rate stands.
                    if (Point(blend, moving, tight, sides) is { } point)
                        yield return point;
                }
            }
        }
    }

    private static double[]? Point(PlainBlend blend, int[] moving, int[] tight, int sides)
    {
        var rates = new double[blend.Least.Length];
        for (var i = 0; i < rates.Length; i++)
            rates[i] =
                moving.Contains(i) ? 0
                : (sides >> i & 1) == 0 ? blend.Least[i]
                : blend.Most[i];
        if (rates.Any(double.IsInfinity))
            return null;
        var k = moving.Length;
        var system = new double[k, k + 1];
        for (var row = 0; row < k; row++)
        {
            var bound = (sides >> moving[row] & 1) == 0 ? blend.RowLeast[tight[row]] : blend.RowMost[tight[row]];
            system[row, k] = bound - blend.Shares[tight[row]].Zip(rates, (share, rate) => share * rate).Sum();
            for (var column = 0; column < k; column++)
                system[row, column] = blend.Shares[tight[row]][moving[column]];
        }

        if (!Solve(system, k))
            return null;
        for (var row = 0; row < k; row++)
        {
            rates[moving[row]] = system[row, k];
            if (!(system[row, k] >= blend.Least[moving[row]] - 1e-9 && system[row, k] <= blend.Most[moving[row]] + 1e-9))
                return null;
        }

        return rates;
    }

    private static bool Solve(double[,] system, int k)
    {
        for (var column = 0; column < k; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < k; row++)
                pivot = Math.Abs(system[row, column]) > Math.Abs(system[pivot, column]) ? row : pivot;
            if (Math.Abs(system[pivot, column]) < 1e-12)
                return false;
            for (var at = 0; at <= k; at++)
                (system[column, at], system[pivot, at]) = (system[pivot, at], system[column, at]);
            for (var row = 0; row < k; row++)
            {
                var factor = row == column ? 0 : system[row, column] / system[column, column];
                for (var at = column; factor != 0 && at <= k; at++)
                    system[row, at] -= factor * system[column, at];
            }
        }

        for (var row = 0; row < k; row++)
            system[row, k] /= system[row, row];
        return !Enumerable.Range(0, k).Any(row => double.IsInfinity(system[row, k]) || double.IsNaN(system[row, k]));
    }

    private static int[] Members(int bits, int count) => [.. Enumerable.Range(0, count).Where(i => (bits >> i & 1) == 1)];
}
