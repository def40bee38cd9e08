using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Records.Referring;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage;
using CalibrationApi.Storage.ScaleChecks;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>Keeps a check of a scale, evaluated.</summary>
internal static class RecordScaleCheck
{
    /// <summary>Records a check of a scale against known masses.</summary>
    /// <remarks>
    /// The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit.
    /// After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id,
    /// to be able to repeat the request safely.
    /// </remarks>
    /// <param name="body">The readings of known masses.</param>
    /// <response code="200">The record that this id already had, from an equal request.</response>
    /// <response code="201">The stored check.</response>
    public static async Task<IResult> HandleAsync(
        JsonBody<ScaleCheckRequest> body,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        TimeProvider clock
    )
    {
        var request = body.Value;
        var storing = new StoringRequest(context);
        var (scale, answered) = database.Read(connection => Read(storing, new WorkspaceReader(connection, workspace), body));
        if (scale is null)
            return answered!;

        var result = ScaleCheckEvaluation.Evaluate(
            new(
                ScaleMapping.Read(scale.OfTest()),
                [
                    .. request.Readings!.Select(one => new KnownMassReading(
                        one!.Known!.Read(),
                        one.Indicated!.Read(),
                        MassQuantity.Read(one.KnownUncertainty) ?? new Mass(0)
                    )),
                ]
            )
        );
        if (!result.IsKnowledge)
            return ProblemResult.Invalid([
                new ProblemError
                {
                    Pointer = "#/readings",
                    Code = ErrorCodes.NumberOutOfRange,
                    Detail = DisplayUnits.Metric.Write(ScaleCheckResult.NoKnowledge),
                },
            ]);
        var units = AnswerUnits.For(null, Quantity.UnitOf(request.Readings![0]!.Known));
        var record = new ScaleCheckRecord
        {
            Id = request.Id ?? RecordId.New(clock),
            Scale = request.Scale!,
            Error = result.Error,
            Uncertainty = result.StandardUncertainty,
            Passed = result.Verdict == ScaleVerdict.Passed,
            OccurredAt = EnteredInstant.Read(request.OccurredAt!),
            ReceivedAt = clock.GetUtcNow(),
            Body = body.Entered,
            Answer = KeptJson.Of(ScaleCheckOutcome.Of(result, units)),
            Fingerprint = body.Fingerprint,
        };
        return await ScaleCheckRecords.All.StoreAsync(storing, workspace, body, record, line =>
            line with
            {
                Scale = record.Scale,
                Verdict = Words.Of(result.Verdict),
                Value = record.Error,
            }
        );
    }

    /// <summary>Reads a check of a scale.</summary>
    /// <remarks>As entered and as evaluated then.</remarks>
    /// <param name="id">Id of the check.</param>
    /// <param name="units">Units of the answer; as-asked keeps what was entered.</param>
    /// <response code="200">The check.</response>
    public static IResult Get(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null) =>
        ScaleCheckRecords.All.Get(id, database, workspace, units);

    private static (ScaleRequest? Scale, IResult? Answered) Read(
        StoringRequest storing,
        WorkspaceReader reader,
        JsonBody<ScaleCheckRequest> body
    )
    {
        if (ScaleCheckRecords.All.Earlier(storing, reader, body) is { } earlier)
            return (null, earlier);
        var records = new ReferredRecords(reader);
        var scale = records.Scale(body.Value.Scale!, nameof(body.Value.Scale));
        return records.Errors.Count > 0 ? (null, ProblemResult.Invalid(records.Errors)) : (scale, null);
    }
}
