using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>Revolutions, run time, simulated area, and the check at the ends of the working range.</summary>
public sealed class CatchRunTests
{
    private static readonly MeterPlan Front = Assert.Single(Planned.Plan(Planned.Front).Evaluated().Meters);

    [Fact]
    public void Revolutions_SeparateDrive_AreWhole() => Assert.Equal(47, Front.Revolutions.Count);

    // Without the allowance for binary fractions 48 revolutions of 0.35 kg under a bound of 16.8 kg would become 47.
    [Fact]
    public void Revolutions_BoundThatIsAWholeNumberOfThem_AreNotLostToRounding()
    {
        var meter = Planned.Meter("front", "wheat", 90, 780, 0.35);
        var plan = Planned.Plan(meter) with { LiftLimit = new Mass(16.8 + 1.62) };

        Assert.Equal(48, Assert.Single(plan.Evaluated().Meters).Revolutions.Count);
    }

    [Fact]
    public void CatchMass_Always_IsRevolutionsTimesTheValuePlannedWith() => Assert.Equal(47 * 0.342, Front.CatchMass.Kilograms, 1e-12);

    // n = R W v / k.
    [Fact]
    public void MeterSpeed_SimulatedGroundSpeed_IsRateTimesWidthTimesSpeedOverTheValue() =>
        NearlyEqual.Assert(0.009 * 9 * 2.5 / 0.342, Front.MeterSpeed.RevolutionsPerSecond);

    [Fact]
    public void RunTime_Always_IsRevolutionsOverMeterSpeed() =>
        NearlyEqual.Assert(47 / Front.MeterSpeed.RevolutionsPerSecond, Front.RunTime.Seconds);

    [Fact]
    public void SimulatedArea_Always_IsTheMassOverTheRate() => NearlyEqual.Assert(47 * 0.342 / 0.009, Front.SimulatedArea.SquareMetres);

    [Fact]
    public void SimulatedArea_Always_IsTheAreaThatTheMachineBelievesToDrive() =>
        NearlyEqual.Assert(9 * 2.5 * Front.RunTime.Seconds, Front.SimulatedArea.SquareMetres);

    [Fact]
    public void ContainerFill_Always_IsTheVolumeOfTheCatchOverThatOfTheContainer() =>
        NearlyEqual.Assert(47 * 0.342 / (0.030 * 620), Front.ContainerFill!.Value.Fraction);

    [Fact]
    public void SpeedChecks_WorkingRangeNotStated_AreNone() => Assert.Empty(Front.SpeedChecks);

    [Fact]
    public void SpeedChecks_WorkingRange_CheckBothEnds()
    {
        var plan = Planned.Plan(Planned.Front) with { LowestWorkingSpeed = new Speed(1), HighestWorkingSpeed = new Speed(7) };

        var checks = Assert.Single(plan.Evaluated().Meters).SpeedChecks;

        Assert.Equal([1, 7], checks.Select(check => check.GroundSpeed.MetresPerSecond));
        Assert.Equal([0.081 / 0.342, 7 * 0.081 / 0.342], checks.Select(check => check.MeterSpeed.RevolutionsPerSecond), (a, b) =>
            NearlyEqual.Holds(a, b, 1e-12)
        );
        Assert.Equal([true, false], checks.Select(check => check.Within));
    }

    [Fact]
    public void Findings_SpeedsOutsideTheLimits_AreWarnedOf()
    {
        var plan = Planned.Plan(Planned.Front) with { LowestWorkingSpeed = new Speed(0.2), HighestWorkingSpeed = new Speed(7) };

        var findings = plan.Evaluated().Findings.Where(finding => finding.Code == SharedCodes.OutsideMeterWindow).ToArray();

        Assert.Equal(2, findings.Length);
        Assert.Contains(findings, finding => finding.Detail.InMetric().Contains("turns unevenly", StringComparison.Ordinal));
        Assert.Contains(findings, finding => finding.Detail.InMetric().Contains("the rate will not be reached", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(2, 2.9, false)]
    [InlineData(2, 3, true)]
    [InlineData(2, 6, true)]
    public void Findings_WideWorkingRange_AskForACheckCatchAtBothEnds(double lowest, double highest, bool expected)
    {
        var plan = Planned.Plan(Planned.Front) with { LowestWorkingSpeed = new Speed(lowest), HighestWorkingSpeed = new Speed(highest) };

        Assert.Equal(expected, plan.Evaluated().Findings.Any(finding => finding.Code == CatchPlanCodes.WideSpeedRange));
    }

    [Fact]
    public void Findings_FewRevolutions_AreWarnedOf()
    {
        // Without a highest meter speed the simulated speed is not raised.
        var plan = Planned.Plan(Planned.Middle with { SpeedLimits = MeterSpeedLimits.None }) with { LongestRun = new Duration(100) };

        Assert.Equal(17, Assert.Single(plan.Evaluated().Meters).Revolutions.Count);
        Assert.Contains(plan.Evaluated().Findings, finding => finding.Code == SharedCodes.SmallCatch);
    }

    [Fact]
    public void Findings_ContainerThatMayRunFull_AreWarnedOf()
    {
        var plan = Planned.Plan(Planned.Front) with { Container = Planned.ThirtyLitres with { Fill = 0.99 } };

        Assert.Contains(plan.Evaluated().Findings, finding => finding.Code == CatchPlanCodes.ContainerNearlyFull);
        Assert.DoesNotContain(Planned.Plan(Planned.Front).Evaluated().Findings, finding =>
            finding.Code == CatchPlanCodes.ContainerNearlyFull
        );
    }
}
