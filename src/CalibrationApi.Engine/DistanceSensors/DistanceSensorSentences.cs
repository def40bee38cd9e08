using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Statistics;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>The headline and the reason of a verdict in plain words.</summary>
internal static class DistanceSensorSentences
{
    private const double RoundsToNothing = 0.0005;

    public static Sentence Headline(DistanceSensorQuestion question, DistanceSensorResult result)
    {
        var precision = new Ratio(result.Estimate.RelativeExpanded);
        var wanted = new Ratio(result.WantedPrecision);
        switch (result.Decision.Rule)
        {
            case DistanceSensorVerdict.Rule.WildScatter:
                return $"Do not use these runs yet. They differ by far more than runs over one course do: check the counts and the distances, then drive again.";
            case DistanceSensorVerdict.Rule.PrecisionNotReached:
                return $"Not sure enough yet: {Value(result)} within {precision:F1}, wanted within {wanted:0.##}. {More(result.Decision.MoreRuns!.Value)}";
            case DistanceSensorVerdict.Rule.PrecisionOutOfReach:
                return $"Not sure enough, and more runs like these will not help: {Value(result)} within {precision:F1}, wanted within {wanted:0.##}. {OutOfReachRemedy(result)}";
            case DistanceSensorVerdict.Rule.LargeChangeUnconfirmed:
                return $"The sensor gives {MoreOrFewer(result)} than the value in force says. That is a large change: confirm it with one more run before seeding.";
            case DistanceSensorVerdict.Rule.WithinTolerance:
                return $"The value in force holds: the sensor gives {AsManyOrNot(result)}, inside the tolerance of {new Ratio(result.Tolerance):0.##}. Keep it.";
            case DistanceSensorVerdict.Rule.NothingInForce:
                return $"The sensor gives {Value(result)}, known within {precision:F1}. {(result.Enter is null ? $"Adopt that value." : Adopt(result))}";
            case DistanceSensorVerdict.Rule.Changed:
                return $"The sensor gives {MoreOrFewer(result)} than the value in force says, so the machine counts too {MuchOrLittle(result)} distance{OnTheField(question, result)}. {Adopt(result)}";
            default:
                return $"It is not shown that the value in force is good enough: the sensor gives {AsManyOrNot(result)}. {Adopt(result)}";
        }
    }

    public static Finding Reason(DistanceSensorResult result)
    {
        var tolerance = new Ratio(result.Tolerance);
        var wanted = new Ratio(result.WantedPrecision);
        var probability = result.Change?.ProbabilityWithinTolerance ?? 0;
        switch (result.Decision.Rule)
        {
            case DistanceSensorVerdict.Rule.WildScatter:
                return Finding.Stop(
                    DistanceSensorCodes.RunsScatterMoreThanExpected,
                    $"The runs spread by {new Ratio(result.Agreement.Spread):F1}; that comes up in fewer than 1 of 100 sets of honest runs."
                );
            case DistanceSensorVerdict.Rule.PrecisionNotReached:
                return Finding.Warning(
                    DistanceSensorCodes.MoreRunsNeeded,
                    $"The value is known within {new Ratio(result.Estimate.RelativeExpanded):F1}; within {wanted:0.##} is wanted. {More(result.Decision.MoreRuns!.Value)}"
                );
            case DistanceSensorVerdict.Rule.PrecisionOutOfReach:
                return Finding.Warning(
                    DistanceSensorCodes.RunsOutOfReach,
                    $"No practical number of such runs tells the value within {wanted:0.##}. {OutOfReachRemedy(result)}"
                );
            case DistanceSensorVerdict.Rule.LargeChangeUnconfirmed:
                return Finding.Warning(
                    DistanceSensorCodes.LargeChange,
                    $"{MoreOrFewer(result)} are so large a change that a second, agreeing run is asked for."
                );
            case DistanceSensorVerdict.Rule.WithinTolerance:
                return ChangeReasons.WithinTolerance("sensor", result.Change!.IsDetected, tolerance, probability);
            case DistanceSensorVerdict.Rule.NothingInForce:
                return ChangeReasons.NothingInForce;
            case DistanceSensorVerdict.Rule.Changed:
                return Finding.Warning(
                    DistanceSensorCodes.DistanceChanged,
                    $"The value in force is within {tolerance:0.##} of the truth with a probability of {ProbabilityWords.OnlyLikely(probability)}; it rests on {new CountInWords(result.Runs.Count)} run{(result.Runs.Count == 1 ? "" : "s")}."
                );
            default:
                return ChangeReasons.NotShown(tolerance, probability);
        }
    }

