using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Audit;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Administration.Keys;

/// <summary>Makes keys.</summary>
internal static class CreateKey
{
    /// <summary>Makes a key for this workspace.</summary>
    /// <remarks>
    /// The text of the key is in the answer once and is stored nowhere. If that answer is lost, revoke the key and make another.
    /// </remarks>
    /// <param name="body">Whose key, and what it may do.</param>
    /// <response code="200">The key that this id already had, from an equal request; without its text.</response>
    /// <response code="201">The new key.</response>
    public static Task<IResult> HandleAsync(JsonBody<KeyRequest> body, HttpContext context, Workspace workspace, TimeProvider clock) =>
        RunAsync(body, context, workspace, clock, isFromOutside: false);

    /// <summary>Makes a key for a workspace, as its first one.</summary>
    /// <remarks>
    /// For whoever runs the installation. From then on the administrators of that workspace make their own keys. The audit of both
    /// workspaces tells of it.
    /// </remarks>
    /// <param name="id">Id of the workspace.</param>
    /// <param name="body">Whose key, and what it may do.</param>
    /// <response code="200">The key that this id already had, from an equal request; without its text.</response>
    /// <response code="201">The new key.</response>
    public static Task<IResult> HandleForWorkspaceAsync(string id, JsonBody<KeyRequest> body, HttpContext context, TimeProvider clock) =>
        RunAsync(body, context, id, clock, isFromOutside: true);

    private static Task<IResult> RunAsync(
        JsonBody<KeyRequest> body,
        HttpContext context,
        string workspace,
        TimeProvider clock,
        bool isFromOutside
    )
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
        return new StoringRequest(context).RunAsync(
            body.Fingerprint,
            connection =>
            {
                if (WorkspaceStore.Find(connection, workspace) is not { } found)
                    return Pages.NotFound();
                if (KeyStore.Find(connection, workspace, key.Id) is { } earlier)
                    return earlier.Fingerprint == key.Fingerprint
                        ? StoreOutcome.Replayed(KeyBody.Stored(workspace, earlier, now, StatusCodes.Status200OK))
                        : IdTaken();
                if (Outlived(connection, caller, key.ExpiresAt) is { } outlived)
                    return outlived;
                if (found.Retired)
                    return ProblemResult.Of(
                        StatusCodes.Status422UnprocessableEntity,
                        ErrorCodes.RecordRetired,
                        "This workspace is retired and takes no new keys. Use another, or bring this one back first."
                    );
                KeyStore.Insert(connection, workspace, key);
                if (isFromOutside)
                    AuditStore.Append(connection, workspace, AuditLine.Of(context, caller, $"/v1/keys/{key.Id}", now));
                return StoreOutcome.Stored(KeyBody.Stored(workspace, key, now, StatusCodes.Status201Created));
            },
            answer => KeyBody.WithText(answer, text)
        );
    }

    /// <summary>Why a key may not make one with that expiry: whoever was let in for a time would stay for good. Null when it may.</summary>
    public static ProblemResult? Outlived(SqliteConnection connection, Caller maker, DateTimeOffset? expiresAt) =>
        maker.Key is { } id && KeyStore.Find(connection, maker.Workspace, id)?.ExpiresAt is { } own && !(expiresAt <= own)
            ? ProblemResult.Invalid([
                new ProblemError
                {
                    Pointer = "#/expiresAt",
                    Code = ErrorCodes.TimeWrong,
                    Detail =
                        $"A key makes none that outlives it, and yours expires at {Instants.Text(own)}. Give expiresAt, no later than that, or use a key that does not expire.",
                },
            ])
            : null;

    public static ProblemResult IdTaken() =>
        ProblemResult.Invalid([
            new ProblemError
            {
                Pointer = "#/id",
                Code = ErrorCodes.IdTaken,
                Detail = "This id already belongs to another key. Use a new id.",
            },
        ]);
}
