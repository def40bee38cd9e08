using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>The headline and the cautions of what lies in the seed row.</summary>
internal static class SeedRowSentences
{
    public static IReadOnlyList<Caution> Cautions { get; } =
    [
        new(SeedRowCodes.LocalGuidanceFirst, $"Local guidance, the product label and a licensed adviser go before any limit named here."),
        new(
            SeedRowCodes.LimitIsNoPromise,
            $"A published limit holds for its crop, soil, moisture, opener and region. A stand can thin below it, and the more so where the seedbed dries."
        ),
        new(
            SeedRowCodes.SpreadToBeMeasured,
            $"How wide seed and fertilizer lie apart is settled in your own soil, at your own speed, by your own openers. Uncover a few rows and lay a rule across them before you rely on a spread."
        ),
    ];

    public static Sentence Headline(
        SeedRowQuestion row,
        LimitVerdict verdict,
        IReadOnlyList<LimitJudgement> judged,
        IReadOnlyList<string> unjudged,
        StandLoss? loss
    )
    {
        if (verdict == LimitVerdict.NoPublishedLimit)
            return $"No published limit is held for what lies with the seed of {CropNames.InPlural(row.Crop)} on {SeedRowWords.Of(row.Soil)}, {SeedRowWords.Of(row.Moisture)}, in {SeedRowWords.Of(row.Region)}, so there is no number. Before you place fertilizer with the seed, ask {SeedRowWords.WhomToAsk(row.Region)}, the supplier of the product or a licensed adviser.";
        // A table that says the same goes first; the model speaks where it alone does.
        if (
            loss?.Verdict == verdict
            && loss.Expected is { } expected
            && !judged.Any(one => one.Verdict == verdict && one.Load.KilogramsPerSquareMetre > 0)
        )
            return ByModel(row, loss, expected);
        if (!judged.Any(one => one.Verdict == verdict && one.Load.KilogramsPerSquareMetre > 0))
            return $"None of these products lays a nutrient with the seed, so there is nothing to compare.";
        var lead = judged.First(one => one.Verdict == verdict && one.Load.KilogramsPerSquareMetre > 0);
        var nutrient = SeedRowWords.Of(lead.Limit.Nutrient);
        Sentence found =
            lead.AllowsNone
                ? (Sentence)
                    $"{lead.Load} of {nutrient} with the seed{Zone(lead, row)}, where none is allowed. Put it away from the seed row."
            : verdict == LimitVerdict.Above
                ? (Sentence)
                    $"{lead.Load} of {nutrient} with the seed{Zone(lead, row)} against {lead.Allowed!.Value}. Place at least {lead.Excess} less of it with the seed, or put it away from the seed row."
            : $"{lead.Load} of {nutrient} with the seed{Zone(lead, row)} against {lead.Allowed!.Value}. {Rest(unjudged)}";
        return $"{(verdict == LimitVerdict.Above ? "Above" : "Not above")} {Whose(lead, row)}: {found}{Elsewhere(lead, row)}";
    }

    private static Sentence ByModel(SeedRowQuestion row, StandLoss loss, double expected)
    {
        Sentence found =
            $"the stand-loss model of {loss.Source.Publisher} lets expect a loss of {new Ratio(expected):F0} of the {CropNames.InPlural(row.Crop)}{(row.Products.Any(product => product.Rates.Count > 1) ? (Sentence)$" in zone {loss.Zone}" : $"")}, {new Ratio(loss.Accepted):0.##} being accepted";
        return loss.Verdict == LimitVerdict.Above
            ? (Sentence)$"Above the loss of stand that is accepted: {found}. Place less with the seed, or put it away from the seed row."
            : $"Not above the loss of stand that is accepted: {found}. That is no promise for your field.";
    }

    // The headline is shown alone, and the limit may be that of another place.
    private static Sentence Elsewhere(LimitJudgement lead, SeedRowQuestion row) =>
        row.Region is null && lead.Limit.Source.Key != LimitSource.StatedKey
            ? (Sentence)$" You name no region, so this may not be the limit for yours."
            : $"";

    private static Sentence Whose(LimitJudgement lead, SeedRowQuestion row) =>
        lead.Limit.Source.Key == LimitSource.StatedKey
            ? (Sentence)$"the limit that you state for {CropNames.InPlural(row.Crop)} from {lead.Limit.Source.Publisher}"
            : $"the published limit for {CropNames.InPlural(row.Crop)}{Seedbed(lead.Soil!, row)} in {lead.Limit.Source.Place} ({lead.Limit.Source.Publisher}, {lead.Limit.Source.Edition})";

    // Only what the source tells apart is said of its limit.
    private static Sentence Seedbed(SoilLimit told, SeedRowQuestion row) =>
        (told.Textures.Count < Enum.GetValues<SoilTexture>().Length, told.Moistures.Count < Enum.GetValues<SeedbedMoisture>().Length) switch
        {
            (true, true) => $" on {SeedRowWords.Of(row.Soil)}, {SeedRowWords.Of(row.Moisture)},",
            (true, false) => $" on {SeedRowWords.Of(row.Soil)}",
            (false, true) => $" in a {SeedRowWords.Of(row.Moisture)}",
            _ => $"",
        };

    private static Sentence Zone(LimitJudgement lead, SeedRowQuestion row) =>
        row.Products.Any(product => product.Rates.Count > 1) ? (Sentence)$" in zone {lead.Zone}" : $"";

    private static Sentence Rest(IReadOnlyList<string> unjudged) =>
        unjudged.Count == 0
            ? (Sentence)$"That is no promise for your field."
            : $"No limit held here judges the {SeedRowWords.List(unjudged)}.";
}
