using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// The mean square successive difference. Source: NIST Statistical Reference Datasets, Michelso: certified mean, standard deviation and
/// autocorrelation.
/// </summary>
[Trait("Category", "Reference")]
public sealed class DayToDayFromHistoryReferenceTests
{
    private static readonly ReferenceTable Data = ReferenceTable.Read("strd-speed-of-light.csv");

    // With S the sum of squared deviations from the mean and r the autocorrelation at lag 1, the successive differences have
    // the sum of squares 2 S (1 - r) less the squared deviations of the first and of the last value.
    [Fact]
    public void Of_SpeedsOfLight_FollowsFromTheirCertifiedStandardDeviationAndAutocorrelation()
    {
        var values = Data.Only("quantity", "values").Numbers("value");
        var (mean, sd, r) = (Certified("mean"), Certified("sd"), Certified("autocorrelation"));
        var pairs = values.Length - 1;
        var squares = 2 * pairs * sd * sd * (1 - r) - Math.Pow(values[0] - mean, 2) - Math.Pow(values[^1] - mean, 2);

        // The engine takes differences of logarithms.
        var tests = values.Select(value => Test(Math.Exp(value - mean)));

        NearlyEqual.Assert(Math.Sqrt(squares / (2 * pairs)), DayToDayFromHistory.Of([.. tests])!.Value, 1e-11);
    }

    private static PastTest Test(double value) => new(value, 0, null, [value], [0]);

    private static double Certified(string quantity) => Data.Only("quantity", quantity).Number("value");
}
