using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Scatter within groups, pooled. Source: NIST Statistical Reference Datasets, SiRstv: five instruments, five readings each.
/// </summary>
[Trait("Category", "Reference")]
public sealed class RepeatabilityFromHistoryReferenceTests
{
    private static readonly ReferenceTable Data = ReferenceTable.Read("strd-resistivity.csv");
    private static readonly double[][] Instruments =
    [
        .. Data.Rows.Where(row => row["quantity"] == "instrument").Select(row => row.Numbers("value")),
    ];

    // The engine's scatter is relative to each mean; the groups are shifted to the mean one, which changes no deviation.
    [Fact]
    public void Of_FiveInstruments_IsTheCertifiedResidualStandardDeviation()
    {
        var tests = Instruments.Select(values => Test([.. values.Select(value => value - values.Average() + 1)]));

        var prior = RepeatabilityFromHistory.Of([.. tests])!;

        NearlyEqual.Assert(Data.Only("quantity", "residualSd").Number("value"), prior.Relative, 1e-10);
    }

    // Twenty degrees of freedom are certified; the engine believes fifteen at most, because meters wear.
    [Fact]
    public void Of_ThreeAndFiveInstruments_HasTheirDegreesOfFreedomUpToItsLimit()
    {
        Assert.Equal(12, RepeatabilityFromHistory.Of([.. Instruments.Take(3).Select(Test)])!.DegreesOfFreedom);
        Assert.Equal(15, RepeatabilityFromHistory.Of([.. Instruments.Select(Test)])!.DegreesOfFreedom);
    }

    private static PastTest Test(double[] values) => new(values.Average(), 0, null, values, new double[values.Length]);
}
