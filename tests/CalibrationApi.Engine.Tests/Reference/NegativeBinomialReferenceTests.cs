using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.StandCounts;
using MathNet.Numerics.Distributions;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>The dispersion of counts against a fit of the literature and against the library's negative binomial distribution.</summary>
[Trait("Category", "Reference")]
public sealed class NegativeBinomialReferenceTests
{
    private static readonly ReferenceTable.Row Mites = Assert.Single(ReferenceTable.Read("negative-binomial-fit.csv").Rows);

    private static readonly PlantDensity Fitted = new([
        .. Mites.Numbers("counts").SelectMany((leaves, mites) => Enumerable.Repeat(new PlantSample(mites, new Area(1)), (int)leaves)),
    ]);

    [Fact]
    public void SpotVariance_PublishedFit_IsOneOverItsK()
    {
        Assert.Equal(150, Fitted.Counts);
        Mites.Printed("mean").AssertReproducedBy(Fitted.PerSquareMetre);
        Mites.Printed("variance").AssertReproducedBy(Fitted.IndexOfDispersion!.Value * Fitted.PerSquareMetre);
        Mites.Printed("momentK").AssertReproducedBy(1 / Fitted.SpotVariance);
        Assert.True(Fitted.ProbabilityByChance < 1e-6);
    }

    // The library counts failures before success r with probability p: mean r (1 - p) / p and variance mean + mean^2 / r.
    [Theory]
    [InlineData(4, 20)]
    [InlineData(1.5, 6)]
    public void SpotVariance_LibraryDistribution_IsOneOverR(double r, double mean)
    {
        var library = new NegativeBinomial(r, r / (r + mean));
        NearlyEqual.Assert(mean + mean * mean / r, library.Variance, 1e-10);

        var random = new Random(7);
        var drawn = new PlantDensity([
            .. Enumerable
                .Range(0, 40_000)
                .Select(_ => new PlantSample(Poisson.Sample(random, Gamma.Sample(random, r, r / mean)), new Area(0.5))),
        ]);

        // 40 000 counts give the mean to half a percent and the dispersion to a few percent.
        Assert.Equal(2 * mean, drawn.PerSquareMetre, 0.04 * mean);
        Assert.Equal(1 / r, drawn.SpotVariance, 0.05 / r);
    }
}
