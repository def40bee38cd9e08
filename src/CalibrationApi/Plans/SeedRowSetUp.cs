using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Http;

namespace CalibrationApi.Plans;

/// <summary>What a plan lays with the seed, against published limits; adds what cannot be told yet to the open points.</summary>
internal static class SeedRowSetUp
{
    private static readonly RequestValidator<SeedRowLimitRequest> SeedRowRules = new(TimeProvider.System);

    /// <summary>The answer; null when nothing lies with the seed or it cannot be told.</summary>
    public static SeedRowLimitAnswer? Of(PlannedField field, string? units, List<ProblemError> open)
    {
        PlannedMeter[] beside = [.. field.Meters.Where(meter => meter.Planned.WithSeed is true && !meter.IsOff && !IsSeed(meter))];
        if (beside.Length == 0)
            return null;
        if (field.Plan.SeedRow is not { } row)
        {
            Add(open, nameof(PlanRequest.SeedRow), "A product is laid with the seed here. Add the seedRow to the plan, to compare it with published limits and your own.");
            return null;
        }

        var before = open.Count;
        if (field.Machine!.RowSpacing is null || field.Machine.OpenerSpread is null)
            Add(open, nameof(PlanRequest.Machine), "What may lie with the seed depends on row spacing and on the spread of the opener. Add rowSpacing and openerSpread to the machine.");
        foreach (var meter in beside.Where(meter => meter.Product.Analysis is null))
            Add(open, meter.Path(nameof(meter.Planned.Product)), "This product is laid with the seed, and its analysis is not known. Add it to the product; leave withSeed out if it holds no nutrients.");
        // Without one product or its rate the sum would look smaller than it is.
        if (open.Count > before || field.Meters.Count < field.Plan.Meters!.Count || Array.Exists(beside, meter => meter.Rate is null))
            return null;
        if (row.Region is null)
            Add(open, $"{nameof(PlanRequest.SeedRow)}.{nameof(row.Region)}", "Limits of every region are shown as long as it is not known where the field lies. Add the region; where it is elsewhere, add localLimits from your own guidance.");
        var (answer, errors) = Calculation.Ask(
            new SeedRowLimitRequest
            {
                Crop = row.Crop,
                Soil = row.Soil,
                Moisture = row.Moisture,
                Region = row.Region,
                RowSpacing = field.Machine.RowSpacing,
                Spread = field.Machine.OpenerSpread,
                Opener = field.Machine.Opener,
                AcceptableStandLoss = row.AcceptableStandLoss,
                LocalLimits = row.LocalLimits,
                Products = [.. beside.GroupBy(meter => meter.Planned.Product).SelectMany(meters => new PlannedProduct([.. meters], field.Machine.WorkingWidth).InOneRow()).Select(Placed)],
            },
            SeedRowRules,
            SeedRowLimitCalculation.Declaration.Ask,
            units);
        foreach (var error in errors)
            Add(open, nameof(PlanRequest.SeedRow), error.Detail, error.Code);
        // Where nothing published speaks, nothing is forbidden either: somebody has to be asked, and the plan goes on meanwhile.
        foreach (var finding in answer?.Findings.Where(finding => IsUnpublished(finding.Code)) ?? [])
        {
            // The headline names the crop and the place.
            var detail = finding.Code == FindingCode.NoPublishedLimit ? $"{answer!.Headline} Add what they allow as localLimits." : finding.Detail;
            Add(open, $"{nameof(PlanRequest.SeedRow)}.{nameof(row.LocalLimits)}", detail, finding.Code);
        }

        return answer;
    }

    /// <summary>More lies with the seed than a limit allows.</summary>
    public static bool IsAbove(SeedRowLimitAnswer answer) => answer.Verdict == Words.Of(LimitVerdict.Above);

    /// <summary>True of what no published number settles.</summary>
    public static bool IsUnpublished(string code) => code is FindingCode.NoPublishedLimit or FindingCode.NutrientWithoutLimit;

    // Seed is laid with the seed by nature; nobody needs its analysis.
    private static bool IsSeed(PlannedMeter meter) => meter.Product.Analysis is null && (meter.Planned.Stand is not null || meter.Lot?.ThousandKernelMass is not null);

    private static ProductWithSeed Placed(PlannedMeter meter) =>
        new() { Name = meter.Product.Name, Analysis = meter.Product.Analysis, NitrogenForm = meter.Product.NitrogenForm, Rates = [meter.Rate] };

    private static void Add(List<ProblemError> open, string member, string detail, string code = ErrorCode.ValueMissing) =>
        open.Add(new ProblemError { Pointer = RequestFilter.Pointer(member), Code = code, Detail = detail });
}
