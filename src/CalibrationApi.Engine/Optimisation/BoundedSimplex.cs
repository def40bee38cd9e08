namespace CalibrationApi.Engine.Optimisation;

/// <summary>
/// Minimises linear objectives, one after the other, over columns between bounds that satisfy A z = 0: the bounded simplex
/// method for a handful of rows.
/// </summary>
/// <remarks>
/// Each basis is solved afresh from the columns themselves, so that no rounding accumulates from step to step, and the
/// entering and leaving columns are those of lowest index (Bland's rule), so that the search ends and always takes the same way.
/// Whatever would raise an objective stays where it is while the next ones are minimised: the result is best by the first
/// objective, among equals by the second, and so on. Two values count as equal when they differ by less than their own
/// rounding could explain, so a change of units decides nothing. Source: SOURCES.md, keys DANTZIG-1963 and BLAND-1977;
/// checked against an independent solver and against the enumeration of all vertices in BlendSolverTests.
/// </remarks>
internal sealed class BoundedSimplex
{
    // Rounding of a sum of a few products is some 1e-15 of their size; a price of a tenth of a millionth is none.
    private const double Equal = 1e-9;
    private const double NoPivot = 1e-11;
    private const double Rounding = 1e-12;
    private const double Cancelled = 1e-4;

    // A few dozen columns and four rows need some dozen steps, and Bland's rule comes back to no basis. Should rounding make it do so
    // all the same, every basis of the round is within all bounds, and as good as the others but for rounding.
    private const int MostSteps = 10_000;

    private readonly double[][] columns;
    private readonly double[] lower;
    private readonly double[] upper;
    private readonly double[] values;
    private readonly int[] basis;
    private readonly bool[] isBasic;
    private readonly bool[] stays;
    private readonly double[,] inverse;

    /// <summary>Starts from a basis that is known to be within all bounds.</summary>
    /// <param name="columns">Columns of A, each with one number for each row.</param>
    /// <param name="lower">Lower bounds.</param>
    /// <param name="upper">Upper bounds, infinity for none.</param>
    /// <param name="basis">One column for each row, linearly independent.</param>
    /// <param name="start">For each column outside the basis the finite bound that it stands on; the others are computed.</param>
    public BoundedSimplex(double[][] columns, double[] lower, double[] upper, int[] basis, double[] start)
    {
        this.columns = columns;
        this.lower = lower;
        this.upper = upper;
        this.basis = basis;
        values = start;
        isBasic = new bool[columns.Length];
        stays = new bool[columns.Length];
        inverse = new double[basis.Length, basis.Length];
        foreach (var column in basis)
            isBasic[column] = true;
        SolveBasis();
    }

    /// <summary>The columns as they stand.</summary>
    public IReadOnlyList<double> Values => values;

    /// <summary>Minimises the next objective without giving up anything of the earlier ones.</summary>
    /// <param name="costs">Coefficient of each column; the objective has to be bounded from below.</param>
    /// <returns>The price of each row: by how much the objective changes when one more of its right side is asked for.</returns>
    public double[] Minimise(double[] costs)
    {
        for (var step = 0; step < MostSteps; step++)
        {
            var (prices, sizes) = Prices(costs);
            var entering = Entering(costs, prices, sizes, out var direction);
            if (entering < 0)
            {
                KeepDearColumns(costs, prices, sizes);
                return prices;
            }

            if (!TryMove(entering, direction))
                stays[entering] = true;
        }

        return Prices(costs).Prices;
    }

    // c_B B^-1, and for each price the size by which rounding is judged: of what was summed, and of the inverse, whose
    // zeros may be left over from cancelling.
    private (double[] Prices, double[] Sizes) Prices(double[] costs)
    {
        var (prices, sizes) = (new double[basis.Length], new double[basis.Length]);
        var dearest = basis.Max(column => Math.Abs(costs[column]));
        for (var row = 0; row < basis.Length; row++)
        {
            for (var k = 0; k < basis.Length; k++)
            {
                var term = costs[basis[k]] * inverse[k, row];
                prices[row] += term;
                sizes[row] += Math.Abs(term) + Cancelled * dearest * Math.Abs(inverse[k, row]);
            }
        }

        return (prices, sizes);
    }

