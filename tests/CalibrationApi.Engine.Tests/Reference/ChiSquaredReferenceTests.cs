using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Chi-squared quantiles. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4.</summary>
[Trait("Category", "Reference")]
public sealed class ChiSquaredReferenceTests
{
    public static TheoryData<double, double, string> PrintedQuantiles
    {
        get
        {
            var data = new TheoryData<double, double, string>();
            foreach (var row in ReferenceTable.Read("chi-squared-quantiles.csv").Rows)
                data.Add(row.Number("nu"), row.Number("p"), row["printed"]);
            return data;
        }
    }

    // The engine has the tail, not the quantile: the printed quantile lies between the tails of its own rounding limits.
    [Theory]
    [MemberData(nameof(PrintedQuantiles))]
    public void UpperTail_PrintedQuantile_BracketsTheProbability(double nu, double p, string printed)
    {
        var quantile = new PrintedNumber(printed);

        var above = ChiSquared.UpperTail(quantile.Value - quantile.LastDigit / 2, nu);
        var below = ChiSquared.UpperTail(quantile.Value + quantile.LastDigit / 2, nu);

        Assert.InRange(1 - p, below, above);
    }
}
