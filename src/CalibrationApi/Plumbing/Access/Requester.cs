namespace CalibrationApi.Plumbing.Access;

/// <summary>Who sends a request, as far as limits and logs have to know.</summary>
internal static class Requester
{
    /// <summary>Id of the key that a request came with; null when there is none, or before it was looked at.</summary>
    public static string? KeyOf(HttpContext context) => context.Features.Get<Caller>()?.Key;
}
