using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Total mass over total revolutions is the ratio estimator of survey sampling. Sources: Scheaffer, Mendenhall and Ott; Lehtonen and
/// Pahkinen; header of ratio-estimators.csv. Their variance formulas are not used by the engine, which knows more about its readings.
/// </summary>
[Trait("Category", "Reference")]
public sealed class RatioEstimatorReferenceTests
{
    public static TheoryData<string> Cases => [.. ReferenceTable.Read("ratio-estimators.csv").Rows.Select(row => row["case"])];

    [Theory]
    [MemberData(nameof(Cases))]
    public void TotalMassOverTotalRevolutions_PublishedRatioEstimate_RoundsToThePrintedFigures(string example)
    {
        var row = ReferenceTable.Read("ratio-estimators.csv").Only("case", example);

        var result = Evaluate(row);

        var ratio = result.TotalMassOverTotalRevolutions.KilogramsPerRevolution;
        row.Printed("printedRatio").AssertReproducedBy(ratio, what: "ratio");
        row.Printed("printedTotal").AssertReproducedBy(ratio * row.Number("xTotal"), what: "total");
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void MeanOfRatios_SameData_IsAnotherNumber(string example)
    {
        var row = ReferenceTable.Read("ratio-estimators.csv").Only("case", example);

        var result = Evaluate(row);

        row.Printed("meanOfRatios").AssertReproducedBy(result.MeanOfRatios.KilogramsPerRevolution, what: "mean of ratios");
        Assert.NotEqual(result.MeanOfRatios, result.TotalMassOverTotalRevolutions);
    }

    private static CatchTestResult Evaluate(ReferenceTable.Row row) =>
        new CatchTestQuestion
        {
            Catches = [.. row.Numbers("y").Zip(row.Numbers("x"), (y, x) => Given.Net(y, x, Given.NoResolution))],
            Scale = Given.Perfect,
        }.Evaluated();
}
