using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>What is worth saying about runs beyond the verdict.</summary>
internal static class DistanceSensorFindings
{
    // Share of the tolerance that a rounding may cost before it is worth a word; judgement, as for catch tests.
    private const double NoticeableShareOfTolerance = 0.2;

    public static List<Finding> Of(DistanceSensorQuestion question, DistanceSensorResult result)
    {
        var findings = new List<Finding>();
        Pattern(result, findings);
        LargeChange(question, result, findings);
        Runs(question, result, findings);
        Skid(result, findings);
        if (result.Width is { } width)
            Width(width, question.MeterDrive ?? MeterDrive.RateControlled, findings);
        Entry(question, result, findings);
        return findings;
    }

    private static void Pattern(DistanceSensorResult result, List<Finding> findings)
    {
        var agreement = result.Agreement;
        if (agreement.ScatterTooMuch && result.Decision.Rule != DistanceSensorVerdict.Rule.WildScatter)
            findings.Add(
                Finding.Warning(
                    DistanceSensorCodes.RunsScatterMoreThanExpected,
                    $"The runs spread by {new Ratio(agreement.Spread):F1}, more than was expected of them. The interval has been widened for it."
                )
            );
        if (agreement.DirectionsDiffer)
            findings.Add(
                Finding.Warning(
                    DistanceSensorCodes.DirectionsDiffer,
                    $"There and back differ by {new Ratio(Math.Abs(agreement.DirectionDifference!.Value)):F1}: a slope, or slip that differs with it. Drive as many runs one way as the other."
                )
            );
    }

    // Runs that agree confirm their mean, not what they were compared with.
    private static void LargeChange(DistanceSensorQuestion question, DistanceSensorResult result, List<Finding> findings)
    {
        if (
            result is { Decision.Verdict: Verdict.Adopt, Change: { } change }
            && Math.Abs(change.Delta.Value) >= (question.SecondRunChange ?? DistanceSensorDefaults.SecondRunChange.Value.Canonical)
        )
            findings.Add(
                Finding.Warning(
                    DistanceSensorCodes.LargeChange,
                    $"A change of {new Ratio(Math.Abs(change.Delta.Value)):F1} seldom comes of the tyre, the load or the ground. Before you type anything in, check the length of the course, the units, and the form and distance in which the controller counts."
                )
            );
    }

    private static void Runs(DistanceSensorQuestion question, DistanceSensorResult result, List<Finding> findings)
    {
        var shortest = question.Runs.Min(run => run.Distance.Metres);
        if (Threshold.IsBelow(shortest, DistanceSensorDefaults.ShortCourse))
            findings.Add(
                Finding.Note(
                    DistanceSensorCodes.ShortCourse,
                    $"The shortest course is {new Length(shortest)}; {new Length(DistanceSensorDefaults.ShortCourse):F0} or more are advised, so that start and stop hardly matter."
                )
            );
        if (question.Runs.Count == 1 && question.Repeatability is null)
            findings.Add(
                Finding.Note(
                    SharedCodes.SingleReading,
                    $"One run says nothing about scatter; the default of {DistanceSensorDefaults.Repeatability.Value:0.##} for one run carries most of the uncertainty."
                )
            );
        if (result.Estimate.Tape > result.Estimate.Runs)
            findings.Add(
                Finding.Note(
                    DistanceSensorCodes.TapeDominates,
                    $"The tape makes more of the uncertainty than the runs do. A better tape helps more than another run."
                )
            );
    }

    private static void Skid(DistanceSensorResult result, List<Finding> findings)
    {
        if (result.Skid is not { } skid || Math.Abs(skid.Value) <= skid.ExpandedUncertainty)
            return;
        Sentence seen =
            skid.Value < 0
                ? (Sentence)
                    $"At work the wheel turns {new Ratio(-skid.Value):F1} more often for the same distance than on the reference: it slips."
                : $"At work the wheel turns {new Ratio(skid.Value):F1} less often for the same distance than on the reference: it skids, or the tyre is larger there.";
        findings.Add(
            Math.Abs(skid.Value) > DistanceSensorDefaults.LargeSkid
                ? Finding.Warning(
                    DistanceSensorCodes.WheelSlips,
                    $"{seen} That much changes with every patch of soil. A sensor on a wheel that neither drives nor is driven is steadier."
                )
                : Finding.Note(DistanceSensorCodes.WheelSlips, $"{seen} The value of the runs at work holds it already.")
        );
    }

    private static void Width(WorkingWidth width, MeterDrive drive, List<Finding> findings)
    {
        var change = DistanceEffect.OfWidth(width, drive) - 1;
        if (Math.Abs(change) <= DistanceSensorDefaults.NoticeableWidth)
            return;
        if (drive == MeterDrive.GroundDriven)
        {
            findings.Add(
                Finding.Warning(
                    DistanceSensorCodes.WidthDiffers,
                    change > 0
                        ? (Sentence)
                            $"The machine is {width.Nominal} wide, but each pass covers {width.Effective} anew: the field gets {new Ratio(change):F1} too much. Correct the spacing of the passes."
                        : $"The machine is {width.Nominal} wide, but each pass covers {width.Effective}: the field gets {new Ratio(-change):F1} too little, and strips may be left. Correct the spacing of the passes."
                )
            );
            return;
        }

        var remedy =
            Math.Abs(width.OverlapShare) <= DistanceSensorDefaults.NoticeableWidth
                ? "Correct the width in the controller."
                : "Correct the spacing of the passes, or the width in the controller.";
        findings.Add(
            Finding.Warning(
                DistanceSensorCodes.WidthDiffers,
                change > 0
                    ? (Sentence)
                        $"The controller reckons with {width.Used}, but each pass covers {width.Effective} anew: that alone gives the field {new Ratio(change):F1} too much. {remedy}"
                    : $"The controller reckons with {width.Used}, but each pass covers {width.Effective}: that alone gives the field {new Ratio(-change):F1} too little{(width.Overlap.Metres < 0 ? ", and strips may be left" : "")}. {remedy}"
            )
        );
    }

    private static void Entry(DistanceSensorQuestion question, DistanceSensorResult result, List<Finding> findings)
    {
        if (result.Enter is { } enter)
        {
            if (Math.Abs(enter.RoundingError) > NoticeableShareOfTolerance * result.Tolerance)
                findings.Add(
                    Finding.Warning(
                        SharedCodes.EntryResolutionMatters,
                        $"With {enter.Entry.Decimals} decimals the controller can only take {enter.InWords}, which makes it count {new Ratio(Math.Abs(enter.RoundingError)):F1} too {(enter.RoundingError > 0 ? "little" : "much")} distance. Use a form or a unit with more digits if the controller has one."
                    )
                );
        }
        else if (result.Decision.Verdict == Verdict.Adopt && question.ControllerEntry is { } entry)
        {
            findings.Add(
                Finding.Stop(
                    SharedCodes.EntryResolutionMatters,
                    $"With {entry.Decimals} decimals in {entry.Unit.Symbol} the controller could only take 0. Choose a form or a unit with more digits."
                )
            );
        }
    }
}
