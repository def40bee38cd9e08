using CalibrationApi.Engine.Optimisation;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>What is asked of one nutrient, relative to its target.</summary>
/// <param name="Least">Least amount; minus infinity when nothing is wanted any more.</param>
/// <param name="Most">Most amount; infinity without a limit.</param>
/// <param name="IsLimit">The most is a limit, to be kept before targets are met; otherwise it is the target itself.</param>
internal readonly record struct BlendRow(double Least, double Most, bool IsLimit);

/// <summary>A blend as a linear programme: rates of products between bounds, nutrients between bounds, cost and mass.</summary>
/// <remarks>
/// <para>
/// Every rate is relative to one rate, every amount of a nutrient relative to its own target, so that the same tolerances fit
/// all units. Besides the rates x the columns are the amount r of each nutrient and what it falls short s or goes over o:
/// A x - r + s - o = 0. So there is always a point to start from, and one search serves both questions: with s = o = 0 all
/// targets are met; otherwise it is the nearest that can be had.
/// </para>
/// <para>
/// The order of what is made least: (1) the sum over limits (at most) of what goes over, relative to the target; (2) the sum
/// over targets of what falls short or, for exact ones, goes over, relative to the target: the nearest answer is that of
/// least weighted absolute deviation with limits first; (3) cost, where there are prices; (4) total mass; then as
/// much as possible of the first product, then of the second, and so on.
/// </para>
/// </remarks>
/// <param name="Shares">For each nutrient asked for and each product, the relative amount from the relative rate 1.</param>
/// <param name="Least">Least relative rate of each product.</param>
/// <param name="Most">Most relative rate of each product, infinity without a limit.</param>
/// <param name="Costs">Relative cost of each product; empty without prices.</param>
internal sealed record BlendProgram(double[][] Shares, double[] Least, double[] Most, double[] Costs)
{
    // Amounts relative to their targets; what rounding leaves is far below.
    private const double Met = 1e-9;
    private const double Rounding = 1e-12;

    /// <summary>Finds the best rates for the nutrients asked for.</summary>
    /// <param name="rows">What is asked of each nutrient.</param>
    public BlendSolution Solve(IReadOnlyList<BlendRow> rows)
    {
        var simplex = Start(rows, out var overLimits, out var offTargets);
        simplex.Minimise(overLimits);
        simplex.Minimise(offTargets);
        var prices = Costs.Length > 0 ? simplex.Minimise(ForRates(i => Costs[i])) : [];
        simplex.Minimise(ForRates(_ => 1));
        for (var first = 0; first < Least.Length; first++)
            simplex.Minimise(ForRates(i => i == first ? -1 : 0));
        var rates = simplex.Values.Take(Least.Length).Select((rate, i) => OnBound(rate, i)).ToArray();
        var amounts = rows.Select((_, j) => Amount(rates, j)).ToArray();
        bool[] met =
        [
            .. rows.Select(
                (row, j) =>
                    (amounts[j] >= row.Least || IsMet(amounts[j] - row.Least)) && (amounts[j] <= row.Most || IsMet(amounts[j] - row.Most))
            ),
        ];
        return new BlendSolution(rates, amounts, met, prices);
    }

    /// <summary>True when some rates meet everything that is asked.</summary>
    public bool CanMeet(IReadOnlyList<BlendRow> rows)
    {
        var simplex = Start(rows, out var overLimits, out var offTargets);
        double[] both = [.. overLimits.Zip(offTargets, (one, other) => one + other)];
        simplex.Minimise(both);
        return Deviation(simplex, both) <= Met;
    }

    private static bool IsMet(double deviation) => Math.Abs(deviation) <= Met;

    private BoundedSimplex Start(IReadOnlyList<BlendRow> rows, out double[] overLimits, out double[] offTargets)
    {
        var (n, m) = (Least.Length, rows.Count);
        var columns = new double[n + 3 * m][];
        double[] lower = [.. Least, .. rows.Select(row => row.Least), .. new double[2 * m]];
        double[] upper = [.. Most, .. rows.Select(row => row.Most), .. new double[2 * m]];
        double[] start = [.. Least, .. new double[3 * m]];
        var basis = new int[m];
        overLimits = new double[columns.Length];
        offTargets = new double[columns.Length];
        for (var i = 0; i < n; i++)
            columns[i] = [.. Shares.Select(row => row[i])];
        for (var j = 0; j < m; j++)
        {
            var (amount, isShort, over) = (n + j, n + m + j, n + 2 * m + j);
            columns[amount] = Unit(m, j, -1);
            columns[isShort] = Unit(m, j, 1);
            columns[over] = Unit(m, j, -1);
            upper[isShort] = double.IsFinite(rows[j].Least) ? double.PositiveInfinity : 0;
            upper[over] = double.IsFinite(rows[j].Most) ? double.PositiveInfinity : 0;
            offTargets[isShort] = 1;
            (rows[j].IsLimit ? overLimits : offTargets)[over] = 1;
            var least = Amount(Least, j);
            (basis[j], start[amount]) =
                least < rows[j].Least ? (isShort, rows[j].Least)
                : least > rows[j].Most ? (over, rows[j].Most)
                : (amount, 0);
        }

        return new BoundedSimplex(columns, lower, upper, basis, start);
    }

    private double[] ForRates(Func<int, double> cost)
    {
        var costs = new double[Least.Length + 3 * Shares.Length];
        for (var i = 0; i < Least.Length; i++)
            costs[i] = cost(i);
        return costs;
    }

    private double Amount(double[] rates, int row) => Shares[row].Zip(rates, (share, rate) => share * rate).Sum();

    // A rate that only rounding keeps off its bound stands on it.
    private double OnBound(double rate, int product) =>
        Math.Abs(rate - Least[product]) <= Rounding * Math.Max(1, Least[product]) ? Least[product]
        : double.IsFinite(Most[product]) && Math.Abs(rate - Most[product]) <= Rounding * Math.Max(1, Most[product]) ? Most[product]
        : rate;

    private static double Deviation(BoundedSimplex simplex, double[] weights) =>
        simplex.Values.Zip(weights, (value, weight) => weight == 0 ? 0 : value * weight).Sum();

    private static double[] Unit(int length, int at, double value)
    {
        var column = new double[length];
        column[at] = value;
        return column;
    }
}

/// <summary>The best rates of a blend.</summary>
/// <param name="Rates">Relative rate of each product.</param>
/// <param name="Amounts">Relative amount of each nutrient.</param>
/// <param name="Met">Which nutrients are as asked.</param>
/// <param name="Prices">Relative cost of the next relative amount of each nutrient; empty without costs.</param>
internal sealed record BlendSolution(double[] Rates, double[] Amounts, bool[] Met, double[] Prices)
{
    /// <summary>Everything that was asked is met.</summary>
    public bool MeetsAll => Met.All(met => met);
}
