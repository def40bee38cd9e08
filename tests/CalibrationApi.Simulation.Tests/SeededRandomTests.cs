using MathNet.Numerics.Random;

namespace CalibrationApi.Simulation.Tests;

public sealed class SeededRandomTests
{
    // The library's generator can only be started from its seed, so ours starts from the state that this seed makes.
    [Fact]
    public void NextBits_SameState_AgreesWithTheGeneralPurposeLibrary()
    {
        var state = Words(seed: 42);
        var ours = new SeededRandom(state[0], state[1], state[2], state[3]);
        var theirs = new Xoshiro256StarStar(42, threadSafe: false);

        for (var i = 0; i < 1000; i++)
            Assert.Equal(theirs.NextDouble(), ours.NextDouble());
    }

    [Fact]
    public void Of_SameSeedAndStream_GivesTheSameNumbers()
    {
        var first = SeededRandom.Of(7, 3);
        var second = SeededRandom.Of(7, 3);

        Assert.Equal(Enumerable.Range(0, 100).Select(_ => first.NextBits()), Enumerable.Range(0, 100).Select(_ => second.NextBits()));
    }

    // Written down when the generator was first checked: a change would silently change every table.
    [Fact]
    public void Of_SeedAndStream_GivesTheNumbersWrittenDown()
    {
        var random = SeededRandom.Of(1, 0);

        Assert.Equal(
            [17254933023648552173, 10273995337764303472, 13859318443369830749],
            [random.NextBits(), random.NextBits(), random.NextBits()]
        );
    }

    [Fact]
    public void Of_NeighbouringStreamsAndSeeds_AreUncorrelated()
    {
        // Products of two independent uniform numbers about their mean have mean 0 and variance 1/144.
        new Samples(
            Enumerable.Range(0, Samples.Count).Select(i => Centred(SeededRandom.Of(1, i)) * Centred(SeededRandom.Of(1, i + 1)))
        ).AssertMean(0);
        new Samples(
            Enumerable
                .Range(0, Samples.Count)
                .Select(i => Centred(SeededRandom.Of((ulong)i, 1)) * Centred(SeededRandom.Of((ulong)i + 1, 1)))
        ).AssertMean(0);
    }

    [Fact]
    public void SeedFor_OtherStudy_IsAnotherSeed() =>
        Assert.NotEqual(SeededRandom.SeedFor(1, "coverage"), SeededRandom.SeedFor(1, "stray"));

    [Fact]
    public void NextDouble_ManyDraws_AreUniform()
    {
        var samples = Samples.Of(random => random.NextDouble());

        samples.AssertMean(0.5);
        samples.AssertVariance(1 / 12.0);
        Assert.All(samples.Values, value => Assert.InRange(value, 0, 1 - 1e-17));
    }

    [Fact]
    public void Normal_ManyDraws_HaveTheStandardDeviationAsked()
    {
        var samples = Samples.Of(random => random.Normal(0.02));

        samples.AssertMean(0);
        samples.AssertVariance(0.0004);
    }

    // 1 / sigma^2 is chi-squared over nu s0^2: mean 1 / s0^2, variance 2 / (nu s0^4).
    [Fact]
    public void StandardDeviation_ManyDraws_AreScaledInverseChi()
    {
        var samples = Samples.Of(random => 1 / Math.Pow(random.StandardDeviation(0.01, 4) / 0.01, 2));

        samples.AssertMean(1);
        samples.AssertVariance(2.0 / 4);
    }

    // Variance nu / (nu - 2) scale^2; ten degrees of freedom, so that the fourth moment exists.
    [Fact]
    public void Student_ManyDraws_HaveItsVariance()
    {
        var samples = Samples.Of(random => random.Student(10, 0.04));

        samples.AssertMean(0);
        samples.AssertVariance(0.0016 * 10 / 8);
    }

    private static double Centred(SeededRandom random) => random.NextDouble() - 0.5;

    // The library keeps its state to itself; the two steps that fill it are SplitMix64 on the seed.
    private static ulong[] Words(ulong seed)
    {
        var words = new ulong[4];
        for (var i = 0; i < words.Length; i++)
        {
            seed += 0x9E3779B97F4A7C15UL;
            var z = (seed ^ (seed >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            words[i] = z ^ (z >> 31);
        }

        return words;
    }
}
