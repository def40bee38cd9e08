using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.LikelyMistakes;

/// <summary>What is shown, what is grouped, and what follows for the verdict.</summary>
public sealed class LikelyMistakesTests
{
    [Theory]
    [InlineData(1.0)]
    [InlineData(0.97)]
    [InlineData(1.06)]
    [InlineData(1.10)]
    [InlineData(0.90)]
    public void Shown_OrdinaryChange_IsEmpty(double ratio)
    {
        Assert.Empty(Suspected.Net(ratio, 1.003 * ratio).Evaluated().LikelyMistakes.Shown);
        Assert.Empty(Suspected.Weighed(ratio, 1.003 * ratio, 0.998 * ratio).Evaluated().LikelyMistakes.Shown);
    }

    [Fact]
    public void Named_OneMistakeStandsAlone_StopsTheTest()
    {
        var result = Suspected.Net(10, 10.1).Evaluated();

        Assert.Equal((Verdict.Investigate, Rule.LikelyMistake), (result.Decision.Verdict, result.Decision.Rule));
        Assert.Equal(
            "Do not use this test yet. The whole test shows 10 times what the value in force says: a decimal point in the wrong place explains that. "
                + "Compare the masses and the count that were entered with what was written down at the machine.",
            result.Headline.InMetric()
        );
        Assert.DoesNotContain(result.Findings, finding => finding.Code == CatchTestCodes.LikelyMistake);
        Assert.Contains(result.Assumptions, assumption => assumption.Origin == MistakeJudgement.Origin);
    }

    // The container that the other catches were weighed in explains the one wrong tare, but it is no mistake in all of them.
    [Fact]
    public void Named_TareOfAnotherContainerInOneCatch_IsNotTakenForOneInTheWholeTest()
    {
        var test = Given
            .Test(Given.Weighed(29.9, 13.02, 47), Given.Weighed(30, 1.2, 47), Given.Weighed(29.95, 12.98, 47))
            .InForce(Suspected.InForce)
            .Knowing(_ => new() { OtherContainers = [new("bucket", new Mass(1.2)), new("drum", new Mass(13))] });

        var named = test.Evaluated().LikelyMistakes.Named;

        Assert.Equal((MistakeCodes.TareOfAnotherContainer, 1), (named?.Code, named?.Catch));
    }

    [Fact]
    public void Group_TwoMistakesFitAlmostAsWell_NeverInvestigatesButAdoptsNothing()
    {
        var result = Suspected.Net(2.1, 2.11).Evaluated();

        Assert.Equal((Verdict.Repeat, Rule.MistakeNotToldApart), (result.Decision.Verdict, result.Decision.Rule));
        Assert.Null(result.LikelyMistakes.Named);
        Assert.Equal(
            [MistakeCodes.CountHalved, MistakeCodes.PoundsAsKilograms],
            result.LikelyMistakes.Group.Select(each => each.Code).OrderBy(code => code.Word)
        );
        Assert.Distinct(result.LikelyMistakes.Group.Select(each => each.Code.Remedy));
        Assert.Contains(result.Findings, finding => finding.Code == CatchTestCodes.CannotBeToldApart);
    }

    [Fact]
    public void Group_AllButOneRuledOut_NamesTheRest()
    {
        var result = Suspected.Net(2.1, 2.11).Knowing(known => known with { RuledOut = [MistakeCodes.CountHalved] }).Evaluated();

        Assert.Equal(MistakeCodes.PoundsAsKilograms, result.LikelyMistakes.Named?.Code);
    }

    [Fact]
    public void RuledOut_EveryMistake_LeavesTheOrdinaryChange()
    {
        var result = Suspected.Net(2.1, 2.11).Knowing(known => known with { RuledOut = MistakeCodes.All }).Evaluated();

        Assert.Empty(result.LikelyMistakes.Shown);
        Assert.Equal(CatchTestVerdict.Rule.SecondTestNeeded, result.Decision.Rule);
    }

    [Fact]
    public void NewLot_SameChange_IsLessSuspicious()
    {
        var same = Suspected.Net(1.5).Posteriors()[0].Probability;
        var shown = Suspected.Net(1.9).Evaluated().LikelyMistakes.AnyProbability;

        Assert.InRange(same, 0, 1);
        Assert.True(Suspected.Net(1.9).Knowing(known => known with { NewLot = true }).Evaluated().LikelyMistakes.AnyProbability < shown);
    }

    [Fact]
    public void StartValue_SameDifference_IsLessSuspiciousThanFromAValueInForce() =>
        Assert.True(
            Suspected.Net(1.9).StartingFrom(Suspected.InForce).Evaluated().LikelyMistakes.AnyProbability
                < Suspected.Net(1.9).Evaluated().LikelyMistakes.AnyProbability
        );

    [Fact]
    public void WithoutReference_FewerThanThreeCatches_IsNotJudged()
    {
        Assert.Empty(Suspected.Net(1, 10).WithoutReference().Evaluated().LikelyMistakes.Shown);
        Assert.NotEmpty(Suspected.Net(1, 10, 1).WithoutReference().Evaluated().LikelyMistakes.Shown);
    }

    [Fact]
    public void Catch_BesideExcludedOnes_IsCountedAmongAll()
    {
        var test = Suspected.Net(1, 10, 1.01);
        var first = (test with { Catches = [Given.Net(5, 47, excludedBecause: "spilled"), .. test.Catches] })
            .Evaluated()
            .LikelyMistakes.Shown[0];

        Assert.Equal(2, first.Catch);
        Assert.StartsWith("Catch 3 shows", first.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e-5, "less than a thousandth of what")]
    [InlineData(1e9, "1000000000 times what")]
    public void Extremes_OfOneRatio_StayFinite(double ratio, string amount)
    {
        var test = Given.PureTest(ratio * Suspected.InForce, ratio * Suspected.InForce).InForce(Suspected.InForce) with
        {
            Context = Suspected.Metric,
        };

        var result = test.Evaluated();

        Assert.Contains(amount, result.LikelyMistakes.Shown[0].Detail.InMetric(), StringComparison.Ordinal);
        Assert.All(test.Posteriors(), each => Assert.InRange(each.Probability, 0, 1));
    }

    // A tare heavier than the catch, capacities and others of absurd size: predictions that cannot be are left out.
    [Fact]
    public void Predictions_BelowZeroOrAbsurd_AreImpossibleAndNotAnError()
    {
        var absurd = new MistakeContext
        {
            ContainerTare = new Mass(1e6),
            ContainerCapacity = new Mass(1e-9),
            CatchPoints = 2,
            OtherContainers = [new("light", new Mass(0)), new("heavy", new Mass(1e6))],
            OtherElements = [Suspected.Other("tiny", 1e-12), Suspected.Other("huge", 1e12)],
            OtherProducts = [Suspected.Other("same", 1)],
        };
        foreach (
            var test in (CatchTestQuestion[])
                [Suspected.Net(1, 3), Suspected.Weighed(1, 3), Suspected.Weighed(0.01), Suspected.Weighed(1, 3, 1).WithoutReference()]
        )
        {
            var posteriors = (test with { Context = absurd }).Posteriors();

            Assert.Equal(1, posteriors.Sum(each => each.Probability), 1e-12);
            Assert.All(posteriors, each => Assert.InRange(each.Probability, 0, 1));
            Assert.NotNull((test with { Context = absurd }).Evaluated());
        }
    }
}
