using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Confidence limits for a mean of 195 readings. Source: NIST/SEMATECH e-Handbook, 1.3.5.2, data set ZARR13.</summary>
public sealed class ConfidenceLimitsReferenceTests
{
    private static readonly double[] Values = [.. ReferenceTable.Read("zarr13.csv").Rows.Select(row => row.Number("value"))];

    private static readonly double Mean = Values.Average();

    private static readonly double StandardDeviation = Math.Sqrt(
        Values.Sum(value => (value - Mean) * (value - Mean)) / (Values.Length - 1)
    );

    [Theory]
    [Trait("Category", "Reference")]
    [InlineData("k")]
    [InlineData("lower")]
    [InlineData("upper")]
    public void Create_Zarr13_RoundsToThePrintedLimits(string quantity)
    {
        var measured = MeasuredValue.Create(
            Mean,
            TwoPartUncertainty.Of(StandardDeviation / Math.Sqrt(Values.Length), Values.Length - 1),
            0.95
        );
        AssertPrinted(
            quantity,
            quantity switch
            {
                "k" => measured.CoverageFactor,
                "lower" => measured.Value - measured.ExpandedUncertainty,
                _ => measured.Value + measured.ExpandedUncertainty,
            }
        );
    }

    // What goes into it is computed here, not by the engine: it shows that the readings were copied right.
    [Fact]
    [Trait("Category", "Transcription")]
    public void Readings_MeanAndStandardDeviation_AreThePrintedOnes()
    {
        AssertPrinted("mean", Mean);
        AssertPrinted("sd", StandardDeviation);
    }

    private static void AssertPrinted(string quantity, double computed)
    {
        var printed = ReferenceTable.Read("zarr13-confidence-limits.csv").Only("quantity", quantity);
        printed.Printed("printed").AssertReproducedBy(computed, printed.Number("lastDigits"), quantity);
    }
}
