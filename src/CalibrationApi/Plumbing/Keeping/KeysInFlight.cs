using System.Collections.Concurrent;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>Idempotency keys of requests that are being worked on right now.</summary>
internal sealed class KeysInFlight
{
    private readonly ConcurrentDictionary<string, byte> keys = new(StringComparer.Ordinal);

    /// <summary>Takes the key; null when another request holds it. Disposing gives it back.</summary>
    public IDisposable? Take(string key) => keys.TryAdd(key, 0) ? new Held(keys, key) : null;

    private sealed class Held(ConcurrentDictionary<string, byte> keys, string key) : IDisposable
    {
        public void Dispose() => keys.TryRemove(key, out _);
    }
}
