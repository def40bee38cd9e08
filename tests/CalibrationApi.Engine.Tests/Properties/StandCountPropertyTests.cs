using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Tests.StandCounts;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>What must hold for any counts of plants: every set of up to four counts of up to twenty plants is tried.</summary>
public sealed class StandCountPropertyTests
{
    private const int MostCounts = 4;
    private const int MostPlants = 20;

    // The order of the counts enters nothing but the order of sums, which the shuffled trial has.
    [Theory]
    [InlineData(1.0)]
    [InlineData(0.25)]
    public void PlantDensity_AnySmallCounts_IsFiniteAndInOrder(double squareMetres)
    {
        var tried = 0;
        foreach (var counts in Sets())
        {
            Check(Sampled.Quadrats(squareMetres, counts));
            tried++;
        }

        // Sets of 1 to 4 out of 21 numbers with repetition: 21 + 231 + 1771 + 10626.
        Assert.Equal(12_649, tried);
    }

    [Fact]
    public void PlantDensity_SmallCountsOnPlotsThatDiffer_IsFiniteAndInOrder()
    {
        var random = new Random(20_260_301);
        foreach (var counts in Sets())
        {
            random.Shuffle(counts);
            Check([.. counts.Select((count, i) => new PlantSample(count, new Area(0.1 + 0.3 * i)))]);
        }
    }

    // Their index of dispersion is 1 up to rounding, so the root looked for is where the search starts.
    [Theory]
    [InlineData(7, 13, 13, 15)]
    [InlineData(15, 13, 13, 7)]
    public void PlantDensity_ScatterExactlyOfChance_HasNoVariationBeyondIt(params int[] counts)
    {
        var density = Sampled.Density(1, counts);

        NearlyEqual.Assert(1, density.IndexOfDispersion!.Value, 1e-12);
        Assert.InRange(density.SpotVariance, 0, 1e-15);
    }

    private static void Check(PlantSample[] samples)
    {
        var told = string.Join(" ", samples.Select(sample => sample.Plants));
        var result = StandCountEvaluation.Evaluate(
            new StandCountQuestion
            {
                Samples = samples,
                SeedsSown = Sampled.PerSquareMetre(20),
                Germination = 0.9,
                TargetStand = Sampled.PerSquareMetre(15),
                MinimumStand = Sampled.PerSquareMetre(10),
            }
        );

        var density = result.Density;
        Assert.True(density.SpotVariance >= 0 && double.IsFinite(Math.Sqrt(density.SpotVariance)), told);
        var (lower, upper) = density.Interval(0.95);
        Assert.True(lower >= 0 && lower <= density.PerSquareMetre && density.PerSquareMetre < upper && double.IsFinite(upper), told);
        Assert.InRange(result.ProbabilityBelowMinimum!.Value, 0, 1);
        Assert.True(density.CountsFor(0.2, 0.95) is null or >= 2, told);
        Assert.True((density.ProbabilityByChance ?? 1) is >= 0 and <= 1, told);
        foreach (var text in (IEnumerable<Sentence>)[result.Headline, .. result.Findings.Select(finding => finding.Detail)])
            Assert.DoesNotContain("NaN", DisplayUnits.Metric.Write(text), StringComparison.Ordinal);
    }

    private static IEnumerable<int[]> Sets()
    {
        foreach (var set in Enumerable.Range(1, MostCounts).SelectMany(size => Longer([], size)))
            yield return set;
    }

    // In rising order, so that each set comes once.
    private static IEnumerable<int[]> Longer(int[] start, int size) =>
        start.Length == size
            ? [start]
            : Enumerable
                .Range(start.LastOrDefault(), MostPlants + 1 - start.LastOrDefault())
                .SelectMany(next => Longer([.. start, next], size));
}
