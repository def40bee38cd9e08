using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using Rule = CalibrationApi.Engine.CatchTests.CatchTestVerdict.Rule;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>The verdict's number of further catches, its headline and its reason; the table itself is in CatchTestDecisionTests.</summary>
public sealed class CatchTestVerdictTests
{
    private static readonly Catch[] Honest = [Given.Net(17.08, 47), Given.Net(16.94, 46.8)];

    public static TheoryData<FindingCode, CatchTestQuestion, Rule, Severity, string> Rules =>
        new()
        {
            {
                CatchTestCodes.LikelyMistake,
                Given.Test(Given.Net(170, 47)).InForce(0.362),
                Rule.LikelyMistake,
                Severity.Stop,
                "The catch shows 10 times what the value in force says: a decimal point in the wrong place explains that. Compare"
            },
            {
                CatchTestCodes.CannotBeToldApart,
                Given.Test(Given.Net(36, 47)).InForce(0.36),
                Rule.MistakeNotToldApart,
                Severity.Stop,
                "a mistake is likelier than a change of the meter"
            },
            { CatchTestCodes.StrayCatch, Given.PureTest(0.36, 0.361, 0.41), Rule.StrayCatch, Severity.Stop, "Do not use this test yet." },
            {
                SharedCodes.CatchesScatterMoreThanExpected,
                Given.PureTest(0.30, 0.42),
                Rule.WildScatter,
                Severity.Stop,
                "Do not use this test yet."
            },
            {
                CatchTestCodes.LoadBeyondCapacity,
                Given.Test(Honest) with
                {
                    Scale = Given.Platform with { Capacity = new Mass(5) },
                },
                Rule.Impossible,
                Severity.Stop,
                "Do not use this test. Catch 1 is a load of"
            },
            {
                CatchTestCodes.ScaleCheckFailed,
                Given.Test(Honest).InForce(0.342) with
                {
                    Scale = Given.Platform with { KnownError = new(0.02, 0.001) { CheckFailed = true } },
                },
                Rule.ScaleFailed,
                Severity.Stop,
                "Catch again on a good scale: this one failed its last check."
            },
            { CatchTestCodes.PrecisionNotReached, Small(1), Rule.PrecisionNotReached, Severity.Warning, "Not sure enough yet" },
            {
                SharedCodes.PrecisionOutOfReach,
                CoarseScale,
                Rule.PrecisionOutOfReach,
                Severity.Warning,
                "Not sure enough, and more catches like these will not help"
            },
            {
                CatchTestCodes.SecondTestNeeded,
                Given.Test(Honest).InForce(0.30),
                Rule.SecondTestNeeded,
                Severity.Warning,
                "One set-up does not show such a change. Set the test up anew: weigh the empty container again"
            },
            {
                CatchTestCodes.ChangeConfirmed,
                Given.Test(Honest).InForce(0.30).After(0.364),
                Rule.ChangeConfirmed,
                Severity.Warning,
                "20.9 % more per revolution than the value in force says, and the earlier test agrees. Adopt 0.363"
            },
            {
                CatchTestCodes.CatchApart,
                Given.PureTest(0.36, 0.3605, 0.3795),
                Rule.CatchApart,
                Severity.Warning,
                "catch 3 stands apart from the others by 5.3 %. Weigh it again, or make one more catch"
            },
            {
                CatchTestCodes.ExclusionDecides,
                Given.Test(Given.Delivering(0.385), Given.Delivering(0.361, excludedBecause: "It looked odd.")).InForce(0.36),
                Rule.ExclusionDecides,
                Severity.Warning,
                "catch 2, which was left out, says otherwise"
            },
            {
                SharedCodes.NoPracticalChange,
                Given.Test(Honest).InForce(0.362),
                Rule.WithinTolerance,
                Severity.Note,
                "The value in force holds"
            },
            { SharedCodes.NoValueInForce, Given.Test(Honest), Rule.NothingInForce, Severity.Note, "Adopt 0.3627 kg/rev." },
            {
                CatchTestCodes.ChangeDetected,
                Given.Test(Honest).InForce(0.342),
                Rule.Changed,
                Severity.Warning,
                "6.0 % more per revolution than the value in force says"
            },
            {
                SharedCodes.WithinToleranceNotShown,
                NotShown,
                Rule.NotShownWithinTolerance,
                Severity.Warning,
                "It is not shown that the value in force is good enough"
            },
        };

