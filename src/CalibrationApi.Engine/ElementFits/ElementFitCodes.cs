using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.MeterSpeeds;

namespace CalibrationApi.Engine.ElementFits;

/// <summary>The codes of element fits.</summary>
public static class ElementFitCodes
{
    /// <summary>No displacement keeps a meter inside its speeds at all rates and ground speeds.</summary>
    public static WarningCode NoDisplacementServes { get; } =
        new(
            "no-displacement-serves",
            "Drive within a narrower range of speeds, put down a narrower range of rates, or use two elements. The answer says how narrow, and at which rate to change over."
        );

    /// <summary>The meter may leave its speeds, because density and fill efficiency are only roughly known.</summary>
    public static WarningCode FitNotSure { get; } =
        new(
            "fit-not-sure",
            "Make a catch test with the element, let a volume check find its fill efficiency, and state that with its spread. Or take an element nearer to the middle of the window."
        );

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [NoDisplacementServes, FitNotSure, SharedCodes.OutsideMeterWindow, MeterSpeedCodes.NearMeterLimit, .. ElementCodes.Findings];

    /// <summary>The cautions of an answer: for whoever fits another element.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } =
    [CautionCodes.ManualFirst, CautionCodes.UnexpectedStart, CautionCodes.RotatingParts, CautionCodes.ProductDust];

    /// <summary>What the evaluation can refuse.</summary>
    public static IReadOnlyList<RefusalCode> Refusals { get; } = [SharedCodes.SettingsAtOdds];
}
