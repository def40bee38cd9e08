using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.LikelyMistakes;

/// <summary>How context splits the prior of all mistakes.</summary>
public sealed class MistakePriorTests
{
    [Fact]
    public void Priors_OfAllMistakes_AddUpToTheStatedOne()
    {
        foreach (
            var test in (CatchTest[])
                [Suspected.Net(1), Suspected.Net(1, 1, 1), Suspected.Weighed(1, 1), Suspected.Net(1, 1, 1).WithoutReference()]
        )
        {
            var hand = new TestAtHand(test, CatchReadings.From(test));
            Assert.Equal(MistakeJudgement.PriorOfAnyMistake, MistakePriors.Of(hand).Sum(each => each.Prior), 1e-15);
        }
    }

    // The first look rests on it.
    [Fact]
    public void Prior_OfOneMistakeAtOnePlace_IsAtMostHalfOfAll()
    {
        var odd = new MistakeContext
        {
            EnteredInPounds = false,
            ScaleInPounds = true,
            CatchPoints = 1,
            ContainerCapacity = new Mass(1),
        };
        var beside = Given.Test(Given.Weighed(18.5, 1.6, 47), Given.Weighed(18.5, 0, 47), Given.Weighed(18.5, 0, 47));
        foreach (
            var test in (CatchTest[])
                [Suspected.Net(1), Suspected.Net(1, 1), Suspected.Weighed(1), beside, beside.InForce(0.36), beside.StartingFrom(0.36)]
        )
        {
            foreach (var context in (MistakeContext[])[Suspected.Metric, odd])
            {
                var hand = new TestAtHand(test with { Context = context }, CatchReadings.From(test));
                Assert.InRange(MistakePriors.Of(hand).Max(each => each.Prior), 0, MistakeJudgement.PriorOfAnyMistake / 2);
            }
        }
    }

    [Fact]
    public void Prior_TareGivenWithEveryCatch_MakesForgettingItNearlyImpossibleButNotAnotherContainers()
    {
        Assert.True(
            Suspected.Weighed(1, 1).Prior(MistakeCode.TareNotTakenOff) < 0.05 * Suspected.Net(1, 1).Prior(MistakeCode.TareNotTakenOff)
        );
        Assert.True(Suspected.Weighed(1, 1).Prior(MistakeCode.TareOfAnotherContainer) > 0.0004);
        Assert.Equal(0, Suspected.Net(1, 1).Prior(MistakeCode.TareOfAnotherContainer));
    }

    [Fact]
    public void Prior_OneCatchWithoutTare_PointsToThatCatch()
    {
        var test = Given.Test(Given.Weighed(18.5, 1.6, 47), Given.Weighed(18.5, 0, 47), Given.Weighed(18.5, 1.6, 47)).InForce(0.36);

        Assert.True(test.Prior(MistakeCode.TareNotTakenOff, 1) > 50 * test.Prior(MistakeCode.TareNotTakenOff, 0));
    }

    [Fact]
    public void Prior_UnitOfTheScaleAndOfTheMasses_MakesAUnitSlipLessLikely()
    {
        var test = Suspected.Net(1, 1);
        double Of(bool? entered, bool? scale, string code) =>
            test.Knowing(_ => new() { EnteredInPounds = entered, ScaleInPounds = scale }).Prior(code);

        Assert.True(Of(false, false, MistakeCode.PoundsAsKilograms) < Of(false, null, MistakeCode.PoundsAsKilograms));
        Assert.True(Of(false, null, MistakeCode.PoundsAsKilograms) < Of(false, true, MistakeCode.PoundsAsKilograms));
        Assert.Equal(0, Of(false, false, MistakeCode.KilogramsAsPounds));
        Assert.Equal(0, Of(true, true, MistakeCode.PoundsAsKilograms));
        Assert.True(Of(true, false, MistakeCode.KilogramsAsPounds) > Of(true, true, MistakeCode.KilogramsAsPounds));
    }

    [Fact]
    public void Prior_CatchFarBelowTheCapacity_MakesAnOverflowNearlyImpossible()
    {
        double With(double capacity) =>
            Suspected
                .Net(1, 1)
                .Knowing(known => known with { ContainerCapacity = new Mass(capacity) })
                .Prior(MistakeCode.ContainerOverflowed, 0);

        Assert.True(With(18) > 2 * Suspected.Net(1, 1).Prior(MistakeCode.ContainerOverflowed, 0));
        Assert.True(With(60) < 0.05 * With(18));
    }

    [Fact]
    public void Prior_NotPrimed_IsOfTheFirstCatchMadeOnly()
    {
        var test = Suspected.Net(1, 1, 1);

        Assert.True(test.Prior(MistakeCode.MeterNotPrimed, 0) > 0);
        Assert.Equal(0, test.Prior(MistakeCode.MeterNotPrimed, 1) + test.Prior(MistakeCode.MeterNotPrimed));
        Assert.True(Suspected.Net(1).Prior(MistakeCode.MeterNotPrimed) > 0);
        var excluded = test with { Catches = [Given.Net(10, 47, excludedBecause: "not primed"), .. test.Catches] };
        Assert.Equal(0, excluded.Prior(MistakeCode.MeterNotPrimed, 0));
    }

    [Fact]
    public void Prior_NothingKnownOfOthers_LeavesThemOut()
    {
        Assert.Equal(0, Suspected.Net(1).Prior(MistakeCode.AnotherElement));
        Assert.Equal(0, Suspected.Net(1).Prior(MistakeCode.AnotherProduct));
        Assert.Equal(0, Suspected.Net(1).Prior(MistakeCode.TareTakenOffTwice));
        Assert.Equal(0, Suspected.Net(1).Knowing(known => known with { CatchPoints = 1 }).Prior(MistakeCode.CatchPointMissed));
    }

    // Ruling a mistake out is evidence against it, not for the others.
    [Fact]
    public void Prior_RuledOut_GoesToTheOrdinaryChange()
    {
        var test = Suspected.Net(1, 1);
        var ruled = test.Knowing(known => known with { RuledOut = [MistakeCode.DecimalSlip] });

        Assert.Equal(0, ruled.Prior(MistakeCode.DecimalSlip));
        Assert.Equal(test.Prior(MistakeCode.CountHalved), ruled.Prior(MistakeCode.CountHalved), 1e-15);
    }
}
