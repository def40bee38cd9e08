using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Catches of unequal length: m = a + k N tells an additive mistake from a multiplicative one.</summary>
public sealed class AdditiveOffsetTests
{
    [Fact]
    public void Offset_TheSameMassMissingFromEveryCatch_IsFound()
    {
        var agreement = WithOffset(-0.5, 20, 40, 60).Evaluated().Agreement;

        Assert.True(agreement.HasOffset);
        Assert.Equal(-0.5, agreement.Offset, 1e-9);
    }

    [Fact]
    public void Offset_TheSameMassTooMuchInEveryCatch_IsPositive() =>
        Assert.Equal(0.8, WithOffset(0.8, 20, 40, 60).Evaluated().Agreement.Offset, 1e-9);

    [Fact]
    public void HasOffset_NoOffset_IsNotSeen()
    {
        var agreement = WithOffset(0, 20, 40, 60).Evaluated().Agreement;

        Assert.False(agreement.HasOffset);
        Assert.Equal(0, agreement.Offset, 1e-9);
    }

    // Equal catches cannot tell an offset from a value: 1.5 between the longest and the shortest is the least.
    [Theory]
    [InlineData(29.9, false)]
    [InlineData(30, true)]
    public void OffsetProbability_RatioOfTheLengths_DecidesWhetherItIsAsked(double longest, bool asked)
    {
        var agreement = WithOffset(1, 20, longest).Evaluated().Agreement;

        Assert.Equal(asked, agreement.OffsetProbability < 1);
    }

    [Fact]
    public void OffsetProbability_SharedTare_IsLargerBecauseItsRoundingIsAnOffsetItself()
    {
        var scale = Given.Platform with { Division = new Engine.Quantities.Mass(0.5), StatedAccuracy = new Engine.Quantities.Mass(0.5) };
        var each = (WithOffset(0.4, 20, 40, 60) with { Scale = scale, TareReading = TareReading.Zeroed }).Evaluated().Agreement;
        var shared = (WithOffset(0.4, 20, 40, 60) with { Scale = scale, TareReading = TareReading.Shared }).Evaluated().Agreement;

        Assert.True(shared.OffsetProbability > each.OffsetProbability);
    }

    private static CatchTestQuestion WithOffset(double offset, params double[] revolutions) =>
        new()
        {
            Catches = [.. revolutions.Select(n => Given.Net(offset + 0.36 * n, n, Given.NoResolution))],
            Scale = Given.Perfect,
            Limits = Given.OnePercent,
        };
}
