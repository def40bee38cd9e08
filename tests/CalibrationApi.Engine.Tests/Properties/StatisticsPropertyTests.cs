using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Uncertainty;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>A probability and degrees of freedom anywhere in their ranges.</summary>
public sealed record RandomQuantile(double Probability, double DegreesOfFreedom);

public static class RandomQuantiles
{
    public static Arbitrary<RandomQuantile> Quantiles() =>
        Arb.From(
            from probability in Gen.Choose(1, 999_999)
            from exponent in Gen.Choose(0, 9_000)
            select new RandomQuantile(probability / 1e6, Math.Pow(10, exponent / 1000.0))
        );
}

[Properties(Arbitrary = [typeof(RandomQuantiles)], MaxTest = 1000, Replay = "20260119,1")]
public sealed class StatisticsPropertyTests
{
    // This is the property that caught a solver returning the middle of its bracket instead of the root it had found.
    [Property]
    public void Quantile_AnyProbabilityAndDegreesOfFreedom_IsInvertedByCdf(RandomQuantile random) =>
        Assert.Equal(
            random.Probability,
            StudentT.Cdf(StudentT.Quantile(random.Probability, random.DegreesOfFreedom), random.DegreesOfFreedom),
            1e-12
        );

    [Property]
    public void Probability_AnyEstimateAndLimits_IsAProbability(RandomQuantile first, RandomQuantile second)
    {
        var probability = Conformance.Probability(
            1 + first.Probability,
            new TwoPartUncertainty(second.Probability, first.DegreesOfFreedom, 1 - first.Probability),
            1,
            1 + second.Probability
        );

        Assert.InRange(probability, 0, 1);
    }

    [Property]
    public void Combine_AnyTwoParts_LiesBetweenTheSmallestAndTheSum(RandomQuantile first, RandomQuantile second)
    {
        var nu = EffectiveDegreesOfFreedom.Combine(
            (first.Probability, first.DegreesOfFreedom),
            (second.Probability, second.DegreesOfFreedom)
        );

        Assert.InRange(
            nu,
            Math.Min(first.DegreesOfFreedom, second.DegreesOfFreedom) * (1 - 1e-12),
            (first.DegreesOfFreedom + second.DegreesOfFreedom) * (1 + 1e-12)
        );
    }

    [Property]
    public void Canonical_AnyUnitAndValue_ConvertsThereAndBack(RandomQuantile random)
    {
        var value = (random.Probability - 0.5) * random.DegreesOfFreedom;

        foreach (var unit in UnitTable.All.Where(unit => unit.OffsetInSi == 0))
            NearlyEqual.Assert(value, unit.FromCanonical(unit.Canonical(value)), 4.5e-16, unit.Symbol);
    }
}
