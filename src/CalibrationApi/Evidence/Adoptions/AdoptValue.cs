using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Evidence.Superseding;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Storing;
using CalibrationApi.Records.Describing;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Referring;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Writing;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Keeps that a value was typed into a controller.</summary>
internal static class AdoptValue
{
    public const string Kind = "adoption";

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
        var request = body.Value;
        var storing = new StoringRequest(context);
        using var reading = database.Open();
        if (storing.Earlier(reading, body.Fingerprint, () => Earlier(reading, workspace, request.Id, body.Fingerprint)) is { } earlier)
            return earlier;
        var records = new ReferredRecords(reading, workspace);
        var machine = records.Machine(request.Machine!, nameof(request.Machine));
        var product = records.Product(request.Product!, nameof(request.Product));
        var lot = request.Lot is { } lotId ? records.Lot(lotId, request.Product!, nameof(request.Lot)) : null;
        var meter = machine is null ? null : records.Meter(machine, request.Meter!, nameof(request.Meter));
        var element = meter is null ? null : records.Element(meter, request.Element!, nameof(request.Element));
        var series = new Series(request.Machine!, request.Meter!, request.Element!, request.Setting ?? "", request.Product!);
        var test = FindTest(reading, workspace, request, series, records.Errors);
        var typing =
            meter is null || product is null ? null : new TypedNumberReading(request, meter, lot?.BulkDensity ?? product.BulkDensity);
        var value = typing?.Read(records.Errors);
        if (value is { } found && !QuantityLimits.Of(Dimension.MassPerRevolution).Allows(found.KilogramsPerRevolution))
            records.Errors.Add(
                new ProblemError
                {
                    Pointer = "#/typedIn/value",
                    Code = ErrorCode.NumberOutOfRange,
                    Detail = DisplayUnits.Metric.Write($"This comes to {found}, which no meter delivers. Check the number and its unit."),
                }
            );
        if (records.Errors.Count > 0)
            return ProblemResult.Invalid(records.Errors);
        var content = element is null ? null : ElementOfMachine.Content(element, lot?.BulkDensity ?? product!.BulkDensity);
        if (
            TypedValueGuard.Refuse(request, new RecordsReadOnce(reading, workspace), series, typing!, value!.Value, test, content) is
            { } refused
        )
            return refused;

        var adoption = new AdoptionRecord
        {
            Id = request.Id ?? RecordId.New(clock),
            Series = series,
            Lot = request.Lot,
            Test = request.Test,
            EnteredValue = request.TypedIn!.Value!.Value,
            EnteredUnit = request.TypedIn.Unit!,
            Value = value!.Value.KilogramsPerRevolution,
            OccurredAt = EnteredInstant.Read(request.OccurredAt!),
            ReceivedAt = clock.GetUtcNow(),
            Body = body.Entered,
            Fingerprint = body.Fingerprint,
        };
        var timeZone = machine!.TimeZone ?? LocalDate.Utc;
        return await storing.RunAsync(body.Fingerprint, connection => Store(connection, workspace, adoption, request, timeZone));
    }

    private static StoreOutcome? Earlier(SqliteConnection connection, Workspace workspace, string? id, string fingerprint)
    {
        if (id is null || AdoptionStore.Find(connection, workspace, id) is not { } earlier)
            return null;
        return earlier.Fingerprint == fingerprint
            ? StoreOutcome.Replayed(
                Answer(
                    connection,
                    workspace,
                    earlier,
                    MachineTimeZone.Of(connection, workspace, earlier.Series.Machine),
                    StatusCodes.Status200OK
                )
            )
            : Correction.IdTaken();
    }

    private static StoreOutcome Store(
        SqliteConnection connection,
        Workspace workspace,
        AdoptionRecord adoption,
        AdoptionRequest request,
        string timeZone
    )
    {
        if (Earlier(connection, workspace, adoption.Id, adoption.Fingerprint) is { } earlier)
            return earlier;
        if (
            request.Supersedes is { } supersedes
            && Correction.Supersede(connection, workspace, Kind, supersedes, adoption.Id, adoption.ReceivedAt, id =>
                AdoptionStore.Find(connection, workspace, id) is not null
            )
                is { } problem
        )
            return problem;
        AdoptionStore.Insert(connection, workspace, adoption);
        HistoryStore.Append(
            connection,
            workspace,
            new HistoryEntry
            {
                Kind = Kind,
                Record = adoption.Id,
                Machine = adoption.Series.Machine,
                Meter = adoption.Series.Meter,
                Element = adoption.Series.Element,
                Setting = request.Setting,
                Product = adoption.Series.Product,
                Lot = adoption.Lot,
                Value = adoption.Value,
                EnteredUnit = UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } unit
                    ? unit.Symbol
                    : "kg/rev",
                RecordedBy = request.RecordedBy,
                OccurredAt = adoption.OccurredAt,
                ReceivedAt = adoption.ReceivedAt,
                Supersedes = request.Supersedes?.Record,
                Reason = request.Supersedes?.Reason ?? request.Why,
            }
        );
        return StoreOutcome.Stored(Answer(connection, workspace, adoption, timeZone, StatusCodes.Status201Created));
    }

    private static StoredAnswer Answer(
        SqliteConnection connection,
        Workspace workspace,
        AdoptionRecord adoption,
        string timeZone,
        int status
    )
    {
        var body = AdoptionBody.Write(connection, workspace, adoption, timeZone, null);
        return new StoredAnswer(status, $"/v1/adoptions/{adoption.Id}", RecordResult.Tag(body), body);
    }

    private static CatchTestRecord? FindTest(
        SqliteConnection connection,
        Workspace workspace,
        AdoptionRequest request,
        Series series,
        List<ProblemError> errors
    )
    {
        if (request.Test is not { } id)
            return null;
        var test = CatchTestStore.Find(connection, workspace, id);
        if (test is null)
            errors.Add(
                new ProblemError
                {
                    Pointer = "#/test",
                    Code = ErrorCode.IdUnknown,
                    Detail = "There is no catch test with this id. Check the id, or leave it out for a value stated by hand.",
                }
            );
        else if (test.Series != series)
            errors.Add(
                new ProblemError
                {
                    Pointer = "#/test",
                    Code = ErrorCode.RecordsAtOdds,
                    Detail = "That test is of another meter, element, setting or product. Adopt the value for what was tested.",
                }
            );
        else if (SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, id) is not null)
            errors.Add(
                new ProblemError
                {
                    Pointer = "#/test",
                    Code = ErrorCode.AlreadySuperseded,
                    Detail = "That test was superseded. Adopt the value of the test that took its place.",
                }
            );
        return test;
    }
}
