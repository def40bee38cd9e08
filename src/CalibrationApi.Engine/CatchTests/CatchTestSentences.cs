using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The headline and the reasons of a verdict in plain words.</summary>
internal static class CatchTestSentences
{
    private const double RoundsToNothing = 0.0005;

    public static Sentence Headline(CatchTestResult result)
    {
        var estimate = result.Estimate;
        var value = new MassPerRevolution(estimate.Value.Value);
        var precision = new Ratio(estimate.RelativeExpanded);
        var wanted = new Ratio(result.Settings.WantedPrecision);
        switch (result.Decision.Rule)
        {
            case CatchTestVerdict.Rule.LikelyMistake:
                return $"Do not use this test yet. {result.LikelyMistakes.Named!.Detail} {result.LikelyMistakes.Named.Code.Remedy}";
            case CatchTestVerdict.Rule.Impossible:
                return $"Do not use this test. {result.Impossible[0].Detail}";
            case CatchTestVerdict.Rule.ScaleFailed:
                return $"Catch again on a good scale: this one failed its last check. The catches come to {value}, but nobody knows whether its error stayed the same.";
            case CatchTestVerdict.Rule.MistakeNotToldApart:
                return $"Do not use this test yet: a mistake is likelier than a change of the meter. {FirstCheck(result)} Then make one more catch.";
            case CatchTestVerdict.Rule.StrayCatch:
                return $"Do not use this test yet. Catch {result.Agreement.FarthestCatch + 1} stands apart from the others by {new Ratio(Math.Abs(result.Agreement.FarthestDeviation)):F1}: find out why, then test again.";
            case CatchTestVerdict.Rule.WildScatter:
                return $"Do not use this test yet. The catches differ far more than catches of one meter do: find out why, then test again.";
            case CatchTestVerdict.Rule.PrecisionNotReached:
                return $"Not sure enough yet: {value} within {precision:F1}, wanted within {wanted:0.##}. {More(result.Decision.MoreCatches!.Value)}";
            case CatchTestVerdict.Rule.PrecisionOutOfReach:
                return $"Not sure enough, and more catches like these will not help: {value} within {precision:F1}, wanted within {wanted:0.##}. {OutOfReachRemedy(result)}";
            case CatchTestVerdict.Rule.SecondTestNeeded:
                return SecondTestSentences.Needed(result);
            case CatchTestVerdict.Rule.ChangeConfirmed:
                return SecondTestSentences.Confirmed(result, Adopt(result));
            case CatchTestVerdict.Rule.CatchApart:
                return $"Not sure enough yet: {Apart(result)}. Weigh it again, or make one more catch, before you type anything in.";
            case CatchTestVerdict.Rule.ExclusionDecides:
                return $"Not sure enough yet: catch {result.Excluded.Contradicting[0] + 1}, which was left out, says otherwise than what counts. Make one more catch before you type anything in.";
            case CatchTestVerdict.Rule.WithinTolerance when result.Agreement.HasCatchApart(result.Settings.Tolerance):
                return $"The value in force seems to hold: the meter delivers {AsMuchOrNot(result.Change!)}, inside the tolerance of {new Ratio(result.Settings.Tolerance):0.##}. But {Apart(result)}: weigh it again, or make one more catch. Until then the number stays. {Keep(result)}";
            case CatchTestVerdict.Rule.WithinTolerance:
                return $"The value in force holds: the meter delivers {AsMuchOrNot(result.Change!)}, inside the tolerance of {new Ratio(result.Settings.Tolerance):0.##}. {Keep(result)}";
            case CatchTestVerdict.Rule.NothingInForce:
                return $"The meter delivers {value}, known within {precision:F1}. {Adopt(result)}";
            case CatchTestVerdict.Rule.Changed:
                return $"The meter delivers {MoreOrLess(result.Change!)} than the value in force says. {Adopt(result)}";
            default:
                return $"It is not shown that the value in force is good enough: the meter delivers {AsMuchOrNot(result.Change!)}. {Adopt(result)}";
        }
    }

