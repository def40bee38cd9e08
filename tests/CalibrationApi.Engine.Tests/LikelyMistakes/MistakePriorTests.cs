using CalibrationApi.Engine.Answers;
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
            var test in (CatchTestQuestion[])
                [Suspected.Net(1), Suspected.Net(1, 1, 1), Suspected.Weighed(1, 1), Suspected.Net(1, 1, 1).WithoutReference()]
        )
        {
            var hand = new TestAtHand(test, CatchReadings.From(test));
            Assert.Equal(MistakeJudgement.PriorOfAnyMistake, new MistakePriors(hand).Hypotheses().Sum(each => each.Prior), 1e-15);
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
            var test in (CatchTestQuestion[])
                [Suspected.Net(1), Suspected.Net(1, 1), Suspected.Weighed(1), beside, beside.InForce(0.36), beside.StartingFrom(0.36)]
        )
        {
            foreach (var context in (MistakeContext[])[Suspected.Metric, odd])
            {
                var hand = new TestAtHand(test with { Context = context }, CatchReadings.From(test));
                Assert.InRange(new MistakePriors(hand).Hypotheses().Max(each => each.Prior), 0, MistakeJudgement.PriorOfAnyMistake / 2);
            }
        }
    }

    [Fact]
    public void Prior_TareGivenWithEveryCatch_MakesForgettingItNearlyImpossibleButNotAnotherContainers()
    {
        Assert.True(
            Suspected.Weighed(1, 1).Prior(MistakeCodes.TareNotTakenOff) < 0.05 * Suspected.Net(1, 1).Prior(MistakeCodes.TareNotTakenOff)
        );
        Assert.True(Suspected.Weighed(1, 1).Prior(MistakeCodes.TareOfAnotherContainer) > 0.0004);
        Assert.Equal(0, Suspected.Net(1, 1).Prior(MistakeCodes.TareOfAnotherContainer));
    }

    [Fact]
    public void Prior_OneCatchWithoutTare_PointsToThatCatch()
    {
        var test = Given.Test(Given.Weighed(18.5, 1.6, 47), Given.Weighed(18.5, 0, 47), Given.Weighed(18.5, 1.6, 47)).InForce(0.36);

        Assert.True(test.Prior(MistakeCodes.TareNotTakenOff, 1) > 50 * test.Prior(MistakeCodes.TareNotTakenOff, 0));
    }

    [Fact]
    public void Prior_UnitOfTheScaleAndOfTheMasses_MakesAUnitSlipLessLikely()
    {
        var test = Suspected.Net(1, 1);
        double Of(bool? entered, bool? scale, MistakeCode code) =>
            test.Knowing(_ => new() { EnteredInPounds = entered, ScaleInPounds = scale }).Prior(code);

        Assert.True(Of(false, false, MistakeCodes.PoundsAsKilograms) < Of(false, null, MistakeCodes.PoundsAsKilograms));
        Assert.True(Of(false, null, MistakeCodes.PoundsAsKilograms) < Of(false, true, MistakeCodes.PoundsAsKilograms));
        Assert.Equal(0, Of(false, false, MistakeCodes.KilogramsAsPounds));
        Assert.Equal(0, Of(true, true, MistakeCodes.PoundsAsKilograms));
        Assert.True(Of(true, false, MistakeCodes.KilogramsAsPounds) > Of(true, true, MistakeCodes.KilogramsAsPounds));
    }

    [Fact]
    public void Prior_CatchFarBelowTheCapacity_MakesAnOverflowNearlyImpossible()
    {
        double With(double capacity) =>
            Suspected
                .Net(1, 1)
                .Knowing(known => known with { ContainerCapacity = new Mass(capacity) })
                .Prior(MistakeCodes.ContainerOverflowed, 0);

        Assert.True(With(18) > 2 * Suspected.Net(1, 1).Prior(MistakeCodes.ContainerOverflowed, 0));
        Assert.True(With(60) < 0.05 * With(18));
    }

    [Fact]
    public void Prior_NotPrimed_IsOfTheFirstCatchMadeOnly()
    {
        var test = Suspected.Net(1, 1, 1);

        Assert.True(test.Prior(MistakeCodes.MeterNotPrimed, 0) > 0);
        Assert.Equal(0, test.Prior(MistakeCodes.MeterNotPrimed, 1) + test.Prior(MistakeCodes.MeterNotPrimed));
        Assert.True(Suspected.Net(1).Prior(MistakeCodes.MeterNotPrimed) > 0);
        var excluded = test with { Catches = [Given.Net(10, 47, excludedBecause: "not primed"), .. test.Catches] };
        Assert.Equal(0, excluded.Prior(MistakeCodes.MeterNotPrimed, 0));
    }

    [Fact]
    public void Prior_NothingKnownOfOthers_LeavesThemOut()
    {
        Assert.Equal(0, Suspected.Net(1).Prior(MistakeCodes.AnotherElement));
        Assert.Equal(0, Suspected.Net(1).Prior(MistakeCodes.AnotherProduct));
        Assert.Equal(0, Suspected.Net(1).Prior(MistakeCodes.TareTakenOffTwice));
        Assert.Equal(0, Suspected.Net(1).Knowing(known => known with { CatchPoints = 1 }).Prior(MistakeCodes.CatchPointMissed));
    }

    // Ruling a mistake out is evidence against it, not for the others.
    [Fact]
    public void Prior_RuledOut_GoesToTheOrdinaryChange()
    {
        var test = Suspected.Net(1, 1);
        var ruled = test.Knowing(known => known with { RuledOut = [MistakeCodes.DecimalSlip] });

        Assert.Equal(0, ruled.Prior(MistakeCodes.DecimalSlip));
        Assert.Equal(test.Prior(MistakeCodes.CountHalved), ruled.Prior(MistakeCodes.CountHalved), 1e-15);
    }
}
