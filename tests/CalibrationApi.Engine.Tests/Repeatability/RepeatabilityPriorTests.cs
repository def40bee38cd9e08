using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.Repeatability;

/// <summary>The defaults are judgement; no published source was found, so the tests check the rule, not the numbers' truth.</summary>
public sealed class RepeatabilityPriorTests
{
    // The points that were judged.
    [Theory]
    [InlineData(null, 14, 40, 0.01)]
    [InlineData(ProductMaterial.FreeFlowing, 14, 5, 0.03)]
    [InlineData(ProductMaterial.SmallSeed, 0.3, 20, 0.02)]
    [InlineData(ProductMaterial.Dusty, 17, 47, 0.0292)]
    public void Default_PointsThatWereJudged_AreMet(ProductMaterial? material, double kilograms, double revolutions, double expected)
    {
        var prior = RepeatabilityPrior.Default(material, kilograms, revolutions);

        Assert.Equal(expected, prior.Relative, 0.0002);
        Assert.Equal(4, prior.DegreesOfFreedom);
        Assert.Contains("judgement", prior.Origin, StringComparison.Ordinal);
    }

    // 4.98 kg and 5.00 kg once differed by a factor of two.
    [Fact]
    public void Default_CatchGrowing_FallsWithoutAStep()
    {
        for (var kilograms = 0.05; kilograms < 30; kilograms *= 1.01)
            AssertSmooth(
                RepeatabilityPrior.Default(null, kilograms, 40).Relative,
                RepeatabilityPrior.Default(null, kilograms * 1.01, 40).Relative
            );
        for (var revolutions = 1.0; revolutions < 500; revolutions *= 1.01)
            AssertSmooth(
                RepeatabilityPrior.Default(null, 14, revolutions).Relative,
                RepeatabilityPrior.Default(null, 14, revolutions * 1.01).Relative
            );

        static void AssertSmooth(double smaller, double larger) => Assert.InRange(larger / smaller, 1 / 1.0101, 1);
    }

    [Fact]
    public void From_NothingStated_TakesTheFallback()
    {
        var fallback = RepeatabilityPrior.Default(null, 17, 47);

        Assert.Same(fallback, RepeatabilityPrior.From(null, null, () => fallback));
    }

    [Fact]
    public void From_BothStated_TakesThemWithoutAskingForADefault()
    {
        var prior = RepeatabilityPrior.From(0.007, 12, () => throw new InvalidOperationException("No default is needed."));

        Assert.Equal(0.007, prior.Relative);
        Assert.Equal(12, prior.DegreesOfFreedom);
        Assert.Equal("stated by the caller", prior.Origin);
    }

    [Fact]
    public void From_OnlyRepeatabilityStated_TakesTheDefaultDegreesOfFreedom() =>
        Assert.Equal(4, RepeatabilityPrior.From(0.007, null, () => RepeatabilityPrior.Default(null, 17, 47)).DegreesOfFreedom);

    [Fact]
    public void From_OnlyDegreesOfFreedomStated_KeepsTheDefaultAndSaysSo()
    {
        var prior = RepeatabilityPrior.From(null, 9, () => RepeatabilityPrior.Default(ProductMaterial.Dusty, 17, 47));

        Assert.Equal(RepeatabilityPrior.Default(ProductMaterial.Dusty, 17, 47).Relative, prior.Relative);
        Assert.Equal(9, prior.DegreesOfFreedom);
        Assert.Contains("stated degrees of freedom", prior.Origin, StringComparison.Ordinal);
        Assert.DoesNotContain("4 degrees", prior.Origin, StringComparison.Ordinal);
    }
}
