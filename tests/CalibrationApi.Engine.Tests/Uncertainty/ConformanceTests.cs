using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.Tests.Uncertainty;

public sealed class ConformanceTests
{
    private const double Infinite = double.PositiveInfinity;

    [Fact]
    public void Probability_EstimateInTheMiddle_IsTheCoverageOfTheHalfWidth() =>
        Assert.Equal(
            0.95,
            Conformance.Probability(1, TwoPartUncertainty.Of(0.01, Infinite), 1 - 0.01959963984540054, 1 + 0.01959963984540054),
            1e-13
        );

    [Fact]
    public void Probability_EstimateOnOneFarLimit_IsAHalf() =>
        Assert.Equal(0.5, Conformance.Probability(1.05, TwoPartUncertainty.Of(0.001, Infinite), 0.95, 1.05), 1e-12);

    [Fact]
    public void Probability_NoLimits_IsOne() =>
        Assert.Equal(1, Conformance.Probability(3, TwoPartUncertainty.Of(0.5, 4), double.NegativeInfinity, double.PositiveInfinity));

    [Fact]
    public void Probability_OneSided_IsOneMinusTheOtherSide()
    {
        var below = Conformance.Probability(1.02, TwoPartUncertainty.Of(0.03, 4.5), double.NegativeInfinity, 1.05);
        var above = Conformance.Probability(1.02, TwoPartUncertainty.Of(0.03, 4.5), 1.05, double.PositiveInfinity);

        Assert.Equal(1, below + above, 1e-14);
    }

    [Fact]
    public void Probability_FewDegreesOfFreedom_IsLowerThanNormalInsideTheLimits() =>
        Assert.True(
            Conformance.Probability(1, TwoPartUncertainty.Of(0.02, 4), 0.95, 1.05)
                < Conformance.Probability(1, TwoPartUncertainty.Of(0.02, Infinite), 0.95, 1.05)
        );

    [Fact]
    public void Probability_GrowingUncertaintyAboutTheSameEstimate_FallsTowardsZero()
    {
        var probabilities = ((double[])[0.005, 0.02, 0.05, 0.2, 1, 100])
            .Select(u => Conformance.Probability(1, TwoPartUncertainty.Of(u, 5), 0.95, 1.05))
            .ToArray();

        Assert.All(probabilities.Zip(probabilities.Skip(1)), pair => Assert.True(pair.First > pair.Second));
        Assert.InRange(probabilities[^1], 0, 0.001);
    }

    [Fact]
    public void Probability_FarOutsideTheLimits_IsNeverNegative() =>
        Assert.InRange(Conformance.Probability(2, TwoPartUncertainty.Of(1e-6, 5), 0.95, 1.05), 0, 1e-12);

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    public void Probability_UncertaintyThatIsNotPositive_IsRefused(double u) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformance.Probability(1, TwoPartUncertainty.Of(u, 5), 0.95, 1.05));

    [Fact]
    public void Probability_ReversedLimits_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Conformance.Probability(1, TwoPartUncertainty.Of(0.1, 5), 1.05, 0.95));
}
