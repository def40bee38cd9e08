using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>
/// Which ground speed is simulated where the planned one takes a meter beyond its limits or leaves too short or too long a run.
/// </summary>
public sealed class RunSpeedTests
{
    // 300 kg/ha on 12 m at 15 km/h: 1.5 kg/s, 4 rev/s. Nine revolutions fill a bucket of 5.4 L in 2.25 s.
    private static readonly PlannedMeter Fast = Planned.Meter("front", "wheat", 300, 780, 0.375) with
    {
        CoveredWidth = new Length(12),
        SpeedLimits = Between(4, 250),
        Container = new Container(new Volume(0.0054), new Mass(0.3)),
    };

    private static readonly CatchPlanQuestion FastRun = Planned.Plan(Fast) with { GroundSpeed = new Speed(15 / 3.6) };

    [Fact]
    public void SimulatedSpeed_PlannedOneDoes_IsThePlannedOne()
    {
        var result = Planned.Plan(Planned.Front, Planned.Middle, Planned.Rear).Evaluated();

        Assert.All(result.Meters, meter => Assert.Equal(new Speed(2.5), meter.SimulatedSpeed));
        Assert.StartsWith("At 9 km/h start all together", result.Headline.InMetric(), StringComparison.Ordinal);
        Assert.DoesNotContain(result.Findings, finding => finding.Code == CatchPlanCodes.SimulatedSpeedMoved);
    }

