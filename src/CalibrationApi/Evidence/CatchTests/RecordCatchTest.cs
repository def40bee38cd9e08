using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.History;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Keeps a catch test as evidence, evaluated.</summary>
internal static class RecordCatchTest
{
    private static readonly CatchTestRequestValidator Needs = new();

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
        TimeProvider clock
    )
    {
        var request = body.Value;
        var storing = new StoringRequest(context);
        var (joined, known, answered) = database.Read(connection => Join(new WorkspaceReader(connection, workspace), storing, body));
        if (joined is null)
            return answered!;

        var units = CatchTestMapping.UnitsFor(joined.Question, null).PointingInto(typeof(CatchTestRequest));
        var test = CatchTestMapping.ToEngine(joined.Question);
        var outcome = CatchTestEvaluation.Evaluate(test);
        if (!outcome.IsAnswered)
        {
            Evaluations.Count(CatchTestCalculation.Declaration.Name, Evaluations.Refused);
            return ProblemResult.Refused(outcome.Refusals, units.Display);
        }

        var answer = CatchTestMapping.ToAnswer(joined.Question, outcome.Result, units);
        Evaluations.Count(CatchTestCalculation.Declaration.Name, answer.Verdict);
        var kept = new CatchTestContext
        {
            UsedHistory = joined.Used,
            Findings = units.With([.. request.Conditions?.Units() ?? []]).Findings(joined.Findings),
        };
        var record = new CatchTestRecord
        {
            Id = request.Id ?? RecordId.New(clock),
            Series = joined.Series,
            Lot = request.Lot,
            Scale = request.Scale!,
            Plan = request.Plan,
            Verdict = answer.Verdict,
            Value = outcome.Result.Estimate.Value.Value,
            Random = outcome.Result.Estimate.WithoutSpan,
            OccurredAt = EnteredInstant.Read(request.OccurredAt!),
            ReceivedAt = clock.GetUtcNow(),
            Entered = body.Entered,
            Resolved = KeptJson.Of(joined.Question),
            Answer = KeptJson.Of(answer),
            Context = KeptJson.Of(kept),
            EngineVersion = EngineVersion.Current,
            Fingerprint = body.Fingerprint,
            Catches = Rows(joined.Question, test, outcome.Result),
        };
        // Written here, beside others, and not where everybody queues.
        var usual = CatchTestRecords.Write(record, kept, joined.TimeZone, known);
        return await CatchTestRecords.All.StoreAsync(
            storing,
            workspace,
            body,
            record,
            line => Complete(line, request, record, outcome.Result, answer),
            reader =>
                request.Supersedes is null && !reader.IsMoreKnownSince(joined.KnownUpTo)
                    ? usual
                    : CatchTestRecords.Write(record, kept, joined.TimeZone, SinceThen(reader, joined, request, record.Id))
        );
    }

    private static IReadOnlyList<Finding> SinceThen(
        WorkspaceReader reader,
        JoinedTest joined,
        RecordCatchTestRequest request,
        string? id
    ) =>
        CatchTestRecords.SinceThen(
            reader,
            new(id, joined.Series, request.Scale!, EnteredInstant.Read(request.OccurredAt!)),
            joined.Used,
            joined.Findings.Any(finding => finding.Code == HistoryCodes.BasisSuperseded)
        );

    private static (JoinedTest? Joined, IReadOnlyList<Finding> Known, IResult? Answered) Join(
        WorkspaceReader reader,
        StoringRequest storing,
        JsonBody<RecordCatchTestRequest> body
    )
    {
        if (CatchTestRecords.All.Earlier(storing, reader, body) is { } earlier)
            return (null, [], earlier);
        var (joined, errors) = JoinedTest.Of(reader, body.Value);
        if (joined is null)
            return (null, [], ProblemResult.Invalid(errors));

        // What was sent and what the records say was looked at when it came. Only together may they lack what a record could give,
        // such as the pulses per revolution of the meter.
        if (Needs.Validate(joined.Question) is { IsValid: false } broken)
            return (null, [], ProblemResult.Invalid([.. RequestFilter.Errors(broken).Select(AtItsRecord)]));
        joined = joined.WithEarlierTest(reader, body.Value);
        return (joined, SinceThen(reader, joined, body.Value, id: null), null);
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

    private static CatchRow[] Rows(CatchTestRequest question, CatchTestQuestion test, CatchTestResult result) =>
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

    private static HistoryEntry Complete(
        HistoryEntry line,
        RecordCatchTestRequest request,
        CatchTestRecord record,
        CatchTestResult result,
        CatchTestAnswer answer
    ) =>
        line with
        {
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
        };
}
