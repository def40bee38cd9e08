using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
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
        Assert.Equal(MistakeCodes.CatchPointMissed, all[0].Code);
        Assert.InRange(all[0].Probability, 0.001, 0.5);
        Assert.Distinct(all.Select(each => each.Code));
        Assert.Equal(all.OrderByDescending(each => each.Probability), all);
        Assert.All(all, each => Assert.NotEmpty(each.Code.Remedy));
        Assert.Contains(result.Findings, each =>
            each.Code == (result.LikelyMistakes.Shown.Count == 0 ? CatchTestCodes.PossibleMistakes : CatchTestCodes.LikelyMistake)
        );
    }

    [Theory]
    [InlineData(1.2, "another-product")]
    [InlineData(0.75, "another-element")]
    [InlineData(1.12, "tare-not-taken-off")]
    [InlineData(1.3, "value-in-force-wrong")]
    [InlineData(0.8, "pulses-per-revolution-wrong")]
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

        Assert.Contains(Listed(result), each => each.Code.Word == code);
        Assert.NotEqual(Verdict.Adopt, result.Decision.Verdict);
    }

    // Masses that grow by one catch each time leave no doubt; a list of nine more with nothing behind them would only hide it.
    [Fact]
    public void AlsoPossible_OneMistakeNearlyCertain_HoldsNothingAThousandTimesLessLikely()
    {
        var result = Suspected.Net(1, 2, 3).Evaluated();

        Assert.Equal(MistakeCodes.ContainerNotEmptied, Assert.Single(Listed(result)).Code);
    }

    [Fact]
    public void AlsoPossible_ChangeUnderTheLimit_IsEmpty() =>
        Assert.Empty(Suspected.Net(1.06, 1.065).Evaluated().LikelyMistakes.AlsoPossible);

    // Nine tenths, under the limit of 10 %: said without alarm, and the verdict is that of the same numbers without it.
    [Theory]
    [InlineData(9.02, 10)]
    [InlineData(11, 12)]
    public void AlsoPossible_ChangeUnderTheLimitThatAMistakeFitsExactly_IsListedAndDecidesNothing(double caught, int points)
    {
        var ratio = caught / points;
        var test = Suspected.Net(ratio, 1.001 * ratio, ratio).Knowing(known => known with { CatchPoints = points });
        var fitting = test.Evaluated();
        var without = test.RulingOut([.. Listed(fitting).Select(each => each.Code)]).Evaluated();

        Assert.False(fitting.FromExpected!.IsLarge);
        Assert.Empty(fitting.LikelyMistakes.Shown);
        Assert.Equal(MistakeCodes.CatchPointMissed, Listed(fitting)[0].Code);
        Assert.All(Listed(fitting), each => Assert.InRange(each.Probability, MistakeJudgement.ListedFrom, MistakeJudgement.ShownFrom));
        Assert.Equal(Severity.Note, Assert.Single(fitting.Findings, each => each.Code == CatchTestCodes.PossibleMistakes).Severity);
        Assert.Contains(fitting.Assumptions, each => each.Name == "likelyMistakes/prior");
        Assert.Equal((without.Decision, 0), (fitting.Decision, fitting.LikelyMistakes.AnyProbability));
        Assert.DoesNotContain(without.Findings, each => each.Code == CatchTestCodes.PossibleMistakes);
    }

    // A small container in the mass, or taken off it twice, beside catches of some 17 kg.
    [Theory]
    [InlineData(1, 1.4, "tare-not-taken-off")]
    [InlineData(-1, 1.6, "tare-taken-off-twice")]
    public void AlsoPossible_SmallTareThatFitsTheChange_IsListed(int times, double tare, string code)
    {
        double Off(double mass) => (mass + times * tare) / mass;
        var mass = Suspected.InForce * 47;

        var result = Suspected
            .Net(Off(mass), Off(mass), Off(1.002 * mass))
            .Knowing(known => known with { ContainerTare = new Mass(tare) })
            .Evaluated();

        Assert.False(result.FromExpected!.IsLarge);
        Assert.Contains(result.LikelyMistakes.AlsoPossible, each => each.Code.Word == code);
        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
    }

    // Two thirds of the limit, with a point missed that would take off 1 in 12: half of what was seen is left over.
    [Fact]
    public void AlsoPossible_ChangeUnderTheLimitThatNothingFits_IsEmpty() =>
        Assert.Empty(
            Suspected.Net(1.085, 1.087, 1.085).Knowing(known => known with { CatchPoints = 12 }).Evaluated().LikelyMistakes.AlsoPossible
        );

    // Half as much again as the value in force, as the density of the new lot lets expect, is not odd; what is in force would be.
    [Fact]
    public void Shown_ValuePredictedForTheLot_IsWhatMistakesAreJudgedAgainst()
    {
        var predicted = new PredictedValue(new(1.5 * Suspected.InForce), 0.01);
        var asPredicted = (Suspected.Net(1.5, 1.502) with { Predicted = predicted }).Evaluated();
        var asBefore = (Suspected.Net(1, 1.002) with { Predicted = predicted }).Evaluated();

        Assert.Empty(Listed(asPredicted));
        Assert.NotEmpty(Listed(asBefore));
        Assert.All(Listed(asBefore), each =>
            Assert.Contains("than is expected of this lot", each.Detail.InMetric(), StringComparison.Ordinal)
        );
    }

    // The prediction was made from the value in force, so that its unit is in both; or it stands on its own, and the value in force fits.
    [Theory]
    [InlineData(1.1)]
    [InlineData(1 / 0.45359237)]
    public void Listed_ValueInForceInPoundsBehindThePrediction_IsTheOtherUnit(double predicted)
    {
        var delivered = predicted > 2 ? 0.45359237 : 1.1 * 0.45359237;
        var test = Suspected.Net(delivered, 1.001 * delivered).Knowing(known => known with { ReferenceInPounds = false }) with
        {
            Predicted = new PredictedValue(new(predicted * Suspected.InForce), 0.02),
        };

        Assert.Contains(Listed(test.Evaluated()), each => each.Code == MistakeCodes.ValueInAnotherUnit);
    }

    // Whoever overlooks a point once overlooks it again; a slip of the moment seldom comes twice.
    [Fact]
    public void AlsoPossible_SecondTestAgrees_KeepsWhatIsDoneTheSameWayTwice()
    {
        var test = Suspected.Net(5 / 6.0, 5.01 / 6).Knowing(known => known with { CatchPoints = 6 });
        var once = Listed(test.Evaluated());

        var confirmed = (test with { Earlier = test.Evaluated().AsEarlierTest() }).Evaluated();

        Assert.Equal(Rule.ChangeConfirmed, confirmed.Decision.Rule);
        var twice = Listed(confirmed);
        Assert.Equal(0.5, Of(twice, MistakeCodes.CatchPointMissed) / Of(once, MistakeCodes.CatchPointMissed), 0.05);
        Assert.Equal(1, Of(twice, MistakeCodes.ValueInForceWrong) / Of(once, MistakeCodes.ValueInForceWrong), 0.05);
        Assert.True(twice.FirstOrDefault(each => each.Code == MistakeCodes.ContainerOverflowed)?.Probability is null or < 0.01);
    }

    // 1.6 kg of container in 16.5 kg of product: 9.8 % more, under the limit for a second test.
    [Fact]
    public void Evaluate_TareOfZeroAgainstTheRecord_IsNotAdopted()
    {
        var weighed = Given.Test(Given.Weighed(18.52, 0, 47), Given.Weighed(18.56, 0, 47)).InForce(16.92 / 47);

        var known = weighed.Knowing(_ => new() { ContainerTare = new Mass(1.6) }).Evaluated();

        Assert.NotEqual(Verdict.Adopt, known.Decision.Verdict);
        Assert.Equal(MistakeCodes.TareNotTakenOff, known.LikelyMistakes.Shown[0].Code);
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

        Assert.NotEqual(MistakeCodes.TankBridgedOrEmpty, even[0].Code);
        Assert.NotEqual(MistakeCodes.MeterIsolated, even[0].Code);
        Assert.Equal(MistakeCodes.TankBridgedOrEmpty, uneven[0].Code);
    }

    private static List<LikelyMistake> Listed(CatchTestResult result) =>
        [.. result.LikelyMistakes.Shown, .. result.LikelyMistakes.AlsoPossible];

    private static double Of(List<LikelyMistake> listed, MistakeCode code) => listed.Single(each => each.Code == code).Probability;
}
