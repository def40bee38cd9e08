using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>What is worth saying beside the limits.</summary>
internal static class SeedRowFindings
{
    // Manitoba Agriculture pairs openers with these spreads (SOURCES.md, key MB-SBU); half as much again is worth a word, judgement.
    private const double WideSpread = 1.5;

    public static IEnumerable<Finding> Of(
        SeedRowQuestion row,
        IReadOnlyList<LimitJudgement> judged,
        LimitVerdict verdict,
        IReadOnlyList<string> unjudged,
        StandLoss? loss
    )
    {
        if (loss is { Verdict: LimitVerdict.Above, Expected: { } expected })
            yield return Finding.Stop(
                SeedRowCodes.StandLossAboveAccepted,
                $"The stand-loss model of {loss.Source.Publisher} lets expect {new Ratio(expected):F1} of the {CropNames.InPlural(row.Crop)} to be lost, where {new Ratio(loss.Accepted):0.##} are accepted."
            );
        foreach (var one in judged.Where(one => one.Verdict == LimitVerdict.Above))
            yield return Above(row, one);
        if (verdict == LimitVerdict.NoPublishedLimit)
            yield return Finding.Warning(
                SeedRowCodes.NoPublishedLimit,
                $"No source held here has a number for this case. That says nothing about whether the seed stands it. {Ask(row)}"
            );
        else if (unjudged.Count > 0)
            yield return Finding.Warning(
                SeedRowCodes.NutrientWithoutLimit,
                $"No limit held here has a number for these in this case, though they lie with the seed: {SeedRowWords.List(unjudged)}. {Ask(row)}"
            );
        // What is not placed with the seed is nothing to disagree about.
        foreach (
            var sources in judged
                .Where(one => one.Allowed is not null && one.Load.KilogramsPerSquareMetre > 0)
                .GroupBy(one => Kind(one.Limit.Nutrient))
                .Select(group => group.ToArray())
                .Where(Disagree)
        )
            yield return Finding.Warning(SeedRowCodes.SourcesDisagree, Differing(sources));
        if (row.Region is null && judged.Any(one => one.Limit.Source.Key != LimitSource.StatedKey && one.Load.KilogramsPerSquareMetre > 0))
            yield return Finding.Warning(
                SeedRowCodes.RegionNotStated,
                $"No region is stated, so limits of all regions are shown. Only one of your own region counts for you."
            );
        foreach (var product in SeedRowEvaluation.Unstated(row))
            yield return Finding.Warning(
                SeedRowCodes.NitrogenFormNotStated,
                $"The form of the nitrogen in {product.Name} is not stated, so all of it counts as urea."
            );
        foreach (var one in judged.Where(one => one.Basis is LimitBasis.StricterOfTwoCells or LimitBasis.WidestCell))
            yield return Finding.Note(SeedRowCodes.BetweenPublishedLimits, Between(one));
        foreach (var reduction in judged.Select(one => one.Reduction).OfType<StatedReduction>().Distinct())
            yield return Finding.Note(
                SeedRowCodes.LimitReduced,
                $"{reduction.Source.Publisher} ({reduction.Source.Place}): {reduction.Statement} That was done."
            );
        if (row.Opener is { } opener && Threshold.IsAbove(row.Spread.Metres, Usual(opener).Metres * WideSpread))
            yield return Finding.Note(
                SeedRowCodes.SpreadUnusual,
                $"Manitoba Agriculture pairs a {SeedRowWords.Of(opener)} with a spread of {Usual(opener)}; you state {row.Spread}. Measure it in the field: a wider spread lets limits look higher."
            );
    }

    private static Sentence Ask(SeedRowQuestion row) =>
        $"Ask {SeedRowWords.WhomToAsk(row.Region)}, the supplier of the product or a licensed adviser, and state what they allow as a limit of your own.";

    // A limit of a place that the caller did not name may not be theirs, so it warns and does not forbid.
    private static Finding Above(SeedRowQuestion row, LimitJudgement one)
    {
        Sentence source = $"{one.Limit.Source.Publisher} ({one.Limit.Source.Place}, {one.Limit.Source.Edition})";
        Sentence detail = one.AllowsNone
            ? (Sentence)
                $"{source} allows no {SeedRowWords.Of(one.Limit.Nutrient)} with the seed of {CropNames.InPlural(row.Crop)} here; {one.Load} would lie there."
            : $"{source} allows {one.Allowed!.Value} of {SeedRowWords.Of(one.Limit.Nutrient)} with the seed of {CropNames.InPlural(row.Crop)} here; {one.Load} would lie there, {one.Excess} too much.";
        return row.Region is null && one.Limit.Source.Key != LimitSource.StatedKey
            ? Finding.Warning(SeedRowCodes.AbovePublishedLimit, detail)
            : Finding.Stop(SeedRowCodes.AbovePublishedLimit, detail);
    }

    // What limits urea nitrogen under one name or another is the same question.
    private static LimitedNutrient Kind(LimitedNutrient nutrient) =>
        nutrient switch
        {
            LimitedNutrient.UreaAndSulfateNitrogen or LimitedNutrient.NitrogenBesidePhosphates => LimitedNutrient.UreaNitrogen,
            _ => nutrient,
        };

    private static bool Disagree(LimitJudgement[] sources)
    {
        var rates = sources.Select(one => one.Allowed!.Value.KilogramsPerSquareMetre).ToArray();
        return Threshold.IsAbove(rates.Max(), rates.Min());
    }

    private static Sentence Differing(LimitJudgement[] sources)
    {
        var ordered = sources.OrderBy(one => one.Allowed!.Value.KilogramsPerSquareMetre).ToArray();
        var (strictest, loosest) = (ordered[0], ordered[^1]);
        return $"Sources do not agree on {SeedRowWords.Of(Kind(strictest.Limit.Nutrient))}: {strictest.Limit.Source.Publisher} ({strictest.Limit.Source.Place}) allows {strictest.Allowed!.Value}, {loosest.Limit.Source.Publisher} ({loosest.Limit.Source.Place}) {loosest.Allowed!.Value}. All are shown; go by the stricter one.";
    }

    private static Sentence Between(LimitJudgement one) =>
        one.Basis == LimitBasis.StricterOfTwoCells
            ? $"{one.Limit.Source.Publisher} prints no number for this geometry. It makes its limit a function of seedbed utilisation: {one.Cells[0].Rate.Rate} at a {one.Cells[0].Geometry}, {one.Cells[1].Rate.Rate} at a {one.Cells[1].Geometry}. The stricter one is taken; nothing is interpolated."
            : (Sentence)
                $"{one.Limit.Source.Publisher} prints no number for so wide a spread. The one of its widest, {one.Cells[0].Rate.Rate} at a {one.Cells[0].Geometry}, is taken; nothing is extrapolated.";

    private static Length Usual(Opener opener) =>
        new(
            UnitTable
                .Get("in")
                .Canonical(
                    opener switch
                    {
                        Opener.DoubleDisc or Opener.Disc or Opener.Knife => 1,
                        Opener.Spoon or Opener.Hoe => 2,
                        _ => 3,
                    }
                )
        );
}
