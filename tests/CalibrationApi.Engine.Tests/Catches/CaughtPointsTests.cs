using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Engine.Tests.Catches;

/// <summary>Partial catches: some points of the meter stand for all.</summary>
public sealed class CaughtPointsTests
{
    [Fact]
    public void Scale_PointsCaughtOfAll_IsTheirInverseShare() => Assert.Equal(3, new CaughtPoints(2, 6, 0.03).Scale);

    // spread sqrt((1 - n/N) / n): the finite-population form.
    [Fact]
    public void RelativeUncertainty_SomePoints_IsTheFinitePopulationForm() =>
        NearlyEqual.Assert(0.03 * Math.Sqrt((1 - 2.0 / 6) / 2), new CaughtPoints(2, 6, 0.03).RelativeUncertainty);

    [Fact]
    public void RelativeUncertainty_AllPoints_IsZero() => Assert.Equal(0, new CaughtPoints(6, 6, 0.03).RelativeUncertainty);

    [Fact]
    public void RelativeUncertainty_MorePoints_IsSmaller()
    {
        var uncertainties = Enumerable.Range(1, 24).Select(caught => new CaughtPoints(caught, 24, 0.03).RelativeUncertainty).ToArray();

        Assert.All(uncertainties.Zip(uncertainties.Skip(1)), pair => Assert.True(pair.First > pair.Second));
    }

    // The published acceptance limit of 5 % between outlets (University of Georgia Extension; Field and Solie), taken as rectangular.
    [Fact]
    public void DefaultRelativeSpread_NothingKnown_IsTheAcceptanceLimitAsARectangle() =>
        NearlyEqual.Assert(0.05 / Math.Sqrt(3), CaughtPoints.DefaultRelativeSpread);

    [Theory]
    [InlineData(0, 6)]
    [InlineData(-1, 6)]
    [InlineData(7, 6)]
    public void Constructor_PointsThatCannotBe_AreRefused(int caught, int total) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new CaughtPoints(caught, total, 0.03));

    [Fact]
    public void Evaluate_TwoOfSixPoints_ScalesTheMassAndKeepsTheReading()
    {
        var result = (Given.Test(Given.Net(6, 50)) with { CaughtPoints = new CaughtPoints(2, 6, 0.03) }).Evaluated();

        Assert.Equal(6, result.Catches[0].Net.Kilograms);
        Assert.Equal(18, result.Catches[0].Metered.Kilograms, 1e-12);
        NearlyEqual.Assert(0.36, result.Estimate.Value.Value);
    }

    [Fact]
    public void Evaluate_MoreCatchesOfTheSamePoints_DoNotShrinkTheirUncertainty()
    {
        var points = new CaughtPoints(2, 6, 0.03);
        var one = (Given.Test(Given.Net(6, 50)) with { CaughtPoints = points }).Evaluated().Estimate;
        var six = (Given.Test([.. Enumerable.Repeat(Given.Net(6, 50), 6)]) with { CaughtPoints = points }).Evaluated().Estimate;

        Assert.Equal(points.RelativeUncertainty, one.Points);
        Assert.Equal(one.Points, six.Points);
    }

    [Fact]
    public void Evaluate_AllPoints_IsTheSameAsAnOrdinaryCatch()
    {
        var whole = Given.Test(Given.Net(18, 50)).Evaluated();
        var all = (Given.Test(Given.Net(18, 50)) with { CaughtPoints = new CaughtPoints(6, 6, 0.03) }).Evaluated();

        Assert.Equal(whole.Estimate.Value, all.Estimate.Value);
    }

    // The scale weighs what was caught, so its share is that of the caught mass.
    [Fact]
    public void Evaluate_PartialCatch_WeighsTheCaughtMass()
    {
        var estimate = (Given.Test(Given.Net(6, 50)) with { CaughtPoints = new CaughtPoints(2, 6, 0.03) }).Evaluated().Estimate;

        NearlyEqual.Assert(0.02 / Math.Sqrt(3) / 6, estimate.Span);
    }
}