    // t = m / (R W v): the same nine revolutions take 20 s at m / (R W 20 s).
    [Fact]
    public void SimulatedSpeed_RunTooShort_IsSlowEnoughForTheShortestRun()
    {
        var result = FastRun.Evaluated();
        var meter = Assert.Single(result.Meters);

        Assert.Equal(9, meter.Revolutions.Count);
        NearlyEqual.Assert(9 * 0.375 / (0.03 * 12 * 20), meter.SimulatedSpeed.MetresPerSecond);
        NearlyEqual.Assert(20, meter.RunTime.Seconds);
        Assert.StartsWith("Simulate 1.688 km/h in place of 15 km/h: catch ", result.Headline.InMetric(), StringComparison.Ordinal);
        var moved = Assert.Single(result.Findings, finding => finding.Code == CatchPlanCodes.SimulatedSpeedMoved);
        Assert.Contains("full after 2 s", moved.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("check catch at 15 km/h", moved.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    public void SimulatedSpeed_ShortestRunStated_IsTheCallers(double seconds) =>
        NearlyEqual.Assert(
            seconds,
            Assert.Single((FastRun with { ShortestRun = new Duration(seconds) }).Evaluated().Meters).RunTime.Seconds
        );

    // 151 rpm of a meter that turns 120 at most.
    [Fact]
    public void SimulatedSpeed_PlannedOneIsBeyondTheHighestMeterSpeed_IsNeverAskedFor()
    {
        var planned = Planned.Front with { SpeedLimits = Between(4, 120) };
        var speed = new Speed(151.0 / 60 * 0.342 / (0.009 * 9));
        var result = (Planned.Plan(planned) with { GroundSpeed = speed }).Evaluated();
        var meter = Assert.Single(result.Meters);

        Assert.Equal(120 / 1.05, meter.MeterSpeed.Rpm(), 1e-9);
        Assert.True(meter.WithinLimits);
        Assert.StartsWith("Simulate ", result.Headline.InMetric(), StringComparison.Ordinal);
        var moved = Assert.Single(result.Findings, finding => finding.Code == CatchPlanCodes.SimulatedSpeedMoved).Detail.InMetric();
        Assert.Contains("it would have to turn 151.0 rpm, above its highest 120.0 rpm", moved, StringComparison.Ordinal);
        Assert.DoesNotContain("check catch", moved, StringComparison.Ordinal);
        // In the field it would still be driven so.
        Assert.Contains(result.Findings, finding => finding.Code == SharedCodes.OutsideMeterWindow);
    }

    // At 100 rpm the nine revolutions take 5.4 s, and slower it must not turn.
    [Fact]
    public void ShortRun_LeastMeterSpeedForbidsASlowerOne_NamesContainerAndCatches()
    {
        var result = (FastRun with { Meters = [Fast with { SpeedLimits = Between(100, 250) }] }).Evaluated();
        var meter = Assert.Single(result.Meters);

        Assert.Equal(105, meter.MeterSpeed.Rpm(), 1e-9);
        Assert.Equal(4, meter.CatchesForLongRun);
        // 20 s at 105 rpm are 35 revolutions: V = m (1 + 2 u) / (rho fill).
        NearlyEqual.Assert(35 * 0.375 * 1.024 / (780 * 0.9), meter.ContainerForLongRun!.Value.CubicMetres);
        var finding = Assert.Single(result.Findings, each => each.Code == CatchPlanCodes.ShortRun).Detail.InMetric();
        Assert.Contains("takes only 5 s", finding, StringComparison.Ordinal);
        Assert.Contains("Use a container of at least 19.1 L. Otherwise make at least four catches", finding, StringComparison.Ordinal);
    }

    [Fact]
    public void ShortRun_LargerContainerCouldNotBeLifted_IsNotProposed()
    {
        var plan = FastRun with { Meters = [Fast with { SpeedLimits = Between(100, 250) }], LiftLimit = new Mass(10) };
        var meter = Assert.Single(plan.Evaluated().Meters);

        Assert.Null(meter.ContainerForLongRun);
        Assert.NotNull(meter.CatchesForLongRun);
    }

    // 6 kg/ha of a bulk product: 300 s at 9 km/h bring 4.05 kg, and 5 kg are wanted: 162 revolutions of 0.031 kg.
    [Fact]
    public void SimulatedSpeed_LongestRunBringsTooLittle_IsRaisedAsFarAsTheMeterAllows()
    {
        var slow = Planned.Rear with { Material = ProductMaterial.FreeFlowing };
        var raised = Assert.Single(OnAFineScale(slow).Evaluated().Meters);
        var held = OnAFineScale(slow with { SpeedLimits = Between(4, 30) }).Evaluated();

        Assert.Equal(162, raised.Revolutions.Count);
        NearlyEqual.Assert(162 * 0.031 / (0.0006 * 9 * 300), raised.SimulatedSpeed.MetresPerSecond);
        Assert.Equal(30 / 1.05, Assert.Single(held.Meters).MeterSpeed.Rpm(), 1e-9);
        Assert.Contains(
            "Allow a run of ",
            Assert.Single(held.Findings, finding => finding.Code == CatchPlanCodes.BoundsCross).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void SimulatedSpeed_ThatWouldBeFarFromThePlannedOne_IsRaisedToItsDoubleAtMost()
    {
        var trickle = Planned.Rear with
        {
            Material = ProductMaterial.FreeFlowing,
            TargetRate = new MassPerArea(0.0002),
            SpeedLimits = Between(1, 500),
        };

        Assert.Equal(new Speed(5), Assert.Single(Planned.Plan(trickle).Evaluated().Meters).SimulatedSpeed);
    }

    [Fact]
    public void SimulatedSpeed_HighestMeterSpeedUnknown_IsNotRaised()
    {
        var slow = Planned.Rear with { Material = ProductMaterial.FreeFlowing, SpeedLimits = MeterSpeedLimits.None };
        var result = Planned.Plan(slow).Evaluated();

        Assert.Equal(new Speed(2.5), Assert.Single(result.Meters).SimulatedSpeed);
        Assert.Contains(
            "state the highest speed of the meter",
            Assert.Single(result.Findings, finding => finding.Code == CatchPlanCodes.BoundsCross).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    // The bucket of the one slows the run down, in which the other one brings too little; alone, 9 km/h bring enough of it.
    [Fact]
    public void Remedy_RunSlowedDownForAnotherMeter_IsARunOfItsOwn()
    {
        var slow = Planned.Meter("rear", "clover", 12, 780, 0.031) with { Material = ProductMaterial.FreeFlowing };
        var together = (OnAFineScale(Fast, slow) with { GroundSpeed = new Speed(2.5) }).Evaluated();
        var alone = (OnAFineScale(slow) with { GroundSpeed = new Speed(2.5) }).Evaluated();

        Assert.Contains(
            "Catch this meter in a run of its own, at a simulated 9 km/h.",
            Assert
                .Single(together.Findings, finding => finding.Code == CatchPlanCodes.BoundsCross && finding.Meter == "rear")
                .Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(alone.Findings, finding => finding.Code == CatchPlanCodes.BoundsCross);
    }

    // One meter turns 4 to 20 rpm at most, at 9 km/h 35.5; the other one needs 30 at least and turns 26.
    [Fact]
    public void Meters_WithoutACommonSpeed_RunOneAfterTheOtherEachAtItsOwn()
    {
        var plan = Planned.Plan(Planned.Front with { SpeedLimits = Between(4, 20) }, Planned.Rear with { SpeedLimits = Between(30, 90) });
        foreach (var drive in Enum.GetValues<MeterDrive>())
        {
            var result = (plan with { Drive = drive }).Evaluated();

            Assert.True(result.OneAfterTheOther);
            Assert.All(result.Meters, meter => Assert.True(meter.WithinLimits));
            Assert.NotEqual(result.Meters[0].SimulatedSpeed, result.Meters[1].SimulatedSpeed);
            Assert.StartsWith("No simulated speed suits all these meters", result.Headline.InMetric(), StringComparison.Ordinal);
            Assert.Contains(result.Findings, finding => finding.Code == CatchPlanCodes.MetersRunApart);
            Assert.Contains(
                "one after the other",
                result.Steps.Single(step => step.Id == "run").Detail.InMetric(),
                StringComparison.Ordinal
            );
            Assert.Contains("stop-meter-2", result.Steps.Select(step => step.Id));
        }
    }

    [Theory]
    [InlineData(3, false)]
    [InlineData(2, true)]
    public void ContainersNeeded_OneUnderEachMeter_AreCountedAndCompared(int atHand, bool isShort)
    {
        var result = (Planned.Plan(Planned.Front, Planned.Middle, Planned.Rear) with { ContainersAtHand = atHand }).Evaluated();

        Assert.Equal(3, result.ContainersNeeded);
        Assert.Equal(isShort, result.Findings.Any(finding => finding.Code == CatchPlanCodes.TooFewContainers));
    }

    [Fact]
    public void ContainersNeeded_MetersWithTheirOwn_AreNotTakenFromThoseAtHand()
    {
        var own = Planned.Rear with { Container = new Container(new Volume(0.01), new Mass(0.5)) };

        Assert.DoesNotContain((Planned.Plan(Planned.Front, own) with { ContainersAtHand = 1 }).Evaluated().Findings, finding =>
            finding.Code == CatchPlanCodes.TooFewContainers
        );
    }

    // No speed mends it, and the other meter has nothing to do with it.
    [Fact]
    public void Evaluate_ContainerThatHoldsNoRevolution_IsRefusedForItsMeterOnlyAndByItsName()
    {
        var free = Planned.Front with { SpeedLimits = MeterSpeedLimits.None };
        var small = free with { Name = "small", Container = new Container(new Volume(0.0003), new Mass(0.1)) };
        var heavy = free with { Name = "heavy", Container = new Container(new Volume(0.03), new Mass(30)) };

        var refusals = CatchPlanEvaluation.Evaluate(Planned.Plan(free, small, heavy)).Refusals;

        Assert.Equal(["meters/1", "meters/2"], refusals.Select(refusal => refusal.Member));
        Assert.Contains("the container allows only", refusals[0].Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("what one person lifts allows", refusals[1].Detail.InMetric(), StringComparison.Ordinal);
    }

    // A thousandth of a second at the least speed of the meter: thousands of catches are no remedy.
    [Fact]
    public void ShortRun_BeyondAnyNumberOfCatches_NamesNone()
    {
        var flood = Planned.Meter("front", "wheat", 5000, 780, 0.375) with
        {
            SpeedLimits = Between(40_000, 90_000),
            Container = Fast.Container,
        };
        var result = Planned.Plan(flood).Evaluated();

        Assert.Null(Assert.Single(result.Meters).CatchesForLongRun);
        Assert.DoesNotContain(
            "Otherwise",
            Assert.Single(result.Findings, finding => finding.Code == CatchPlanCodes.ShortRun).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    private static MeterSpeedLimits Between(double lowest, double highest) => new(Planned.Rpm(lowest), Planned.Rpm(highest));

    // 500 divisions of 10 g are 5 kg.
    private static CatchPlanQuestion OnAFineScale(params PlannedMeter[] meters) =>
        Planned.Plan(meters) with
        {
            Scale = Given.Platform with { Capacity = new Mass(50), Division = new Mass(0.01) },
        };
}