    public static Finding Reason(CatchTestResult result)
    {
        var settings = result.Settings;
        var tolerance = new Ratio(settings.Tolerance);
        switch (result.Decision.Rule)
        {
            case CatchTestVerdict.Rule.LikelyMistake:
                var named = result.LikelyMistakes.Named!;
                return Finding.Stop(
                    CatchTestCodes.LikelyMistake,
                    named.Probability >= ProbabilityWords.AlmostCertain
                        ? (Sentence)$"{named.Detail} It is almost certain."
                        : $"{named.Detail} Its probability is {new Ratio(named.Probability):F0}."
                );
            case CatchTestVerdict.Rule.Impossible:
                return result.Impossible[0];
            case CatchTestVerdict.Rule.ScaleFailed:
                return CatchTestFindings.ScaleFailed;
            case CatchTestVerdict.Rule.MistakeNotToldApart:
                return Finding.Stop(
                    CatchTestCodes.CannotBeToldApart,
                    $"The probability of some mistake is {new Ratio(result.LikelyMistakes.AnyProbability):F0}, but the masses alone do not say which."
                );
            case CatchTestVerdict.Rule.StrayCatch:
                return Finding.Stop(
                    CatchTestCodes.StrayCatch,
                    $"Among honest catches one that stands apart by {new Ratio(Math.Abs(result.Agreement.FarthestDeviation)):F1} comes up in fewer than 1 test of 100."
                );
            case CatchTestVerdict.Rule.WildScatter:
                return Finding.Stop(
                    SharedCodes.CatchesScatterMoreThanExpected,
                    $"The catches spread by {new Ratio(result.Agreement.Spread):F1}; with a repeatability of {new Ratio(settings.Repeatability.Relative):0.##} that comes up in fewer than 1 test of 100."
                );
            case CatchTestVerdict.Rule.PrecisionNotReached:
                return Finding.Warning(
                    CatchTestCodes.PrecisionNotReached,
                    $"The value is known within {new Ratio(result.Estimate.RelativeExpanded):F1}; within {new Ratio(settings.WantedPrecision):0.##} is wanted. {More(result.Decision.MoreCatches!.Value)} With a probability of {new Ratio(settings.PrecisionProbability):0.##} that is enough; {new Ratio(result.Decision.ExpectedPrecision!.Value):F1} is to be expected then."
                );
            case CatchTestVerdict.Rule.PrecisionOutOfReach:
                if (!CommonIsTooWide(result))
                    return Finding.Warning(
                        SharedCodes.PrecisionOutOfReach,
                        $"One catch like these has a standard uncertainty of {new Ratio(OfOneCatch(result)):F1}: it takes more than {CatchCount.Most} catches to know the value within {new Ratio(settings.WantedPrecision):0.##}."
                    );
                return Finding.Warning(
                    SharedCodes.PrecisionOutOfReach,
                    $"What all catches have in common alone leaves {new Ratio(Common(result)):F1} of doubt; within {new Ratio(settings.WantedPrecision):0.##} is wanted. {OutOfReachRemedy(result)}"
                );
            case CatchTestVerdict.Rule.SecondTestNeeded:
                return SecondTestSentences.WhyNeeded(result);
            case CatchTestVerdict.Rule.ChangeConfirmed:
                return SecondTestSentences.WhyConfirmed(result);
            case CatchTestVerdict.Rule.CatchApart:
                return Finding.Warning(
                    CatchTestCodes.CatchApart,
                    result.Agreement.FarthestCatch is { } catchApart
                        ? (Sentence)
                            $"Catch {catchApart + 1} stands {new Ratio(Math.Abs(result.Agreement.FarthestDeviation)):F1} apart from the others; among honest catches that comes up in fewer than 5 tests of 100."
                        : $"The two catches differ by {new Ratio(result.Agreement.Spread * Math.Sqrt(2)):F1}; two honest ones do so in fewer than 5 tests of 100."
                );
            case CatchTestVerdict.Rule.ExclusionDecides:
                return Finding.Warning(
                    CatchTestCodes.ExclusionDecides,
                    $"Catch {result.Excluded.Contradicting[0] + 1} was left out, and {(result.Change is null ? "stands apart from what counts" : "fits what was expected")}. One of the two is wrong, and leaving out alone decides which."
                );
            case CatchTestVerdict.Rule.WithinTolerance:
                return ChangeReasons.WithinTolerance(
                    "meter",
                    result.Change!.IsDetected,
                    tolerance,
                    result.Change.ProbabilityWithinTolerance
                );
            case CatchTestVerdict.Rule.NothingInForce:
                return ChangeReasons.NothingInForce;
            case CatchTestVerdict.Rule.Changed:
                return Finding.Warning(
                    CatchTestCodes.ChangeDetected,
                    $"The value in force is within {tolerance:0.##} of the truth with a probability of {ProbabilityWords.OnlyLikely(result.Change!.ProbabilityWithinTolerance)}; {Agreement(result)}."
                );
            default:
                return ChangeReasons.NotShown(tolerance, result.Change!.ProbabilityWithinTolerance);
        }
    }

