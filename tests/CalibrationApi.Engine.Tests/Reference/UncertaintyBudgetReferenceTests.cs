using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Published uncertainty budgets: GUM H.1 (end gauge) and G.4.1, EA-4/02 S2 (10 kg weight), University of Tartu (simple weighing),
/// Sandia National Laboratories (two course examples). Sources in the headers of uncertainty-budgets.csv and uncertainty-examples.csv.
/// </summary>
[Trait("Category", "Reference")]
public sealed class UncertaintyBudgetReferenceTests
{
    private static readonly ReferenceTable Budgets = ReferenceTable.Read("uncertainty-budgets.csv");

    private static readonly ReferenceTable Examples = ReferenceTable.Read("uncertainty-examples.csv");

    public static TheoryData<string, string, string, string, double> Printed
    {
        get
        {
            var data = new TheoryData<string, string, string, string, double>();
            foreach (var row in Examples.Rows)
                data.Add(row["case"], row["quantity"], row["percent"], row["printed"], row.Number("lastDigits"));
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public void Combine_PublishedBudget_RoundsToThePrintedFigure(
        string example,
        string quantity,
        string percent,
        string printed,
        double lastDigits
    )
    {
        var parts = Budgets.Rows.Where(row => row["case"] == example).Select(Part).ToArray();
        Assert.NotEmpty(parts);
        var u = Math.Sqrt(parts.Sum(part => part.Variance));
        var nu = EffectiveDegreesOfFreedom.Combine(parts);

        // The GUM truncates the degrees of freedom before it looks a table up; the engine does not.
        var truncated = double.IsInfinity(nu) ? nu : Math.Floor(nu + 0.005);
        var computed = quantity switch
        {
            "u" => u,
            "nu" => nu,
            "nuTruncated" => Math.Floor(nu),
            "k" => StudentT.CoverageFactor(Coverage(percent), truncated),
            "U" => MeasuredValue.Create(0, TwoPartUncertainty.Of(u, truncated), Coverage(percent)).ExpandedUncertainty,
            _ => throw new InvalidDataException($"Unknown quantity {quantity}."),
        };

        new PrintedNumber(printed).AssertReproducedBy(computed, lastDigits, $"{example} {quantity}");
    }

    [Fact]
    public void Examples_LooserThanRounding_AllGiveAReason() =>
        Assert.All(Examples.Rows.Where(row => row.Number("lastDigits") > 0.5), row => Assert.NotEqual("", row["reason"]));

    [Fact]
    public void Examples_EveryBudget_IsUsed() =>
        Assert.Equal(
            Budgets.Rows.Select(row => row["case"]).Distinct().Order(StringComparer.Ordinal),
            Examples.Rows.Select(row => row["case"]).Distinct().Order(StringComparer.Ordinal)
        );

    private static double Coverage(string percent) => new PrintedNumber(percent).Value / 100;

    private static (double Variance, double DegreesOfFreedom) Part(ReferenceTable.Row row)
    {
        var size = row.Number("size");
        var standard = row["kind"] switch
        {
            "standard" => size,
            "rectangular" => size / Math.Sqrt(3),
            "expanded" => size / 2,
            _ => throw new InvalidDataException($"Unknown kind {row["kind"]}."),
        };
        var contribution = standard * row.Number("sensitivity");
        return (contribution * contribution, row.Number("nu"));
    }
}
