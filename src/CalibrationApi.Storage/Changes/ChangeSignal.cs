using System.Collections.Concurrent;

namespace CalibrationApi.Storage.Changes;

/// <summary>Tells those who wait that changes of their workspace are durable.</summary>
/// <remarks>Waiting costs no thread. It says that there is something to read and not what: whoever is woken reads.</remarks>
public sealed class ChangeSignal
{
    private readonly ConcurrentDictionary<string, TaskCompletionSource> waiting = new(StringComparer.Ordinal);

    /// <summary>Completes with the next commit that changes something in a workspace.</summary>
    /// <remarks>Ask for it before you read, so that nothing is committed unnoticed between the two.</remarks>
    public Task Next(string workspace) =>
        waiting.GetOrAdd(workspace, static _ => new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously)).Task;

    internal void Tell(string workspace)
    {
        if (waiting.TryRemove(workspace, out var those))
            those.TrySetResult();
    }
}