    private static Sentence FirstCheck(CatchTestResult result) =>
        result.LikelyMistakes.Shown is [var first, ..]
            ? (Sentence)$"{first.Detail} {first.Code.Remedy}"
            : $"Go through the test step by step as it was done.";

    private static Sentence Adopt(CatchTestResult result) =>
        result.Enter is { } number ? (Sentence)$"Adopt {number.InWords}." : $"Adopt {result.ToUse!.Value}.";

    private static Sentence Keep(CatchTestResult result) =>
        result.InForce is { } number ? (Sentence)$"Keep {number.InWords}." : $"Keep {result.Change!.Reference.Value}.";

    private static Sentence Apart(CatchTestResult result) =>
        result.Agreement.FarthestCatch is { } one
            ? (Sentence)$"catch {one + 1} stands apart from the others by {new Ratio(Math.Abs(result.Agreement.FarthestDeviation)):F1}"
            : $"the two catches differ by {new Ratio(result.Agreement.Spread * Math.Sqrt(2)):F1}";

    private static Sentence Agreement(CatchTestResult result)
    {
        var counted = result.Catches.Count(one => one.ExcludedBecause is null);
        return counted == 1 ? (Sentence)$"it rests on one catch"
            : result.Agreement.Agree ? (Sentence)$"the {new CountInWords(counted)} catches agree"
            : $"the {new CountInWords(counted)} catches do not agree well";
    }

    private static Sentence AsMuchOrNot(ChangeAgainstReference change) =>
        Math.Abs(change.Delta.Value) < RoundsToNothing ? (Sentence)$"as much per revolution as it says" : MoreOrLess(change);

    private static Sentence MoreOrLess(ChangeAgainstReference change) =>
        change.Delta.Value >= 0
            ? (Sentence)$"{new Ratio(change.Delta.Value):F1} more per revolution"
            : $"{new Ratio(-change.Delta.Value):F1} less per revolution";

    private static Sentence More(int catches) =>
        catches == 1 ? (Sentence)$"Make one more catch." : $"Make {new CountInWords(catches)} more catches.";

    private static Sentence OutOfReachRemedy(CatchTestResult result) =>
        !CommonIsTooWide(result) ? (Sentence)$"Make each catch longer, count more finely, or find out what makes them differ."
        : result.Estimate.Points > result.Estimate.Span ? (Sentence)$"Catch more points of the meter."
        : $"Not with this scale: make larger catches, use a finer scale, or check this one against known masses.";

    private static double OfOneCatch(CatchTestResult result) =>
        Math.Sqrt(result.Estimate.Pooled.RelativeVariance * result.Catches.Count(one => one.ExcludedBecause is null));

    private static bool CommonIsTooWide(CatchTestResult result) =>
        CatchCount.OutOfReach(
            result.Settings.WantedPrecision,
            Math.Sqrt(result.Estimate.RelativeVariance - result.Estimate.Pooled.RelativeVariance),
            result.Settings.CoverageProbability
        );

    private static double Common(CatchTestResult result) =>
        Statistics.StudentT.CoverageFactor(result.Settings.CoverageProbability, double.PositiveInfinity)
        * Math.Sqrt(result.Estimate.RelativeVariance - result.Estimate.Pooled.RelativeVariance);
}
