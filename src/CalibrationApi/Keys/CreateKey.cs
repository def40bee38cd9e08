using CalibrationApi.Access;
using CalibrationApi.Http;
using CalibrationApi.Records;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storing;

namespace CalibrationApi.Keys;

/// <summary>Makes keys.</summary>
internal static class CreateKey
{
    /// <summary>Makes a key for this workspace.</summary>
    /// <remarks>The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make another.</remarks>
    /// <param name="body">Whose key, and what it may do.</param>
    /// <response code="200">The key that this id already had, from an equal request; without its text.</response>
    /// <response code="201">The new key.</response>
    public static Task<IResult> HandleAsync(JsonBody<KeyRequest> body, HttpContext context, Workspace workspace, TimeProvider clock) =>
        RunAsync(body, context, workspace, clock, isFromOutside: false);

    /// <summary>Makes a key for a workspace, as its first one.</summary>
    /// <remarks>For whoever runs the installation. From then on the administrators of that workspace make their own keys. The audit of both workspaces tells of it.</remarks>
    /// <param name="id">Id of the workspace.</param>
    /// <param name="body">Whose key, and what it may do.</param>
    /// <response code="200">The key that this id already had, from an equal request; without its text.</response>
    /// <response code="201">The new key.</response>
    public static Task<IResult> HandleForWorkspaceAsync(string id, JsonBody<KeyRequest> body, HttpContext context, TimeProvider clock) =>
        RunAsync(body, context, id, clock, isFromOutside: true);

    private static Task<IResult> RunAsync(JsonBody<KeyRequest> body, HttpContext context, string workspace, TimeProvider clock, bool isFromOutside)
    {
        var request = body.Value;
        var (caller, now) = (Caller.Of(context), clock.GetUtcNow());
        var (text, made) = KeyText.Make(request.Id ?? RecordId.New(clock));
        var key = new KeyRecord
        {
            Id = made.Id,
            Name = request.Name!,
            Scopes = [.. Scope.OfWorkspace.Where(request.Scopes!.Contains)],
            SecretHash = made.SecretHash,
            Fingerprint = body.Fingerprint,
            CreatedAt = now,
            CreatedBy = caller.Key,
            ExpiresAt = request.ExpiresAt is { } expires ? EnteredInstant.Read(expires) : null,
        };
        return new StoringRequest(context).RunAsync(body.Fingerprint, connection =>
        {
            if (WorkspaceStore.Find(connection, workspace) is not { } found)
                return Pages.NotFound();
            if (KeyStore.Find(connection, workspace, key.Id) is { } earlier)
                return earlier.Fingerprint == key.Fingerprint ? StoreOutcome.Replayed(KeyBody.Stored(workspace, earlier, now, StatusCodes.Status200OK)) : IdTaken();
            if (found.Retired)
                return ProblemResult.Of(StatusCodes.Status422UnprocessableEntity, ErrorCode.RecordRetired, "This workspace is retired and takes no new keys. Use another, or bring this one back first.");
            KeyStore.Insert(connection, workspace, key);
            if (isFromOutside)
                AuditStore.Append(connection, workspace, AuditLine.Of(context, caller, $"/v1/keys/{key.Id}", now));
            return StoreOutcome.Stored(KeyBody.Stored(workspace, key, now, StatusCodes.Status201Created));
        }, answer => KeyBody.WithText(answer, text));
    }

    public static ProblemResult IdTaken() => ProblemResult.Invalid([new ProblemError { Pointer = "#/id", Code = ErrorCode.IdTaken, Detail = "This id already belongs to another key. Use a new id." }]);
}
