using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>The codes of turning a drive wheel.</summary>
public static class DriveWheelCodes
{
    /// <summary>A rate is far outside of what seeding machines put down.</summary>
    public static WarningOrStopCode RateImplausible { get; } =
        new("rate-implausible", "Check units, turns, width and circumference: one of them is wrong by a factor.");

    /// <summary>The rate of a turn test, or the one reckoned from the meter, is outside the tolerance of the target.</summary>
    public static WarningCode RateOffTarget { get; } =
        new(
            "rate-off-target",
            "Correct the setting as the answer says, and make another turn test: settings are seldom proportional. Of a reckoned rate check gearing and mass per revolution first."
        );

    /// <summary>Neither that a rate is within tolerance nor that it is outside is sure enough.</summary>
    public static WarningCode RateNotShown { get; } =
        new(
            "rate-not-shown",
            "Do what the headline says: make another turn test with the same setting and send all of them together, or catch more outlets, or measure wheel or mass better."
        );

    /// <summary>Nothing fell from an outlet during turn tests.</summary>
    public static WarningOrStopCode OutletGaveNothing { get; } =
        new("outlet-gave-nothing", "Clear the way from meter to outlet: shutter, hose, boot. Test again before the setting is changed.");

    /// <summary>An outlet delivers more or less than the others by more than the limit.</summary>
    public static WarningCode OutletOffMean { get; } =
        new("outlet-off-mean", "Look at its meter and hose: worn parts, blockage, a flute that is set differently.");

    /// <summary>A correction is so large that proportion is a poor guide.</summary>
    public static WarningCode LargeCorrection { get; } =
        new("large-correction", "Take the corrected setting as a first step only, and test again. A change of gears may be needed.");

    /// <summary>The circumference of a wheel was reckoned from its diameter.</summary>
    public static WarningCode CircumferenceFromDiameter { get; } =
        new("circumference-from-diameter", "Mark the wheel and measure how far the loaded machine rolls in ten turns on the field.");

    /// <summary>A skid is stated beside a circumference that was measured on the ground.</summary>
    public static NoteCode SkidCountedTwice { get; } =
        new(
            "skid-counted-twice",
            "If the wheel was driving the meters on that run, the circumference holds the skid already: leave skid out."
        );

    /// <summary>What a verdict can rest on.</summary>
    public static IReadOnlyList<FindingCode> Reasons { get; } =
    [SharedCodes.WithinTolerance, RateOffTarget, RateNotShown, RateImplausible, OutletGaveNothing];

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        SharedCodes.CatchesScatterMoreThanExpected,
        CircumferenceFromDiameter,
        SkidCountedTwice,
        LargeCorrection,
        RateOffTarget,
        RateImplausible,
        OutletGaveNothing,
        OutletOffMean,
    ];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } =
    [
        CautionCodes.ManualFirst,
        CautionCodes.UnexpectedStart,
        CautionCodes.RotatingParts,
        CautionCodes.StoredPressure,
        CautionCodes.ProductDust,
        CautionCodes.TankEntry,
        CautionCodes.JackedMachine,
    ];
}
