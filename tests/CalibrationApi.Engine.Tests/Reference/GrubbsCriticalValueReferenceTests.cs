using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Critical values of Grubbs' test, made from quantiles of t. Source: NIST/SEMATECH e-Handbook, 1.3.5.17.1.</summary>
[Trait("Category", "Reference")]
public sealed class GrubbsCriticalValueReferenceTests
{
    public static TheoryData<int, string, double, int> CriticalValues
    {
        get
        {
            var data = new TheoryData<int, string, double, int>();
            foreach (var row in ReferenceTable.Read("grubbs-critical-values.csv").Rows)
            {
                var n = (int)row.Number("n");
                data.Add(n, row["oneSided05"], 0.05, 1);
                data.Add(n, row["publicTable05"], 0.05, 1);
                data.Add(n, row["twoSided05"], 0.05, 2);
                data.Add(n, row["oneSided01"], 0.01, 1);
                data.Add(n, row["twoSided01"], 0.01, 2);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(CriticalValues))]
    public void Quantile_InGrubbsFormula_GivesThePrintedCriticalValue(int n, string printed, double significance, int sides)
    {
        var t = StudentT.Quantile(1 - significance / (sides * n), n - 2);
        var critical = (n - 1) / Math.Sqrt(n) * Math.Sqrt(t * t / (n - 2 + t * t));

        new PrintedNumber(printed).AssertReproducedBy(critical);
    }
}
