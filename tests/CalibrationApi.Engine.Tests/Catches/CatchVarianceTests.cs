using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Catches;

/// <summary>The random part of one catch: weighing and counting, v = (u_m / m)^2 + (u_N / N)^2.</summary>
public sealed class CatchVarianceTests
{
    [Fact]
    public void Of_WeighingAndCounting_AddInQuadrature() => NearlyEqual.Assert(0.0025, CatchVariance.Of(0.03, 0.04));

    [Fact]
    public void OfCount_FreeStartAndStop_IsTheTriangularSumOfTwoRoundings() =>
        NearlyEqual.Assert(0.1 / Math.Sqrt(6), CatchVariance.OfCount(0.1, CountStart.Free, null));

    [Fact]
    public void OfCount_StartOnAnEdge_RoundsOnce() =>
        NearlyEqual.Assert(0.1 / Math.Sqrt(12), CatchVariance.OfCount(0.1, CountStart.OnEdge, null));

    [Fact]
    public void OfCount_PocketsKnown_AddTheirLumps() =>
        NearlyEqual.Assert(Math.Sqrt(0.01 / 6 + 1.0 / (8 * 8 * 6)), CatchVariance.OfCount(0.1, CountStart.Free, 8));

    [Fact]
    public void OfCount_ManyPockets_ApproachesContinuousFlow() =>
        NearlyEqual.Assert(CatchVariance.OfCount(0.1, CountStart.Free, null), CatchVariance.OfCount(0.1, CountStart.Free, 100_000), 1e-6);

    [Fact]
    public void OfCount_CounterWithoutResolution_IsExact() => Assert.Equal(0, CatchVariance.OfCount(0, CountStart.Free, null));

    // One catch gives tau = s0, so the variance of the value is s0^2 + v and v can be read off.
    [Theory]
    [InlineData(TareReading.Each, 1.0 / 6)]
    [InlineData(TareReading.Zeroed, 1.0 / 12 + 1.0 / 48)]
    [InlineData(TareReading.Shared, 1.0 / 12)]
    public void Evaluate_WayOfTaring_GivesItsVariance(TareReading tare, double divisionsSquared)
    {
        var test = Given.Test(Given.Net(10, 50, Given.NoResolution)) with { TareReading = tare };

        Assert.Equal(divisionsSquared * 0.02 * 0.02 / (10.0 * 10), KnownVariance(test), 1e-15);
    }

    [Fact]
    public void Evaluate_SwingingLoad_AddsItsScatter()
    {
        var test = Given.Test(Given.Net(10, 50, Given.NoResolution)) with
        {
            Scale = Given.Platform with { ReadingScatter = new Mass(0.05) },
        };

        Assert.Equal((0.0004 / 6 + 0.0025) / 100, KnownVariance(test), 1e-15);
    }

    [Theory]
    [InlineData(CountStart.Free, 6)]
    [InlineData(CountStart.OnEdge, 12)]
    public void Evaluate_CountStart_GivesItsVariance(CountStart start, double divisor)
    {
        var test = Given.Test(Given.Net(20, 50, 0.5)) with { Scale = Given.Perfect, CountStart = start };

        Assert.Equal(0.25 / divisor / (50 * 50), KnownVariance(test), 1e-15);
    }

    [Fact]
    public void Evaluate_Pockets_AddTheirVariance()
    {
        var test = Given.Test(Given.Net(20, 50, Given.NoResolution)) with { Scale = Given.Perfect, PocketsPerRevolution = 6 };

        Assert.Equal(1.0 / (6 * 6 * 6) / (50 * 50), KnownVariance(test), 1e-15);
    }

    [Fact]
    public void Evaluate_KnownScaleError_WeighsAgainstTheCorrectedMass()
    {
        var scale = Given.Platform with { KnownError = new KnownScaleError(0.25, 0.001) };
        var test = Given.Test(Given.Net(12.5, 50, Given.NoResolution)) with { Scale = scale };

        Assert.Equal(0.0004 / 6 / 100, KnownVariance(test), 1e-15);
    }

    private static double KnownVariance(CatchTestQuestion test)
    {
        var result = test.Evaluated();
        var repeatability = result.Settings.Repeatability.Relative;
        return result.Estimate.Pooled.RelativeVariance - repeatability * repeatability;
    }
}
