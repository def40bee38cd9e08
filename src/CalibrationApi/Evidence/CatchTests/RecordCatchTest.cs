using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Evidence.Superseding;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Plumbing.Storing;
using CalibrationApi.Storage;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Writing;
using FluentValidation;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Keeps a catch test as evidence, evaluated.</summary>
internal static class RecordCatchTest
{
    public const string Kind = "catch-test";

    /// <summary>Records a catch test.</summary>
    /// <remarks>
    /// Machine, product, lot, scale and plan come from their records, the repeatability, the day-to-day component, the error of
    /// the scale and the value in force from the history where it has them; the answer says what was used. The test is kept with
    /// its full question, so that it can be evaluated again at any time. A wrong test is superseded by another with a reason.
    /// Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
    /// </remarks>
    /// <param name="body">The catches, and which machine, meter, element, product and scale they belong to.</param>
    /// <response code="200">The record that this id already had, from an equal request.</response>
    /// <response code="201">The stored test.</response>
    public static async Task<IResult> HandleAsync(
        JsonBody<RecordCatchTestRequest> body,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        TimeProvider clock,
        IValidator<CatchTestRequest> questions
    )
    {
        var request = body.Value;
        var storing = new StoringRequest(context);
        var (resolution, answered) = database.Read(connection => Resolve(connection, workspace, storing, body, questions));
        if (resolution is null)
            return answered!;

        var units = CatchTestMapping.UnitsFor(resolution.Question, null);
        var test = CatchTestMapping.ToEngine(resolution.Question);
        var outcome = CatchTestEvaluation.Evaluate(test);
        if (!outcome.IsAnswered)
        {
            Evaluations.Count(CatchTestCalculation.Declaration.Name, Evaluations.Refused);
            return ProblemResult.Refused(outcome.Refusals, units.Display);
        }

        var answer = CatchTestMapping.ToAnswer(resolution.Question, outcome.Result, units);
        Evaluations.Count(CatchTestCalculation.Declaration.Name, answer.Verdict);
        var record = new CatchTestRecord
        {
            Id = request.Id ?? RecordId.New(clock),
            Series = resolution.Series,
            Lot = request.Lot,
            Scale = request.Scale!,
            Plan = request.Plan,
            Verdict = answer.Verdict,
            Value = outcome.Result.Estimate.Value.Value,
            Random = Math.Sqrt(outcome.Result.Estimate.VarianceWithoutSpan),
            OccurredAt = EnteredInstant.Read(request.OccurredAt!),
            ReceivedAt = clock.GetUtcNow(),
            Entered = body.Entered,
            Resolved = KeptJson.Of(resolution.Question),
            Answer = KeptJson.Of(answer),
            Context = CatchTestRecordBody.Context(resolution, units.Display.With([.. request.Conditions?.Units() ?? []])),
            EngineVersion = EngineVersion.Current,
            Fingerprint = body.Fingerprint,
            Catches = Rows(resolution.Question, test, outcome.Result),
        };
        var history = Entry(request, record, outcome.Result, answer);
        // Written here, beside others, and not where everybody queues.
        var usual = CatchTestRecordBody.Write(record, resolution.TimeZone, null, [], null);
        var isBasisKnown = resolution.Findings.Any(finding => finding.Code == FindingCode.BasisSuperseded);
        return await storing.RunAsync(body.Fingerprint, connection =>
            Store(connection, workspace, request.Id, record, history, request.Supersedes, () =>
            {
                var sinceThen = CatchTestRecordBody.SinceThen(connection, workspace, record, resolution.Used, isBasisKnown);
                return sinceThen.Count == 0 ? usual : CatchTestRecordBody.Write(record, resolution.TimeZone, null, sinceThen, null);
            })
        );
    }

