using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>An answer lists every default it used, with value and origin.</summary>
public sealed class CatchTestAssumptionTests
{
    private static readonly CatchTestQuestion TwoCatches = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    [Fact]
    public void Evaluate_NothingStated_ListsEveryDefaultInUse()
    {
        var assumptions = TwoCatches.InForce(0.342).Evaluated().Assumptions;

        Assert.Equal(
            [
                "repeatability",
                "scaleLimit",
                "dayToDay",
                "secondTestChange",
                "tolerance",
                "wantedPrecision",
                "valueInForce/relativeUncertainty",
                "sharedTare",
            ],
            assumptions.Select(assumption => assumption.Name)
        );
        Assert.All(assumptions, assumption => Assert.False(string.IsNullOrWhiteSpace(assumption.Origin)));
    }

    [Theory]
    [InlineData("repeatability", 0.0097913, "judgement")]
    [InlineData("dayToDay", 0.01, "judgement")]
    [InlineData("secondTestChange", 0.10, "twice the published 5 %")]
    [InlineData("tolerance", 0.05, "published acceptance limit")]
    [InlineData("wantedPrecision", 0.03, "judgement")]
    public void Evaluate_Default_ComesWithItsValueAndOrigin(string name, double value, string origin)
    {
        var assumption = Single(TwoCatches.InForce(0.342), name);

        Assert.Equal(value, assumption.Value!.Canonical, 1e-7);
        Assert.Contains(origin, assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_NothingToCompareWith_ListsNothingAboutChange()
    {
        var names = TwoCatches.Evaluated().Assumptions.Select(assumption => assumption.Name).ToArray();

        Assert.DoesNotContain("dayToDay", names);
        Assert.DoesNotContain("secondTestChange", names);
    }

    [Fact]
    public void Evaluate_EverythingStated_ListsTheScaleOnly()
    {
        var test = TwoCatches.InForce(0.342, 0.01) with
        {
            Limits = new CatchTestLimits
            {
                Tolerance = 0.06,
                WantedPrecision = 0.03,
                SecondTestChange = 0.12,
                DayToDay = 0.005,
                Repeatability = 0.008,
                RepeatabilityDegreesOfFreedom = 9,
            },
        };

        Assert.Equal(
            ["scaleLimit"],
            (test with { TareReading = TareReading.Zeroed }).Evaluated().Assumptions.Select(assumption => assumption.Name)
        );
    }

    [Fact]
    public void Evaluate_RepeatabilityStatedWithoutItsWorth_ListsTheDefaultDegreesOfFreedom()
    {
        var test = TwoCatches with { Limits = new CatchTestLimits { Repeatability = 0.008 } };

        var assumption = Single(test, "repeatabilityDegreesOfFreedom");
        Assert.Contains("4 degrees of freedom", assumption.Origin, StringComparison.Ordinal);
        Assert.Contains("judgement", assumption.Origin, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ProductMaterial.Dusty, 0.0291613)]
    [InlineData(null, 0.0097913)]
    public void Evaluate_Material_DecidesTheAssumedRepeatability(ProductMaterial? material, double expected) =>
        Assert.Equal(expected, Single(TwoCatches with { Material = material }, "repeatability").Value!.Canonical, 1e-7);

    // Each catch has its own; said is the root of their mean square.
    [Fact]
    public void Evaluate_OneSmallCatch_CountsWithItsOwnRepeatability()
    {
        double Of(double kilograms, double turns) => Math.Pow(RepeatabilityPrior.Default(null, kilograms, turns).Relative, 2);

        NearlyEqual.Assert(
            Math.Sqrt((Of(17, 47) + Of(4, 11)) / 2),
            Single(Given.Test(Given.Net(17, 47), Given.Net(4, 11)), "repeatability").Value!.Canonical,
            1e-9
        );
    }

    // One small catch beside good ones once made the whole test less sure than the good ones alone.
    [Fact]
    public void Evaluate_SmallCatchBesideGoodOnes_NarrowsTheInterval() =>
        Assert.True(
            Given.Test(Given.Delivering(0.36), Given.Delivering(0.362), Given.Delivering(0.361, 10)).Evaluated().Estimate.RelativeExpanded
                < Given.Test(Given.Delivering(0.36), Given.Delivering(0.362)).Evaluated().Estimate.RelativeExpanded
        );

    [Fact]
    public void Evaluate_ClassedScale_ListsItsLimitAtTheLoad()
    {
        var assumption = Single(TwoCatches, "scaleLimit");

        Assert.Equal(0.04, Assert.IsType<Mass>(assumption.Value).Kilograms, 1e-12);
        Assert.Contains("OIML R 76, class III, in service", assumption.Origin, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_CheckedScale_ListsTheUncertaintyOfItsError()
    {
        var scale = Given.Platform with { KnownError = new Engine.Weighing.KnownScaleError(0.01, 0.0005) };

        var names = (TwoCatches with { Scale = scale }).Evaluated().Assumptions.Select(assumption => assumption.Name).ToArray();
        Assert.Contains("scaleError", names);
        Assert.DoesNotContain("scaleLimit", names);
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void Evaluate_ScaleOfTheOldValue_IsAssumedTheSameOnlyWhereNotStated(bool? fromAnotherScale, bool listed)
    {
        var names = TwoCatches
            .InForce(0.342, fromAnotherScale: fromAnotherScale)
            .Evaluated()
            .Assumptions.Select(assumption => assumption.Name);

        Assert.Equal(listed, names.Contains("valueInForce/fromAnotherScale"));
    }

    private static Assumption Single(CatchTestQuestion test, string name) =>
        Assert.Single(test.Evaluated().Assumptions, assumption => assumption.Name == name);
}
