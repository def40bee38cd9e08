using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The codes of catch tests.</summary>
public static class CatchTestCodes
{
    /// <summary>
    /// The change from what was expected is so large that one set-up does not show it: its catches share tare, points, element, unit and
    /// product.
    /// </summary>
    public static WarningCode SecondTestNeeded { get; } =
        new(
            "second-test-needed",
            "Set the test up anew and test again: weigh the empty container, count the points, look at element and product, prime the meter. Send the first test as earlierTest; stored tests find it themselves."
        );

    /// <summary>An earlier test, set up apart, does not bear this one out.</summary>
    public static WarningCode TestsDisagree { get; } =
        new(
            "tests-disagree",
            "Find out what differed between the two tests. Set the test up anew and test once more; the two that agree count."
        );

    /// <summary>
    /// A change that a second test, set up apart, bears out. An earlier test is combined with this one only when it is later than the last
    /// adoption.
    /// </summary>
    public static WarningCode ChangeConfirmed { get; } =
        new(
            "change-confirmed",
            "Type in the number that the answer gives, then adopt it, so that the record says what the controller uses."
        );

    /// <summary>A catch stands apart beyond the tolerance, though not surely enough to stop the test.</summary>
    public static WarningCode CatchApart { get; } =
        new("catch-apart", "Weigh that catch again if it is still in its container, or make one more catch and send all together.");

    /// <summary>A catch that was left out fits what was expected, and those that count do not outweigh it.</summary>
    public static WarningCode ExclusionDecides { get; } =
        new("exclusion-decides", "Make one more catch: it shows which of the two was wrong. Leave out only what you know went wrong.");

    /// <summary>A catch was left out although it agrees with those that count.</summary>
    public static NoteCode ExcludedCatchAgrees { get; } =
        new("excluded-catch-agrees", "Let it count, if nothing was wrong with it: one more good catch makes the answer surer.");

    /// <summary>Two catches have the same readings to the last digit.</summary>
    public static WarningCode CatchTypedTwice { get; } =
        new("catch-typed-twice", "Look whether one row was typed twice. If so, take it out and send the test again.");

    /// <summary>
    /// The number to type in lies between what the test found and the number in force, which has tests behind it as well.
    /// </summary>
    public static NoteCode DrawnTowardsOldNumber { get; } =
        new(
            "drawn-towards-old-number",
            "Nothing to do: type in the number that the answer gives. What the test alone found stands beside it."
        );

    /// <summary>
    /// A change could also come from a mistake, although none is likely: a large one from all that is listed, a smaller one from what fits
    /// it exactly.
    /// </summary>
    public static NoteCode PossibleMistakes { get; } =
        new(
            "possible-mistakes",
            "Do the checks that likelyMistakes names, the first ones first. What did not happen goes under ruledOutMistakes."
        );

    /// <summary>
    /// The value compared with was weighed on a scale whose error was found later, and that error alone explains the change.
    /// </summary>
    public static WarningCode OldScaleExplainsChange { get; } =
        new(
            "old-scale-explains-change",
            "The meter has probably not changed. Use the value of this test, and judge later tests against it; look for other values that were weighed on that scale."
        );

    /// <summary>The meter delivers another mass per revolution than the value in force says.</summary>
    public static WarningCode ChangeDetected { get; } =
        new(
            "change-detected",
            "Type in the number that the answer gives, then adopt it, so that the record says what the controller uses."
        );

    /// <summary>The interval is wider than wanted.</summary>
    public static WarningCode PrecisionNotReached { get; } =
        new("precision-not-reached", "Make as many more catches as the answer says, and send all of them together.");

    /// <summary>A mistake would explain the test.</summary>
    public static WarningOrStopCode LikelyMistake { get; } =
        new(
            "likely-mistake",
            "Do the check that the answer names beside the mistake, before any number of this test is used. If it was no mistake, name it under ruledOutMistakes and send the test again."
        );

    /// <summary>Several mistakes would explain the test, and mass alone does not say which.</summary>
    public static WarningOrStopCode CannotBeToldApart { get; } =
        new(
            "cannot-be-told-apart",
            "Do the checks that the answer names, one after the other. What turns out not to have happened goes under ruledOutMistakes; then send the test again."
        );

    /// <summary>One catch stands apart from the others.</summary>
    public static WarningOrStopCode StrayCatch { get; } =
        new("stray-catch", "Catch once more. Exclude the stray one only if you know what went wrong with it, and give that as the reason.");

