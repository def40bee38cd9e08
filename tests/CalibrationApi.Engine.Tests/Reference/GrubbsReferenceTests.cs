namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Grubbs' statistic. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1, uranium isotope data.</summary>
[Trait("Category", "Reference")]
public sealed class GrubbsReferenceTests
{
    private static readonly ReferenceTable Data = ReferenceTable.Read("grubbs-uranium.csv");

    [Fact]
    public void Grubbs_UraniumReadings_IsThePrintedStatistic()
    {
        var agreement = Given.PureTest(Data.Only("quantity", "values").Numbers("value")).Evaluated().Agreement;

        var printed = Data.Only("quantity", "G");
        printed.Printed("value").AssertReproducedBy(agreement.Grubbs!.Value, printed.Number("lastDigits"));
    }

    [Fact]
    public void Spread_UraniumReadings_IsThePrintedStandardDeviationOverTheMean()
    {
        var values = Data.Only("quantity", "values").Numbers("value");
        var agreement = Given.PureTest(values).Evaluated().Agreement;

        Data.Only("quantity", "sd").Printed("value").AssertReproducedBy(agreement.Spread * values.Average());
    }

    // The statistic exceeds its critical value, and the deleted residual names the same reading.
    [Fact]
    public void HasStray_UraniumReadings_NamesTheReadingThatGrubbsRejects()
    {
        var agreement = Given.PureTest(Data.Only("quantity", "values").Numbers("value")).Evaluated().Agreement;

        Assert.True(agreement.Grubbs > Data.Only("quantity", "critical").Number("value"));
        Assert.True(agreement.HasStray);
        Assert.Equal(7, agreement.FarthestCatch);
    }
}
