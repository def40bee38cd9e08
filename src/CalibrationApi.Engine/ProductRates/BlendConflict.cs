namespace CalibrationApi.Engine.ProductRates;

/// <summary>Why one nutrient cannot be met: the fewest other conditions that stand against it together.</summary>
/// <param name="Row">The nutrient.</param>
/// <param name="IsShort">It falls short of its least; otherwise it goes over its most.</param>
/// <param name="MostRates">Products whose most rate stands against it.</param>
/// <param name="LeastRates">Products whose least rate stands against it.</param>
/// <param name="MostOf">Nutrients of which no more may be given.</param>
/// <param name="LeastOf">Nutrients of which no less may be given.</param>
internal sealed record BlendConflict(
    int Row,
    bool IsShort,
    IReadOnlyList<int> MostRates,
    IReadOnlyList<int> LeastRates,
    IReadOnlyList<int> MostOf,
    IReadOnlyList<int> LeastOf
)
{
    /// <summary>Another target stands against it.</summary>
    public bool IsBetweenTargets => MostOf.Count + LeastOf.Count > 0;

    /// <summary>Nothing stands against it: it cannot be met by these products whatever their rates.</summary>
    public bool IsAlone => !IsBetweenTargets && MostRates.Count + LeastRates.Count == 0;

    /// <summary>The conflict of each nutrient that a nearest answer does not meet.</summary>
    /// <remarks>
    /// The other nutrients are asked for only what the nearest answer gives, then one condition after the other is given up; those
    /// that cannot be given up without the nutrient becoming possible are the reason. Rates are given up before targets.
    /// </remarks>
    /// <param name="program">The blend.</param>
    /// <param name="rows">What was asked.</param>
    /// <param name="nearest">What can be had.</param>
    public static IEnumerable<BlendConflict> Of(BlendProgram program, IReadOnlyList<BlendRow> rows, BlendSolution nearest)
    {
        for (var j = 0; j < rows.Count; j++)
        {
            if (nearest.Met[j])
                continue;
            if (nearest.Amounts[j] < rows[j].Least)
                yield return Find(program, Relaxed(rows, nearest, j, rows[j] with { Most = double.PositiveInfinity }), j, isShort: true);
            else
                yield return Find(program, Relaxed(rows, nearest, j, rows[j] with { Least = double.NegativeInfinity }), j, isShort: false);
        }
    }

    private static BlendRow[] Relaxed(IReadOnlyList<BlendRow> rows, BlendSolution nearest, int row, BlendRow own) =>
        [
            .. rows.Select(
                (one, k) =>
                    k == row
                        ? own
                        : one with
                        {
                            Least = Math.Min(one.Least, nearest.Amounts[k]),
                            Most = Math.Max(one.Most, nearest.Amounts[k]),
                        }
            ),
        ];

    private static BlendConflict Find(BlendProgram program, BlendRow[] rows, int row, bool isShort)
    {
        var asked = (Program: program, Rows: rows);

        // The members of a list that have to stay; the others are given up for good.
        List<int> Needed(int count, Func<int, bool> isThere, Func<int, (BlendProgram Program, BlendRow[] Rows)> without)
        {
            var needed = new List<int>();
            foreach (var i in Enumerable.Range(0, count).Where(isThere))
            {
                var less = without(i);
                if (less.Program.CanMeet(less.Rows))
                    needed.Add(i);
                else
                    asked = less;
            }

            return needed;
        }

        var most = Needed(
            program.Most.Length,
            i => double.IsFinite(program.Most[i]),
            i => (asked.Program with { Most = Put(asked.Program.Most, i, double.PositiveInfinity) }, asked.Rows)
        );
        var least = Needed(
            program.Least.Length,
            i => program.Least[i] > 0,
            i => (asked.Program with { Least = Put(asked.Program.Least, i, 0) }, asked.Rows)
        );
        var leastOf = Needed(
            rows.Length,
            k => k != row && double.IsFinite(rows[k].Least),
            k => (asked.Program, Put(asked.Rows, k, asked.Rows[k] with { Least = double.NegativeInfinity }))
        );
        var mostOf = Needed(
            rows.Length,
            k => k != row && double.IsFinite(rows[k].Most),
            k => (asked.Program, Put(asked.Rows, k, asked.Rows[k] with { Most = double.PositiveInfinity }))
        );
        return new BlendConflict(row, isShort, most, least, mostOf, leastOf);
    }

    private static T[] Put<T>(T[] list, int at, T value)
    {
        var changed = (T[])list.Clone();
        changed[at] = value;
        return changed;
    }
}
