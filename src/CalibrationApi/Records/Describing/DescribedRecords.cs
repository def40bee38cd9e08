using System.Text;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.OneWriter;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Records.Describing;

/// <summary>Handlers for one kind of described record: create, read, list, replace. All kinds go the same way.</summary>
internal sealed class DescribedRecords<T>(RecordKind kind, string path, ListTable table)
    where T : DescribedRequest
{
    private readonly DescribedRecordStore store = new(kind);

    public async Task<IResult> CreateAsync(JsonBody<T> body, HttpContext context, Workspace workspace)
    {
        var request = body.Value;
        var clock = context.RequestServices.GetRequiredService<TimeProvider>();
        return await new StoringRequest(context).RunAsync(body.Fingerprint, connection =>
        {
            if (request.Id is { } own && store.Find(connection, workspace, own) is { } earlier)
            {
                return earlier.Fingerprint == body.Fingerprint
                    ? StoreOutcome.Replayed(Stored(earlier, StatusCodes.Status200OK))
                    : ProblemResult.Invalid([
                        new ProblemError
                        {
                            Pointer = "#/id",
                            Code = ErrorCodes.IdTaken,
                            Detail =
                                "This id already belongs to a record that was created by another body. Use a new id, or replace that record with PUT.",
                        },
                    ]);
            }

            if (MissingReferences(connection, workspace, request) is { } missing)
                return missing;
            var now = clock.GetUtcNow();
            var record = new DescribedRecord(
                request.Id ?? RecordId.New(clock),
                1,
                request.Name!,
                request.Retired ?? false,
                body.Entered,
                body.Fingerprint,
                now,
                now
            );
            store.Insert(connection, workspace, record);
            return StoreOutcome.Stored(Stored(record, StatusCodes.Status201Created));
        });
    }

    public IResult Get(string id, CalibrationDatabase database, Workspace workspace, string? units)
    {
        using var connection = database.Open();
        if (store.Find(connection, workspace, id) is not { } record)
            return NotFound();
        if (QuantityConversion.For(units) is not { } display)
            return new RecordResult(RecordBody.Write(record), RecordBody.ETag(record));
        return new RecordResult(Encoding.UTF8.GetBytes(RecordBody.Node(record, display).ToJsonString(JsonSettings.Writing)));
    }

    public IResult List(RecordQuery query, HttpContext context, CalibrationDatabase database, Workspace workspace, Cursors cursors)
    {
        if (query.IncludeRetired is not (null or "true" or "false"))
            return ProblemResult.Invalid([RecordQuery.WrongIncludeRetired()]);
        var display = QuantityConversion.For(query.Units);
        return SimpleList.Of(
            query,
            context,
            cursors,
            $"{workspace} {path} {query.IncludeRetired}",
            table,
            database,
            (connection, after, most) =>
                store
                    .List(connection, workspace, after, most, query.IncludeRetired == "true")
                    .Select(record => (RecordBody.Node(record, display), record.Id))
        );
    }

    public async Task<IResult> ReplaceAsync(string id, JsonBody<T> body, HttpContext context, Workspace workspace)
    {
        var request = body.Value;
        if (request.Id is { } own && own != id)
            return ProblemResult.Invalid([Preconditions.OtherId()]);
        var expected = context.Request.Headers.IfMatch.ToString();
        var clock = context.RequestServices.GetRequiredService<TimeProvider>();
        return await new StoringRequest(context).ReplaceAsync(connection =>
            Replace(connection, workspace, id, request, body, expected, clock)
        );
    }

    private StoreOutcome Replace(
        SqliteConnection connection,
        Workspace workspace,
        string id,
        T request,
        JsonBody<T> body,
        string expected,
        TimeProvider clock
    )
    {
        if (store.Find(connection, workspace, id) is not { } current)
            return NotFound();
        if (Preconditions.Refusal(expected, RecordBody.ETag(current)) is { } refusal)
            return refusal;
        if (ReadOnlyMembersAttribute.Changed(body.ReadOnly, RecordBody.Node(current, null)) is { Length: > 0 } changed)
            return ProblemResult.Invalid(changed);
        if (MissingReferences(connection, workspace, request) is { } missing)
            return missing;
        var next = current with
        {
            Revision = current.Revision + 1,
            Name = request.Name!,
            Retired = request.Retired ?? false,
            Body = body.Entered,
            UpdatedAt = clock.GetUtcNow(),
        };
        store.Replace(connection, workspace, next);
        return StoreOutcome.Stored(Stored(next, StatusCodes.Status200OK));
    }

    private StoredAnswer Stored(DescribedRecord record, int status) =>
        new(status, $"/v1/{path}/{record.Id}", RecordBody.ETag(record), RecordBody.Write(record));

    private static ProblemResult? MissingReferences(SqliteConnection connection, Workspace workspace, T request)
    {
        var errors = request
            .References()
            .Where(reference => new DescribedRecordStore(reference.Kind).Find(connection, workspace, reference.Id) is null)
            .Select(reference => Pages.UnknownId(reference.Member, reference.Kind))
            .ToArray();
        return errors.Length == 0 ? null : ProblemResult.Invalid(errors);
    }

    private static ProblemResult NotFound() => Pages.NotFound();
}
