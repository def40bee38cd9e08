using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.NewLots;

/// <summary>The codes of new lots.</summary>
public static class NewLotCodes
{
    /// <summary>The bulk density of a lot is not known, so nothing says what the meter delivers of it.</summary>
    public static WarningCode DensityUnknown { get; } =
        new("density-unknown", "Weigh a known volume of each lot, and ask again; or make a catch test.");

    /// <summary>The new lot has another bulk density than the one behind the value in force.</summary>
    public static WarningCode DensityDiffers { get; } =
        new("density-differs", "Start the catch plan from the predicted value, and adopt what the catch test finds.");

    /// <summary>Two lots of one product have bulk densities that are hard to believe beside each other.</summary>
    public static WarningCode DensitiesFarApart { get; } =
        new("densities-far-apart", "Check both numbers and their units; kg/hL, kg/m3 and the bushels differ by factors.");

    /// <summary>The new lot has another treatment than the one behind the value in force.</summary>
    public static WarningCode TreatmentChanged { get; } =
        new("treatment-changed", "Make a catch test with the treated seed; a coating changes how it flows and what a kernel weighs.");

    /// <summary>The kernel masses of what is said to be one lot in one treatment differ.</summary>
    public static WarningCode KernelsOfOneLotDiffer { get; } =
        new("kernels-of-one-lot-differ", "Count and weigh a sample of each again, and check whether it is the same lot.");

    /// <summary>Nothing that changes the flow has changed.</summary>
    public static NoteCode NothingChanged { get; } = new("nothing-changed", "Nothing to do.");

    /// <summary>The new lot germinates otherwise than the one before, so the same seeds bring up another stand.</summary>
    public static NoteCode GerminationChanged { get; } =
        new("germination-changed", "Choose between the rate for the same seeds and the rate for the same stand; the answer gives both.");

    /// <summary>A rate for the new lot takes kernel masses that were not given.</summary>
    public static NoteCode RateNotRecomputed { get; } =
        new("rate-not-recomputed", "Count and weigh a sample of each lot, and give their thousand-kernel masses. Fertilizer needs none.");

    /// <summary>The lot or its treatment is another than when the value in force was adopted.</summary>
    public static NoteCode OtherLot { get; } = new("other-lot", "Make a catch test with the lot that is in the tank now.");

    /// <summary>What a verdict can rest on.</summary>
    public static IReadOnlyList<FindingCode> Reasons { get; } =
    [
        DensityUnknown,
        DensityDiffers,
        OtherLot,
        TreatmentChanged,
        KernelsOfOneLotDiffer,
        NothingChanged,
        SharedCodes.WithinTolerance,
        SharedCodes.WithinToleranceNotShown,
    ];

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } = [RateNotRecomputed, DensitiesFarApart, GerminationChanged];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } = [CautionCodes.TreatedSeed];
}
