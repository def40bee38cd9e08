using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Pooling against published weighted means. Sources: DerSimonian and Kacker (2007), Normand (1999), Rubin (1981); header of
/// pooled-means.csv. Their other estimators (DerSimonian-Laird, restricted likelihood, Cochran's) are not used by the engine.
/// </summary>
[Trait("Category", "Reference")]
public sealed class PoolingReferenceTests
{
    // Pooling works on relative deviations from a positive value; 1 + epsilon y turns any published y into one, and epsilon is
    // small enough that relative and absolute deviations agree far beyond the printed digits.
    private const double Epsilon = 1e-7;

    public static TheoryData<string, string, string> Printed
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var row in ReferenceTable.Read("pooled-means.csv").Rows)
                data.Add(row["case"], row["method"], row["quantity"]);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public void Pool_PublishedData_RoundsToThePrintedFigure(string example, string method, string quantity)
    {
        var row = ReferenceTable.Read("pooled-means.csv").Rows
            .Single(each => each["case"] == example && each["method"] == method && each["quantity"] == quantity);
        double[] values = [.. row.Numbers("y").Select(y => 1 + Epsilon * y)];
        double[] variances = [.. row.Numbers("v").Select(v => Epsilon * Epsilon * v)];

        // A prior without weight leaves the Paule-Mandel equation; a certain prior of almost no scatter leaves the fixed mean.
        var prior = method == "paule-mandel"
            ? new RepeatabilityPrior(Epsilon, 1e-9, "no weight")
            : new RepeatabilityPrior(Epsilon * 1e-6, 1e12, "certain");
        var pooled = PooledCatches.Pool(values, variances, prior);

        var mean = (pooled.MassPerRevolution - 1) / Epsilon;
        var u = Math.Sqrt(pooled.RelativeVariance) / Epsilon;
        var k = StudentT.CoverageFactor(0.95, double.PositiveInfinity);
        var computed = quantity switch
        {
            "mean" => mean,
            "u" => u,
            "tau" => Math.Sqrt(pooled.BetweenVariance) / Epsilon,
            "low" => mean - k * u,
            "high" => mean + k * u,
            _ => throw new InvalidDataException($"Unknown quantity {quantity}."),
        };
        row.Printed("printed").AssertReproducedBy(computed, what: $"{example} {method} {quantity}");
    }
}

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

    private static CatchTestResult Evaluate(ReferenceTable.Row row) => new CatchTest
    {
        Catches = [.. row.Numbers("y").Zip(row.Numbers("x"), (y, x) => Given.Net(y, x, Given.NoResolution))],
        Scale = Given.Perfect,
    }.Evaluated();
}

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
