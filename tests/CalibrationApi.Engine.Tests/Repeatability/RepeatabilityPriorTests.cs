using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.Repeatability;

/// <summary>The defaults are judgement; no published source was found, so the tests check the rule, not the numbers' truth.</summary>
public sealed class RepeatabilityPriorTests
{
    [Theory]
    [InlineData(null, 17.08, 47, 0.01)]
    [InlineData(ProductMaterial.FreeFlowing, 5, 20, 0.01)]
    [InlineData(ProductMaterial.FreeFlowing, 4.99, 47, 0.02)]
    [InlineData(ProductMaterial.FreeFlowing, 17, 19.9, 0.02)]
    [InlineData(ProductMaterial.SmallSeed, 4, 130, 0.02)]
    [InlineData(ProductMaterial.FreeFlowing, 17, 4.9, 0.03)]
    [InlineData(ProductMaterial.SmallSeed, 0.3, 4.9, 0.03)]
    [InlineData(ProductMaterial.Dusty, 17, 47, 0.03)]
    [InlineData(ProductMaterial.Dusty, 1, 2, 0.03)]
    public void Default_MaterialAndSize_GiveTheStatedRepeatability(ProductMaterial? material, double kilograms, double revolutions, double expected)
    {
        var prior = RepeatabilityPrior.Default(material, kilograms, revolutions);

        Assert.Equal(expected, prior.Relative);
        Assert.Equal(4, prior.DegreesOfFreedom);
        Assert.Contains("judgement", prior.Origin, StringComparison.Ordinal);
    }

    // 8.04 kg - 3.04 kg is 4.999999999999999 kg in binary: a catch of five kilograms all the same.
    [Fact]
    public void Default_FiveKilogramsFromTwoReadings_CountsAsFive()
    {
        var net = 8.04 - 3.04;

        Assert.True(net < 5);
        Assert.Equal(0.01, RepeatabilityPrior.Default(null, net, 47).Relative);
    }

    [Fact]
    public void Default_TwentyRevolutionsFromPulses_CountAsTwenty() =>
        Assert.Equal(0.01, RepeatabilityPrior.Default(null, 17, 20 * (1 - 1e-15)).Relative);

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

        Assert.Equal(0.03, prior.Relative);
        Assert.Equal(9, prior.DegreesOfFreedom);
        Assert.Contains("stated degrees of freedom", prior.Origin, StringComparison.Ordinal);
        Assert.DoesNotContain("4 degrees", prior.Origin, StringComparison.Ordinal);
    }
}
