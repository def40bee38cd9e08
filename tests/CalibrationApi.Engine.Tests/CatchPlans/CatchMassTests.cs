using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>The largest catch that container, scale, lifting and the longest run allow.</summary>
public sealed class CatchMassTests
{
    // V rho fill / (1 + 2 u_k): 30 L x 0.62 kg/L x 0.9 / 1.024.
    [Fact]
    public void Bounds_Container_LeaveRoomForAValueThatIsTooLow() =>
        Assert.Equal(30 * 0.62 * 0.9 / 1.024, Bound(Planned.Plan(Planned.Front), CatchBoundKind.Container), 1e-12);

    [Fact]
    public void Bounds_UncertainStartValue_LeaveMoreRoom()
    {
        var start = Planned.Front with { Value = new ReferenceValue(Given.PerRevolution(0.342), ReferenceKind.StartValue) };

        Assert.Equal(30 * 0.62 * 0.9 / 1.2, Bound(Planned.Plan(start), CatchBoundKind.Container), 1e-12);
    }

    [Fact]
    public void Bounds_FillOfTheContainer_IsTheCallers()
    {
        var plan = Planned.Plan(Planned.Front) with { Container = Planned.ThirtyLitres with { Fill = 0.5 } };

        Assert.Equal(30 * 0.62 * 0.5 / 1.024, Bound(plan, CatchBoundKind.Container), 1e-12);
    }

    [Fact]
    public void Bounds_ScaleCapacity_CountsTheContainer() =>
        Assert.Equal(50 - 1.62, Bound(Planned.Plan(Planned.Front), CatchBoundKind.ScaleCapacity), 1e-12);

    [Theory]
    [InlineData(null, 25 - 1.62)]
    [InlineData(40.0, 40 - 1.62)]
    public void Bounds_LiftLimit_CountsTheContainer(double? limit, double expected)
    {
        var plan = Planned.Plan(Planned.Front) with { LiftLimit = limit is { } kilograms ? new Mass(kilograms) : null };

        Assert.Equal(expected, Bound(plan, CatchBoundKind.LiftLimit), 1e-12);
    }

    // R W v t = 0.009 kg/m2 x 9 m x 2.5 m/s x 300 s.
    [Fact]
    public void Bounds_LongestRun_IsTheFlowTimesTheTime() =>
        Assert.Equal(0.009 * 9 * 2.5 * 300, Bound(Planned.Plan(Planned.Front), CatchBoundKind.LongestRun), 1e-12);

    [Fact]
    public void Bounds_ContainerOfUnknownVolumeOrDensity_BoundNothing()
    {
        var unknownVolume = Planned.Plan(Planned.Front) with { Container = new Container(null, new Mass(1.62)) };
        var unknownDensity = Planned.Plan(Planned.Front with { BulkDensity = null });

        Assert.DoesNotContain(Only(unknownVolume).Bounds, bound => bound.Kind == CatchBoundKind.Container);
        Assert.DoesNotContain(Only(unknownDensity).Bounds, bound => bound.Kind == CatchBoundKind.Container);
        Assert.Null(Only(unknownDensity).ContainerFill);
    }

    [Fact]
    public void Bounds_ContainerOfTheMeter_GoesBeforeThatOfThePlan()
    {
        var bucket = Planned.Front with { Container = new Container(new Volume(0.010), new Mass(0.5)) };

        Assert.Equal(10 * 0.62 * 0.9 / 1.024, Bound(Planned.Plan(bucket), CatchBoundKind.Container), 1e-12);
    }

    [Fact]
    public void LimitedBy_Always_IsTheSmallestBoundAndTheCatchStaysUnderIt()
    {
        foreach (var meter in Planned.Plan(Planned.Front, Planned.Middle, Planned.Rear).Evaluated().Meters)
        {
            Assert.Equal(meter.Bounds.Min(bound => bound.Mass.Kilograms), meter.LimitedBy.Mass.Kilograms);
            Assert.True(meter.CatchMass.Kilograms <= meter.LimitedBy.Mass.Kilograms);
            Assert.True(meter.CatchMass.Kilograms + meter.Meter.Value.Value.KilogramsPerRevolution > meter.LimitedBy.Mass.Kilograms);
        }
    }

