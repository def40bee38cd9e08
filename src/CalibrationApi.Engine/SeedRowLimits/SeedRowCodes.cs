using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>The codes of limits with the seed.</summary>
public static class SeedRowCodes
{
    /// <summary>More lies with the seed than a published limit allows, or a limit that was stated.</summary>
    public static WarningOrStopCode AbovePublishedLimit { get; } =
        new(
            "above-published-limit",
            "Place less with the seed, or put the rest away from the seed row. If the limit is of another region than yours, ask for the one of your own."
        );

    /// <summary>No source that is held has a number for this crop, soil, moisture, opener and region.</summary>
    public static WarningCode NoPublishedLimit { get; } =
        new("no-published-limit", "Ask local guidance, and state its limit under localLimits. No number is not a permission.");

    /// <summary>A part of what lies with the seed is counted by no limit that has a number for this case.</summary>
    public static WarningCode NutrientWithoutLimit { get; } =
        new(
            "nutrient-without-limit",
            "Ask local guidance about that nutrient, and state its limit under localLimits, or put that product away from the seed row."
        );

    /// <summary>Sources print different limits for the same case.</summary>
    public static WarningCode SourcesDisagree { get; } =
        new("sources-disagree", "Go by the stricter one, unless your own region's guidance says otherwise.");

    /// <summary>No region was stated, so limits of several regions are shown.</summary>
    public static WarningCode RegionNotStated { get; } =
        new("region-not-stated", "State the region. Say elsewhere if it is not among the words.");

    /// <summary>The form of nitrogen in a product was not stated, so that it counts as urea.</summary>
    public static WarningCode NitrogenFormNotStated { get; } =
        new("nitrogen-form-not-stated", "State nitrogenForm for that product; the label names it.");

    /// <summary>The opener and its rows lie between, or beyond, those for which the source prints a limit.</summary>
    public static NoteCode BetweenPublishedLimits { get; } =
        new("between-published-limits", "Nothing to do: the stricter printed limit was taken. The answer names the printed ones.");

    /// <summary>A limit was reduced as its source states for such a seedbed.</summary>
    public static NoteCode LimitReduced { get; } = new("limit-reduced", "Nothing to do: the reduced limit was used.");

    /// <summary>The spread is much wider than a source pairs with such an opener.</summary>
    public static NoteCode SpreadUnusual { get; } =
        new("spread-unusual", "Measure the spread of seed and fertilizer in the field, and check its unit.");

    /// <summary>A published model lets expect a larger loss of stand from fertilizer with the seed than is accepted.</summary>
    public static StopCode StandLossAboveAccepted { get; } =
        new(
            "stand-loss-above-accepted",
            "Place less with the seed, or put it away from the seed row. The answer tells how much of each product alone the model allows."
        );

    /// <summary>Published limits of fertilizer with the seed do not know the field.</summary>
    public static CautionCode LocalGuidanceFirst { get; } =
        new("local-guidance-first", "Local guidance, the product label and a licensed adviser go first.");

    /// <summary>A stand that thins although no published limit is exceeded.</summary>
    public static CautionCode LimitIsNoPromise { get; } =
        new(
            "limit-is-no-promise",
            "Read the conditions of each limit, and place less where the seedbed dries. What is put away from the seed row cannot harm it."
        );

    /// <summary>Seed and fertilizer that lie closer together than the opener promises.</summary>
    public static CautionCode SpreadToBeMeasured { get; } =
        new("spread-to-be-measured", "Dig up a few rows behind the drill and measure the spread.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        AbovePublishedLimit,
        NoPublishedLimit,
        NutrientWithoutLimit,
        SourcesDisagree,
        RegionNotStated,
        NitrogenFormNotStated,
        BetweenPublishedLimits,
        LimitReduced,
        SpreadUnusual,
        StandLossAboveAccepted,
    ];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } = [LocalGuidanceFirst, LimitIsNoPromise, SpreadToBeMeasured];
}
