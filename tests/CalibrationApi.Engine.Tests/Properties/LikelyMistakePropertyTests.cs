using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Tests.LikelyMistakes;
using FsCheck.Xunit;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>What must hold for the search for mistakes, whatever the test.</summary>
[Properties(Arbitrary = [typeof(RandomCatchTests)], MaxTest = 150, Replay = "20260118,1")]
public sealed class LikelyMistakePropertyTests
{
    private const double Accuracy = 1e-9;

    // One reading is spoilt, so that there is something to find.
    [Property]
    public void Posteriors_OfAnyTest_SumToOne(RandomTest random, byte spoilt)
    {
        foreach (var test in (CatchTestQuestion[])[random.InKilograms, Spoilt(random, spoilt)])
        {
            var posteriors = test.Posteriors();
            Assert.Equal(1, posteriors.Sum(each => each.Probability), Accuracy);
            Assert.All(posteriors, each => Assert.InRange(each.Probability, 0, 1));
        }
    }

    [Property]
    public void Shown_OfAnyTest_ReachTheLimitAndFall(RandomTest random, byte spoilt)
    {
        var result = Spoilt(random, spoilt).Evaluated().LikelyMistakes;

        Assert.All(result.Shown, each => Assert.InRange(each.Probability, MistakeJudgement.ShownFrom, 1));
        Assert.Equal(result.Shown.OrderByDescending(each => each.Probability), result.Shown);
        Assert.True(result.Shown.Sum(each => each.Probability) <= result.AnyProbability + Accuracy);
        Assert.NotEqual(1, result.Group.Count());
    }

    // The first look spares the work where nothing can be shown; it must never hide anything.
    [Property]
    public void Shown_WhereTheFirstLookFoundNothing_IsReallyNothing(RandomTest random, byte spoilt)
    {
        foreach (var test in (CatchTestQuestion[])[random.InKilograms, Spoilt(random, (byte)(100 + spoilt % 30))])
        {
            if (test.Evaluated().LikelyMistakes.AnyProbability == 0)
                Assert.All(test.Posteriors().Skip(1), each => Assert.True(each.Probability < MistakeJudgement.ShownFrom, each.ToString()));
        }
    }

    // The first catch keeps its place: it alone can have been made by a meter that was not primed.
    [Property]
    public void Shown_LaterCatchesInAnotherOrder_AreTheSame(RandomTest random, byte spoilt)
    {
        // What piles up from catch to catch depends on their order by its nature.
        var test = Spoilt(random, spoilt) with
        {
            Context = new MistakeContext { RuledOut = [MistakeCodes.ContainerNotEmptied, MistakeCodes.CounterNotReset] },
        };
        var other = test with { Catches = [test.Catches[0], .. test.Catches.Skip(1).Reverse()] };
        int? Moved(int? at) => at is null or 0 ? at : test.Catches.Count - at;

        AssertSame(
            [.. test.Evaluated().LikelyMistakes.Shown.Select(each => each with { Catch = Moved(each.Catch) })],
            other.Evaluated().LikelyMistakes.Shown
        );
    }

    [Property]
    public void Shown_SameTestInPounds_IsTheSame(RandomTest random)
    {
        var pounds = random.In(UnitTable.Get("lb"), UnitTable.Get("lb/rev"));

        AssertSame(random.InKilograms.Evaluated().LikelyMistakes.Shown, pounds.Evaluated().LikelyMistakes.Shown);
    }

    private static CatchTestQuestion Spoilt(RandomTest random, byte by)
    {
        var test = random.InKilograms;
        var factor = Math.Exp((by - 128) / 40.0);
        var which = by % test.Catches.Count;
        return test with
        {
            Catches =
            [
                .. test.Catches.Select(
                    (one, i) =>
                        i == which
                            ? Catch.Weighed(
                                new Mass(factor * one.IndicatedNet.Kilograms + one.Tare!.Value.Kilograms),
                                one.Tare.Value,
                                one.Revolutions
                            )
                            : one
                ),
            ],
        };
    }

    // Mistakes of equal probability may change places.
    private static void AssertSame(IReadOnlyList<LikelyMistake> expected, IReadOnlyList<LikelyMistake> actual)
    {
        Assert.Equal(expected.Count, actual.Count);
        foreach (var one in expected)
        {
            var same = Assert.Single(actual, each => each.Code == one.Code && each.Catch == one.Catch);
            Assert.Equal(one.Probability, same.Probability, 1e-7);
        }
    }
}
