using System.Globalization;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.StandCounts;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>How often the interval of 95 % holds the truth, by seeded simulation of counts whose density and clumping are known.</summary>
[Trait("Category", "Coverage")]
public sealed class PlantDensityCoverageTests
{
    private const int Trials = 4000;

    private static readonly double[] OneSize = [0.25];
    private static readonly double[] ManySizes = [0.25, 0.5, 1, 0.25];

    public static TheoryData<int, double, double> Cases
    {
        get
        {
            var data = new TheoryData<int, double, double>();
            foreach (var counts in (int[])[2, 3, 4, 6, 10, 20])
            {
                foreach (var mean in (double[])[3, 10, 40])
                {
                    // No clumping, and 22, 45 and 71 % from spot to spot beyond chance.
                    foreach (var spotVariance in (double[])[0, 0.05, 0.2, 0.5])
                        data.Add(counts, mean, spotVariance);
                }
            }

            return data;
        }
    }

    // With 4000 trials the figure of a true 95 % has a standard deviation of 0.34.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Interval_SamplesOfOneSize_HoldsTheTruthAtLeastInNinetyThreeOfAHundred(int counts, double mean, double spotVariance)
    {
        var share = Covered(counts, mean, spotVariance, OneSize);

        Assert.True(share >= 0.93, string.Create(CultureInfo.InvariantCulture, $"Covered {share:P2}."));
        if (counts >= 10)
            Assert.True(share <= 0.975, string.Create(CultureInfo.InvariantCulture, $"Covered {share:P2}: wider than it says."));
    }

    [Theory]
    [InlineData(4, 3, 0)]
    [InlineData(4, 10, 0.5)]
    [InlineData(6, 10, 0.2)]
    [InlineData(12, 40, 0.05)]
    [InlineData(20, 3, 0.5)]
    public void Interval_SamplesOfSeveralSizes_HoldsTheTruthAtLeastInNinetyThreeOfAHundred(int counts, double mean, double spotVariance) =>
        Assert.InRange(Covered(counts, mean, spotVariance, ManySizes), 0.93, 1);

    // The same counts with their chance alone: half of the intervals miss, which is why it is not used where counts scatter.
    [Fact]
    public void Interval_FromOneOfManyClumpedCounts_IsTooNarrow() => Assert.InRange(Covered(1, 40, 0.2, OneSize), 0.3, 0.7);

    private static double Covered(int counts, double mean, double spotVariance, double[] areas)
    {
        var random = new Random(20260301);
        var held = 0;
        for (var trial = 0; trial < Trials; trial++)
        {
            PlantSample[] samples = [.. Enumerable.Range(0, counts).Select(i => Draw(random, mean, spotVariance, areas[i % areas.Length]))];
            var (lower, upper) = new PlantDensity(samples).Interval(0.95);
            if (lower <= mean / 0.25 && mean / 0.25 <= upper)
                held++;
        }

        return (double)held / Trials;
    }

    // The mean is of a quarter of a square metre.
    private static PlantSample Draw(Random random, double mean, double spotVariance, double area)
    {
        var expected = mean * area / 0.25 * (spotVariance > 0 ? Gamma.Sample(random, 1 / spotVariance, 1 / spotVariance) : 1);
        return new PlantSample(expected < 1e-9 ? 0 : Poisson.Sample(random, expected), new Area(area));
    }
}
