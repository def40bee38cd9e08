using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>Several meters in one run: separate drives stop one after the other, a shared shaft all at once.</summary>
public sealed class CommonRunTests
{
    [Fact]
    public void StopOrder_SeparateDrives_IsByRunTimeWhateverTheOrderGiven()
    {
        var given = Planned.Plan(Planned.Rear, Planned.Front, Planned.Middle).Evaluated();

        Assert.Equal(["front", "middle", "rear"], given.StopOrder.SelectMany(stop => stop.Meters));
        Assert.Equal(["rear", "front", "middle"], given.Meters.Select(meter => meter.Meter.Name));
    }

    [Fact]
    public void StopOrder_Times_AreTheRunTimesOfTheMeters()
    {
        var result = Planned.Plan(Planned.Front, Planned.Middle).Evaluated();

        Assert.All(result.StopOrder, stop =>
            Assert.Equal(stop.Meters.Select(name => result.Meters.Single(meter => meter.Meter.Name == name).RunTime), stop.Times)
        );
    }

    // t = m / (R W v): 47 revolutions of 0.342 kg at 90 kg/ha take 79.4 s, at 95 kg/ha 75.2 s.
    [Fact]
    public void StopOrder_StopsCloserThanTenSeconds_ShareAnEntryAndANote()
    {
        var result = Planned
            .Plan(Planned.Front, Planned.Front with { Name = "second", TargetRate = new(0.0095) }, Planned.Rear)
            .Evaluated();

        Assert.Equal(["second", "front"], result.StopOrder[0].Meters);
        Assert.Equal(2, result.StopOrder.Count);
        var note = Assert.Single(result.Findings, finding => finding.Code == CatchPlanCodes.StopsCloseTogether);
        Assert.Contains("second, front", note.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void StopOrder_StopsFarApart_StandAlone() =>
        Assert.All(Planned.Plan(Planned.Front, Planned.Middle, Planned.Rear).Evaluated().StopOrder, stop => Assert.Single(stop.Meters));

    [Fact]
    public void SharedShaft_AllMeters_StopWithTheOneThatIsFullFirst()
    {
        var separate = Planned.Plan(Planned.Front, Planned.Middle).Evaluated();
        var shared = (Planned.Plan(Planned.Front, Planned.Middle) with { Drive = MeterDrive.SharedShaft }).Evaluated();

        var first = separate.Meters.Min(meter => meter.RunTime.Seconds);
        Assert.All(shared.Meters, meter => NearlyEqual.Assert(first, meter.RunTime.Seconds));
        Assert.Equal(["front", "middle"], Assert.Single(shared.StopOrder).Meters.Order());
    }

    [Fact]
    public void SharedShaft_MeterThatIsNotFullFirst_IsLimitedByTheShaftAndFillsLess()
    {
        var shared = (Planned.Plan(Planned.Front, Planned.Middle) with { Drive = MeterDrive.SharedShaft }).Evaluated();
        var middle = shared.Meters[1];

        Assert.Equal(CatchBoundKind.Container, shared.Meters[0].LimitedBy.Kind);
        Assert.Equal(CatchBoundKind.SharedShaft, middle.LimitedBy.Kind);
        NearlyEqual.Assert(middle.MeterSpeed.RevolutionsPerSecond * middle.RunTime.Seconds, middle.Revolutions.Count);
        NearlyEqual.Assert(0.0055 * 9 * 2.5 * middle.RunTime.Seconds, middle.CatchMass.Kilograms);
        NearlyEqual.Assert(middle.CatchMass.Kilograms / (0.030 * 960), middle.ContainerFill!.Value.Fraction);
    }

    [Fact]
    public void SharedShaft_Steps_StopTheShaftOnce()
    {
        var steps = (Planned.Plan(Planned.Front, Planned.Middle) with { Drive = MeterDrive.SharedShaft }).Evaluated().Steps;

        Assert.Single(steps, step => step.Id == "stop-all");
        Assert.DoesNotContain(steps, step => step.Id.StartsWith("stop-meter", StringComparison.Ordinal));
    }

    // A common start only holds when every meter is primed.
    [Fact]
    public void SeparateDrives_CommonStart_ComesAfterEveryMeterIsPrimed()
    {
        var steps = Planned.Plan(Planned.Front, Planned.Middle, Planned.Rear).Evaluated().Steps;

        var before = PlanStepsTests.AllBefore(steps, "run");
        Assert.All((string[])["prime-meter-1", "prime-meter-2", "prime-meter-3"], id => Assert.Contains(id, before));
        Assert.Contains("primed", steps.Single(step => step.Id == "run").Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "At 9 km/h catch ")]
    [InlineData(2, "start all together")]
    [InlineData(3, "start all together")]
    [InlineData(5, "and two more.")]
    public void Headline_AnyNumberOfMeters_SaysWhatToCatch(int meters, string expected)
    {
        var plan = Planned.Plan([.. Enumerable.Range(1, meters).Select(i => Planned.Front with { Name = $"meter {i}" })]);

        Assert.Contains(expected, plan.Evaluated().Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Headline_SeveralCatches_SaysHowOften() =>
        Assert.Contains(
            "five times",
            Planned.Plan(Planned.Rear with { Repeatability = 0.02 }).Evaluated().Headline.InMetric(),
            StringComparison.Ordinal
        );

    [Fact]
    public void RunTime_StopTime_DoesNotDependOnTheValuePlannedWith()
    {
        var one = Assert.Single(Planned.Plan(Planned.Front).Evaluated().Meters);
        var other = Assert.Single(
            Planned
                .Plan(Planned.Front with { Value = new ReferenceValue(Given.PerRevolution(0.171), ReferenceKind.ValueInForce, 0.012) })
                .Evaluated()
                .Meters
        );

        NearlyEqual.Assert(one.CatchMass.Kilograms / one.RunTime.Seconds, other.CatchMass.Kilograms / other.RunTime.Seconds);
    }
}
