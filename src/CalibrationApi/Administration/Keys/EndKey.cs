using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Administration.Keys;

/// <summary>Ends keys: at once, or with another in their place.</summary>
internal static class EndKey
{
    /// <summary>Revokes a key.</summary>
    /// <remarks>It opens nothing from the next request on. A key stays revoked; to go on, make another.</remarks>
    /// <param name="id">Id of the key.</param>
    /// <param name="body">Why.</param>
    /// <response code="200">The key as it is now.</response>
    public static async Task<IResult> RevokeAsync(
        string id,
        JsonBody<RevocationRequest> body,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        TimeProvider clock
    )
    {
        if (Refusal(id, context, database, workspace) is { } refusal)
            return refusal;
        var now = clock.GetUtcNow();
        return await new StoringRequest(context).RunAsync(body.Fingerprint, connection =>
        {
            var key = KeyStore.Find(connection, workspace, id)!;
            if (key.RevokedAt is not null)
                return StoreOutcome.Replayed(KeyBody.Stored(workspace, key, now, StatusCodes.Status200OK));
            KeyStore.Revoke(connection, workspace, id, now, body.Value.Reason!);
            return StoreOutcome.Stored(KeyBody.Stored(workspace, KeyStore.Find(connection, workspace, id)!, now, StatusCodes.Status200OK));
        });
    }

    /// <summary>Makes a key that takes the place of another.</summary>
    /// <remarks>
    /// The new key has the name and the scopes of the old one, which goes on until the stated instant, so that every client can change over
    /// in between. The text of the new key is in the answer once and is stored nowhere.
    /// </remarks>
    /// <param name="id">Id of the old key.</param>
    /// <param name="body">How long the old key goes on.</param>
    /// <response code="200">The key that this id already had, from an equal request; without its text.</response>
    /// <response code="201">The new key.</response>
    public static async Task<IResult> RotateAsync(
        string id,
        JsonBody<RotationRequest> body,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        TimeProvider clock
    )
    {
        if (Refusal(id, context, database, workspace) is { } refusal)
            return refusal;
        var (request, now) = (body.Value, clock.GetUtcNow());
        var (text, made) = KeyText.Make(request.Id ?? RecordId.New(clock));
        return await new StoringRequest(context).RunAsync(
            body.Fingerprint,
            connection =>
            {
                if (KeyStore.Find(connection, workspace, made.Id) is { } earlier)
                    return earlier.Fingerprint == body.Fingerprint && earlier.Replaces == id
                        ? StoreOutcome.Replayed(KeyBody.Stored(workspace, earlier, now, StatusCodes.Status200OK))
                        : CreateKey.IdTaken();
                var old = KeyStore.Find(connection, workspace, id)!;
                if (!old.IsLive(now))
                    return Unfit(ErrorCodes.RecordRetired, "This key has ended, so nothing can take its place. Make a new key.");
                if (old.ReplacedBy is not null)
                    return Unfit(
                        ErrorCodes.AlreadySuperseded,
                        "Another key takes the place of this one already. Look at its replacedBy and rotate that one."
                    );
                var successor = old with
                {
                    Id = made.Id,
                    SecretHash = made.SecretHash,
                    Fingerprint = body.Fingerprint,
                    CreatedAt = now,
                    CreatedBy = Caller.Of(context).Key,
                    ExpiresAt = request.ExpiresAt is { } expires ? EnteredInstant.Read(expires) : now + (old.ExpiresAt - old.CreatedAt),
                    Replaces = id,
                    LastUsedAt = null,
                };
                if (CreateKey.Outlived(connection, Caller.Of(context), successor.ExpiresAt) is { } outlived)
                    return outlived;
                var until = EnteredInstant.Read(request.Until!);
                KeyStore.Insert(connection, workspace, successor);
                KeyStore.ReplaceBy(connection, workspace, id, successor.Id, old.ExpiresAt < until ? old.ExpiresAt.Value : until);
                return StoreOutcome.Stored(KeyBody.Stored(workspace, successor, now, StatusCodes.Status201Created));
            },
            answer => KeyBody.WithText(answer, text)
        );
    }

    // A key of the operator can do more than an administrator of its workspace, who so must neither copy nor end it.
    private static IResult? Refusal(string id, HttpContext context, CalibrationDatabase database, Workspace workspace)
    {
        if (database.Read(connection => KeyStore.Find(connection, workspace, id)) is not { } key)
            return Pages.NotFound();
        return key.Scopes.Contains(Scope.Operator) && !Caller.Of(context).Scopes.Contains(Scope.Operator)
            ? AccessRefusal.MissingScope(Scope.Operator)
            : null;
    }

    private static ProblemResult Unfit(ErrorCode code, string detail) =>
        ProblemResult.Of(StatusCodes.Status422UnprocessableEntity, code, detail);
}
