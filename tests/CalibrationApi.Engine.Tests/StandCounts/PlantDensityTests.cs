using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>Density, scatter and interval of counts, on paper and against published relations.</summary>
public sealed class PlantDensityTests
{
    // 20, 30 and 25 plants on 0.25 m2 each: 75 over 0.75 m2.
    [Fact]
    public void PerSquareMetre_IsAllPlantsOverAllGround()
    {
        PlantSample[] samples = [new(20, new Area(0.25)), new(60, new Area(0.5))];

        NearlyEqual.Assert(80 / 0.75, new PlantDensity(samples).PerSquareMetre);
        NearlyEqual.Assert(100, Sampled.Density(0.25, 20, 30, 25).PerSquareMetre);
    }

    // Counts 10, 20, 30, 40: mean 25, s^2 = 500 / 3; phi = (s^2 - mean) / mean^2.
    [Fact]
    public void Scatter_SamplesOfOneSize_IsThatOfTextbooks()
    {
        var density = Sampled.Density(1, 10, 20, 30, 40);

        NearlyEqual.Assert(500.0 / 3 / 25, density.IndexOfDispersion!.Value);
        NearlyEqual.Assert((500.0 / 3 - 25) / 625, density.SpotVariance, 1e-12);
        NearlyEqual.Assert(Math.Sqrt((500.0 / 3 - 25) / 625), density.SpotToSpot, 1e-12);
        NearlyEqual.Assert(Math.Sqrt(500.0 / 3) / 25, density.CoefficientOfVariation!.Value);
        NearlyEqual.Assert(ChiSquared.UpperTail(20, 3), density.ProbabilityByChance!.Value);
    }

    // s / sqrt(c) over the mean is the standard error; the t quantile of 3 degrees of freedom is 3.182.
    [Fact]
    public void Interval_ClumpedSamplesOfOneSize_IsTheTIntervalOnTheLogarithm()
    {
        var (lower, upper) = Sampled.Density(1, 20, 30, 30, 40).Interval(0.95);

        var half = StudentT.CoverageFactor(0.95, 3) * Math.Sqrt(200.0 / 3 / 4) / 30;
        NearlyEqual.Assert(30 * Math.Exp(-half), lower);
        NearlyEqual.Assert(30 * Math.Exp(half), upper);
    }

    [Fact]
    public void Interval_EqualCounts_IsNeverNarrowerThanChance()
    {
        var (lower, upper) = Sampled.Density(0.5, 20, 20, 20).Interval(0.95);

        var poisson = PoissonMean.Limits(60, 0.95);
        NearlyEqual.Assert(poisson.Lower / 1.5, lower);
        NearlyEqual.Assert(poisson.Upper / 1.5, upper);
    }