    [Theory]
    [InlineData(CatchBoundKind.ScaleCapacity, 10, 25, 300, 10 - 1.62)]
    [InlineData(CatchBoundKind.LiftLimit, 50, 12, 300, 12 - 1.62)]
    [InlineData(CatchBoundKind.LongestRun, 50, 25, 40, 0.2025 * 40)]
    public void LimitedBy_EachBoundInTurn_Acts(CatchBoundKind kind, double capacity, double lift, double seconds, double bound)
    {
        var plan = Planned.Plan(Planned.Front) with
        {
            Scale = Given.Platform with { Capacity = new Mass(capacity) },
            LiftLimit = new Mass(lift),
            LongestRun = new Duration(seconds),
        };

        Assert.Equal(kind, Only(plan).LimitedBy.Kind);
        Assert.Equal(bound, Only(plan).LimitedBy.Mass.Kilograms, 1e-12);
    }

    // Crossing bounds are explained: 500 divisions of 20 g are wanted.
    [Fact]
    public void Findings_BulkProductThatCannotReachItsLeastCatch_AreExplainedWithARemedy()
    {
        var plan = Planned.Plan(Planned.Front with { Material = ProductMaterial.FreeFlowing }) with { LiftLimit = new Mass(7) };

        var finding = Assert.Single(plan.Evaluated().Findings, each => each.Code == CatchPlanCodes.BoundsCross);
        Assert.Contains("at least 10 kg are wanted, 500 divisions of 0.02 kg", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("what one person lifts allows only 5.38 kg", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("liftLimit", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_SmallSeed_HasNoLeastCatch()
    {
        Assert.DoesNotContain(Planned.Plan(Planned.Rear).Evaluated().Findings, each => each.Code == CatchPlanCodes.BoundsCross);
        Assert.DoesNotContain(Planned.Plan(Planned.Rear with { Material = ProductMaterial.SmallSeed }).Evaluated().Findings, each =>
            each.Code == CatchPlanCodes.BoundsCross
        );
    }

    [Fact]
    public void Evaluate_BoundUnderOneRevolution_IsRefusedWithTheMeter()
    {
        var plan = Planned.Plan(
            Planned.Front,
            Planned.Front with
            {
                Value = new ReferenceValue(Given.PerRevolution(342), ReferenceKind.ValueInForce, 0.012),
            }
        );

        var refusal = Assert.Single(CatchPlanEvaluation.Evaluate(plan).Refusals);
        Assert.Equal(SharedCodes.SettingsAtOdds, refusal.Code);
        Assert.Equal("meters/1", refusal.Member);
        Assert.Contains("342 kg/rev", refusal.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_ContainerHeavierThanTheLiftLimit_SaysThatItIsTheContainer()
    {
        var plan = Planned.Plan(Planned.Front) with { LiftLimit = new Mass(1) };

        var refusal = Assert.Single(CatchPlanEvaluation.Evaluate(plan).Refusals);

        Assert.StartsWith(
            "The empty container already weighs as much as what one person lifts allows.",
            refusal.Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Findings_ScatterKeepsThePrecisionOutOfReach_DoesNotBlameTheScale()
    {
        var plan = Planned.Plan(Planned.Front with { Repeatability = 0.3 });

        var finding = Assert.Single(plan.Evaluated().Findings, each => each.Code == SharedCodes.PrecisionOutOfReach);

        Assert.Contains("single catches scatter too much", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.DoesNotContain("scale", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_SeveralImpossibleMeters_AreAllRefusedAtOnce()
    {
        var plan = Planned.Plan(Planned.Front, Planned.Middle) with { LiftLimit = new Mass(1.7) };

        Assert.Equal(["meters/0", "meters/1"], CatchPlanEvaluation.Evaluate(plan).Refusals.Select(refusal => refusal.Member));
    }

    [Fact]
    public void Evaluate_NoMeter_IsRefusedAsACodingMistake() =>
        Assert.Throws<ArgumentException>(() => CatchPlanEvaluation.Evaluate(Planned.Plan()));

    private static MeterPlan Only(CatchPlanQuestion plan) => Assert.Single(plan.Evaluated().Meters);

    private static double Bound(CatchPlanQuestion plan, CatchBoundKind kind) =>
        Assert.Single(Only(plan).Bounds, bound => bound.Kind == kind).Mass.Kilograms;
}
