using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>The smallest number of catches for the wanted precision, or that none reaches it.</summary>
public sealed class PlannedCatchCountTests
{
    // By hand for the front meter: s0 = 1 %, v from two roundings of 20 g on 16.074 kg and of 0.1 rev on 47, limit 0.04 kg at 804 e.
    [Fact]
    public void ExpectedPrecision_FrontMeter_IsThatOfItsPlannedCatch()
    {
        var meter = Only(Planned.Plan(Planned.Front with { Repeatability = 0.01 }));

        var variance = 0.0004 / 6 / (16.074 * 16.074) + 0.01 / 6 / (47 * 47);
        var span = 0.04 / Math.Sqrt(3) / 16.074;
        NearlyEqual.Assert(CatchCount.ExpectedPrecision(1, 1e-4, 4, variance, span, 0.95), meter.ExpectedPrecision.Fraction, 1e-12);
    }

    [Theory]
    [InlineData(0.03)]
    [InlineData(0.02)]
    [InlineData(0.015)]
    public void Catches_WantedPrecision_AreReachedByTheCatchTestItself(double wanted)
    {
        var plan = Planned.Plan(Planned.Front) with { WantedPrecision = wanted };
        var meter = Only(plan);

        // Equal catches of the planned mass, made and evaluated: their scatter can only be smaller than believed.
        var test = new CatchTestQuestion
        {
            Catches = [.. Enumerable.Repeat(Given.Net(meter.CatchMass.Kilograms, meter.Revolutions.Count), meter.Catches!.Value)],
            Scale = plan.Scale,
            Limits = new CatchTestLimits { WantedPrecision = wanted },
        };
        var result = test.Evaluated();
        Assert.True(result.Estimate.RelativeExpanded <= meter.ExpectedPrecision.Fraction * (1 + 1e-12));
        Assert.True(meter.ExpectedPrecision.Fraction <= wanted);
        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
    }

    [Fact]
    public void Catches_NarrowerPrecision_AreMore()
    {
        var counts = ((double[])[0.03, 0.02, 0.012, 0.008])
            .Select(wanted => Only(Planned.Plan(Planned.Front) with { WantedPrecision = wanted }).Catches!.Value)
            .ToArray();

        Assert.All(counts.Zip(counts.Skip(1)), pair => Assert.True(pair.First < pair.Second));
    }

    [Fact]
    public void Catches_ScaleThatCannotReachThePrecision_AreNone()
    {
        var plan = Planned.Plan(Planned.Front) with { Scale = Given.Platform with { StatedAccuracy = new Mass(0.6) } };

        Assert.Null(Only(plan).Catches);
        Assert.Contains(
            "cannot be reached with this scale",
            Assert.Single(plan.Evaluated().Findings, finding => finding.Code == SharedCodes.PrecisionOutOfReach).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Catches_SharedTare_CountsAsCommonToAll()
    {
        var each = Planned.Plan(Planned.Front with { Repeatability = 0.01 }) with
        {
            Scale = Given.Platform with { Division = new Mass(0.2), StatedAccuracy = new Mass(0.05) },
        };
        var shared = each with { TareReading = TareReading.Shared };

        NearlyEqual.Assert(
            CatchCount.ExpectedPrecision(
                1,
                1e-4,
                4,
                0.04 / 12 / (16.074 * 16.074) + 0.01 / 6 / (47 * 47),
                Math.Sqrt(0.0025 / 3 + 0.04 / 12) / 16.074,
                0.95
            ),
            Only(shared).ExpectedPrecision.Fraction,
            1e-12
        );
    }

    [Fact]
    public void Catches_StatedRepeatability_TakesThePlaceOfTheDefault() =>
        Assert.True(Only(Planned.Plan(Planned.Front with { Repeatability = 0.03 })).Catches > Only(Planned.Plan(Planned.Front)).Catches);

    private static MeterPlan Only(CatchPlanQuestion plan) => Assert.Single(plan.Evaluated().Meters);
}
