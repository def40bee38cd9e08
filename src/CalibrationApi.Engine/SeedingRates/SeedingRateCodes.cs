using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>The codes of seeding rates.</summary>
public static class SeedingRateCodes
{
    /// <summary>A rate from elsewhere differs from the one that these numbers give.</summary>
    public static WarningCode StatedRateDiffers { get; } =
        new(
            "stated-rate-differs",
            "Compare kernel mass, germination, emergence and purity behind the two, and use the rate whose numbers are those of your lot."
        );

    /// <summary>Few seeds were counted for a kernel mass.</summary>
    public static NoteCode SmallSample { get; } =
        new("small-sample", "Count 100 seeds several times and give the sum of counts and masses.");

    /// <summary>The kernel mass lies outside what is published for the crop.</summary>
    public static NoteCode KernelMassUnusual { get; } =
        new("kernel-mass-unusual", "Check the count, the mass and the unit. If they are right, use them: your lot goes before any range.");

    /// <summary>Germination is below what a seed law asks for.</summary>
    public static WarningCode GerminationLow { get; } = new("germination-low", "Have the lot tested again, or take another one.");

    /// <summary>A germination is given that the rate for pure seeds does not depend on.</summary>
    public static NoteCode GerminationNotUsed { get; } =
        new(
            "germination-not-used",
            "If seeds that can germinate are meant, give them as germinableSeedsPerArea. For a stand add the emergence."
        );

    /// <summary>Emergence or survival lies outside what is published for the crop.</summary>
    public static NoteCode EmergenceUnusual { get; } =
        new("emergence-unusual", "Check whether the figure already holds germination. Counts from your own fields go before any range.");

    /// <summary>More seeds per area than a publisher sees a gain from.</summary>
    public static NoteCode SeedsAbovePublished { get; } = new("seeds-above-published", "Check the stand wanted and its unit.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        SharedCodes.DivideByTen,
        StatedRateDiffers,
        SmallSample,
        KernelMassUnusual,
        GerminationLow,
        GerminationNotUsed,
        EmergenceUnusual,
        SeedsAbovePublished,
    ];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } = [CautionCodes.TreatedSeed];
}
