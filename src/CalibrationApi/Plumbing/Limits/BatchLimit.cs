using System.Net;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Plumbing.Settings;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>How many batches are answered at the same time: of all callers together, and of one.</summary>
/// <remarks>Nobody queues: a caller that waits holds a connection, and knows better than the service when to come back.</remarks>
internal sealed class BatchLimit(CalibrationSettings settings)
{
    private const string SecondsToWait = "5";

    private readonly int most = settings.Limits.BatchesAtOnce;
    private readonly int mostOfOne = settings.Limits.BatchesAtOncePerCaller;
    private readonly Dictionary<object, int> running = [];
    private readonly Lock counting = new();
    private int all;

    public async Task LimitAsync(HttpContext context, RequestDelegate next)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<MuchWork>() is null)
        {
            await next(context);
            return;
        }

        var caller = CallerOf(context);
        var (isFree, left) = Enter(caller);
        if (caller is not null)
            RateLimitFields.Tell(
                context,
                RateLimitFields.PolicyAtOnce(RateLimitFields.Batches, mostOfOne),
                $"\"{RateLimitFields.Batches}\";r={left}"
            );
        if (!isFree)
        {
            context.Response.Headers.RetryAfter = SecondsToWait;
            var refusal =
                left == 0 && caller is not null
                    ? ProblemResult.Exceeded(
                        RateLimitFields.Batches,
                        $"No more than {mostOfOne} batches of one caller are answered at once. Wait until one of yours is through."
                    )
                    : ProblemResult.Busy(
                        $"The service answers {most} batches already and takes no more at once. Try again in {SecondsToWait} seconds."
                    );
            await refusal.ExecuteAsync(context);
            return;
        }

        try
        {
            await next(context);
        }
        finally
        {
            Leave(caller);
        }
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
            var own = caller is null ? 0 : running.GetValueOrDefault(caller);
            if (own >= mostOfOne)
                return (false, 0);
            if (all >= most)
                return (false, mostOfOne - own);
            all++;
            if (caller is not null)
                running[caller] = own + 1;
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
            if (--running[caller] == 0)
                running.Remove(caller);
        }
    }
}
