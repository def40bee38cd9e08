using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Catches;

/// <summary>The systematic part, common to all catches on one scale, and the interval of the whole.</summary>
public sealed class MassPerRevolutionEstimateTests
{
    // a / (sqrt(3) m), the limit of class III in service at 17.08 kg and 854 intervals being 0.04 kg.
    [Fact]
    public void Span_OneCatch_IsTheRectangularLimitOverTheNetMass() =>
        NearlyEqual.Assert(0.04 / Math.Sqrt(3) / 17.08, Given.Test(Given.Net(17.08, 47)).Evaluated().Estimate.Span);

    [Fact]
    public void Span_MoreEqualCatches_DoesNotShrink()
    {
        var one = Given.Test(Given.Net(17.08, 47)).Evaluated().Estimate.Span;
        var four = Given.Test([.. Enumerable.Repeat(Given.Net(17.08, 47), 4)]).Evaluated().Estimate.Span;

        NearlyEqual.Assert(one, four);
    }

    [Fact]
    public void Span_UnequalCatches_IsAveragedWithTheWeightsOfTheMasses()
    {
        var test = Given.Test(Given.Net(18, 50), Given.Net(7.2, 20)) with { Limits = Given.OnePercent };
        var estimate = test.Evaluated().Estimate;

        // v_i and the limits by hand: the rounding of the gross reading alone, 0.04 kg at 900 intervals, 0.02 kg at 360.
        double[] v = [Variance(18, 50), Variance(7.2, 20)];
        double[] u = [0.04 / Math.Sqrt(3) / 18, 0.02 / Math.Sqrt(3) / 7.2];
        double[] w = [1 / (estimate.Pooled.BetweenVariance + v[0]), 1 / (estimate.Pooled.BetweenVariance + v[1])];
        NearlyEqual.Assert((w[0] * u[0] + w[1] * u[1]) / (w[0] + w[1]), estimate.Span);

        static double Variance(double mass, double revolutions) => 0.0004 / 12 / (mass * mass) + 0.01 / 6 / (revolutions * revolutions);
    }

    [Fact]
    public void SharedTare_OneReadingForAll_IsCommonAndDoesNotShrink()
    {
        var one = (Given.Test(Given.Net(17, 47)) with { TareReading = TareReading.Shared }).Evaluated().Estimate;
        var three = (Given.Test([.. Enumerable.Repeat(Given.Net(17, 47), 3)]) with { TareReading = TareReading.Shared })
            .Evaluated()
            .Estimate;

        NearlyEqual.Assert(0.02 / Math.Sqrt(12) / 17, one.SharedTare);
        NearlyEqual.Assert(one.SharedTare, three.SharedTare);
    }

    [Theory]
    [InlineData(TareReading.Each)]
    [InlineData(TareReading.Zeroed)]
    public void SharedTare_ReadingForEveryCatch_IsZero(TareReading tare) =>
        Assert.Equal(0, (Given.Test(Given.Net(17, 47)) with { TareReading = tare }).Evaluated().Estimate.SharedTare);

    [Fact]
    public void RelativeVariance_AllParts_AddInQuadrature()
    {
        var estimate = (
            Given.Test(Given.Net(17, 47), Given.Net(17.1, 47)) with
            {
                TareReading = TareReading.Shared,
                CaughtPoints = new CaughtPoints(2, 6, 0.03),
            }
        )
            .Evaluated()
            .Estimate;

        var sum =
            1 / estimate.Pooled.SumOfWeights
            + estimate.Span * estimate.Span
            + estimate.SharedTare * estimate.SharedTare
            + estimate.Points * estimate.Points;
        Assert.All([estimate.Span, estimate.SharedTare, estimate.Points, estimate.Catches], part => Assert.True(part > 0));
        NearlyEqual.Assert(sum, estimate.RelativeVariance);
        NearlyEqual.Assert(Math.Sqrt(sum), estimate.Value.StandardUncertainty / estimate.Value.Value);
        NearlyEqual.Assert(sum - estimate.Span * estimate.Span, estimate.VarianceWithoutSpan);
        NearlyEqual.Assert(Math.Sqrt(sum - estimate.Span * estimate.Span), estimate.WithoutSpan);
    }

    // Only the tau^2 share carries nu0 + c - 1 degrees of freedom; here it is everything, so they come out whole.
    [Fact]
    public void DegreesOfFreedom_OnlyTheCatchesScatter_ArePriorPlusCatchesLessOne() =>
        Assert.Equal(4 + 3 - 1, Given.PureTest(0.36, 0.361, 0.362).Evaluated().Estimate.Value.DegreesOfFreedom, 1e-6);

    [Fact]
    public void DegreesOfFreedom_PartsKnownWithoutDoubt_RaiseThem()
    {
        var estimate = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).Evaluated().Estimate;
        var share = estimate.Pooled.BetweenShare / estimate.RelativeVariance;

        NearlyEqual.Assert(5 / (share * share), estimate.Value.DegreesOfFreedom, 1e-12);
        Assert.True(estimate.Value.DegreesOfFreedom > 5);
        Assert.NotEqual(Math.Floor(estimate.Value.DegreesOfFreedom), estimate.Value.DegreesOfFreedom);
    }

    [Fact]
    public void UncertaintyOf_TheWholeVariance_IsThatOfTheEstimate()
    {
        var estimate = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).Evaluated().Estimate;

        NearlyEqual.Assert(estimate.RelativeExpanded, estimate.UncertaintyOf(estimate.RelativeVariance).Expanded(0.95));
    }

    [Fact]
    public void Value_CoverageProbability_ExpandsBothPartsToIt()
    {
        var estimate = (Given.Test(Given.Net(17.08, 47)) with { Limits = new CatchTestLimits { CoverageProbability = 0.99 } })
            .Evaluated()
            .Estimate;

        Assert.Equal(0.99, estimate.Value.CoverageProbability);
        NearlyEqual.Assert(estimate.UncertaintyOf(estimate.RelativeVariance).CoverageFactor(0.99), estimate.Value.CoverageFactor);
    }

    [Fact]
    public void RelativeExpanded_Always_IsTheExpandedUncertaintyOverTheValue()
    {
        var estimate = Given.Test(Given.Net(17.08, 47)).Evaluated().Estimate;

        Assert.Equal(estimate.Value.ExpandedUncertainty / estimate.Value.Value, estimate.RelativeExpanded);
    }

    // A person can redo these two on paper: (17 + 8) / (50 + 25) and the mean of 0.34 and 0.32.
    [Fact]
    public void Evaluate_UnequalCatches_AlsoGivesTheTwoPaperValues()
    {
        var result = Given.Test(Given.Net(17, 50), Given.Net(8, 25)).Evaluated();

        NearlyEqual.Assert(25.0 / 75, result.TotalMassOverTotalRevolutions.KilogramsPerRevolution);
        NearlyEqual.Assert(0.33, result.MeanOfRatios.KilogramsPerRevolution);
    }

    [Fact]
    public void Value_FineAndCoarseScaleDivisions_CoarseIsWider()
    {
        var fine = Given.Test(Given.Net(17, 47)).Evaluated().Estimate;
        var coarse = (
            Given.Test(Given.Net(17, 47)) with
            {
                Scale = new Scale { Division = new Mass(0.5), AccuracyClass = AccuracyClass.III },
            }
        ).Evaluated().Estimate;

        Assert.True(coarse.RelativeExpanded > fine.RelativeExpanded);
    }
}
