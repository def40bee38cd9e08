using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>Fertilizer placed with the seed against published limits.</summary>
public static class SeedRowEvaluation
{
    private static readonly LimitedNutrient[] Told =
    [
        LimitedNutrient.Nitrogen,
        LimitedNutrient.UreaNitrogen,
        LimitedNutrient.Phosphate,
        LimitedNutrient.Potash,
        LimitedNutrient.NitrogenPlusPotash,
        LimitedNutrient.Sulfur,
    ];

    /// <summary>Evaluates <paramref name="row"/>.</summary>
    /// <param name="row">At least one product; spread and row spacing above 0.</param>
    /// <remarks>
    /// <para>Formula: load = sum over products of rate times share, kg/m2, against the printed limit times what a reduction leaves. The sum
    /// over products counts, and the zone with the heaviest load. A limit is used for its own crop, place, soil, moisture and geometry
    /// only; what a source does not print has no number here. Where a source makes its limit a function of seedbed utilisation, the
    /// stricter of the two nearest printed numbers is taken. Beside the tables stands the stand-loss model of South Dakota, judged there
    /// and shown elsewhere (<see cref="StandLoss"/>). .</para>
    /// <para>Range: rates at least 0; a spread not wider than the rows. Nothing placed is within.</para>
    /// <para>Source: each limit names its own (SOURCES.md, key MB-SBU and the others of <see cref="PublishedLimits"/>); the loss
    /// of stand key SDSU-MODEL.</para>
    /// <para>Accuracy: every printed limit that was read is looked up as printed, or the table of cases says why not (SeedRowTradeTests);
    /// verdicts at, under and above it (SeedRowVerdictTests); losses within 1e-12 (StandLossTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No product, products with different zones, or a spread wider than the row spacing.</exception>
    public static SeedRowResult Evaluate(SeedRowQuestion row)
    {
        var utilisation = PublishedSeedRowLimits.SeedbedUtilisation.Of(row.Spread, row.RowSpacing);
        var load = SeedRowLoad.Of(row.Products);
        LimitJudgement[] judged =
        [
            .. Candidates(row)
                .Select(limit => LimitJudgement.Of(limit, row, load))
                .OrderBy(one => Rank(one.Verdict))
                .ThenByDescending(one => one.Used)
                .ThenByDescending(one => one.Load.KilogramsPerSquareMetre),
        ];
        var loss = StandLoss.Of(row);
        var verdict =
            load.IsNothing ? LimitVerdict.Within
            : judged.Any(one => one.Verdict == LimitVerdict.Above) || loss?.Verdict == LimitVerdict.Above ? LimitVerdict.Above
            : judged.Any(one => one.Verdict == LimitVerdict.Within && one.Load.KilogramsPerSquareMetre > 0)
            || loss?.Verdict == LimitVerdict.Within
                ? LimitVerdict.Within
            : LimitVerdict.NoPublishedLimit;
        var unjudged =
            loss?.Verdict == LimitVerdict.Within
                ? []
                : load.NotCountedBy([
                    .. judged
                        .Where(one => one.Allowed is not null)
                        .SelectMany(one => one.Limit.LeavesOut.Append(one.Limit.Nutrient))
                        .Distinct(),
                ]);
        return new SeedRowResult
        {
            Headline = SeedRowSentences.Headline(row, verdict, judged, unjudged, loss),
            Verdict = verdict,
            SeedbedUtilisation = utilisation,
            Loads =
            [
                .. Told.Select(nutrient => (nutrient, worst: load.Worst(nutrient)))
                    .Select(each => new NutrientLoad(each.nutrient, each.worst.Load, each.worst.Zone)),
            ],
            Limits = judged,
            StandLoss = loss,
            Reductions = [.. PublishedLimits.Reductions.Where(reduction => IsOf(reduction.Source, row) && row.IsUnder(reduction))],
            Assumptions =
            [
                .. StandLoss.Assumptions(row, loss),
                .. row
                    .Products.Index()
                    .Where(product => IsUnstated(product.Item))
                    .Select(product => new Assumption(
                        "nitrogenForm",
                        null,
                        $"The form of the nitrogen in {product.Item.Name} is not stated. It is counted as urea, which harms most: judgement."
                    )
                    {
                        Member = string.Create(CultureInfo.InvariantCulture, $"products/{product.Index}/nitrogenForm"),
                        Word = "urea",
                    }),
            ],
            Findings = [.. SeedRowFindings.Of(row, judged, verdict, unjudged, loss)],
            Cautions = SeedRowSentences.Cautions,
        };
    }

    /// <summary>Products with nitrogen of a form that is not stated.</summary>
    internal static IEnumerable<PlacedProduct> Unstated(SeedRowQuestion row) => row.Products.Where(IsUnstated);

    private static bool IsUnstated(PlacedProduct product) => product is { NitrogenForm: null, Analysis.N: > 0 };

    private static IEnumerable<PublishedLimit> Candidates(SeedRowQuestion row) =>
        [
            .. PublishedLimits.All.Where(limit => limit.Crops.Contains(row.Crop) && IsOf(limit.Source, row)),
            .. row.LocalLimits.Select(limit => Stated(limit, row.Crop)),
        ];

    private static bool IsOf(LimitSource source, SeedRowQuestion row) =>
        (row.Region is not { } region || source.Regions.Contains(region)) && (row.Sources is null || row.Sources.Contains(source.Word));

    // Stated for this very case, so nothing is left to look up.
    private static PublishedLimit Stated(LocalLimit limit, Crop crop) =>
        new()
        {
            Source = new LimitSource(
                LimitSource.StatedKey,
                limit.Source,
                "stated with the question",
                null,
                "your field",
                Enum.GetValues<Region>(),
                null
            ),
            Crops = [crop],
            Nutrient = limit.Nutrient,
            Soils = SoilLimit.Any(new AnyOpener(limit.Rate, "as stated with the question")),
            Conditions = "Its conditions are not known here.",
        };

    private static int Rank(LimitVerdict verdict) =>
        verdict switch
        {
            LimitVerdict.Above => 0,
            LimitVerdict.Within => 1,
            _ => 2,
        };
}
