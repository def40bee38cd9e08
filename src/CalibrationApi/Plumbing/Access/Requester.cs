namespace CalibrationApi.Plumbing.Access;

/// <summary>Who sends a request, as far as limits and logs have to know.</summary>
internal static class Requester
{
    /// <summary>The kind of claim that holds the id of a key.</summary>
    public const string KeyClaim = "key";

    /// <summary>Id of the key that a request came with; null when there is none, or before authentication.</summary>
    public static string? KeyOf(HttpContext context) => context.User.FindFirst(KeyClaim)?.Value;
}