    public static TheoryData<Rule, CatchTestQuestion> RuledTests
    {
        get
        {
            var data = new TheoryData<Rule, CatchTestQuestion>();
            foreach (var row in Rules)
                data.Add((Rule)row[2], (CatchTestQuestion)row[1]);
            return data;
        }
    }

    private static CatchTestQuestion CoarseScale =>
        Given.Test(Honest) with
        {
            Scale = Given.Platform with { StatedAccuracy = new Mass(0.6) },
        };

    // A change inside its own interval, but with 2.5 % from day to day nothing is shown.
    private static CatchTestQuestion NotShown =>
        Given.Test(Honest).InForce(0.35) with
        {
            Limits = new CatchTestLimits { DayToDay = 0.019 },
        };

    [Theory]
    [MemberData(nameof(Rules))]
    public void Evaluate_EachRule_HasItsHeadlineAndReason(
        FindingCode code,
        CatchTestQuestion test,
        Rule rule,
        Severity severity,
        string headline
    )
    {
        var result = test.Evaluated();

        Assert.Equal(rule, result.Decision.Rule);
        Assert.Contains(headline, result.Headline.InMetric(), StringComparison.Ordinal);
        var reason = Assert.Single(result.Reasons);
        Assert.Equal(code, reason.Code);
        Assert.Equal(severity, reason.Severity);
    }

    [Theory]
    [MemberData(nameof(RuledTests))]
    public void Evaluate_EachRule_WritesSentencesThatCanBeShownAsTheyAre(Rule rule, CatchTestQuestion test)
    {
        var result = test.Evaluated();

        Assert.Equal(rule, result.Decision.Rule);
        Assert.All(
            [result.Headline, .. result.Reasons.Select(reason => reason.Detail), .. result.Findings.Select(finding => finding.Detail)],
            sentence =>
            {
                foreach (var written in (string[])[sentence.InMetric(), DisplayUnits.UnitedStates.Write(sentence)])
                {
                    Assert.EndsWith(".", written, StringComparison.Ordinal);
                    Assert.True(char.IsUpper(written[0]) || char.IsDigit(written[0]), written);
                    Assert.DoesNotContain("NaN", written, StringComparison.Ordinal);
                    Assert.DoesNotContain("Infinity", written, StringComparison.Ordinal);
                    Assert.DoesNotContain("{", written, StringComparison.Ordinal);
                    Assert.DoesNotContain("CalibrationApi", written, StringComparison.Ordinal);
                }
            }
        );
    }