    /// <summary>The first catch is low, as when the meter was not primed.</summary>
    public static WarningCode FirstCatchLow { get; } =
        new(
            "first-catch-low",
            "Turn the meter until the flow is steady before each first catch. Exclude the first catch with that reason, and catch once more."
        );

    /// <summary>The catches rise or fall one after the other.</summary>
    public static WarningCode TrendOverCatches { get; } =
        new("trend-over-catches", "Look at the tank level, at the flow to the meter, and at whether the meter was warm. Then catch again.");

    /// <summary>Something was added to every catch, whatever its size.</summary>
    public static WarningCode AdditiveOffset { get; } =
        new("additive-offset", "Check the tare, product left in the line or the container, and the priming. Then catch again.");

    /// <summary>A load is beyond what an instrument of the stated class can have.</summary>
    public static WarningCode LoadBeyondClass { get; } =
        new("load-beyond-class", "Read the class and the verification interval from the data plate of the scale again.");

    /// <summary>A catch is more than its container can hold.</summary>
    public static StopCode MoreThanTheContainerHolds { get; } =
        new(
            "more-than-the-container-holds",
            "Check gross and its unit, which container it was, its volume, and the bulk density. A container that was emptied in the course of a catch cannot be named as its container."
        );

    /// <summary>A load is more than its scale can show.</summary>
    public static StopCode LoadBeyondCapacity { get; } =
        new("load-beyond-capacity", "Check gross and its unit, which scale it was, and its capacity on the data plate.");

    /// <summary>The scale, not the catches, makes most of the uncertainty.</summary>
    public static NoteCode ScaleDominates { get; } =
        new("scale-dominates", "Check the scale against known masses. That helps more than another catch.");

    /// <summary>The default repeatability carries most of the uncertainty.</summary>
    public static NoteCode DefaultRepeatabilityUsed { get; } =
        new("default-repeatability-used", "Make more catches, or state the repeatability of this meter if you know it.");

    /// <summary>A catch was left out by the caller.</summary>
    public static NoteCode CatchExcluded { get; } = new("catch-excluded", "Nothing to do, if the reason given is right.");

    /// <summary>Masses that come from one scale were given in more than one unit.</summary>
    public static WarningCode MixedMassUnits { get; } =
        new("mixed-mass-units", "Check the unit of every mass of the test. One scale shows one unit.");

    /// <summary>The scale failed its last check before a test.</summary>
    public static StopCode ScaleCheckFailed { get; } =
        new("scale-check-failed", "Repair or replace the scale, check it again, and repeat the test.");

    /// <summary>What a verdict can rest on.</summary>
    public static IReadOnlyList<FindingCode> Reasons { get; } =
    [
        LikelyMistake,
        MoreThanTheContainerHolds,
        LoadBeyondCapacity,
        ElementCodes.MoreThanTheElementHolds,
        ScaleCheckFailed,
        CannotBeToldApart,
        StrayCatch,
        SharedCodes.CatchesScatterMoreThanExpected,
        PrecisionNotReached,
        SharedCodes.PrecisionOutOfReach,
        SecondTestNeeded,
        TestsDisagree,
        ChangeConfirmed,
        CatchApart,
        ExclusionDecides,
        SharedCodes.WithinTolerance,
        SharedCodes.NoPracticalChange,
        SharedCodes.NoValueInForce,
        ChangeDetected,
        SharedCodes.WithinToleranceNotShown,
        OldScaleExplainsChange,
    ];

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        MoreThanTheContainerHolds,
        LoadBeyondCapacity,
        ScaleCheckFailed,
        CatchCodes.ConditionsDiffer,
        PossibleMistakes,
        CannotBeToldApart,
        LikelyMistake,
        FirstCatchLow,
        StrayCatch,
        SharedCodes.CatchesScatterMoreThanExpected,
        TrendOverCatches,
        AdditiveOffset,
        SharedCodes.SmallCatch,
        SharedCodes.CoarseScale,
        LoadBeyondClass,
        ScaleDominates,
        DefaultRepeatabilityUsed,
        DrawnTowardsOldNumber,
        ChangeConfirmed,
        SharedCodes.EntryResolutionMatters,
        MixedMassUnits,
        CatchTypedTwice,
        ExcludedCatchAgrees,
        CatchExcluded,
        .. ElementCodes.Findings,
        ElementCodes.UnlikeOtherProducts,
    ];

    /// <summary>What the evaluation can refuse.</summary>
    public static IReadOnlyList<RefusalCode> Refusals { get; } = [SharedCodes.SettingsAtOdds];
}
