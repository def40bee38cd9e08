using System.Globalization;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>
/// The header fields that tell a caller how much it may still ask (draft-ietf-httpapi-ratelimit-headers-10), as structured fields (RFC
/// 9651).
/// </summary>
internal static class RateLimitFields
{
    public const string Policies = "RateLimit-Policy";
    public const string Standings = "RateLimit";

    /// <summary>Length of a window.</summary>
    public const int WindowSeconds = 60;

    /// <summary>Policies by their names in the fields and in <c>violated-policies</c>.</summary>
    public const string PerAddress = "address";
    public const string PerKey = "key";
    public const string Batches = "batches";
    public const string Waits = "waits";

    /// <summary>A policy: so many requests in a window.</summary>
    public static string Policy(string name, int quota) =>
        string.Create(CultureInfo.InvariantCulture, $"\"{name}\";q={quota};w={WindowSeconds}");

    /// <summary>A policy: so many requests at the same time.</summary>
    public static string PolicyAtOnce(string name, int quota) =>
        string.Create(CultureInfo.InvariantCulture, $"\"{name}\";q={quota};qu=\"concurrent-requests\"");

    /// <summary>How a caller stands with a policy.</summary>
    public static string Of(string name, Standing standing) =>
        string.Create(CultureInfo.InvariantCulture, $"\"{name}\";r={standing.Remaining};t={standing.Seconds}");

    /// <summary>Adds a policy and the standing with it to the answer, whatever becomes of the answer on its way.</summary>
    public static void Tell(HttpContext context, string policy, string standing)
    {
        if (context.Features.Get<Told>() is not { } told)
        {
            context.Features.Set(told = new Told());
            // At the last moment: a failure on the way clears what was set before.
            context.Response.OnStarting(Write, (context.Response, told));
        }

        told.Policies = told.Policies is null ? policy : $"{told.Policies}, {policy}";
        told.Standings = told.Standings is null ? standing : $"{told.Standings}, {standing}";
    }

    private static Task Write(object state)
    {
        var (response, told) = ((HttpResponse, Told))state;
        response.Headers[Policies] = told.Policies;
        response.Headers[Standings] = told.Standings;
        return Task.CompletedTask;
    }

    private sealed class Told
    {
        public string? Policies { get; set; }

        public string? Standings { get; set; }
    }
}
