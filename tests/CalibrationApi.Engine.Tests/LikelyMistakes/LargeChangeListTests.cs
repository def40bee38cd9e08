using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.LikelyMistakes;

/// <summary>From a large change on, everything that could explain it is listed, however improbable, with its one check.</summary>
public sealed class LargeChangeListTests
{
    // Exactly five sixths of the mass at six points: adopted, it would over-apply by 20 % on every hectare.
    [Fact]
    public void AlsoPossible_FiveSixthsAtSixPoints_BeginsWithAPointMissed()
    {
        var result = Suspected.Net(5 / 6.0, 5.01 / 6).Knowing(known => known with { CatchPoints = 6 }).Evaluated();

        Assert.Equal((Verdict.Repeat, Rule.SecondTestNeeded), (result.Decision.Verdict, result.Decision.Rule));
        var all = Listed(result);
        Assert.Equal(MistakeCode.CatchPointMissed, all[0].Code);
        Assert.InRange(all[0].Probability, 0.001, 0.5);
        Assert.Distinct(all.Select(each => each.Code));
        Assert.Equal(all.OrderByDescending(each => each.Probability), all);
        Assert.All(all, each => Assert.NotEmpty(each.Check));
        Assert.Contains(result.Findings, each =>
            each.Code == (result.LikelyMistakes.Shown.Count == 0 ? FindingCode.PossibleMistakes : FindingCode.LikelyMistake)
        );
    }

    [Theory]
    [InlineData(1.2, MistakeCode.AnotherProduct)]
    [InlineData(0.75, MistakeCode.AnotherElement)]
    [InlineData(1.12, MistakeCode.TareNotTakenOff)]
    [InlineData(1.3, MistakeCode.ValueInForceWrong)]
    [InlineData(0.8, MistakeCode.PulsesPerRevolutionWrong)]
    public void AlsoPossible_LargeChange_HoldsWhatFits(double ratio, string code)
    {
        var result = Suspected
            .Net(ratio, 1.002 * ratio)
            .Knowing(known =>
                known with
                {
                    OtherProducts = [Suspected.Other("peas", 1.2)],
                    OtherElements = [Suspected.Other("fine", 0.75)],
                    CountedAs = CountSource.Pulses,
                }
            )
            .Evaluated();

        Assert.Contains(Listed(result), each => each.Code == code);
        Assert.NotEqual(Verdict.Adopt, result.Decision.Verdict);
    }

    // Masses that grow by one catch each time leave no doubt; a list of nine more with nothing behind them would only hide it.
    [Fact]
    public void AlsoPossible_OneMistakeNearlyCertain_HoldsNothingAThousandTimesLessLikely()
    {
        var result = Suspected.Net(1, 2, 3).Evaluated();

        Assert.Equal(MistakeCode.ContainerNotEmptied, Assert.Single(Listed(result)).Code);
    }

    [Fact]
    public void AlsoPossible_ChangeUnderTheLimit_IsEmpty() =>
        Assert.Empty(Suspected.Net(1.06, 1.065).Evaluated().LikelyMistakes.AlsoPossible);

    // Whoever overlooks a point once overlooks it again; a slip of the moment seldom comes twice.
    [Fact]
    public void AlsoPossible_SecondTestAgrees_KeepsWhatIsDoneTheSameWayTwice()
    {
        var test = Suspected.Net(5 / 6.0, 5.01 / 6).Knowing(known => known with { CatchPoints = 6 });
        var once = Listed(test.Evaluated());

        var confirmed = (test with { Earlier = test.Evaluated().AsEarlierTest() }).Evaluated();

        Assert.Equal(Rule.ChangeConfirmed, confirmed.Decision.Rule);
        var twice = Listed(confirmed);
        Assert.Equal(0.5, Of(twice, MistakeCode.CatchPointMissed) / Of(once, MistakeCode.CatchPointMissed), 0.05);
        Assert.Equal(1, Of(twice, MistakeCode.ValueInForceWrong) / Of(once, MistakeCode.ValueInForceWrong), 0.05);
        Assert.True(twice.FirstOrDefault(each => each.Code == MistakeCode.ContainerOverflowed)?.Probability is null or < 0.01);
    }

    // 1.6 kg of container in 16.5 kg of product: 9.8 % more, under the limit for a second test.
    [Fact]
    public void Evaluate_TareOfZeroAgainstTheRecord_IsNotAdopted()
    {
        var weighed = Given.Test(Given.Weighed(18.52, 0, 47), Given.Weighed(18.56, 0, 47)).InForce(16.92 / 47);

        var known = weighed.Knowing(_ => new() { ContainerTare = new Mass(1.6) }).Evaluated();

        Assert.NotEqual(Verdict.Adopt, known.Decision.Verdict);
        Assert.Equal(MistakeCode.TareNotTakenOff, known.LikelyMistakes.Shown[0].Code);
        Assert.InRange(known.LikelyMistakes.AnyProbability, 0.5, 0.999);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.03)]
    [InlineData(0.96)]
    [InlineData(0.92)]
    public void Evaluate_TareOfZeroWithoutTheContainerInTheMass_IsNotSuspected(double ratio)
    {
        var test = Given
            .Test(Given.Weighed(16.92 * ratio, 0, 47), Given.Weighed(16.95 * ratio, 0, 47))
            .InForce(Suspected.InForce)
            .Knowing(_ => new() { ContainerTare = new Mass(1.6) });

        Assert.False(test.Evaluated().LikelyMistakes.LikelierThanChange);
    }

    // A bridge takes more from one catch than from another.
    [Fact]
    public void Shown_ThreeCatchesThatAllShowAThird_AreNotFirstABridgedTank()
    {
        var even = Listed(Suspected.Net(0.333, 0.335, 0.332).Evaluated());
        var uneven = Listed(Suspected.Net(0.25, 0.45, 0.33).Evaluated());

        Assert.NotEqual(MistakeCode.TankBridgedOrEmpty, even[0].Code);
        Assert.NotEqual(MistakeCode.MeterIsolated, even[0].Code);
        Assert.Equal(MistakeCode.TankBridgedOrEmpty, uneven[0].Code);
    }

    private static List<LikelyMistake> Listed(CatchTestResult result) =>
        [.. result.LikelyMistakes.Shown, .. result.LikelyMistakes.AlsoPossible];

    private static double Of(List<LikelyMistake> listed, string code) => listed.Single(each => each.Code == code).Probability;
}
