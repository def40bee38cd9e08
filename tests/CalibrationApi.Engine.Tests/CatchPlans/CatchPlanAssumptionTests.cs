using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>A plan lists every default it used, with value and origin.</summary>
public sealed class CatchPlanAssumptionTests
{
    private static readonly CatchPlanQuestion Bare = new()
    {
        GroundSpeed = new Speed(2.5),
        Scale = Given.Platform,
        Meters = [Planned.Front with { Value = new ReferenceValue(Given.PerRevolution(0.342), ReferenceKind.ValueInForce) }],
    };

    [Theory]
    [InlineData("wantedPrecision", 0.03, "judgement")]
    [InlineData("maximumRunTime", 300, "judgement")]
    [InlineData("minimumRunTime", 20, "judgement")]
    [InlineData("liftLimit", 25, "judgement")]
    [InlineData("counterResolution", 0.1, "judgement")]
    [InlineData("container", 0, "no container stated")]
    [InlineData("leastCatch", 10, "500 divisions of the scale")]
    [InlineData("valueInForce/relativeUncertainty", 0.02, "judgement")]
    [InlineData("repeatability", 0.0095061, "judgement")]
    [InlineData("scaleLimit", 0.04, "OIML R 76")]
    public void Assumptions_NothingStated_ListTheDefaultWithItsOrigin(string name, double value, string origin)
    {
        var assumption = Assert.Single(Bare.Evaluated().Assumptions, each => each.Name == name);

        Assert.Equal(value, assumption.Value!.Canonical, 1e-7);
        Assert.Contains(origin, assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Assumptions_PlanStatedInFull_ListOnlyWhatBelongsToTheMeters()
    {
        var names = (
            Planned.Plan(Planned.Front) with
            {
                ShortestRun = new Duration(20),
                LiftLimit = new Mass(25),
                Container = Planned.ThirtyLitres with { Fill = 0.9 },
            }
        )
            .Evaluated()
            .Assumptions.Select(assumption => assumption.Name);

        Assert.Equal(["leastCatch", "precisionProbability", "repeatability", "scaleLimit"], names.Order());
    }

    [Fact]
    public void Assumptions_LongestRunUnderTheUsualShortest_TakesItsPlace() =>
        Assert.Equal(new Duration(12), Single(Planned.Plan(Planned.Front) with { LongestRun = new Duration(12) }, "minimumRunTime").Value);

    [Fact]
    public void Assumptions_ContainerWithoutFill_ListTheDefaultFill() =>
        Assert.Equal(new Ratio(0.9), Single(Planned.Plan(Planned.Front), "container/fill").Value);

    [Fact]
    public void Assumptions_StartValueWithoutUncertainty_MayBeTwentyPercentOff()
    {
        var plan = Planned.Plan(Planned.Front with { Value = new ReferenceValue(Given.PerRevolution(0.342), ReferenceKind.StartValue) });

        var assumption = Single(plan, "valueInForce/relativeUncertainty");
        Assert.Equal(new Ratio(0.10), assumption.Value);
        Assert.Contains("20 %", assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Assumptions_SlowFlowAndNoMaterial_AreTakenAsSmallSeed()
    {
        Assert.Equal("rear", Single(Planned.Plan(Planned.Rear), "material").Meter);
        Assert.DoesNotContain(Planned.Plan(Planned.Rear with { Material = ProductMaterial.SmallSeed }).Evaluated().Assumptions, each =>
            each.Name == "material"
        );
    }

    [Fact]
    public void Assumptions_SeveralMeters_SayWhichMeterTheyAreAbout() =>
        Assert.Equal(
            ["front", "rear"],
            Planned
                .Plan(Planned.Front, Planned.Rear)
                .Evaluated()
                .Assumptions.Where(each => each.Name == "scaleLimit")
                .Select(each => each.Meter)
        );

    private static Assumption Single(CatchPlanQuestion plan, string name) =>
        Assert.Single(plan.Evaluated().Assumptions, each => each.Name == name);
}
