using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Quantiles of Student's t. Sources: JCGM 100:2008 (GUM), table G.2; NIST/SEMATECH e-Handbook, 1.3.6.7.2; mpmath, a general-purpose
/// arbitrary-precision library. Details in the headers of the files.
/// </summary>
[Trait("Category", "Reference")]
public sealed class StudentTReferenceTests
{
    public static TheoryData<double, double, string, double> GumTableG2
    {
        get
        {
            var data = new TheoryData<double, double, string, double>();
            foreach (var row in ReferenceTable.Read("gum-table-g2.csv").Rows)
                data.Add(row.Number("nu"), row.Number("percent"), row["printed"], row.Number("lastDigits"));
            return data;
        }
    }

    public static TheoryData<double, double, string> PrintedQuantiles
    {
        get
        {
            var data = new TheoryData<double, double, string>();
            foreach (var row in ReferenceTable.Read("student-t-quantiles.csv").Rows)
                data.Add(row.Number("nu"), row.Number("p"), row["printed"]);
            return data;
        }
    }

    public static TheoryData<double, double, double> LibraryQuantiles
    {
        get
        {
            var data = new TheoryData<double, double, double>();
            foreach (var row in ReferenceTable.Read("student-t-mpmath.csv").Rows)
                data.Add(row.Number("nu"), row.Number("p"), row.Number("quantile"));
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(GumTableG2))]
    public void CoverageFactor_GumTableG2_RoundsToThePrintedFactor(double nu, double percent, string printed, double lastDigits) =>
        new PrintedNumber(printed).AssertReproducedBy(StudentT.CoverageFactor(percent / 100, nu), lastDigits);

    [Theory]
    [MemberData(nameof(PrintedQuantiles))]
    public void Quantile_PrintedTable_RoundsToThePrintedQuantile(double nu, double p, string printed) =>
        new PrintedNumber(printed).AssertReproducedBy(StudentT.Quantile(p, nu));

    [Theory]
    [MemberData(nameof(LibraryQuantiles))]
    public void Quantile_ArbitraryPrecisionLibrary_AgreesWithinItsPromise(double nu, double p, double quantile) =>
        NearlyEqual.Assert(quantile, StudentT.Quantile(p, nu), 2e-11);

    [Theory]
    [MemberData(nameof(LibraryQuantiles))]
    public void Cdf_ArbitraryPrecisionLibrary_AgreesWithinItsPromise(double nu, double p, double quantile) =>
        Assert.Equal(p, StudentT.Cdf(quantile, nu), 1e-11);
}
