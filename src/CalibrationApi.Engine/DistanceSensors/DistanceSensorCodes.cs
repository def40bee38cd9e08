using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>The codes of distance sensors.</summary>
public static class DistanceSensorCodes
{
    /// <summary>The runs over a course give another number of pulses per distance than the value in force.</summary>
    public static WarningCode DistanceChanged { get; } =
        new(
            "distance-changed",
            "Type in the number that the answer gives. Until then the count of distance and of area is off, and so is the rate."
        );

    /// <summary>A change of the pulses per distance so large that a second run has to confirm it.</summary>
    public static WarningCode LargeChange { get; } =
        new(
            "large-change",
            "Where one more run is asked for, drive it before typing anything in. If the runs agree, find the cause first: length of the course, units, how the controller counts, another tyre, a new sensor."
        );

    /// <summary>The interval of the pulses per distance is wider than wanted.</summary>
    public static WarningCode MoreRunsNeeded { get; } =
        new("more-runs-needed", "Drive as many more runs as the answer says, and send all of them together.");

    /// <summary>No practical number of runs like these reaches the wanted precision.</summary>
    public static WarningCode RunsOutOfReach { get; } =
        new("runs-out-of-reach", "Measure the course with a better tape, drive a longer one, or ask for less precision.");

    /// <summary>The runs scatter more than expected of runs over one course.</summary>
    public static WarningOrStopCode RunsScatterMoreThanExpected { get; } =
        new("runs-scatter-more-than-expected", "Check the counts and the distances, then drive again. Do not seed on a severity of stop.");

    /// <summary>Runs there and runs back give different values.</summary>
    public static WarningCode DirectionsDiffer { get; } =
        new("directions-differ", "Drive as many runs one way as the other, or find a level course.");

    /// <summary>A course is shorter than advised.</summary>
    public static NoteCode ShortCourse { get; } = new("short-course", "Measure out a longer course, 100 m if there is room.");

    /// <summary>The tape, not the runs, makes most of the uncertainty.</summary>
    public static NoteCode TapeDominates { get; } =
        new("tape-dominates", "Measure the course with a better tape, and state its limit of error.");

    /// <summary>A wheel turns more or less often at work than on the reference.</summary>
    public static NoteOrWarningCode WheelSlips { get; } =
        new(
            "wheel-slips",
            "Use the value measured at work, on the ground that is seeded. Where it slips much, count distance in another way."
        );

    /// <summary>The width in the controller is not the width that each pass covers anew.</summary>
    public static WarningCode WidthDiffers { get; } =
        new(
            "width-differs",
            "Correct the spacing of the passes first, then the width in the controller. Never make up for it with the value of a meter."
        );

    /// <summary>What a verdict can rest on.</summary>
    public static IReadOnlyList<FindingCode> Reasons { get; } =
    [
        RunsScatterMoreThanExpected,
        MoreRunsNeeded,
        RunsOutOfReach,
        LargeChange,
        SharedCodes.WithinTolerance,
        SharedCodes.NoPracticalChange,
        SharedCodes.NoValueInForce,
        DistanceChanged,
        SharedCodes.WithinToleranceNotShown,
    ];

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        RunsScatterMoreThanExpected,
        DirectionsDiffer,
        LargeChange,
        ShortCourse,
        SharedCodes.SingleReading,
        TapeDominates,
        WheelSlips,
        WidthDiffers,
        SharedCodes.EntryResolutionMatters,
    ];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } = [CautionCodes.ManualFirst, CautionCodes.MovingMachine];

    /// <summary>What the evaluation can refuse.</summary>
    public static IReadOnlyList<RefusalCode> Refusals { get; } = [SharedCodes.SettingsAtOdds];
}