    // Sign of c - y a, where what rounding could explain is zero.
    private int ReducedSign(int column, double[] costs, double[] prices, double[] sizes)
    {
        var reduced = costs[column];
        var size = Math.Abs(reduced);
        for (var row = 0; row < prices.Length; row++)
        {
            reduced -= prices[row] * columns[column][row];
            size += sizes[row] * Math.Abs(columns[column][row]);
        }

        return Math.Abs(reduced) <= Equal * size ? 0 : Math.Sign(reduced);
    }

    private int Entering(double[] costs, double[] prices, double[] sizes, out int direction)
    {
        for (var column = 0; column < columns.Length; column++)
        {
            direction = values[column] == lower[column] ? 1 : -1;
            if (
                !isBasic[column]
                && !stays[column]
                && lower[column] < upper[column]
                && ReducedSign(column, costs, prices, sizes) * direction < 0
            )
                return column;
        }

        direction = 0;
        return -1;
    }

    private void KeepDearColumns(double[] costs, double[] prices, double[] sizes)
    {
        for (var column = 0; column < columns.Length; column++)
            stays[column] |= !isBasic[column] && ReducedSign(column, costs, prices, sizes) != 0;
    }

    // False when nothing would stop the column: since the objective is bounded, its advantage is rounding, of numbers that are
    // more than nine orders of magnitude apart.
    private bool TryMove(int entering, int direction)
    {
        // How fast each basic column changes while the entering one moves.
        var change = new double[basis.Length];
        for (var k = 0; k < basis.Length; k++)
        {
            for (var row = 0; row < basis.Length; row++)
                change[k] -= direction * inverse[k, row] * columns[entering][row];
        }

        var fastest = change.Max(Math.Abs);
        var rooms = new double[basis.Length];
        var way = upper[entering] - lower[entering];
        for (var k = 0; k < basis.Length; k++)
        {
            var bound = change[k] < 0 ? lower[basis[k]] : upper[basis[k]];
            rooms[k] =
                Math.Abs(change[k]) <= NoPivot * fastest ? double.PositiveInfinity : Math.Max(0, (bound - values[basis[k]]) / change[k]);
            way = Math.Min(way, rooms[k]);
        }

        // Among bounds that are reached together, but for rounding, that of the column of lowest index: else the search could go round.
        var leaving = -1;
        for (var k = 0; k < basis.Length; k++)
        {
            if (rooms[k] <= way + Rounding * Math.Max(1, way) && double.IsFinite(rooms[k]) && (leaving < 0 || basis[k] < basis[leaving]))
                leaving = k;
        }

        if (double.IsPositiveInfinity(way))
            return false;
        if (leaving < 0)
        {
            values[entering] = direction > 0 ? upper[entering] : lower[entering];
        }
        else
        {
            var left = basis[leaving];
            values[left] = change[leaving] < 0 ? lower[left] : upper[left];
            isBasic[left] = false;
            isBasic[entering] = true;
            basis[leaving] = entering;
        }

        SolveBasis();
        return true;
    }

    // B^-1 by elimination with the largest pivot, then z_B = -B^-1 times the sum of what stands on its bounds.
    private void SolveBasis()
    {
        var rows = basis.Length;
        var work = new double[rows, 2 * rows];
        for (var row = 0; row < rows; row++)
        {
            for (var k = 0; k < rows; k++)
                work[row, k] = columns[basis[k]][row];
            work[row, rows + row] = 1;
        }

        for (var k = 0; k < rows; k++)
        {
            var pivot = Enumerable.Range(k, rows - k).MaxBy(row => Math.Abs(work[row, k]));
            for (var column = 0; column < 2 * rows; column++)
                (work[k, column], work[pivot, column]) = (work[pivot, column], work[k, column]);
            for (var column = 2 * rows - 1; column >= k; column--)
                work[k, column] /= work[k, k];
            for (var row = 0; row < rows; row++)
            {
                for (var column = 2 * rows - 1; row != k && column >= k; column--)
                    work[row, column] -= work[row, k] * work[k, column];
            }
        }

        var outside = new double[rows];
        for (var column = 0; column < columns.Length; column++)
        {
            for (var row = 0; row < rows && !isBasic[column] && values[column] != 0; row++)
                outside[row] += columns[column][row] * values[column];
        }

        for (var k = 0; k < rows; k++)
        {
            values[basis[k]] = 0;
            for (var row = 0; row < rows; row++)
            {
                inverse[k, row] = work[k, rows + row];
                values[basis[k]] -= inverse[k, row] * outside[row];
            }
        }
    }
}
