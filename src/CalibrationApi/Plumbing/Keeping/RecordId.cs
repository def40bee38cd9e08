using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>Ids of records: UUIDv7 (RFC 9562), lower case.</summary>
internal static class RecordId
{
    /// <summary>A UUID of version 7 (RFC 9562) in lower case.</summary>
    public const string Pattern = "^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$";

    /// <summary>The same, or the workspace that every database begins with.</summary>
    public const string WorkspacePattern = "^(local|[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12})$";

    public static string New(TimeProvider clock) => Guid.CreateVersion7(clock.GetUtcNow()).ToString();

    public static bool IsWellFormed(string? id) =>
        id is { Length: 36 }
        && Guid.TryParseExact(id, "D", out var guid)
        && guid.Version == 7
        && guid.Variant is >= 8 and <= 11
        && id == guid.ToString();
}

/// <summary>An id that a sender makes for a new record.</summary>
internal sealed class NewIdAttribute : TextRuleAttribute
{
    public override string Pattern => RecordId.Pattern;

    public override (ErrorCode Code, string Detail)? Fault(string text, TimeProvider clock) =>
        RecordId.IsWellFormed(text)
            ? null
            : (ErrorCodes.TextWrong, "An id is a UUID of version 7 (RFC 9562) in lower case. Leave it out to get one.");
}
