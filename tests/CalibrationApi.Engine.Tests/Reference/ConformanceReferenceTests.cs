using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Conformance probabilities. Source: JCGM 106:2012, clause 7.</summary>
[Trait("Category", "Reference")]
public sealed class ConformanceReferenceTests
{
    public static TheoryData<string> Cases => [.. ReferenceTable.Read("conformance-examples.csv").Rows.Select(row => row["case"])];

    public static TheoryData<double, string> Distances
    {
        get
        {
            var data = new TheoryData<double, string>();
            foreach (var row in ReferenceTable.Read("conformance-distances.csv").Rows)
                data.Add(row.Number("probability"), row["z"]);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Probability_Jcgm106Clause7_RoundsToThePrintedProbability(string example)
    {
        var row = ReferenceTable.Read("conformance-examples.csv").Only("case", example);

        var probability = Conformance.Probability(
            row.Number("estimate"),
            TwoPartUncertainty.Of(row.Number("u"), double.PositiveInfinity),
            Limit(row["lower"]),
            Limit(row["upper"])
        );

        row.Printed("printed").AssertReproducedBy(probability, what: example);
    }

    [Theory]
    [MemberData(nameof(Distances))]
    public void Quantile_Jcgm106Table1_RoundsToThePrintedDistance(double probability, string z) =>
        new PrintedNumber(z).AssertReproducedBy(StudentT.Quantile(probability, double.PositiveInfinity));

    // The same table the other way round: at that distance from one limit the probability is the required one.
    [Theory]
    [MemberData(nameof(Distances))]
    public void Probability_AtThePrintedDistance_IsTheRequiredOne(double probability, string z) =>
        Assert.Equal(
            probability,
            Conformance.Probability(
                0,
                TwoPartUncertainty.Of(1, double.PositiveInfinity),
                double.NegativeInfinity,
                new PrintedNumber(z).Value
            ),
            0.002
        );

    private static double Limit(string text) =>
        text switch
        {
            "-inf" => double.NegativeInfinity,
            "inf" => double.PositiveInfinity,
            _ => new PrintedNumber(text).Value,
        };
}
