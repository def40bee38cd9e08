using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>The codes of catch plans.</summary>
public static class CatchPlanCodes
{
    /// <summary>The container is nearly full at the planned mass.</summary>
    public static WarningCode ContainerNearlyFull { get; } =
        new("container-nearly-full", "Take a larger container, or empty it between catches.");

    /// <summary>The catch that is wanted at least is larger than the largest one possible.</summary>
    public static WarningCode BoundsCross { get; } =
        new("bounds-cross", "Take a larger container, lift with two persons, allow a longer run, or use a finer scale.");

    /// <summary>Speeds in the field differ so much that one catch speed does not stand for all.</summary>
    public static NoteCode WideSpeedRange { get; } =
        new("wide-speed-range", "Make a check catch at the slowest and at the fastest speed as well.");

    /// <summary>A catch is full before its drive has settled, and no simulated speed mends that.</summary>
    public static WarningCode ShortRun { get; } =
        new("short-run", "Use the container that the answer names, or make as many catches as it says.");

    /// <summary>
    /// The planned ground speed takes a meter beyond its limits, or leaves too short a run or too small a catch, so that another one is
    /// simulated.
    /// </summary>
    public static NoteCode SimulatedSpeedMoved { get; } =
        new(
            "simulated-speed-moved",
            "Simulate the speed that the answer gives. Where the meter can turn at the planned speed too, make a short check catch there."
        );

    /// <summary>No simulated speed keeps all meters of a run within their limits.</summary>
    public static WarningCode MetersRunApart { get; } =
        new("meters-run-apart", "Run the meters one after the other, and look for elements that can turn together in the field.");

    /// <summary>More containers are needed at the same time than are at hand.</summary>
    public static WarningCode TooFewContainers { get; } =
        new("too-few-containers", "Get more containers, or plan the meters in several runs.");

    /// <summary>Two meters have to be stopped within a few seconds of each other.</summary>
    public static NoteCode StopsCloseTogether { get; } =
        new("stops-close-together", "Have somebody at each of these meters, or run them one after the other.");

    /// <summary>A container that is too heavy for one person once the catch is in it.</summary>
    public static CautionCode HeavyContainer { get; } = new("heavy-container", "Lift it with two persons or a hoist.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        ContainerNearlyFull,
        BoundsCross,
        WideSpeedRange,
        ShortRun,
        SimulatedSpeedMoved,
        MetersRunApart,
        TooFewContainers,
        StopsCloseTogether,
        SharedCodes.CoarseScale,
        SharedCodes.SmallCatch,
        SharedCodes.PrecisionOutOfReach,
        SharedCodes.OutsideMeterWindow,
        .. ElementCodes.Findings,
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
        HeavyContainer,
    ];

    /// <summary>What the evaluation can refuse.</summary>
    public static IReadOnlyList<RefusalCode> Refusals { get; } = [SharedCodes.SettingsAtOdds];
}
