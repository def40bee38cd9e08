using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Confidence limits for a mean of 195 readings. Source: NIST/SEMATECH e-Handbook, 1.3.5.2, data set ZARR13.</summary>
[Trait("Category", "Reference")]
public sealed class ConfidenceLimitsReferenceTests
{
    [Theory]
    [InlineData("mean")]
    [InlineData("sd")]
    [InlineData("k")]
    [InlineData("lower")]
    [InlineData("upper")]
    public void Create_Zarr13_RoundsToThePrintedLimits(string quantity)
    {
        var values = ReferenceTable.Read("zarr13.csv").Rows.Select(row => row.Number("value")).ToArray();
        var mean = values.Average();
        var sd = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1));
        var measured = MeasuredValue.Create(mean, TwoPartUncertainty.Of(sd / Math.Sqrt(values.Length), values.Length - 1), 0.95);
        var printed = ReferenceTable.Read("zarr13-confidence-limits.csv").Only("quantity", quantity);

        var computed = quantity switch
        {
            "mean" => measured.Value,
            "sd" => sd,
            "k" => measured.CoverageFactor,
            "lower" => measured.Value - measured.ExpandedUncertainty,
            _ => measured.Value + measured.ExpandedUncertainty,
        };

        printed.Printed("printed").AssertReproducedBy(computed, printed.Number("lastDigits"), quantity);
    }
}
