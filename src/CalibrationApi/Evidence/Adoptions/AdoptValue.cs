using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Reading;
using CalibrationApi.Records.Referring;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Keeps that a value was typed into a controller.</summary>
internal static class AdoptValue
{
    /// <summary>Adopts a value.</summary>
    /// <remarks>
    /// From its time on, the value is in force for its meter, element, setting and product, until a later one is adopted. The
    /// number is stored as typed in. Of two values adopted for the same time the one received last is in force; both stay on
    /// record. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
    /// </remarks>
    /// <param name="body">The number typed in, where, by whom and why.</param>
    /// <response code="200">The record that this id already had, from an equal request.</response>
    /// <response code="201">The stored adoption.</response>
    public static async Task<IResult> HandleAsync(
        JsonBody<AdoptionRequest> body,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        TimeProvider clock
    )
    {
        var storing = new StoringRequest(context);
        var (adoption, answered) = database.Read(connection => Read(storing, new WorkspaceReader(connection, workspace), body, clock));
        if (adoption is null)
            return answered!;
        var request = body.Value;
        return await AdoptionRecords.All.StoreAsync(storing, workspace, body, adoption, line =>
            line with
            {
                Machine = adoption.Series.Machine,
                Meter = adoption.Series.Meter,
                Element = adoption.Series.Element,
                Setting = request.Setting,
                Product = adoption.Series.Product,
                Lot = adoption.Lot,
                Value = adoption.Value,
                EnteredUnit = UsualUnits.PerRevolution(adoption.EnteredUnit).Symbol,
                Reason = line.Reason ?? request.Reason,
            }
        );
    }

    private static (AdoptionRecord? Adoption, IResult? Answered) Read(
        StoringRequest storing,
        WorkspaceReader reader,
        JsonBody<AdoptionRequest> body,
        TimeProvider clock
    )
    {
        if (AdoptionRecords.All.Earlier(storing, reader, body) is { } earlier)
            return (null, earlier);
        var request = body.Value;
        var records = new ReferredRecords(reader);
        var machine = records.Machine(request.Machine!, nameof(request.Machine));
        var product = records.Product(request.Product!, nameof(request.Product));
        var lot = request.Lot is { } lotId ? records.Lot(lotId, request.Product!, nameof(request.Lot)) : null;
        var meter = machine is null ? null : records.Meter(machine, request.Meter!, nameof(request.Meter));
        var element = meter is null ? null : records.Element(meter, request.Element!, nameof(request.Element));
        var series = new Series(request.Machine!, request.Meter!, request.Element!, request.Setting ?? "", request.Product!);
        var test = FindTest(reader, request, series, records.Errors);
        var density = lot?.BulkDensity ?? product?.BulkDensity;
        var typing = meter is null || product is null ? null : new TypedNumberReading(request, meter, density);
        var value = typing?.Read(records.Errors);
        if (value is { } found && !QuantityLimits.Of(Dimension.MassPerRevolution).Allows(found.KilogramsPerRevolution))
            records.Errors.Add(
                new ProblemError
                {
                    Pointer = "#/typedIn/value",
                    Code = ErrorCodes.NumberOutOfRange,
                    Detail = DisplayUnits.Metric.Write($"This comes to {found}, which no meter delivers. Check the number and its unit."),
                }
            );
        if (records.Errors.Count > 0)
            return (null, ProblemResult.Invalid(records.Errors));
        var content = ElementOfMachine.Content(element!, density);
        if (TypedValueGuard.Refuse(request, reader, series, typing!, value!.Value, test, content) is { } refused)
            return (null, refused);
        return (
            new AdoptionRecord
            {
                Id = request.Id ?? RecordId.New(clock),
                Series = series,
                Lot = request.Lot,
                Test = request.Test,
                EnteredValue = request.TypedIn!.Value!.Value,
                EnteredUnit = request.TypedIn.Unit!,
                Value = value.Value.KilogramsPerRevolution,
                OccurredAt = EnteredInstant.Read(request.OccurredAt!),
                ReceivedAt = clock.GetUtcNow(),
                Body = body.Entered,
                Fingerprint = body.Fingerprint,
            },
            null
        );
    }

    private static CatchTestRecord? FindTest(WorkspaceReader reader, AdoptionRequest request, Series series, List<ProblemError> errors)
    {
        if (request.Test is not { } id)
            return null;
        var test = reader.Test(id);
        if (test is null)
            errors.Add(
                new ProblemError
                {
                    Pointer = "#/test",
                    Code = ErrorCodes.IdUnknown,
                    Detail = "There is no catch test with this id. Check the id, or leave it out for a value stated by hand.",
                }
            );
        else if (test.Series != series)
            errors.Add(
                new ProblemError
                {
                    Pointer = "#/test",
                    Code = ErrorCodes.RecordsAtOdds,
                    Detail = "That test is of another meter, element, setting or product. Adopt the value for what was tested.",
                }
            );
        else if (reader.Replacement(EvidenceKind.CatchTest, id) is not null)
            errors.Add(
                new ProblemError
                {
                    Pointer = "#/test",
                    Code = ErrorCodes.AlreadySuperseded,
                    Detail = "That test was superseded. Adopt the value of the test that took its place.",
                }
            );
        return test;
    }
}
