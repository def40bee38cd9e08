using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>The codes of stand counts.</summary>
public static class StandCountCodes
{
    /// <summary>A hoop or frame is not as large as it is called.</summary>
    public static NoteOrWarningCode SampleAreaMiscalled { get; } =
        new(
            "sample-area-miscalled",
            "Measure the hoop inside, or the frame, and send its size. Do not multiply by a factor made for another size."
        );

    /// <summary>The share counted lies far from the one believed before.</summary>
    public static WarningCode CountsAtOddsWithPrior { get; } =
        new(
            "counts-at-odds-with-prior",
            "Check what was sown and counted. If both are right, find the cause before you learn from this field."
        );

    /// <summary>A stated stand is not what the counts give.</summary>
    public static NoteCode StatedStandDiffers { get; } =
        new("stated-stand-differs", "Check the factor it was made with and the size of the samples.");

    /// <summary>No plant was found at any spot.</summary>
    public static WarningCode NoPlantsFound { get; } =
        new("no-plants-found", "Check whether the crop is up yet, and whether it was sown there.");

    /// <summary>There are fewer counts than extension services ask for.</summary>
    public static NoteCode FewCounts { get; } = new("few-counts", "Count at more spots, spread over the field.");

    /// <summary>The wanted precision takes more counts.</summary>
    public static NoteCode MoreCountsNeeded { get; } =
        new("more-counts-needed", "Count at as many spots as the answer says, and send all counts together.");

    /// <summary>The counts vary much more from spot to spot than chance explains.</summary>
    public static WarningCode StronglyClumped { get; } =
        new("strongly-clumped", "Look for skips, plugged openers, residue or wet spots, and judge such places by themselves.");

    /// <summary>Several counts are from one row, so that they share what its opener does.</summary>
    public static NoteCode CountsInSameRow { get; } = new("counts-in-same-row", "Count in other rows too.");

    /// <summary>More plants were counted than seeds were sown.</summary>
    public static WarningCode MorePlantsThanSeeds { get; } =
        new(
            "more-plants-than-seeds",
            "Check the rate sown, the kernel mass, the germination and the row spacing, and look for volunteers among the plants."
        );

    /// <summary>A learned share rests more on what was believed before than on the counts.</summary>
    public static NoteCode PriorOutweighsCounts { get; } =
        new("prior-outweighs-counts", "Nothing to do, if the prior is well founded. More counts give the field more say.");

    /// <summary>The stand is, or may be, below the stated minimum.</summary>
    public static NoteOrWarningCode StandBelowMinimum { get; } =
        new("stand-below-minimum", "Count at more spots before you decide, and ask local advice about reseeding.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        SampleAreaMiscalled,
        SharedCodes.DivideByTen,
        CountsAtOddsWithPrior,
        StatedStandDiffers,
        NoPlantsFound,
        SharedCodes.SingleReading,
        FewCounts,
        MoreCountsNeeded,
        StronglyClumped,
        CountsInSameRow,
        MorePlantsThanSeeds,
        PriorOutweighsCounts,
        StandBelowMinimum,
    ];
}
