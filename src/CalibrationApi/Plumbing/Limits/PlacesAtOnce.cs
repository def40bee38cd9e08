using System.Net;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>Places for what is answered at the same time: of all callers together, and of one.</summary>
/// <remarks>Nobody queues: a caller that waits holds a connection, and knows better than the service when to come back.</remarks>
/// <param name="policy">Its name in the header fields.</param>
/// <param name="what">What takes the places, in the plural.</param>
/// <param name="most">Places of all together.</param>
/// <param name="mostOfOne">Places of one caller.</param>
internal sealed class PlacesAtOnce(string policy, string what, int most, int mostOfOne)
{
    private const string SecondsToWait = "5";

    private readonly Dictionary<object, int> taken = [];
    private readonly Lock counting = new();
    private int all;

    /// <summary>Places that are taken.</summary>
    public int Taken => Volatile.Read(ref all);

    /// <summary>Takes a place until it is disposed of; null with the refusal when none is free.</summary>
    public IDisposable? Take(HttpContext context, out ProblemResult? refusal)
    {
        var caller = CallerOf(context);
        var (isFree, left) = Enter(caller);
        if (caller is not null)
            RateLimitFields.Tell(context, RateLimitFields.PolicyAtOnce(policy, mostOfOne), $"\"{policy}\";r={left}");
        refusal = null;
        if (isFree)
            return new Place(this, caller);
        context.Response.Headers.RetryAfter = SecondsToWait;
        refusal =
            left == 0 && caller is not null
                ? ProblemResult.Exceeded(
                    policy,
                    $"No more than {mostOfOne} {what} of one caller are answered at once. Wait until one of yours is through."
                )
                : ProblemResult.Busy(
                    $"The service answers {most} {what} already and takes no more at once. Try again in {SecondsToWait} seconds."
                );
        return null;
    }

    // Whoever sits at the machine itself is only held to what the machine can do.
    private static object? CallerOf(HttpContext context)
    {
        if (Requester.KeyOf(context) is { } key)
            return key;
        return context.Connection.RemoteIpAddress is { } address && !IPAddress.IsLoopback(address) ? AddressBlock.Of(address) : null;
    }

    private (bool IsFree, int Left) Enter(object? caller)
    {
        lock (counting)
        {
            var own = caller is null ? 0 : taken.GetValueOrDefault(caller);
            if (own >= mostOfOne)
                return (false, 0);
            if (all >= most)
                return (false, mostOfOne - own);
            all++;
            if (caller is not null)
                taken[caller] = own + 1;
            return (true, mostOfOne - own - 1);
        }
    }

    private void Leave(object? caller)
    {
        lock (counting)
        {
            all--;
            if (caller is null)
                return;
            if (--taken[caller] == 0)
                taken.Remove(caller);
        }
    }

    private sealed class Place(PlacesAtOnce places, object? caller) : IDisposable
    {
        public void Dispose() => places.Leave(caller);
    }
}
