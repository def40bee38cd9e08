using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Access;

/// <summary>Why a request was turned away before anything was looked at (RFC 6750 section 3).</summary>
/// <param name="Status">HTTP status.</param>
/// <param name="Code">Code of the problem.</param>
/// <param name="Error">Error of the challenge; null where no credential came, as the RFC wants it.</param>
/// <param name="Detail">What is wrong and what to do.</param>
internal sealed record AccessRefusal(int Status, ErrorCode Code, string? Error, string Detail) : IResult
{
    private const string Realm = "calibration";
    private const string InvalidRequest = "invalid_request";
    private const string InvalidToken = "invalid_token";
    private const string HowToSend = "Send it in the header Authorization, as Bearer, one space, and the key.";
    private const string HowToMakeOne = "Make a key by the command 'keys create' of the service.";

    public static AccessRefusal NoKey { get; } = new(401, AccessCodes.KeyMissing, null, "This request needs a key. " + HowToSend);

    public static AccessRefusal OtherMethod { get; } =
        new(401, AccessCodes.KeyMissing, null, "This service takes no other authorization than a key. " + HowToSend);

    public static AccessRefusal FromElsewhere { get; } =
        new(
            401,
            AccessCodes.KeyMissing,
            null,
            "There are no keys yet, so only this machine itself may use the service, and this request came from elsewhere or through a proxy. "
                + HowToMakeOne
        );

    public static AccessRefusal FromAPage { get; } =
        new(
            401,
            AccessCodes.KeyMissing,
            null,
            "There are no keys yet, and this request came from a page of another origin. Name that origin in Calibration__AllowedOrigins, or give the page a key. "
                + HowToMakeOne
        );

    public static AccessRefusal Malformed { get; } =
        new(
            400,
            AccessCodes.CredentialsBroken,
            InvalidRequest,
            "The header Authorization cannot be read. Write Bearer, one space, and the key."
        );

    public static AccessRefusal TwoCredentials { get; } =
        new(400, AccessCodes.CredentialsBroken, InvalidRequest, "The header Authorization came twice. Send one key, once.");

    public static AccessRefusal KeyInAddress { get; } =
        new(
            400,
            AccessCodes.CredentialsBroken,
            InvalidRequest,
            "A key never goes into an address, because addresses are logged. Send it in the header Authorization, and revoke this one if it is real."
        );

    public static AccessRefusal NotAKey { get; } =
        new(
            401,
            AccessCodes.KeyInvalid,
            InvalidToken,
            "This is not a whole key: it was cut, mistyped, or is meant for another service. Check that it was copied whole."
        );

    public static AccessRefusal Unknown { get; } =
        new(
            401,
            AccessCodes.KeyInvalid,
            InvalidToken,
            "This service does not know this key. Check that it was made for this installation."
        );

    public static AccessRefusal Expired { get; } =
        new(401, AccessCodes.KeyExpired, InvalidToken, "This key has expired. Ask the administrator of the workspace for another.");

    public static AccessRefusal Revoked { get; } =
        new(401, AccessCodes.KeyRevoked, InvalidToken, "This key was revoked. Ask the administrator of the workspace for another.");

    public static AccessRefusal WorkspaceRetired { get; } =
        new(
            401,
            AccessCodes.WorkspaceRetired,
            InvalidToken,
            "The workspace of this key is retired. Ask the operator of the service to bring it back."
        );

    /// <summary>The scope that was lacking.</summary>
    public string? Scope { get; private init; }

    /// <summary>The workspace of the key that was shown; null where none is known.</summary>
    public string? Workspace { get; init; }

    /// <summary>Id of the key that was shown; null where none is known.</summary>
    public string? Key { get; init; }

    /// <summary>The header WWW-Authenticate.</summary>
    public string Challenge
    {
        get
        {
            var challenge = $"Bearer realm=\"{Realm}\"";
            if (Error is null)
                return challenge;
            challenge += $", error=\"{Error}\", error_description=\"{Detail}\"";
            return Scope is null ? challenge : challenge + $", scope=\"{Scope}\"";
        }
    }

    /// <summary>Answers, and counts that a request was turned away.</summary>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.RequestServices.GetRequiredService<RefusalCounts>().Add(this, httpContext);
        httpContext.Response.Headers.WWWAuthenticate = Challenge;
        return ProblemResult.Of(Status, Code, Detail, "Authorization").ExecuteAsync(httpContext);
    }

    public static AccessRefusal MissingScope(string scope) =>
        new(
            403,
            AccessCodes.ScopeMissing,
            "insufficient_scope",
            $"This key may not do that: it lacks the scope {scope}. Use a key that has it, or ask the administrator of the workspace for one."
        )
        {
            Scope = scope,
        };

    public static AccessRefusal NoKeyYet(string scope) =>
        new(401, AccessCodes.KeyMissing, null, $"This needs a key with the scope {scope}, and there are no keys yet. {HowToMakeOne}");
}
