using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Net masses: gross less tare, corrected for a known error of the scale.</summary>
public sealed class CatchNetMassTests
{
    [Fact]
    public void Weighed_GrossAndTare_GivesTheNetMass()
    {
        var one = Given.Weighed(18.70, 1.62, 47);

        Assert.Equal(17.08, one.IndicatedNet.Kilograms, 1e-12);
        Assert.True(one.Counts);
    }

    [Theory]
    [InlineData(1.62, 1.62)]
    [InlineData(1.60, 1.62)]
    public void Weighed_GrossNotAboveTare_IsRefused(double gross, double tare) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Given.Weighed(gross, tare, 47));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Net_MassNotAboveZero_IsRefused(double net) => Assert.Throws<ArgumentOutOfRangeException>(() => Given.Net(net, 47));

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(-3, 0.1)]
    [InlineData(47, -0.1)]
    [InlineData(double.NaN, 0.1)]
    [InlineData(47, double.NaN)]
    [InlineData(double.PositiveInfinity, 0.1)]
    public void Net_RevolutionsThatCannotBe_AreRefused(double revolutions, double resolution) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Given.Net(17, revolutions, resolution));

    [Fact]
    public void Evaluate_KnownScaleError_CorrectsTheMassAndKeepsTheIndicatedOne()
    {
        var scale = Given.Platform with { KnownError = new KnownScaleError(0.01, 0.001) };

        var result = (Given.Test(Given.Net(17.17, 47)) with { Scale = scale }).Evaluated();

        Assert.Equal(17.17, result.Catches[0].Net.Kilograms, 1e-12);
        NearlyEqual.Assert(17.0, result.Catches[0].Metered.Kilograms, 1e-12);
        NearlyEqual.Assert(17.0 / 47, result.Estimate.Value.Value, 1e-12);
    }

    [Fact]
    public void Evaluate_ScaleThatShowsTooLittle_IsCorrectedUpwards()
    {
        var scale = Given.Platform with { KnownError = new KnownScaleError(-0.02, 0.001) };

        var result = (Given.Test(Given.Net(9.8, 25)) with { Scale = scale }).Evaluated();

        NearlyEqual.Assert(10.0, result.Catches[0].Metered.Kilograms);
    }

    [Fact]
    public void Evaluate_KnownScaleError_LeavesItsUncertaintyOnly()
    {
        var scale = Given.Platform with { KnownError = new KnownScaleError(0.01, 0.0007) };

        Assert.Equal(0.0007, (Given.Test(Given.Net(17.17, 47)) with { Scale = scale }).Evaluated().Estimate.Span, 1e-15);
    }

    [Fact]
    public void Evaluate_NetAndWeighedCatchOfTheSameMass_GiveTheSameValue()
    {
        var weighed = Given.Test(Given.Weighed(18.5, 1.5, 47)).Evaluated();
        var net = Given.Test(Given.Net(17, 47)).Evaluated();

        Assert.Equal(weighed.Estimate.Value, net.Estimate.Value);
    }

    [Fact]
    public void Evaluate_SeveralCatches_ReportsEachOneInOrder()
    {
        var result = Given.Test(Given.Weighed(18.70, 1.62, 47), Given.Weighed(18.56, 1.62, 46.8)).Evaluated();

        Assert.Equal([17.08, 16.94], result.Catches.Select(one => Math.Round(one.Net.Kilograms, 9)));
        Assert.Equal([47, 46.8], result.Catches.Select(one => one.Revolutions.Count));
        Assert.Equal([0.36340, 0.36197], result.Catches.Select(one => Math.Round(one.MassPerRevolution.KilogramsPerRevolution, 5)));
    }
}
