using System.Text.Json;
using CalibrationApi.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.SeedRowLimits;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Plans;

/// <summary>Works out rates and set-up of a stored plan with the records and the values in force of this moment.</summary>
internal static class SetUpOfPlan
{
    private static readonly SeedRowLimitRequestValidator SeedRowRules = new();

    /// <summary>Computes rates and set-up of a stored plan.</summary>
    /// <remarks>
    /// One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each element
    /// reaches its rate at the planned ground speeds; area per hour; what is placed with the seed against published limits; and what
    /// a new lot means for the value in force. What cannot be computed yet is listed under open, with what to add; the rest is
    /// answered all the same. Computed anew with each call; nothing is stored.
    /// </remarks>
    /// <param name="id">Id of the plan.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the plan and its records.</param>
    /// <response code="200">Rates and set-up, and what is still open.</response>
    public static Results<JsonAnswer<PlanSetUpAnswer>, ProblemResult> Handle(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null)
    {
        using var connection = database.Open();
        if (new DescribedRecordStore(RecordKind.Plans).Find(connection, workspace, id) is not { } record)
            return Pages.NotFound();
        var plan = (PlanRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(PlanRequest)))!;
        var records = new ReferredRecords(connection, workspace);
        var field = PlannedField.Read(plan, records, units);
        var open = new List<ProblemError>([.. records.Errors, .. field.RateErrors]);
        var setUp = new MeterSetUp(field, connection, workspace, units, open);
        MeterSetUpAnswer[] meters = [.. field.Meters.Select(setUp.Of)];
        var seedRow = SeedRow(field, units, open);
        var obstacles = Obstacles(meters, field, seedRow).ToArray();
        return JsonAnswer.Of(new PlanSetUpAnswer
        {
            Headline = Headline(obstacles, open.Count),
            NothingInTheWay = obstacles.Length == 0 && open.Count == 0,
            Meters = meters,
            Nutrients = field.Nutrients,
            SeedRow = seedRow,
            Open = [.. open.Select(one => new OpenPointOfPlan { Pointer = one.Pointer!, Kind = Words.Of(KindOf(one.Code)), Detail = one.Detail })],
            Cautions = Cautions(meters, field, seedRow),
            EngineVersion = EngineVersion.Current,
        });
    }

    private static SeedRowLimitAnswer? SeedRow(PlannedField field, string? units, List<ProblemError> open)
    {
        PlannedMeter[] beside = [.. field.Meters.Where(meter => meter.Planned.WithSeed is true && meter.Product.Analysis is not null)];
        if (field.Plan.SeedRow is not { } row || field.Machine is not { } machine || beside.Length == 0)
            return null;
        var before = open.Count;
        if (machine.RowSpacing is null || machine.OpenerSpread is null)
            Add(open, nameof(PlanRequest.Machine), "What may lie with the seed depends on row spacing and on the spread of the opener. Add rowSpacing and openerSpread to the machine.");
        // Without the rate of one product the sum would look smaller than it is.
        foreach (var meter in beside.Where(meter => meter.Rate is null))
            Add(open, meter.Path(nameof(meter.Planned.TargetRate)), "What lies with the seed cannot be added up as long as this rate is open.");
        if (open.Count > before)
            return null;
        var (answer, errors) = Calculation.Ask(
            new SeedRowLimitRequest
            {
                Crop = row.Crop,
                Soil = row.Soil,
                Moisture = row.Moisture,
                Region = row.Region,
                RowSpacing = machine.RowSpacing,
                Spread = machine.OpenerSpread,
                Opener = machine.Opener,
                Products = [.. beside.Select(meter => new ProductWithSeed { Name = meter.Product.Name, Analysis = meter.Product.Analysis, NitrogenForm = meter.Product.NitrogenForm, Rates = [meter.Rate] })],
            },
            SeedRowRules,
            EvaluateSeedRowLimit.Evaluate,
            units);
        foreach (var error in errors)
            Add(open, nameof(PlanRequest.SeedRow), error.Detail, error.Code);
        return answer;
    }

    private static OpenKind KindOf(string code) => code switch
    {
        ErrorCode.ValueMissing => OpenKind.MissingValue,
        ErrorCode.IdUnknown or ErrorCode.RecordRetired or ErrorCode.RecordsAtOdds or ErrorCode.MeterNotOnMachine or ErrorCode.ElementNotInMeter => OpenKind.RecordAtOdds,
        _ => OpenKind.Refused,
    };

    private static void Add(List<ProblemError> open, string member, string detail, string code = ErrorCode.ValueMissing) =>
        open.Add(new ProblemError { Pointer = RequestFilter.Pointer(member), Code = code, Detail = detail });

    // What harms the crop comes first.
    private static IEnumerable<string> Obstacles(MeterSetUpAnswer[] meters, PlannedField field, SeedRowLimitAnswer? seedRow)
    {
        // Where no source has a number, somebody has to be asked before anything is placed with the seed.
        if (seedRow is not null && seedRow.Verdict != Words.Of(Engine.SeedRowLimits.LimitVerdict.Within))
            yield return seedRow.Headline;
        foreach (var meter in meters.Where(meter => meter.MeterSpeed?.Elements.FirstOrDefault(element => element.Name == meter.Element) is { Fits: false }))
            yield return $"{meter.Meter}: {meter.MeterSpeed!.Findings.FirstOrDefault(finding => finding.Detail.StartsWith(meter.Element, StringComparison.Ordinal))?.Detail ?? meter.MeterSpeed.Headline}";
        if (field.Nutrients is { MeetsTargets: false } nutrients)
            yield return nutrients.Headline;
        foreach (var meter in meters.Where(meter => meter.NewLot?.Verdict == Words.Of(Engine.NewLots.LotVerdict.TestNow)))
            yield return $"{meter.Meter}: {meter.NewLot!.Headline}";
    }

    private static string Headline(string[] obstacles, int open) => (obstacles.Length, open) switch
    {
        (0, 0) => "Every meter has its rate, its value and room for its speed. Go on with the catch plan.",
        (0, 1) => "One thing is still open; see open.",
        (0, _) => $"{open} things are still open; see open.",
        (1, 0) => obstacles[0],
        (_, 0) => $"{obstacles[0]} There is more to look at in the answer.",
        _ => $"{obstacles[0]} Besides, {(open == 1 ? "one thing is" : $"{open} things are")} still open; see open.",
    };

    private static CautionAnswer[] Cautions(MeterSetUpAnswer[] meters, PlannedField field, SeedRowLimitAnswer? seedRow) =>
    [
        .. (seedRow?.Cautions ?? [])
            .Concat(field.Nutrients?.Cautions ?? [])
            .Concat(meters.SelectMany(meter => (meter.SeedingRate?.Cautions ?? []).Concat(meter.NewLot?.Cautions ?? []).Concat(meter.MeterSpeed?.Cautions ?? [])))
            .DistinctBy(caution => (caution.Code, caution.Detail)),
    ];
}
