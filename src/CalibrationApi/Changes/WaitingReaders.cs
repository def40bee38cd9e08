using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Limits;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Changes;

namespace CalibrationApi.Changes;

/// <summary>Lets requests wait until something is stored that they ask for.</summary>
/// <remarks>A request that waits holds no thread and no connection to the database.</remarks>
internal sealed class WaitingReaders(CalibrationDatabase database, ChangeSignal changes, WaitLimit limit, IHostApplicationLifetime lifetime)
{
    // Of what is stored in quick succession and does not match, a request looks at ten batches a second and not at each commit.
    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(100);

    /// <summary>Returns when there is a change to list, when the time is over, and when the service stops.</summary>
    /// <param name="context">The request; its end ends the waiting.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="filter">Which changes.</param>
    /// <param name="after">The number of the last change already seen.</param>
    /// <param name="wait">How long.</param>
    /// <returns>The number after which there is something to list, or a refusal because too many wait already.</returns>
    public async Task<(long After, ProblemResult? Refusal)> UntilChangeAsync(
        HttpContext context,
        Workspace workspace,
        ChangeFilter filter,
        long after,
        TimeSpan wait
    )
    {
        if (Look(workspace, filter, ref after))
            return (after, null);
        using var place = limit.Take(context, out var refusal);
        if (place is null)
            return (after, refusal);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, lifetime.ApplicationStopping);
        end.CancelAfter(wait < limit.Longest ? wait : limit.Longest);
        try
        {
            for (var looks = 0; ; looks++)
            {
                if (looks > 1)
                    await Task.Delay(BetweenLooks, end.Token);
                // Asked for before looking, so that nothing is stored unnoticed between the two.
                var next = changes.Next(workspace);
                if (Look(workspace, filter, ref after))
                    return (after, null);
                await next.WaitAsync(end.Token);
            }
        }
        catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
        {
            return (after, null);
        }
    }

    // Moves on over what does not match, so that it is looked at once.
    private bool Look(Workspace workspace, ChangeFilter filter, ref long after)
    {
        var seen = after;
        var (isFound, newest) = database.Read(connection =>
        {
            // Before the changes: what is stored between the two is not to be moved over.
            var newest = ChangeStore.Newest(connection, workspace);
            return (ChangeStore.List(connection, workspace, filter, seen, 1).Any(), newest.Sequence);
        });
        if (!isFound)
            after = newest;
        return isFound;
    }
}
