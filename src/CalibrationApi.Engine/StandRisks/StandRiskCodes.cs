using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.StandRisks;

/// <summary>The codes of stand risks.</summary>
public static class StandRiskCodes
{
    /// <summary>A rate misses the wanted probability of the minimum stand.</summary>
    public static WarningCode StandAtRisk { get; } =
        new("stand-at-risk", "Sow the rate that the answer gives, or accept the risk that it tells.");

    /// <summary>The rate that would be needed is above the stated maximum.</summary>
    public static WarningCode RateAboveMaximum { get; } =
        new("rate-above-maximum", "Accept a lower probability or a lower minimum stand, or improve what keeps seeds from coming up.");

    /// <summary>So much survival is in doubt that no sensible rate reaches the wanted probability.</summary>
    public static WarningCode ProbabilityOutOfReach { get; } =
        new(
            "probability-out-of-reach",
            "Ask for a lower probability, or find out why so few seeds may come up: more seed does not make up for it."
        );

    /// <summary>The spread of a share comes from one stand, which says nothing about how seasons differ.</summary>
    public static WarningCode SeasonSpreadMissing { get; } =
        new("season-spread-missing", "Add seasonSpread, from several of your own seasons if you have them.");

    /// <summary>A share of seeds is outside what published surveys report.</summary>
    public static NoteCode UnusualShareOfSeeds { get; } =
        new("unusual-share-of-seeds", "Check the number. If it is right, nothing is to be done.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [StandAtRisk, RateAboveMaximum, ProbabilityOutOfReach, SeasonSpreadMissing, UnusualShareOfSeeds];
}
