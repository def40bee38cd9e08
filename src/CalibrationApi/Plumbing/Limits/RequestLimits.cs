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
    private readonly Policy ofAddress = new(RateLimitFields.PerAddress, settings.Limits.RequestsPerMinutePerAddress);
    private readonly Policy ofLocal = new(RateLimitFields.PerAddress, settings.Limits.RequestsPerMinuteLocal);
    private readonly Policy ofKey = new(RateLimitFields.PerKey, settings.Limits.RequestsPerMinutePerKey);

    /// <summary>Comes before authentication, so that nobody can try keys without end.</summary>
    public Task LimitAddressAsync(HttpContext context, RequestDelegate next)
    {
        // Within one process, as in tests, and through a socket of the file system there is no address.
        var address = context.Connection.RemoteIpAddress;
        return address is null || IPAddress.IsLoopback(address)
            ? PassAsync(context, next, ofLocal, local.Take(true))
            : PassAsync(context, next, ofAddress, addresses.Take(AddressBlock.Of(address)));
    }

    /// <summary>Comes after authentication; without a key there is nothing to count.</summary>
    public Task LimitKeyAsync(HttpContext context, RequestDelegate next) =>
        Requester.KeyOf(context) is { } key ? PassAsync(context, next, ofKey, keys.Take(key)) : next(context);

    private static Task PassAsync(HttpContext context, RequestDelegate next, Policy policy, Standing standing)
    {
        RateLimitFields.Tell(context, policy.Field, RateLimitFields.Of(policy.Name, standing));
        return standing.IsAllowed ? next(context) : ExceededAsync(context, policy.Name, policy.Quota, standing.Seconds);
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

    // The same in every answer, so it is put into words once.
    private sealed class Policy(string name, int quota)
    {
        public string Name => name;

        public int Quota => quota;

        public string Field { get; } = RateLimitFields.Policy(name, quota);
    }
}
