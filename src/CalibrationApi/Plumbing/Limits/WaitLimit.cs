using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Settings;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>How many requests may wait for something to happen at the same time: of all callers together, and of one.</summary>
/// <remarks>Each holds a connection; half of all connections always stay for those who do not wait.</remarks>
internal sealed class WaitLimit(CalibrationSettings settings)
{
    private readonly PlacesAtOnce places = new(
        RateLimitFields.Waits,
        "waiting requests",
        Math.Min(settings.Limits.WaitsAtOnce, Math.Max(1, OpenFiles.Connections(settings.Limits.Connections) / 2)),
        settings.Limits.WaitsAtOncePerCaller
    );

    /// <summary>The longest that a request waits, so that it is answered well within the time for its answer.</summary>
    public TimeSpan Longest { get; } = settings.Limits.LongRequestTime / 2;

    /// <summary>How many wait.</summary>
    public int Taken => places.Taken;

    /// <summary>Takes a place until it is disposed of; null with the refusal when none is free.</summary>
    public IDisposable? Take(HttpContext context, out ProblemResult? refusal) => places.Take(context, out refusal);
}
