using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Storage.Tests.OneWriter;

/// <summary>Keeps a writer busy, so that what is asked of it meanwhile queues up and comes into one batch.</summary>
internal sealed class Hold
{
    private readonly TaskCompletionSource isHeld = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly TaskCompletionSource release = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private Hold() { }

    /// <summary>Returns once the writer is busy.</summary>
    public static async Task<Hold> StartAsync(SingleWriter writer)
    {
        var hold = new Hold();
        _ = writer.WriteAsync(_ =>
        {
            hold.isHeld.SetResult();
            hold.release.Task.Wait();
            return true;
        });
        await hold.isHeld.Task;
        return hold;
    }

    public void Release() => release.SetResult();
}