    [Fact]
    public void Interval_OneCount_IsThePoissonOne()
    {
        var density = Sampled.Density(0.25, 20);
        var (lower, upper) = density.Interval(0.95);

        // 12.22 and 30.89 in tables of exact limits.
        Assert.Equal(12.22 * 4, lower, 0.02);
        Assert.Equal(30.89 * 4, upper, 0.02);
        Assert.Null(density.IndexOfDispersion);
        Assert.Null(density.CoefficientOfVariation);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void Interval_NoPlants_EndsAtAFiniteUpperLimit(int counts)
    {
        var density = Sampled.Density(0.25, new int[counts]);
        var (lower, upper) = density.Interval(0.95);

        Assert.Equal(0, lower);
        Assert.Equal(3.688879 / (0.25 * counts), upper, 1e-5);
        Assert.Null(density.CountsFor(0.1, 0.95));
        Assert.Equal(0.025, 1 - density.ProbabilityBelow(upper), 1e-9);
    }

    [Fact]
    public void Interval_TwoCountsFarApart_IsHeldToAPatchyStand()
    {
        var (lower, upper) = Sampled.Density(1, 10, 50).Interval(0.95);

        // Two counts: t is 12.7 and would give a factor of over a thousand to either side.
        Assert.InRange(upper / 30, 1, 6);
        Assert.InRange(30 / lower, 1, 6);
    }

    [Fact]
    public void Interval_HigherCoverage_IsWider()
    {
        var density = Sampled.Density(1, 10, 22, 17, 30);

        Assert.True(density.Interval(0.99).Upper > density.Interval(0.9).Upper);
        Assert.True(density.Interval(0.99).Lower < density.Interval(0.9).Lower);
    }

    [Theory]
    [InlineData(20, 30, 30, 40)]
    [InlineData(20, 20, 20, 20)]
    [InlineData(10, 50, 0, 0)]
    public void ProbabilityBelow_EndOfTheInterval_IsHalfOfWhatIsLeft(params int[] plants)
    {
        var density = Sampled.Density(1, plants);
        var (lower, upper) = density.Interval(0.9);

        Assert.Equal(0.05, density.ProbabilityBelow(lower), 1e-9);
        Assert.Equal(0.95, density.ProbabilityBelow(upper), 1e-9);
    }

    [Fact]
    public void ProbabilityBelow_RisesWithTheDensity()
    {
        var density = Sampled.Density(1, 10, 22, 17, 30);
        double[] found = [.. Enumerable.Range(1, 60).Select(at => density.ProbabilityBelow(at))];

        Assert.All(found.Zip(found.Skip(1)), pair => Assert.True(pair.First <= pair.Second));
        Assert.True(found[0] < 0.001 && found[^1] > 0.99);
    }

    // The moment equation itself, for samples that differ in size.
    [Fact]
    public void SpotVariance_SamplesOfSeveralSizes_SolvesTheMomentEquation()
    {
        PlantSample[] samples =
        [
            new(4, new Area(0.25)),
            new(40, new Area(1)),
            new(9, new Area(0.5)),
            new(30, new Area(0.5)),
            new(2, new Area(0.25)),
        ];
        var density = new PlantDensity(samples);

        var sum = samples.Sum(sample =>
        {
            var expected = density.PerSquareMetre * sample.Area.SquareMetres;
            return Math.Pow(sample.Plants - expected, 2) / (expected + density.SpotVariance * expected * expected);
        });
        NearlyEqual.Assert(4, sum, 1e-10);
        Assert.True(density.SpotVariance > 0);
    }

    [Fact]
    public void CountsFor_ThatManyCounts_ReachThePrecisionAndOneLessDoesNot()
    {
        var density = Sampled.Density(1, 15, 22, 28, 35, 20);
        var counts = density.CountsFor(0.15, 0.95)!.Value;

        Assert.True(Width(counts) <= 0.15);
        Assert.True(Width(counts - 1) > 0.15);
        double Width(int c) => StudentT.CoverageFactor(0.95, c - 1) * Math.Sqrt((1 / 24.0 + density.SpotVariance) / c);
    }

    // One count says nothing of how the next ones scatter, however many plants it has.
    [Fact]
    public void CountsFor_OneCount_IsNone() => Assert.Null(Sampled.Density(1, 480).CountsFor(0.15, 0.95));

    [Fact]
    public void CountsFor_OutOfReach_IsNone() => Assert.Null(Sampled.Density(1, 1, 0, 0, 0).CountsFor(0.01, 0.95));

    [Fact]
    public void Samples_OfEveryKind_HaveTheirGround()
    {
        NearlyEqual.Assert(0.5, PlantSample.AlongRows(9, new Length(1), new Length(0.25), 2).Area.SquareMetres);
        NearlyEqual.Assert(Math.PI * 0.09, PlantSample.InHoop(9, new Length(0.6)).Area.SquareMetres);
        NearlyEqual.Assert(0.2, PlantSample.InRectangle(9, new Length(0.4), new Length(0.5)).Area.SquareMetres);
    }

    [Fact]
    public void Interval_SamplesOfAbsurdSizes_StaysFinite()
    {
        var density = new PlantDensity([new PlantSample(100_000, new Area(0.001)), new PlantSample(0, new Area(100_000))]);
        var (lower, upper) = density.Interval(0.95);

        Assert.True(lower > 0 && double.IsFinite(upper));
        Assert.InRange(density.ProbabilityBelow(0.5), 0, 0.5);
    }

    [Theory]
    [InlineData(-1, 1.0)]
    [InlineData(1, 0.0)]
    public void Constructor_ImpossibleSample_Throws(int plants, double area) =>
        Assert.Throws<ArgumentException>(() => new PlantDensity([new PlantSample(plants, new Area(area))]));
}
