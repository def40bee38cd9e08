using Google.OrTools.LinearSolver;

namespace CalibrationApi.Engine.Tests.ProductRates;

/// <summary>
/// The best rates by the linear solver GLOP of OR-Tools, a general-purpose library: one objective after the other, each held while the next
/// is made least.
/// </summary>
internal static class IndependentSolver
{
    /// <summary>Over limits, off targets and cost at the best point.</summary>
    public static double[] Best(PlainBlend blend)
    {
        using var solver = Solver.CreateSolver("GLOP");
        Variable[] rates = [.. blend.Least.Select((least, i) => solver.MakeNumVar(least, blend.Most[i], $"x{i}"))];
        var over = solver.MakeNumVar(0, double.PositiveInfinity, "over");
        var off = solver.MakeNumVar(0, double.PositiveInfinity, "off");
        var overs = solver.MakeConstraint(0, 0);
        var offs = solver.MakeConstraint(0, 0);
        overs.SetCoefficient(over, -1);
        offs.SetCoefficient(off, -1);
        for (var j = 0; j < blend.Shares.Length; j++)
        {
            var missing = solver.MakeNumVar(0, double.PositiveInfinity, $"missing{j}");
            var above = solver.MakeNumVar(0, double.PositiveInfinity, $"above{j}");
            var row = solver.MakeConstraint(blend.RowLeast[j] / blend.Scale[j], blend.RowMost[j] / blend.Scale[j]);
            for (var i = 0; i < rates.Length; i++)
                row.SetCoefficient(rates[i], blend.Shares[j][i] / blend.Scale[j]);
            row.SetCoefficient(missing, 1);
            row.SetCoefficient(above, -1);
            offs.SetCoefficient(missing, 1);
            (blend.IsLimit[j] ? overs : offs).SetCoefficient(above, 1);
        }

        var least = new double[3];
        foreach (var (at, held) in new[] { (0, over), (1, off) })
        {
            least[at] = Minimise(solver, [(held, 1)]);
            held.SetUb(least[at] + 1e-9);
        }

        least[2] = Minimise(solver, [.. rates.Select((rate, i) => (rate, blend.Cost[i]))]);
        return least;
    }

    private static double Minimise(Solver solver, (Variable Variable, double Cost)[] terms)
    {
        solver.Objective().Clear();
        foreach (var (variable, cost) in terms)
            solver.Objective().SetCoefficient(variable, cost);
        solver.Objective().SetMinimization();
        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return solver.Objective().Value();
    }
}