    private static (CatchTestResolution? Resolution, IResult? Answered) Resolve(
        SqliteConnection connection,
        Workspace workspace,
        StoringRequest storing,
        JsonBody<RecordCatchTestRequest> body,
        IValidator<CatchTestRequest> questions
    )
    {
        if (
            storing.Earlier(connection, body.Fingerprint, () => Earlier(connection, workspace, body.Value.Id, body.Fingerprint)) is
            { } earlier
        )
            return (null, earlier);
        var (resolution, errors) = CatchTestResolution.Of(connection, workspace, body.Value);
        if (resolution is null)
            return (null, ProblemResult.Invalid(errors));

        // The joined question may lack what only a record could give, such as the pulses per revolution of the meter.
        return questions.Validate(resolution.Question) is { IsValid: false } broken
            ? (null, ProblemResult.Invalid([.. RequestFilter.Errors(broken).Select(AtItsRecord)]))
            : (resolution.WithEarlierTest(connection, workspace, body.Value), null);
    }

    // What only a record can give is told at the member that names the record.
    private static ProblemError AtItsRecord(ProblemError error) =>
        error.Pointer switch
        {
            "#/pulsesPerRevolution" or "#/meterRevolutionsPerTurn" => new ProblemError
            {
                Pointer = "#/meter",
                Code = error.Code,
                Detail = error.Detail + " They belong to the meter in the record of the machine.",
            },
            "#/product/bulkDensity" => new ProblemError
            {
                Pointer = "#/product",
                Code = error.Code,
                Detail = error.Detail + " It belongs to the record of the product or of the lot.",
            },
            _ => error,
        };

    private static StoreOutcome? Earlier(SqliteConnection connection, Workspace workspace, string? id, string fingerprint)
    {
        if (id is null || CatchTestStore.Find(connection, workspace, id) is not { } earlier)
            return null;
        return earlier.Fingerprint == fingerprint
            ? StoreOutcome.Replayed(GetCatchTest.Stored(connection, workspace, earlier))
            : Correction.IdTaken();
    }

    private static StoreOutcome Store(
        SqliteConnection connection,
        Workspace workspace,
        string? ownId,
        CatchTestRecord record,
        HistoryEntry history,
        Supersedes? supersedes,
        Func<byte[]> write
    )
    {
        if (Earlier(connection, workspace, ownId, record.Fingerprint) is { } earlier)
            return earlier;
        if (
            supersedes is not null
            && Correction.Supersede(connection, workspace, Kind, supersedes, record.Id, record.ReceivedAt, id =>
                CatchTestStore.Find(connection, workspace, id) is not null
            )
                is { } problem
        )
            return problem;
        CatchTestStore.Insert(connection, workspace, record);
        HistoryStore.Append(connection, workspace, history);
        var body = write();
        return StoreOutcome.Stored(
            new StoredAnswer(StatusCodes.Status201Created, $"/v1/catch-tests/{record.Id}", RecordResult.Tag(body), body)
        );
    }

    private static CatchRow[] Rows(CatchTestRequest question, CatchTest test, CatchTestResult result) =>
        [
            .. result.Catches.Select(
                (one, i) =>
                {
                    var entered = question.Catches![i]!;
                    var unit = Engine.Quantities.UnitTable.Get((entered.Net ?? entered.Gross)!.Unit!);
                    return new CatchRow(
                        one.ExcludedBecause is null,
                        unit.FromCanonical(one.Net.Kilograms),
                        unit.Symbol,
                        one.Net.Kilograms,
                        one.Revolutions.Count,
                        one.MassPerRevolution.KilogramsPerRevolution,
                        CatchVariance.Of(test, test.Catches[i])
                    );
                }
            ),
        ];

    private static HistoryEntry Entry(
        RecordCatchTestRequest request,
        CatchTestRecord record,
        CatchTestResult result,
        CatchTestAnswer answer
    ) =>
        new()
        {
            Kind = Kind,
            Record = record.Id,
            Machine = record.Series.Machine,
            Meter = record.Series.Meter,
            Element = record.Series.Element,
            Setting = request.Setting,
            Product = record.Series.Product,
            Lot = record.Lot,
            Scale = record.Scale,
            Plan = record.Plan,
            Verdict = record.Verdict,
            Value = record.Value,
            Expanded = result.Estimate.Value.ExpandedUncertainty,
            Change = result.Change?.Delta.Value,
            EnteredUnit = answer.MassPerRevolution.Unit,
            RecordedBy = request.RecordedBy,
            OccurredAt = record.OccurredAt,
            ReceivedAt = record.ReceivedAt,
            Supersedes = request.Supersedes?.Record,
            Reason = request.Supersedes?.Reason,
        };
}
