using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plans;

/// <summary>Works out rates and set-up of a stored plan with the records and the values in force of this moment.</summary>
internal static class SetUpOfPlan
{
    /// <summary>Computes rates and set-up of a stored plan.</summary>
    /// <remarks>
    /// One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each element
    /// reaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against published limits; and what
    /// a new lot means for the value in force. What cannot be computed yet is listed under open, with what to add; the rest is
    /// answered all the same. Computed anew with each call; nothing is stored.
    /// </remarks>
    /// <param name="id">Id of the plan.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the plan and its records.</param>
    /// <response code="200">Rates and set-up, and what is still open.</response>
    public static Results<JsonAnswer<PlanSetUpAnswer>, ProblemResult> Handle(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null) =>
        database.Read<Results<JsonAnswer<PlanSetUpAnswer>, ProblemResult>>(connection => new RecordsReadOnce(connection, workspace).Find<PlanRequest>(RecordKind.Plans, id) is { } plan
            ? JsonAnswer.Of(Of(plan, connection, workspace, units))
            : Pages.NotFound());

    private static PlanSetUpAnswer Of(PlanRequest plan, SqliteConnection connection, Workspace workspace, string? units)
    {
        var records = new ReferredRecords(connection, workspace);
        var field = PlannedField.Read(plan, records, units);
        var open = new List<ProblemError>([.. records.Errors, .. field.RateErrors]);
        var setUp = new MeterSetUp(field, connection, workspace, units, open);
        MeterSetUpAnswer[] meters = [.. field.Meters.Select(setUp.Of)];
        var seedRow = SeedRowSetUp.Of(field, units, open);
        AddNutrients(field, open);
        var (fan, airInTheWay) = FanSetUp.Of(field, meters, units);
        var obstacles = Obstacles(meters, field, seedRow, airInTheWay).ToArray();
        return new PlanSetUpAnswer
        {
            Headline = Headline(obstacles, open),
            NothingInTheWay = obstacles.Length == 0 && open.Count == 0,
            InTheWay = obstacles,
            Meters = meters,
            Nutrients = field.Nutrients,
            SeedRow = seedRow,
            Fan = fan,
            Open = [.. open.Select(one => new OpenPointOfPlan { Pointer = one.Pointer!, Kind = Words.Of(KindOf(one.Code)), Detail = one.Detail })],
            Cautions = Cautions(meters, field, seedRow),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static OpenKind KindOf(string code) => code switch
    {
        ErrorCode.ValueMissing => OpenKind.MissingValue,
        ErrorCode.IdUnknown or ErrorCode.RecordRetired or ErrorCode.RecordsAtOdds or ErrorCode.MeterNotOnMachine or ErrorCode.ElementNotInMeter => OpenKind.RecordAtOdds,
        _ when SeedRowSetUp.IsUnpublished(code) => OpenKind.NoPublishedNumber,
        _ => OpenKind.Refused,
    };

    private static void AddNutrients(PlannedField field, List<ProblemError> open)
    {
        if (field.Plan.Nutrients is null)
            return;
        PlannedMeter[] bringing = [.. field.Meters.Where(meter => meter.Product.Analysis is not null)];
        if (bringing.Length == 0 && field.Meters.All(meter => meter.RateFrom != RateOrigin.Nutrients))
            Add("No product of this plan has a known analysis, so nothing supplies these nutrients. Add the analysis to a product, or leave the nutrients out.");
        // With one product to choose, or without any price, nothing is dearer than it has to be.
        if (bringing.Where(meter => meter.RateFrom == RateOrigin.Nutrients).DistinctBy(meter => meter.Planned.Product).Count() > 1
            && bringing.Any(meter => meter.Product.Price is not null) && !PlannedField.PricesCompare(bringing))
            Add("The rates are those of least total mass, not of least cost, because not all products have a price in one currency. Give each product of known analysis such a price.");

        void Add(string detail) => open.Add(new ProblemError { Pointer = RequestFilter.Pointer(nameof(PlanRequest.Nutrients)), Code = ErrorCode.ValueMissing, Detail = detail });
    }

    // A rate that no meter can reach comes first, because the field cannot be sown so at all; then what kills seed, then what only makes it uneven.
    private static IEnumerable<ObstacleOfPlan> Obstacles(MeterSetUpAnswer[] meters, PlannedField field, SeedRowLimitAnswer? seedRow, ObstacleOfPlan? airInTheWay)
    {
        var outside = meters
            .Select(meter => (Meter: meter, Element: meter.MeterSpeed?.Elements.FirstOrDefault(element => element.Name == meter.Element)!))
            .Where(one => one.Element is { Fits: false })
            .OrderBy(one => one.Element.Room?.Value)
            .ToLookup(one => FallsShort(one.Element), one => one.Meter);
        foreach (var meter in outside[true])
            yield return OutsideWindow(meter, ofSide => ofSide[^1]);
        if (seedRow is not null && SeedRowSetUp.IsAbove(seedRow))
            yield return new ObstacleOfPlan { Detail = seedRow.Headline };
        foreach (var meter in outside[false])
            yield return OutsideWindow(meter, ofSide => ofSide[0]);
        if (airInTheWay is not null)
            yield return airInTheWay;
        if (field.Nutrients is { MeetsTargets: false } nutrients)
            yield return new ObstacleOfPlan { Detail = nutrients.Headline };
        foreach (var meter in meters.Where(meter => meter.NewLot?.Verdict == Words.Of(Engine.NewLots.LotVerdict.TestNow)))
            yield return new ObstacleOfPlan { Meter = meter.Meter, Detail = meter.NewLot!.Headline };
    }

    // Above the highest rate of a window somewhere; otherwise it only turns too slowly.
    private static bool FallsShort(ElementAnswer element) => element.Corners.Any(corner => !corner.WithinLimits
        && element.RateWindows.Any(window => window.GroundSpeed.Value == corner.GroundSpeed.Value && window.Maximum?.Value < corner.Rate.Value));

    // The finding of the slow side stands before that of the fast one.
    private static ObstacleOfPlan OutsideWindow(MeterSetUpAnswer meter, Func<FindingAnswer[], FindingAnswer> chosen)
    {
        FindingAnswer[] found = [.. meter.MeterSpeed!.Findings
            .Where(finding => finding.Code == FindingCode.OutsideMeterWindow && finding.Detail.StartsWith($"{meter.Element}: ", StringComparison.Ordinal))];
        return new ObstacleOfPlan { Meter = meter.Meter, Detail = found.Length == 0 ? meter.MeterSpeed.Headline : chosen(found).Detail };
    }

    private static string Headline(ObstacleOfPlan[] obstacles, List<ProblemError> open)
    {
        if (obstacles.Length == 0)
        {
            return open switch
            {
                [] => "Every meter has its rate, its value and room for its speed. Go on with the catch plan.",
                [var only] => $"One thing is still open: {only.Detail}",
                [var first, ..] => $"{open.Count} things are still open. The first: {first.Detail}",
            };
        }

        var lead = obstacles[0] is { Meter: { } meter } ? $"{meter}: {obstacles[0].Detail}" : obstacles[0].Detail;
        return (obstacles.Length - 1, open.Count) switch
        {
            (0, 0) => lead,
            (var more, 0) => $"{lead} {Things(more)} more in the way; see inTheWay.",
            (0, var still) => $"{lead} Besides, {Things(still)} still open; see open.",
            (var more, var still) => $"{lead} {Things(more)} more in the way, and {Things(still)} still open; see inTheWay and open.",
        };
    }

    private static string Things(int count) => count == 1 ? "1 thing is" : $"{count} things are";

    private static CautionAnswer[] Cautions(MeterSetUpAnswer[] meters, PlannedField field, SeedRowLimitAnswer? seedRow) =>
    [
        .. (seedRow?.Cautions ?? [])
            .Concat(field.Nutrients?.Cautions ?? [])
            .Concat(meters.SelectMany(meter => (meter.SeedingRate?.Cautions ?? []).Concat(meter.NewLot?.Cautions ?? []).Concat(meter.MeterSpeed?.Cautions ?? [])))
            .DistinctBy(caution => (caution.Code, caution.Detail)),
    ];
}
