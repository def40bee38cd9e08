using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What is worth saying about a catch test beyond its verdict.</summary>
internal static class CatchTestFindings
{
    /// <summary>Share of the tolerance that a rounding at the controller may cost before it is worth a word; judgement.</summary>
    private const double NoticeableShareOfTolerance = 0.2;

    public static Finding ScaleFailed { get; } =
        Finding.Stop(
            CatchTestCodes.ScaleCheckFailed,
            $"This scale failed its last check before the test. Its error was corrected, but repair or replace the scale before relying on it."
        );

    public static List<Finding> Of(CatchTestQuestion test, CatchReadings readings, CatchTestResult result)
    {
        var findings = new List<Finding>();
        if (test.Scale.KnownError is { CheckFailed: true } failed)
            findings.Add(
                ScaleFailed with
                {
                    Detail =
                        $"This scale failed its last check before the test: it was {new Ratio(failed.Relative):F2} off. Its error was corrected, but repair or replace the scale before relying on it.",
                }
            );
        if (test.Conditions is { } conditions)
            findings.AddRange(conditions.DifferingFrom(test.SowingConditions));
        Mistakes(result, findings);
        Pattern(result, findings);
        Size(test, readings, findings);
        Precision(test, readings, result, findings);
        if (result.ToUse is { Drawn: not 0 } used && Math.Abs(used.Drawn) > NoticeableShareOfTolerance / 4 * result.Settings.Tolerance)
            findings.Add(
                Finding.Note(
                    CatchTestCodes.DrawnTowardsOldNumber,
                    $"This test alone found {new MassPerRevolution(result.Estimate.Value.Value)}. {(result.Change!.Reference.Kind == ReferenceKind.ValueInForce ? "The number in force has tests behind it as well" : "The last test counts as well")}; {used.Value} is what serves best after both."
                )
            );
        // Under the limit of a second test nothing else says that the number to type in is that of both.
        if (result is { SecondTest.Confirms: true, Decision: { Verdict: Verdict.Adopt, Rule: not CatchTestVerdict.Rule.ChangeConfirmed } })
            findings.Add(SecondTestSentences.WhyConfirmed(result));
        if (result.Enter is { } enter)
            Entry(enter, result, findings);
        else if (result.Decision.Verdict == Verdict.Adopt && test.ControllerEntry is { } entry)
            findings.Add(
                Finding.Stop(
                    SharedCodes.EntryResolutionMatters,
                    $"With {entry.Decimals} decimals in {entry.Unit.Symbol} the controller could only take 0. Choose a form or a unit with more digits."
                )
            );
        if (test.MixesMassUnits)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.MixedMassUnits,
                    $"Masses of this test were given both in metric and in pound units although one scale shows one unit. Each was taken with its own unit; check that none was mislabelled."
                )
            );
        if (RepeatedRows.Of(test, readings) is { } rows)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.CatchTypedTwice,
                    $"Catches {rows.First + 1} and {rows.Second + 1} have the same readings to the last digit. If one row was typed twice, take it out: it counts as a catch that was never made."
                )
            );
        foreach (var position in result.Excluded.Agreeing)
            findings.Add(
                Finding.Note(
                    CatchTestCodes.ExcludedCatchAgrees,
                    $"Catch {position + 1} was left out, but agrees with what counts. If nothing was wrong with it, let it count."
                )
            );
        for (var i = 0; i < test.Catches.Count; i++)
        {
            if (test.Catches[i].ExcludedBecause is { } reason)
                findings.Add(Finding.Note(CatchTestCodes.CatchExcluded, $"Catch {i + 1} was left out by the sender: {reason}"));
        }

        return findings;
    }

    private static void Mistakes(CatchTestResult result, List<Finding> findings)
    {
        var mistakes = result.LikelyMistakes;
        if (mistakes.AlsoPossible.Count > 0 && mistakes.Shown.Count == 0)
            findings.Add(Finding.Note(CatchTestCodes.PossibleMistakes, Possible(result)));
        if (mistakes.Group.Any())
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.CannotBeToldApart,
                    $"These cannot be told apart by mass alone: {string.Join(", ", mistakes.Group.Select(mistake => mistake.InWords))}. Do the check of each that can have happened."
                )
            );
        else if (mistakes.Shown is [var first, ..] && result.Decision.Rule != CatchTestVerdict.Rule.LikelyMistake)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.LikelyMistake,
                    $"{first.Detail} Its probability is {new Ratio(first.Probability):F0}. {first.Code.Remedy}"
                )
            );
    }

    private static Sentence Possible(CatchTestResult result)
    {
        const int InOneSentence = 3;
        var first = result
            .LikelyMistakes.AlsoPossible.Take(InOneSentence)
            .Select(mistake => $"{mistake.InWords} ({AboutPercent(mistake.Probability)})");
        var could = result.SecondTest is { Confirms: true }
            ? "Two tests agree, but what was done the same way in both could still explain the change"
            : "Besides a change of the meter, a mistake could explain this";
        return $"{could}: {string.Join(", ", first)}. None is likely; each is looked at quickly.";
    }

    private static string AboutPercent(double probability) =>
        probability < 0.005 ? "under 1 %" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{100 * probability:0} %");

    private static void Pattern(CatchTestResult result, List<Finding> findings)
    {
        var agreement = result.Agreement;
        if (agreement.FirstIsLow)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.FirstCatchLow,
                    $"The first catch is {new Ratio(-agreement.FirstDeviation):F1} below the others, as it is when the meter was not turned until the flow was steady. If so, exclude it with that reason and catch once more."
                )
            );
        if (agreement.HasStray && result.Decision.Rule != CatchTestVerdict.Rule.StrayCatch)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.StrayCatch,
                    $"Catch {agreement.FarthestCatch + 1} stands apart from the others by {new Ratio(Math.Abs(agreement.FarthestDeviation)):F1}. It still counts; exclude it only if you know the reason."
                )
            );
        if (agreement.ScatterTooMuch && result.Decision.Rule != CatchTestVerdict.Rule.WildScatter)
            findings.Add(
                Finding.Warning(
                    SharedCodes.CatchesScatterMoreThanExpected,
                    $"The catches spread by {new Ratio(agreement.Spread):F1}, more than a repeatability of {new Ratio(result.Settings.Repeatability.Relative):0.##} explains. The interval has been widened for it."
                )
            );
        if (agreement.HasTrend)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.TrendOverCatches,
                    $"The catches {(agreement.TrendPerCatch > 0 ? "rise" : "fall")} by {new Ratio(Math.Abs(agreement.TrendPerCatch)):F1} from one to the next: look at the tank level, at the flow to the meter, and at whether the meter was warm."
                )
            );
        if (agreement.HasOffset)
            findings.Add(
                Finding.Warning(
                    CatchTestCodes.AdditiveOffset,
                    $"Catches of different length only fit together with {new Mass(Math.Abs(agreement.Offset))} {(agreement.Offset > 0 ? "too much" : "missing")} in each: check the tare, product left in the line or the container, and the priming."
                )
            );
    }

    private static void Size(CatchTestQuestion test, CatchReadings readings, List<Finding> findings)
    {
        var smallest = readings.Masses.Min();
        var fewest = readings.Revolutions.Min();
        if (Threshold.IsBelow(fewest, CatchSize.UsualRevolutions))
            findings.Add(
                Finding.Warning(
                    SharedCodes.SmallCatch,
                    $"A catch of {new Revolutions(fewest)} is short: from {new Revolutions(CatchSize.UsualRevolutions)} on, start and stop of the meter hardly matter."
                )
            );

        var division = test.Scale.Division;
        var smallestWeighed = smallest / (test.CaughtPoints?.Scale ?? 1);
        var divisions = smallestWeighed / division.Kilograms;
        var least = CatchSize.Least(division, test.Limits.WantedPrecision ?? CatchTestLimits.DefaultWantedPrecision);
        if (Threshold.IsBelow(smallestWeighed, least.Kilograms))
            findings.Add(
                Finding.Note(
                    SharedCodes.CoarseScale,
                    $"The smallest catch covers only {divisions:F0} divisions of {division}; {least.Kilograms / division.Kilograms:F0} or more are better, a catch of {least}."
                )
            );
        if (test.Scale is { AccuracyClass: { } accuracyClass, StatedAccuracy: null, KnownError: null } scale)
        {
            var intervals = readings.Masses.Max() / (test.CaughtPoints?.Scale ?? 1) / (scale.VerificationInterval ?? division).Kilograms;
            if (Threshold.IsAbove(intervals, OimlR76.LargestLoad(accuracyClass)))
                findings.Add(
                    Finding.Warning(
                        CatchTestCodes.LoadBeyondClass,
                        $"A load of {intervals:F0} verification intervals is more than a scale of class {accuracyClass.ToString()} can have ({OimlR76.LargestLoad(accuracyClass):F0}). Check the class and the interval on the data plate."
                    )
                );
        }
    }

    private static void Precision(CatchTestQuestion test, CatchReadings readings, CatchTestResult result, List<Finding> findings)
    {
        var estimate = result.Estimate;
        if (estimate.Span * estimate.Span > estimate.VarianceWithoutSpan)
            findings.Add(
                Finding.Note(
                    CatchTestCodes.ScaleDominates,
                    $"The scale makes more of the uncertainty than the catches do. A check against known masses helps more than another catch."
                )
            );
        var prior = result.Settings.Repeatability;
        if (test.Limits.Repeatability is null && prior.DegreesOfFreedom > readings.Count - 1)
            findings.Add(
                Finding.Note(
                    CatchTestCodes.DefaultRepeatabilityUsed,
                    $"{new CountInWords(readings.Count):C} catch{(readings.Count == 1 ? " says nothing" : "es say little")} about scatter; the default repeatability of {new Ratio(prior.Relative):0.##} carries most of the uncertainty."
                )
            );
    }

    /// <summary>The rounding of a number for the controller costs a noticeable part of the tolerance.</summary>
    public static bool RoundingMatters(ControllerNumber enter, CatchTestSettings settings) =>
        Math.Abs(enter.RoundingError) > NoticeableShareOfTolerance * settings.Tolerance;

    private static void Entry(ControllerNumber enter, CatchTestResult result, List<Finding> findings)
    {
        if (RoundingMatters(enter, result.Settings))
            findings.Add(
                Finding.Warning(
                    SharedCodes.EntryResolutionMatters,
                    $"With {enter.Entry.Decimals} decimals the controller can only take {enter.InWords}, which is {new Ratio(Math.Abs(enter.RoundingError)):F1} {(enter.RoundingError > 0 ? "above" : "below")} the value found. Use a form or a unit with more digits if the controller has one."
                )
            );
    }
}
