using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Tests.Statistics;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>Values and known variances far beyond what a meter does, to try the solver.</summary>
public sealed record RandomPool(double[] Values, double[] Variances, double Prior, double PriorDegreesOfFreedom)
{
    public override string ToString() => $"{string.Join(' ', Values)} | {string.Join(' ', Variances)} | {Prior}, {PriorDegreesOfFreedom}";
}

public static class RandomPools
{
    public static Arbitrary<RandomPool> Pools() =>
        Arb.From(
            from count in Gen.Choose(2, 8)
            from values in Gen.ArrayOf(Gen.Choose(100, 1000).Select(value => value / 300.0), count)
            from exponents in Gen.ArrayOf(Gen.Choose(-90, 5), count)
            from prior in Gen.Elements(0.0001, 0.003, 0.01, 0.1)
            from degreesOfFreedom in Gen.Elements(0.5, 1.0, 4.0, 15.0)
            select new RandomPool(values, [.. exponents.Select(exponent => Math.Pow(10, exponent / 10.0))], prior, degreesOfFreedom)
        );
}

[Properties(Arbitrary = [typeof(RandomPools)], MaxTest = 500, Replay = "20260118,1")]
public sealed class PoolingPropertyTests
{
    [Property]
    public void Pool_WhateverTheVariances_SolvesTheEstimatingEquation(RandomPool random)
    {
        var prior = new RepeatabilityPrior(random.Prior, random.PriorDegreesOfFreedom, "random");

        var pooled = Pooled.Of(random.Values, random.Variances, prior);

        var sum = prior.DegreesOfFreedom * prior.Relative * prior.Relative / pooled.BetweenVariance;
        for (var i = 0; i < random.Values.Length; i++)
            sum += Math.Pow(random.Values[i] / pooled.Value - 1, 2) / (pooled.BetweenVariance + random.Variances[i]);
        NearlyEqual.Assert(prior.DegreesOfFreedom + random.Values.Length - 1, sum, 1e-9);
    }

    [Property]
    public void Pool_ValuesScaled_ScalesTheMeanAndNothingElse(RandomPool random)
    {
        var prior = new RepeatabilityPrior(random.Prior, random.PriorDegreesOfFreedom, "random");

        var one = Pooled.Of(random.Values, random.Variances, prior);
        var scaled = Pooled.Of([.. random.Values.Select(value => value * 0.4)], random.Variances, prior);

        NearlyEqual.Assert(one.Value * 0.4, scaled.Value, 1e-9);
        NearlyEqual.Assert(one.BetweenVariance, scaled.BetweenVariance, 1e-9);
    }
}
