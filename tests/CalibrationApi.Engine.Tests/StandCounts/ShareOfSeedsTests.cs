using CalibrationApi.Engine.StandCounts;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>Survival and emergence with their intervals.</summary>
public sealed class ShareOfSeedsTests
{
    private static readonly PlantDensity Density = Sampled.Density(1, 20, 30, 30, 40);

    [Fact]
    public void Of_ExactSeeds_IsTheDensityOverThem()
    {
        var share = ShareOfSeeds.Of(Density, 50, 0, 0.95);
        var (lower, upper) = Density.Interval(0.95);

        NearlyEqual.Assert(0.6, share.Value);
        NearlyEqual.Assert(lower / 50, share.Lower);
        NearlyEqual.Assert(upper / 50, share.Upper);
    }

    [Fact]
    public void Of_UncertainSeeds_WidensInQuadrature()
    {
        var exact = ShareOfSeeds.Of(Density, 50, 0, 0.95);
        var widened = ShareOfSeeds.Of(Density, 50, 0.1, 0.95);

        var added = StudentT.CoverageFactor(0.95, double.PositiveInfinity) * 0.1;
        NearlyEqual.Assert(0.6, widened.Value);
        NearlyEqual.Assert(Math.Sqrt(Math.Pow(Math.Log(exact.Upper / 0.6), 2) + added * added), Math.Log(widened.Upper / 0.6), 1e-10);
        NearlyEqual.Assert(Math.Sqrt(Math.Pow(Math.Log(0.6 / exact.Lower), 2) + added * added), Math.Log(0.6 / widened.Lower), 1e-10);
    }

    [Fact]
    public void Of_NoPlants_HasAnUpperEndOnly()
    {
        var share = ShareOfSeeds.Of(Sampled.Density(1, 0, 0, 0), 50, 0.03, 0.95);

        Assert.Equal(0, share.Value);
        Assert.Equal(0, share.Lower);
        Assert.InRange(share.Upper, 3.688879 / 3 / 50, 0.03);
    }
}
