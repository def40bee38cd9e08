using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Describing;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Administration.Workspaces;

/// <summary>Creates, reads, renames and retires workspaces, for whoever runs the installation.</summary>
internal static class KeepWorkspace
{
    private static readonly ListTable Table = ListTable.Of<WorkspaceAnswer>();

    /// <summary>Creates a workspace.</summary>
    /// <remarks>
    /// It has no keys yet; make its first one next. Send an Idempotency-Key, or your own id, to be able to repeat the request safely.
    /// </remarks>
    /// <param name="body">Its name.</param>
    /// <response code="200">The workspace that this id already had, from an equal request.</response>
    /// <response code="201">The new workspace.</response>
    public static Task<IResult> CreateAsync(JsonBody<WorkspaceRequest> body, HttpContext context, TimeProvider clock)
    {
        var (request, now) = (body.Value, clock.GetUtcNow());
        var record = new WorkspaceRecord(
            request.Id ?? RecordId.New(clock),
            1,
            request.Name!,
            request.Retired ?? false,
            body.Fingerprint,
            now,
            now
        );
        return new StoringRequest(context).RunAsync(body.Fingerprint, connection =>
        {
            if (WorkspaceStore.Find(connection, record.Id) is { } earlier)
            {
                return earlier.Fingerprint == record.Fingerprint
                    ? StoreOutcome.Replayed(Stored(earlier, StatusCodes.Status200OK))
                    : ProblemResult.Invalid([
                        new ProblemError
                        {
                            Pointer = "#/id",
                            Code = ErrorCodes.IdTaken,
                            Detail = "This id already belongs to another workspace. Use a new id, or replace that workspace with PUT.",
                        },
                    ]);
            }

            WorkspaceStore.Insert(connection, record.Id, record);
            return StoreOutcome.Stored(Stored(record, StatusCodes.Status201Created));
        });
    }

    /// <summary>Reads a workspace.</summary>
    /// <remarks>If-None-Match with the ETag saves the transfer.</remarks>
    /// <param name="id">Id of the workspace.</param>
    /// <response code="200">The workspace.</response>
    public static IResult Get(string id, CalibrationDatabase database) =>
        database.Read(connection => WorkspaceStore.Find(connection, id)) is { } record
            ? new RecordResult(Write(record), ETag(record))
            : Pages.NotFound();

    public static IResult List(WorkspaceQuery query, HttpContext context, CalibrationDatabase database, Cursors cursors)
    {
        if (query.IncludeRetired is not (null or "true" or "false"))
            return ProblemResult.Invalid([RecordQuery.WrongIncludeRetired()]);
        return SimpleList.Of(query, context, cursors, $"workspaces {query.IncludeRetired}", Table, database, (connection, after, most) =>
            WorkspaceStore.ListAll(connection, after, most, query.IncludeRetired == "true").Select(record => (Node(record), record.Id))
        );
    }

    /// <summary>Renames a workspace, retires it or brings it back.</summary>
    /// <remarks>
    /// The keys of a retired workspace open nothing from the next request on; its records stay. Send the ETag of your last GET as If-Match.
    /// </remarks>
    /// <param name="id">Id of the workspace.</param>
    /// <param name="body">Its name, and whether it is retired.</param>
    /// <response code="200">The workspace as it is now.</response>
    public static async Task<IResult> ReplaceAsync(
        string id,
        JsonBody<WorkspaceRequest> body,
        HttpContext context,
        Workspace own,
        TimeProvider clock
    )
    {
        var (request, expected, now) = (body.Value, context.Request.Headers.IfMatch.ToString(), clock.GetUtcNow());
        if (request.Id is { } named && named != id)
            return ProblemResult.Invalid([Preconditions.OtherId()]);
        return await new StoringRequest(context).ReplaceAsync(connection =>
        {
            if (WorkspaceStore.Find(connection, id) is not { } current)
                return Pages.NotFound();
            if (Preconditions.Refusal(expected, ETag(current)) is { } refusal)
                return refusal;
            if (ReadOnlyMembersAttribute.Changed(body.ReadOnly, Node(current)) is { Length: > 0 } changed)
                return ProblemResult.Invalid(changed);
            if (request.Retired == true && id == own)
                return ProblemResult.Invalid([
                    new ProblemError
                    {
                        Pointer = "#/retired",
                        Code = ErrorCodes.RecordsAtOdds,
                        Detail =
                            "This is the workspace of the key that you are using, which would end with it. Use a key of another workspace.",
                    },
                ]);
            var next = current with
            {
                Revision = current.Revision + 1,
                Name = request.Name!,
                Retired = request.Retired ?? false,
                UpdatedAt = now,
            };
            WorkspaceStore.Replace(connection, id, next);
            return StoreOutcome.Stored(Stored(next, StatusCodes.Status200OK));
        });
    }

    private static StoredAnswer Stored(WorkspaceRecord record, int status) =>
        new(status, $"/v1/workspaces/{record.Id}", ETag(record), Write(record));

    private static string ETag(WorkspaceRecord record) => $"\"r{record.Revision}\"";

    private static byte[] Write(WorkspaceRecord record) => JsonSerializer.SerializeToUtf8Bytes(Node(record), JsonSettings.Writing);

    private static JsonObject Node(WorkspaceRecord record) =>
        JsonSerializer
            .SerializeToNode(
                new WorkspaceAnswer
                {
                    Id = record.Id,
                    Revision = record.Revision,
                    Retired = record.Retired,
                    CreatedAt = Instants.Text(record.CreatedAt),
                    UpdatedAt = Instants.Text(record.UpdatedAt),
                    Name = record.Name,
                },
                JsonSettings.Contract.GetTypeInfo(typeof(WorkspaceAnswer))
            )!
            .AsObject();
}
