using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// The span error of a scale is the slope of a line through the origin, less one. Source: NIST Statistical Reference Datasets, NoInt1 and
/// NoInt2.
/// </summary>
[Trait("Category", "Reference")]
public sealed class ScaleCheckReferenceTests
{
    // A display so fine that only the residuals scatter.
    private static readonly Scale Fine = new() { Division = new Mass(1e-9), StatedAccuracy = new Mass(1) };

    public static TheoryData<string> DataSets => [.. ReferenceTable.Read("strd-through-origin.csv").Rows.Select(row => row["dataset"])];

    // Certified to fifteen digits; readings are taken to the nanogram, and the slope is near one.
    [Theory]
    [MemberData(nameof(DataSets))]
    public void Error_LineThroughTheOrigin_IsTheCertifiedSlopeLessOne(string dataset)
    {
        var (check, row) = Evaluate(dataset);

        Assert.Equal(row.Number("slope") - 1, check.Error, 1e-13);
    }

    [Theory]
    [MemberData(nameof(DataSets))]
    public void StandardUncertainty_LineThroughTheOrigin_IsTheCertifiedStandardDeviationOfTheSlope(string dataset)
    {
        var (check, row) = Evaluate(dataset);

        NearlyEqual.Assert(row.Number("slopeSd"), check.StandardUncertainty, 1e-13);
    }

    private static (ScaleCheckResult Check, ReferenceTable.Row Row) Evaluate(string dataset)
    {
        var row = ReferenceTable.Read("strd-through-origin.csv").Only("dataset", dataset);
        var readings = row.Numbers("x").Zip(row.Numbers("y"), (x, y) => new KnownMassReading(new Mass(x), new Mass(y), new Mass(0)));
        return (ScaleCheckEvaluation.Evaluate(new(Fine, [.. readings])), row);
    }
}
