using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>What a field gets with the seed, against published limits; adds what cannot be told yet to the open points.</summary>
internal static class SeedRowSetUp
{
    /// <summary>The result, and the meters that it counts; null when nothing lies with the seed or it cannot be told.</summary>
    public static (SeedRowResult? Result, IReadOnlyList<MeterRate> Counted) Of(
        FieldSetUpQuestion question,
        FieldRates rates,
        List<OpenPoint> open
    )
    {
        MeterRate[] beside = [.. rates.Meters.Where(meter => meter.Meter.WithSeed && !meter.IsOff && !meter.Meter.IsSeed)];
        if (beside.Length == 0)
            return (null, []);
        if (question.SeedRow is not { } row)
        {
            open.Add(
                OpenPoint.Missing(
                    "seedRow",
                    $"A product is laid with the seed here. Add the seedRow to the plan, to compare it with published limits and your own."
                )
            );
            return (null, []);
        }

        var before = open.Count;
        if (question.RowSpacing is null || question.OpenerSpread is null)
            open.Add(
                OpenPoint.Missing(
                    "machine",
                    $"What may lie with the seed depends on row spacing and on the spread of the opener. Add rowSpacing and seedRowWidth to the machine."
                )
            );
        open.AddRange(beside.Where(meter => !meter.Meter.Product.BringsNutrients).Select(WithoutAnalysis));
        // Without one product or its rate the sum would look smaller than it is.
        if (open.Count > before || question.MetersLeftOut > 0 || Array.Exists(beside, meter => meter.Rate is null))
            return (null, []);
        if (row.Region is null)
            open.Add(
                OpenPoint.Missing(
                    "seedRow/region",
                    $"Limits of every region are shown as long as it is not known where the field lies. Add the region; where it is elsewhere, add localLimits from your own guidance."
                )
            );
        MeterRate[] counted = [.. InOneRow(question, beside)];
        var result = SeedRowEvaluation.Evaluate(
            new SeedRowQuestion
            {
                Crop = row.Crop,
                Soil = row.Soil,
                Moisture = row.Moisture,
                Region = row.Region,
                RowSpacing = question.RowSpacing!.Value,
                Spread = question.OpenerSpread!.Value,
                Opener = question.Opener,
                AcceptableStandLoss = row.AcceptableStandLoss,
                LocalLimits = row.LocalLimits,
                Products = [.. counted.Select(Placed)],
            }
        );
        open.AddRange(result.Findings.Select(finding => Unpublished(finding, result)).OfType<OpenPoint>());
        return (result, counted);
    }

    private static OpenPoint WithoutAnalysis(MeterRate meter) =>
        OpenPoint.Missing(
            meter.Meter.Member("product"),
            $"This product is laid with the seed, and its analysis is not known. Add it to the product; leave withSeed out if it holds no nutrients."
        );

    private static IEnumerable<MeterRate> InOneRow(FieldSetUpQuestion question, MeterRate[] beside) =>
        beside
            .GroupBy(meter => meter.Meter.Product.Key)
            .SelectMany(meters => new ProductOnField([.. meters], question.WorkingWidth).InOneRow());

    private static PlacedProduct Placed(MeterRate meter) =>
        new()
        {
            Name = meter.Meter.Product.Name,
            Analysis = NutrientAnalysis.Of(meter.Meter.Product.Analysis),
            NitrogenForm = meter.Meter.Product.NitrogenForm,
            Rates = [meter.Rate!.Value],
        };

    // Where nothing published speaks, nothing is forbidden either: somebody has to be asked, and the plan goes on meanwhile. The
    // headline names the crop and the place.
    private static OpenPoint? Unpublished(Finding finding, SeedRowResult result) =>
        finding.Code == SeedRowCodes.NoPublishedLimit ? NoNumber($"{result.Headline} Add what they allow as localLimits.")
        : finding.Code == SeedRowCodes.NutrientWithoutLimit ? NoNumber(finding.Detail)
        : null;

    private static OpenPoint NoNumber(Sentence detail) =>
        new(OpenKind.NoPublishedNumber, "seedRow/localLimits", detail, new SetUpPart(SetUpPartKind.SeedRow));
}