    /// <summary>What the tape alone leaves is wider than wanted.</summary>
    public static bool TapeIsTooWide(DistanceSensorResult result) =>
        CatchCount.OutOfReach(result.WantedPrecision, result.Estimate.Tape, DistanceSensorDefaults.Coverage);

    // Where the pulses of a turn are unknown, what is told is the distance of a turn. Pulses are told by the metre or foot, too:
    // their own unit is of 100 m.
    private static Sentence Value(DistanceSensorResult result) =>
        result.Counts.IsPulses
            ? (Sentence)
                $"{new PulsesPerDistance(result.Estimate.CountsPerMetre.Value)} ({new CountPerLength(result.Estimate.CountsPerMetre.Value):pulses})"
            : $"{new Length(1 / result.Estimate.CountsPerMetre.Value)} per turn of the wheel";

    private static Sentence Adopt(DistanceSensorResult result) =>
        result.Enter is { } number ? (Sentence)$"Type in {number.InWords}." : $"Adopt {Value(result)}.";

    private static Sentence MoreOrFewer(DistanceSensorResult result) =>
        result.Change!.Delta.Value >= 0
            ? (Sentence)$"{new Ratio(result.Change.Delta.Value):F1} more {Things(result)}"
            : $"{new Ratio(-result.Change.Delta.Value):F1} fewer {Things(result)}";

    private static Sentence AsManyOrNot(DistanceSensorResult result) =>
        Math.Abs(result.Change!.Delta.Value) < RoundsToNothing ? (Sentence)$"as many {Things(result)} as it says" : MoreOrFewer(result);

    private static Sentence Things(DistanceSensorResult result) => result.Counts.IsPulses ? (Sentence)$"pulses" : $"turns";

    // A wrong width can outweigh a wrong distance; then the two are told together.
    private static Sentence OnTheField(DistanceSensorQuestion question, DistanceSensorResult result)
    {
        if (question.MeterDrive == MeterDrive.GroundDriven)
            return $" and area; the rate does not follow it, because a wheel turns the meters";
        var change = result.Effect!.RateChange.Value;
        if (Math.Abs((result.Effect.WidthFactor ?? 1) - 1) <= DistanceSensorDefaults.NoticeableWidth)
            return $" and applies too {MuchOrLittle(result)}";
        return Math.Abs(change) < RoundsToNothing
            ? (Sentence)$"; with the width that is off too, the field happens to get its rate"
            : $"; with the width that is off too, the field gets {new Ratio(Math.Abs(change)):F1} too {(change > 0 ? "much" : "little")}";
    }

    // More pulses than the controller believes in make it count more distance than was driven.
    private static Sentence MuchOrLittle(DistanceSensorResult result) => result.Change!.Delta.Value > 0 ? (Sentence)$"much" : $"little";

    private static Sentence More(int runs) => runs == 1 ? (Sentence)$"Drive one more run." : $"Drive {new CountInWords(runs)} more runs.";

    private static Sentence OutOfReachRemedy(DistanceSensorResult result) =>
        TapeIsTooWide(result)
            ? (Sentence)
                $"The tape alone leaves {new Ratio(StudentT.CoverageFactor(DistanceSensorDefaults.Coverage, double.PositiveInfinity) * result.Estimate.Tape):F1} of doubt: measure the course with a better one."
            : $"Drive a longer course, line up with its marks more closely, or find out what makes the runs differ.";
}
