using System.Collections.Concurrent;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>Counts requests in windows of a minute, for each caller apart. A window begins with the first request in it.</summary>
/// <remarks>
/// The limiters of the framework say neither how much is left nor when there will be more, which the header fields have to say,
/// and they read the clock of the machine. Memory is bounded: windows that have ended are forgotten, and callers for whom there
/// is no room share one window.
/// </remarks>
/// <param name="quota">Requests in a window.</param>
/// <param name="mostApart">Callers that are counted apart.</param>
/// <param name="clock">Measures the windows.</param>
internal sealed class RequestWindows<TCaller>(int quota, int mostApart, TimeProvider clock)
    where TCaller : notnull
{
    private readonly ConcurrentDictionary<TCaller, Window> windows = new();
    private readonly Window shared = new();
    private readonly long length = clock.TimestampFrequency * RateLimitFields.WindowSeconds;
    private readonly Lock sweeping = new();
    private long sweepAt = clock.GetTimestamp();
    private int apart;

    /// <summary>Requests in a window.</summary>
    public int Quota => quota;

    /// <summary>How many callers are remembered.</summary>
    public int Remembered => windows.Count;

    /// <summary>Counts a request, or refuses it. What is refused is not counted.</summary>
    public Standing Take(TCaller caller)
    {
        var now = clock.GetTimestamp();
        Sweep(now);
        return WindowOf(caller).Take(quota, now, length, clock.TimestampFrequency);
    }

    private Window WindowOf(TCaller caller)
    {
        if (windows.TryGetValue(caller, out var known))
            return known;
        if (Volatile.Read(ref apart) >= mostApart)
            return shared;
        var made = new Window();
        var kept = windows.GetOrAdd(caller, made);
        if (ReferenceEquals(kept, made))
            Interlocked.Increment(ref apart);
        return kept;
    }

    // Once in a window's length. A request that takes from a window while it is forgotten goes uncounted; there is at most one a sweep.
    private void Sweep(long now)
    {
        if (now < Volatile.Read(ref sweepAt) || !sweeping.TryEnter())
            return;
        try
        {
            Volatile.Write(ref sweepAt, now + length);
            foreach (var (caller, window) in windows)
            {
                if (window.HasEnded(now, length) && windows.TryRemove(caller, out _))
                    Interlocked.Decrement(ref apart);
            }
        }
        finally
        {
            sweeping.Exit();
        }
    }

    private sealed class Window
    {
        private readonly Lock counting = new();
        private long start;
        private bool hasBegun;
        private int used;

        public bool HasEnded(long now, long length)
        {
            lock (counting)
                return hasBegun && now - start >= length;
        }

        public Standing Take(int quota, long now, long length, long frequency)
        {
            lock (counting)
            {
                if (!hasBegun || now - start >= length)
                    (hasBegun, start, used) = (true, now, 0);
                var isAllowed = used < quota;
                if (isAllowed)
                    used++;
                // Rounded up, so that whoever waits as long as told is not early.
                var left = Math.Max(0, start + length - now);
                return new Standing(isAllowed, quota - used, (int)((left + frequency - 1) / frequency));
            }
        }
    }
}

/// <summary>How a caller stands after a request.</summary>
/// <param name="IsAllowed">The request may be answered.</param>
/// <param name="Remaining">Requests left in the window.</param>
/// <param name="Seconds">Seconds until the whole quota is back.</param>
internal readonly record struct Standing(bool IsAllowed, int Remaining, int Seconds);
