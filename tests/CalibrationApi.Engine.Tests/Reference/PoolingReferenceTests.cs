using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Tests.Statistics;

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
        var row = ReferenceTable
            .Read("pooled-means.csv")
            .Rows.Single(each => each["case"] == example && each["method"] == method && each["quantity"] == quantity);
        double[] values = [.. row.Numbers("y").Select(y => 1 + Epsilon * y)];
        double[] variances = [.. row.Numbers("v").Select(v => Epsilon * Epsilon * v)];

        // A prior without weight leaves the Paule-Mandel equation; a certain prior of almost no scatter leaves the fixed mean.
        var prior =
            method == "paule-mandel"
                ? new RepeatabilityPrior(Epsilon, 1e-9, "no weight")
                : new RepeatabilityPrior(Epsilon * 1e-6, 1e12, "certain");
        var pooled = Pooled.Of(values, variances, prior);

        var mean = (pooled.Value - 1) / Epsilon;
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
