using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.History;

/// <summary>The codes of what earlier and later records say about a number.</summary>
public static class HistoryCodes
{
    /// <summary>A meter has varied so much from day to day that no test can show that a value holds within the tolerance.</summary>
    public static WarningCode VariesFromDayToDay { get; } =
        new("varies-from-day-to-day", "Find out what differs from day to day, for example the tank level. Until then test again soon.");

    /// <summary>The scale has never been checked, or its check is overdue.</summary>
    public static NoteOrWarningCode ScaleCheckOverdue { get; } =
        new("scale-check-overdue", "Check the scale against known masses and record the check.");

    /// <summary>The scale failed its first check after a test.</summary>
    public static WarningCode ScaleCheckFailedLater { get; } =
        new("scale-check-failed-later", "Test again with a good scale: the masses of this test may be off by as much as the scale was.");

    /// <summary>The check that a test was corrected by is no longer the last one before it.</summary>
    public static WarningCode ScaleCheckChanged { get; } =
        new("scale-check-changed", "Enter this test once more, superseding this record, to have its masses corrected by that check.");

    /// <summary>The value that a test was compared with is no longer the one that was in force at its time.</summary>
    public static WarningCode ValueInForceChanged { get; } =
        new("value-in-force-changed", "Enter this test once more, superseding this record, to have it compared with the right value.");

    /// <summary>The value in force rests on a test that was superseded.</summary>
    public static WarningOrStopCode BasisSuperseded { get; } =
        new(
            "basis-superseded",
            "Adopt the value of the test that took its place. If that one is of another meter, element, setting or product, test again."
        );

    /// <summary>What can come to light about a test after it was made.</summary>
    public static IReadOnlyList<FindingCode> SinceThen { get; } =
    [ScaleCheckFailedLater, ScaleCheckChanged, BasisSuperseded, ValueInForceChanged];
}