    [Fact]
    public void Evaluate_ChangeThatRoundsToNothing_IsNotCalledMoreOrLess() =>
        Assert.StartsWith(
            "The value in force holds: the meter delivers as much per revolution as it says,",
            Given.Test(Honest).InForce(0.3627).Evaluated().Headline.InMetric(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(0.3627, "a probability of more than 99 %.")]
    [InlineData(0.3305, "a probability of less than 1 %; the two catches agree.")]
    [InlineData(0.342, "a probability of only 21 %; the two catches agree.")]
    public void Reason_ProbabilityNearOneOrZero_IsNotCalledCertain(double inForce, string end) =>
        Assert.EndsWith(end, Given.Test(Honest).InForce(inForce).Evaluated().Reasons[0].Detail.InMetric(), StringComparison.Ordinal);

    [Fact]
    public void Rules_EveryRowOfTheTable_IsShownAbove() =>
        Assert.Equal(Enum.GetValues<Rule>().Order(), Rules.Select(row => (Rule)row[2]).Order());

    // So many more that the wanted precision is just reached.
    [Theory]
    [InlineData(0.03)]
    [InlineData(0.02)]
    [InlineData(0.012)]
    public void MoreCatches_PrecisionNotReached_AreJustEnough(double wanted)
    {
        var result = (Small(1) with { Limits = new CatchTestLimits { WantedPrecision = wanted } }).Evaluated();

        Assert.Equal(Rule.PrecisionNotReached, result.Decision.Rule);
        var pooled = result.Estimate.Pooled;
        var scatter = new ExpectedScatter(
            pooled.BetweenVariance,
            4,
            1,
            pooled.RelativeVariance - pooled.BetweenVariance,
            result.Estimate.Span
        );
        var total = 1 + result.Decision.MoreCatches!.Value;
        Assert.True(scatter.ProbabilityOf(wanted, total, 0.95) >= 0.8);
        Assert.True(total == 2 || scatter.ProbabilityOf(wanted, total - 1, 0.95) < 0.8);
        NearlyEqual.Assert(scatter.Precision(total, 0.95), result.Decision.ExpectedPrecision!.Value, 1e-9);
    }

    [Fact]
    public void MoreCatches_PrecisionNotReached_IsSaidInWords()
    {
        var result = (Small(1) with { Limits = new CatchTestLimits { WantedPrecision = 0.02 } }).Evaluated();

        Assert.Contains(
            $"Make {Words(result.Decision.MoreCatches!.Value)} more catches.",
            result.Headline.InMetric(),
            StringComparison.Ordinal
        );

        static string Words(int count) =>
            ((string[])["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"])[count];
    }

    [Fact]
    public void MoreCatches_AnyOtherVerdict_IsNotSaid()
    {
        Assert.Null(Given.Test(Honest).InForce(0.362).Evaluated().Decision.MoreCatches);
        Assert.Null(CoarseScale.Evaluated().Decision.MoreCatches);
    }

    [Fact]
    public void Evaluate_ScaleTooCoarse_SaysNotWithThisScale() =>
        Assert.Contains("Not with this scale", CoarseScale.Evaluated().Headline.InMetric(), StringComparison.Ordinal);

    [Fact]
    public void Evaluate_TooFewPointsCaught_SaysToCatchMorePoints()
    {
        var result = (Given.Test(Honest) with { CaughtPoints = new CaughtPoints(1, 24, 0.04) }).Evaluated();

        Assert.Equal(Rule.PrecisionOutOfReach, result.Decision.Rule);
        Assert.Contains("Catch more points of the meter.", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    // Neither the scale nor the points are to blame when the meter itself repeats badly.
    [Fact]
    public void Evaluate_RepeatabilityTooPoorForFiftyCatches_BlamesNeitherScaleNorPoints()
    {
        var result = (
            Given.Test(Honest) with
            {
                Limits = new CatchTestLimits { Repeatability = 0.15, RepeatabilityDegreesOfFreedom = 60 },
            }
        ).Evaluated();

        Assert.Equal(Rule.PrecisionOutOfReach, result.Decision.Rule);
        var said = result.Headline.InMetric() + result.Reasons[0].Detail.InMetric();
        Assert.DoesNotContain("scale", said, StringComparison.Ordinal);
        Assert.DoesNotContain("points", said, StringComparison.Ordinal);
        Assert.Contains("more than 50 catches", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_SmallChangeDetectedButWithinTolerance_SaysSo()
    {
        var result = (
            Given.PureTest([.. Enumerable.Repeat(0.3655, 8)]).InForce(0.36, 0.001) with
            {
                Limits = new CatchTestLimits { DayToDay = 0.001 },
            }
        ).Evaluated();

        Assert.True(result.Change!.IsDetected);
        Assert.Equal(Verdict.Keep, result.Decision.Verdict);
        Assert.Equal(SharedCodes.WithinTolerance, result.Reasons[0].Code);
    }

    [Fact]
    public void Evaluate_MeterDeliversLess_SaysLess() =>
        Assert.Contains("less per revolution", Given.Test(Honest).InForce(0.39).Evaluated().Headline.InMetric(), StringComparison.Ordinal);

    [Fact]
    public void Evaluate_LargeChangeFromAStartValue_NamesTheStartValue() =>
        Assert.Contains(
            "than the start value says",
            Given.Test(Given.Net(17, 47)).StartingFrom(0.30).Evaluated().Headline.InMetric(),
            StringComparison.Ordinal
        );

    private static CatchTestQuestion Small(int catches) => Given.Test([.. Enumerable.Repeat(Given.Net(4, 30), catches)]);
}
