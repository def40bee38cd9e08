using System.Globalization;
using System.Net;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Settings;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>How many requests a minute: of an address before anybody is known, and of a key when it is.</summary>
internal sealed class RequestLimits(CalibrationSettings settings, TimeProvider clock)
{
    private readonly RequestWindows<AddressBlock> addresses = new(
        settings.Limits.RequestsPerMinutePerAddress,
        settings.Limits.AddressesCounted,
        clock
    );
    private readonly RequestWindows<bool> local = new(settings.Limits.RequestsPerMinuteLocal, 1, clock);
    private readonly RequestWindows<string> keys = new(settings.Limits.RequestsPerMinutePerKey, settings.Limits.AddressesCounted, clock);

    /// <summary>Comes before authentication, so that nobody can try keys without end.</summary>
    public Task LimitAddressAsync(HttpContext context, RequestDelegate next)
    {
        // Within one process, as in tests, and through a socket of the file system there is no address.
        var address = context.Connection.RemoteIpAddress;
        return address is null || IPAddress.IsLoopback(address)
            ? PassAsync(context, next, RateLimitFields.PerAddress, local.Quota, local.Take(true))
            : PassAsync(context, next, RateLimitFields.PerAddress, addresses.Quota, addresses.Take(AddressBlock.Of(address)));
    }

    /// <summary>Comes after authentication; without a key there is nothing to count.</summary>
    public Task LimitKeyAsync(HttpContext context, RequestDelegate next) =>
        Requester.KeyOf(context) is { } key ? PassAsync(context, next, RateLimitFields.PerKey, keys.Quota, keys.Take(key)) : next(context);

    private static Task PassAsync(HttpContext context, RequestDelegate next, string policy, int quota, Standing standing)
    {
        RateLimitFields.Tell(context, RateLimitFields.Policy(policy, quota), RateLimitFields.Of(policy, standing));
        return standing.IsAllowed ? next(context) : ExceededAsync(context, policy, quota, standing.Seconds);
    }

    private static Task ExceededAsync(HttpContext context, string policy, int quota, int seconds)
    {
        context.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        var whose = policy == RateLimitFields.PerKey ? "this key" : "this address";
        return ProblemResult
            .Exceeded(
                policy,
                $"No more than {quota} requests a minute are taken from {whose}. Wait {seconds} {(seconds == 1 ? "second" : "seconds")}, as Retry-After says."
            )
            .ExecuteAsync(context);
    }
}
