using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>The codes of meter speeds and of the fan.</summary>
public static class MeterSpeedCodes
{
    /// <summary>A field efficiency is outside what was published for drills and planters.</summary>
    public static NoteCode UnusualFieldEfficiency { get; } =
        new("unusual-field-efficiency", "Check it against the area and the hours of an earlier day. If they agree, the number is yours.");

    /// <summary>The fan or its air flow is outside what a product may have.</summary>
    public static WarningCode OutsideFanWindow { get; } =
        new("outside-fan-window", "Set the fan inside the common window that the answer gives. Where it has none, see there.");

    /// <summary>The fan or its air flow is close to a limit of a product.</summary>
    public static NoteCode NearFanLimit { get; } =
        new("near-fan-limit", "Move the fan away from that limit if the window allows it, and look at the outlets while it runs.");

    /// <summary>No setting of the fan suits all products of one air stream.</summary>
    public static WarningCode NoCommonFanWindow { get; } =
        new(
            "no-common-fan-window",
            "Check the limits of the two products that the sentence names. If they are right, put them down in two passes or through two air streams."
        );

    /// <summary>A limit of the fan is stated in one measure and the fan is planned in the other.</summary>
    public static NoteCode FanLimitNotChecked { get; } =
        new(
            "fan-limit-not-checked",
            "State the planned fan speed for limits of the fan speed, and the planned air flow for limits of the air flow."
        );

    /// <summary>A meter turns close to one of its limits.</summary>
    public static NoteCode NearMeterLimit { get; } =
        new("near-meter-limit", "Leave room: a slightly different speed or element keeps the meter inside its limits on slopes and turns.");

    /// <summary>A meter would turn at a speed at which its mass per revolution was not measured.</summary>
    public static NoteCode OutsideMeasuredSpeeds { get; } =
        new("outside-measured-speeds", "Catch at that meter speed too, and add it to the points measured.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        UnusualFieldEfficiency,
        OutsideFanWindow,
        NearFanLimit,
        NoCommonFanWindow,
        FanLimitNotChecked,
        NearMeterLimit,
        OutsideMeasuredSpeeds,
        SharedCodes.OutsideMeterWindow,
        .. ElementCodes.Findings,
    ];

    /// <summary>The cautions of an answer: for whoever turns the fan.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } =
    [CautionCodes.ManualFirst, CautionCodes.UnexpectedStart, CautionCodes.StoredPressure];
}
