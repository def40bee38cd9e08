using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Access;

/// <summary>The codes of requests that are turned away before anything is looked at.</summary>
internal static class AccessCodes
{
    /// <summary>No key came, and this operation needs one.</summary>
    public static ErrorCode KeyMissing { get; } =
        new(
            "key-missing",
            "Send a key in the header Authorization: Bearer, one space, and the key. The command 'keys create' of the service makes the first one.",
            401
        );

    /// <summary>What came is no whole key, or one that this service does not know.</summary>
    public static ErrorCode KeyInvalid { get; } =
        new("key-invalid", "Copy the key again, whole, and check that it was made for this installation.", 401);

    /// <summary>The key has expired, or another took its place and its time is over.</summary>
    public static ErrorCode KeyExpired { get; } = new("key-expired", "Ask the administrator of the workspace for another.", 401);

    /// <summary>The key was revoked.</summary>
    public static ErrorCode KeyRevoked { get; } = new("key-revoked", "Ask the administrator of the workspace for another.", 401);

    /// <summary>The workspace of the key is retired.</summary>
    public static ErrorCode WorkspaceRetired { get; } = new("workspace-retired", "Ask the operator of the service to bring it back.", 401);

    /// <summary>The key lacks the scope that this operation needs.</summary>
    public static ErrorCode ScopeMissing { get; } = new("scope-missing", "Use a key with the scope that WWW-Authenticate names.", 403);

    /// <summary>The header Authorization cannot be read or came twice, or a key stands in the address.</summary>
    public static ErrorCode CredentialsBroken { get; } =
        new(
            "credentials-broken",
            "Send one header, Authorization: Bearer, one space, and the key. Revoke a key that stood in an address.",
            400
        );
}
